/** `wmark begin`: writes a small book with comments for a beginner, from the files in `begin/`. */
import {readdir, readFile} from 'node:fs/promises';
import {join, resolve} from 'node:path';
import {type Failure, systemCode, systemFailure} from '../host/failure.js';
import {shownName} from '../host/names.js';
import {schemaAddress} from '../host/package.js';
import {sweepPassing} from '../host/passing.js';
import {writeFiles} from '../host/write.js';
import {printable} from '../text/printable.js';
import pump from './begin/01-oil-pump.md';
import sump from './begin/02-sump.md';
import engine from './begin/engine.yaml';
import shop from './begin/shop.yaml';
import {unable} from './complain.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export async function begin(folder: string, {report, aside}: Streams): Promise<Exit> {
  const target = resolve(folder);
  const shown = shownName(target, process.cwd());
  const failure = (await occupied(target, shown)) ?? (await writeBook(target));
  if (failure) return unable({aside}, failure);
  const name = printable(shown);
  report(`${name} now holds a small book: ${FILES.map(([file]) => file).join(', ')}\n`);
  report(`\nNext:\n  wmark check ${name}\n  wmark sheet ${name} --out out\n`);
  return EXIT.clean;
}

const FILES = [
  ['shop.yaml', shop],
  ['engine.yaml', engine],
  ['01-oil-pump.md', pump],
  ['02-sump.md', sump],
] as const;

/** A folder with anything in it is somebody's, and is left alone; but what a run began that was killed is ended. */
async function occupied(target: string, shown: string): Promise<Failure | undefined> {
  try {
    await sweepPassing(target);
    const entries = await readdir(target);
    if (entries.length === 0 || (await isBegun(entries, target))) return undefined;
    return {ok: false, says: 'the folder is not empty', hint: 'name a new one', where: {file: shown}};
  } catch (error) {
    return systemCode(error) === 'ENOENT' ? undefined : systemFailure(error, shown);
  }
}

/** Some of our files, as we write them, and nothing else. */
async function isBegun(entries: readonly string[], target: string): Promise<boolean> {
  if (entries.length >= FILES.length) return false;
  const ours = new Map(outputsAt(target).map(({path, text}) => [path, text]));
  for (const path of entries.map((name) => join(target, name))) {
    const text = ours.get(path);
    if (text === undefined || (await readFile(path, 'utf8').catch(() => undefined)) !== text) return false;
  }
  return true;
}

function outputsAt(target: string) {
  return FILES.map(([file, text]) => ({path: join(target, file), text: withSchema(text, target)}));
}

async function writeBook(target: string): Promise<Failure | undefined> {
  const written = await writeFiles(outputsAt(target));
  return written.ok ? undefined : written;
}

/** The first line of a YAML file tells an editor where its schema is; here, beside this very tool. */
function withSchema(text: string, target: string): string {
  return text.replace('../../../schemas/', () => `${schemaAddress(target)}/`);
}
