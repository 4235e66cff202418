/**
 * Real editors as clients: `npm run test:editor [--pictures FOLDER] [vscode|vscode-web|neovim]`. What can't be had on this machine
 * fails loudly: an editor that nobody tried is not one that works.
 */
import {tryNeovim} from './neovim.js';
import {tryVsCode, tryVsCodeWeb} from './vscode.js';

const words = process.argv.slice(2);
const at = words.indexOf('--pictures');
const [pictures] = at === -1 ? [] : words.splice(at, 2).slice(1);
const TRIALS = {
  neovim: () => tryNeovim(),
  vscode: () => tryVsCode(pictures),
  'vscode-web': () => tryVsCodeWeb(pictures),
} as const;

let failed = 0;
for (const [name, trial] of Object.entries(TRIALS)) {
  if (words.length > 0 && !words.includes(name)) continue;
  const start = performance.now();
  try {
    await trial();
    console.log(`${name}: passed in ${Math.round((performance.now() - start) / 1000)} s`);
  } catch (error) {
    failed++;
    console.error(`${name}: FAILED: ${error instanceof Error ? (error.stack ?? error.message) : error}`);
  }
}
process.exitCode = failed > 0 ? 1 : 0;
