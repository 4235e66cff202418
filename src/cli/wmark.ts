#!/usr/bin/env node
/** The command `wmark`. Answers `--version` before anything else is loaded, so that asking costs next to nothing. */
import {version} from './version.js';

const words = process.argv.slice(2);

if (words.length === 1 && (words[0] === '--version' || words[0] === '-V')) {
  process.stdout.write(`${version}\n`);
} else {
  const {main} = await import('./main.js');
  process.exitCode = await main(words);
}
