/**
 * Packs the VS Code extension: bundles client and server, adds what is written and what is made from the code, and
 * writes `out/witness-mark.vsix`. Needs nothing but the packages that are installed.
 */
import {spawnSync} from 'node:child_process';
import {cpSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {dirname, join} from 'node:path';
import {fileURLToPath, pathToFileURL} from 'node:url';
import {build} from 'esbuild';
import {icon} from './icon.mjs';
import {licences} from './licences.mjs';
import {webServer} from './web.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const from = join(root, 'src', 'editor', 'vscode');
const staged = join(root, '.cache', 'extension');
const packed = join(root, 'out', 'witness-mark.vsix');
const {version} = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

rmSync(staged, {recursive: true, force: true});
mkdirSync(staged, {recursive: true});
mkdirSync(dirname(packed), {recursive: true});

const common = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20',
  minify: true,
  legalComments: 'none',
  metafile: true,
  logLevel: 'warning',
  define: {WMARK_VERSION: JSON.stringify(version)},
};
const bundles = await Promise.all([
  // The editor loads extensions by `require`.
  build({
    ...common,
    entryPoints: ['src/editor/vscode/client.ts'],
    outfile: join(staged, 'client.js'),
    format: 'cjs',
    external: ['vscode'],
  }),
  build({
    ...common,
    entryPoints: ['src/editor/vscode/server.ts'],
    outfile: join(staged, 'server.mjs'),
    format: 'esm',
    banner: {js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url);"},
  }),
  // In the web extensions are loaded by a `require` too.
  build({
    ...common,
    platform: 'browser',
    target: 'es2022',
    entryPoints: ['src/editor/vscode/client-web.ts'],
    outfile: join(staged, 'client-web.js'),
    format: 'cjs',
    external: ['vscode'],
  }),
  build({
    ...common,
    entryPoints: ['src/editor/vscode/contents.ts'],
    outfile: join(root, '.cache', 'run', 'contents.mjs'),
    format: 'esm',
    packages: 'external',
  }),
]);

const web = await webServer(version);
writeFileSync(join(staged, 'server-web.js'), web.text);

for (const name of ['snippets.json', 'walkthrough'])
  cpSync(join(from, name), join(staged, name), {recursive: true});
cpSync(join(root, 'schemas'), join(staged, 'schemas'), {recursive: true});
const {contents} = await import(pathToFileURL(join(root, '.cache', 'run', 'contents.mjs')).href);
for (const [name, text] of Object.entries(contents(readFileSync(join(from, 'README.md'), 'utf8')))) {
  writeFileSync(join(staged, name), text);
}
const manifest = JSON.parse(readFileSync(join(from, 'manifest.json'), 'utf8'));
writeFileSync(join(staged, 'package.json'), `${JSON.stringify({...manifest, version}, null, 2)}\n`);
writeFileSync(
  join(staged, 'THIRD-PARTY.txt'),
  licences(
    root,
    [...bundles, web].map(({metafile}) => metafile),
  ),
);
writeFileSync(join(staged, 'icon.png'), icon(128));

const vsce = createRequire(import.meta.url).resolve('@vscode/vsce/vsce');
const words = [
  'package',
  '--no-dependencies',
  '--skip-license',
  '--allow-missing-repository',
  '--out',
  packed,
];
const {status, stdout, stderr} = spawnSync(process.execPath, [vsce, ...words], {
  cwd: staged,
  encoding: 'utf8',
});
if (status !== 0) {
  process.stderr.write(stdout + stderr);
  process.exit(1);
}
const kibibytes = Math.round(statSync(packed).size / 1024);
console.log(`out/witness-mark.vsix: ${kibibytes} KiB`);
