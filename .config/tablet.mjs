/** The script that goes into every HTML sheet, bundled and made small: the same for the build and for the tests. */
import {dirname, join} from 'node:path';
import {fileURLToPath} from 'node:url';
import {build} from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');

/** No file of ours does anything by being imported, so one of which nothing is used stays out, and zod with it. */
const onlyWhatIsUsed = {
  name: 'only-what-is-used',
  setup({onResolve, resolve}) {
    onResolve({filter: /^\./}, async ({path, pluginData, ...from}) => {
      if (pluginData === onlyWhatIsUsed) return undefined;
      const found = await resolve(path, {...from, pluginData: onlyWhatIsUsed});
      return {...found, sideEffects: false};
    });
  },
};

/** Its text, and what went into it. */
export async function tabletScript() {
  const {outputFiles, metafile} = await build({
    absWorkingDir: root,
    entryPoints: ['src/tablet/main.ts'],
    bundle: true,
    write: false,
    metafile: true,
    minify: true,
    platform: 'browser',
    // Tablets in shops are old: these are the browsers of 2021 and later that draw a dialog.
    target: ['chrome94', 'firefox98', 'safari15.4'],
    format: 'iife',
    legalComments: 'none',
    logLevel: 'warning',
    plugins: [onlyWhatIsUsed],
  });
  return {text: outputFiles[0].text, metafile};
}
