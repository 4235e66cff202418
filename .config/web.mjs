/** The language server for a web worker, bundled with what stands in for Node's own modules: for the extension and for the tests. */
import {dirname, join} from 'node:path';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const folder = join(root, 'src', 'editor', 'web');

const MODULES = {
  'node:fs': 'fs',
  'node:fs/promises': 'fs-promises',
  'node:path': 'path',
  'node:url': 'url',
};

/** Any other module of Node's own is a fault, and ends the build. */
const inTheWeb = {
  name: 'in-the-web',
  setup({onResolve}) {
    onResolve({filter: /^node:/}, ({path}) => {
      const name = MODULES[path];
      if (name === undefined) return {errors: [{text: `${path} cannot be had in the web`}]};
      return {path: join(folder, `${name}.ts`)};
    });
    onResolve({filter: /\/host\/package\.js$/}, () => ({path: join(folder, 'package.ts')}));
  },
};

/** Its text, and what went into it. */
export async function webServer(version) {
  const {outputFiles, metafile} = await build({
    absWorkingDir: root,
    entryPoints: ['src/editor/web/server.ts'],
    bundle: true,
    write: false,
    metafile: true,
    minify: true,
    platform: 'browser',
    // A worker has no `document`, and some packages have another form for that.
    conditions: ['worker', 'module'],
    target: 'es2022',
    format: 'iife',
    legalComments: 'none',
    logLevel: 'warning',
    define: {WMARK_VERSION: JSON.stringify(version)},
    plugins: [inTheWeb],
  });
  return {text: outputFiles[0].text, metafile};
}
