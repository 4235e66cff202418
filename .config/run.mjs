/**
 * Runs a TypeScript file of this project that is neither a test nor part of the package (a generator, a
 * benchmark): bundles it into `.cache/` with every package left outside, and imports the result.
 * Use: `node .config/run.mjs FILE.ts [ARGUMENT…]`.
 */
import {dirname, join} from 'node:path';
import {fileURLToPath, pathToFileURL} from 'node:url';
import {build} from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const [file] = process.argv.splice(2, 1);
if (file === undefined) throw new Error('say which file to run');

const outfile = join(root, '.cache', 'run', `${file.replaceAll(/[^a-z0-9]+/gi, '-')}.mjs`);
await build({
  absWorkingDir: root,
  entryPoints: [file],
  outfile,
  bundle: true,
  platform: 'node',
  target: 'node20.19',
  format: 'esm',
  packages: 'external',
  loader: {'.typ': 'text'},
  logLevel: 'warning',
});
await import(pathToFileURL(outfile).href);
