/**
 * Builds `dist/`: the library (`index.js`, the packages under `dependencies` left outside), the command
 * (`wmark.js`, everything inside, split so that a command loads only what it needs; the script of the HTML sheets
 * stands in it as text), the type declarations,
 * and the licences of what went into the bundles.
 */
import {spawnSync} from 'node:child_process';
import {createHash} from 'node:crypto';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import {createRequire} from 'node:module';
import {dirname, join} from 'node:path';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';
import {licences} from './licences.mjs';
import {tabletScript} from './tablet.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

const tablet = await tabletScript();

/** Stands in the bundle for the digest of the bundle itself, until that is known. */
const UNDIGESTED = 'the digest of this build';

/** What both bundles share. Node 20.19 is the oldest that `engines` admits. */
const common = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20.19',
  format: 'esm',
  metafile: true,
  legalComments: 'none',
  logLevel: 'warning',
  loader: {'.md': 'text', '.yaml': 'text', '.typ': 'text'},
  define: {
    WMARK_VERSION: JSON.stringify(manifest.version),
    WMARK_BUILD: JSON.stringify(UNDIGESTED),
    WMARK_TABLET: JSON.stringify(tablet.text),
  },
};

/** Built aside and put in place when it is whole, so that whoever runs the command meanwhile finds one. */
const fresh = join(root, '.cache', `dist-${process.pid}`);
process.on('exit', () => rmSync(fresh, {recursive: true, force: true}));

const [library, command] = await Promise.all([
  build({
    ...common,
    entryPoints: {index: 'src/index.ts'},
    outdir: fresh,
    external: Object.keys(manifest.dependencies),
  }),
  build({
    ...common,
    entryPoints: {wmark: 'src/cli/wmark.ts'},
    outdir: fresh,
    chunkNames: 'command/[name]-[hash]',
    splitting: true,
    minifyWhitespace: true,
    minifySyntax: true,
    // It brings machine code of its own, which no bundle can hold.
    external: ['@myriaddreamin/typst-ts-node-compiler'],
    // The YAML package asks for Node's own modules by `require`, which an ES module has to make for itself.
    banner: {js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url);"},
  }),
]);
putDigest();
declarations();
fonts();
writeFileSync(
  join(fresh, 'THIRD-PARTY.txt'),
  licences(root, [library.metafile, command.metafile, tablet.metafile]),
);
putInPlace();

function putInPlace() {
  const stale = `${fresh}-stale`;
  if (existsSync(join(root, 'dist'))) renameSync(join(root, 'dist'), stale);
  renameSync(fresh, join(root, 'dist'));
  rmSync(stale, {recursive: true, force: true});
}

/** By it the command knows answers again that this very build kept. */
function putDigest() {
  const folders = ['', 'command'].map((name) => join(fresh, name)).filter(existsSync);
  const files = folders.flatMap((folder) => readdirSync(folder).map((name) => join(folder, name)));
  const scripts = files.filter((file) => file.endsWith('.js')).sort();
  const digest = createHash('sha256');
  for (const file of scripts) digest.update(readFileSync(file));
  const id = digest.digest('hex').slice(0, 32);
  for (const file of scripts) {
    writeFileSync(file, readFileSync(file, 'utf8').replaceAll(UNDIGESTED, id));
  }
}

/** The declarations of everything that the library's face can reach. */
function declarations() {
  const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');
  const project = join(root, '.config', 'tsconfig.types.json');
  const words = [compiler, '-p', project, '--outDir', join(fresh, 'types')];
  if (spawnSync(process.execPath, words, {stdio: 'inherit'}).status !== 0) process.exit(1);
}

/** The fonts of the PDF, with their licence. */
function fonts() {
  const from = join(root, 'node_modules', 'dejavu-fonts-ttf');
  mkdirSync(join(fresh, 'fonts'));
  const faces = [
    'SansCondensed',
    'SansCondensed-Bold',
    'SansCondensed-Oblique',
    'SansCondensed-BoldOblique',
    'SansMono',
    'SansMono-Bold',
  ];
  for (const face of faces) {
    copyFileSync(join(from, 'ttf', `DejaVu${face}.ttf`), join(fresh, 'fonts', `DejaVu${face}.ttf`));
  }
  copyFileSync(join(from, 'LICENSE'), join(fresh, 'fonts', 'LICENSE'));
}
