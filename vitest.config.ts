/** Where the tests stand and what they may take. */
import {fileURLToPath} from 'node:url';
import {defineConfig} from 'vitest/config';

export default defineConfig({
  plugins: [
    {
      name: 'templates-as-text',
      transform: (text, id) =>
        id.endsWith('.typ') ? {code: `export default ${JSON.stringify(text)}`, map: null} : undefined,
    },
  ],
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/help/seed.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // What the command keeps goes here, and not into the user's own folder.
    env: {XDG_CACHE_HOME: fileURLToPath(new URL('.cache/tests', import.meta.url))},
    // The counts are read by .ci/run.
    reporters: ['default', ['json', {outputFile: '.cache/tests.json'}]],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text-summary'],
    },
  },
});
