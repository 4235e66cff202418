/** Where the tests stand and what they may take. */
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
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // The counts are read by .ci/run.
    reporters: ['default', ['json', {outputFile: '.cache/tests.json'}]],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text-summary'],
    },
  },
});
