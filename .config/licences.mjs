/** The licences of the packages whose code stands in a bundle, from what the bundler says that it took in. */
import {readdirSync, readFileSync} from 'node:fs';
import {join, resolve} from 'node:path';

/** The licence texts, in order of name; each package once, those within other packages too. */
export function licences(root, metafiles) {
  const folders = new Set();
  for (const metafile of metafiles) {
    for (const input of Object.keys(metafile.inputs)) {
      const found = /^(.*\bnode_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(input);
      if (found) folders.add(resolve(root, found[1]));
    }
  }
  const notices = [...folders].map(notice).sort();
  return `The bundles in this folder hold code of these packages.\n\n${[...new Set(notices)].join('\n')}`;
}

function notice(folder) {
  const {name, version, license} = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  const text = file ? readFileSync(join(folder, file), 'utf8').trim() : '';
  return `${'-'.repeat(72)}\n${name} ${version} (${license})\n\n${text}\n`;
}
