/** How the mutation tool works here; what it works on, and how much of it, `tests/mutation/main.ts` adds. */
import {fileURLToPath} from 'node:url';

export default {
  testRunner: 'in-process',
  checkers: ['sample'],
  reporters: ['notes'],
  plugins: [fileURLToPath(new URL('plugin.mjs', import.meta.url))],
  concurrency: 1,
  coverageAnalysis: 'perTest',
  // Made once when a file is loaded: tables and texts for people, which have tests of their own.
  ignoreStatic: true,
  disableTypeChecks: false,
  symlinkNodeModules: false,
  tempDirName: '.cache/stryker',
  ignorePatterns: ['.cache', 'dist', 'out', 'coverage'],
  // Loops without end are counted, or stopped by the runner; a busy machine must not pass for one.
  timeoutMS: 900_000,
  timeoutFactor: 2,
  dryRunTimeoutMinutes: 30,
  allowConsoleColors: false,
  logLevel: 'warn',
  warnings: {unknownOptions: false, slow: false},
};
