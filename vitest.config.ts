/** Where the tests stand and what they may take. */
import {defineConfig} from 'vitest/config';

export default defineConfig({
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
