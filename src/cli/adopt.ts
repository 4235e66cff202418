/** `wmark adopt`: makes a tagged draft of a plain procedure. */
import {existsSync} from 'node:fs';
import {basename, dirname, extname, resolve} from 'node:path';
import {draftOf} from '../adopt/draft.js';
import {today} from '../host/clock.js';
import type {Failure} from '../host/failure.js';
import {loadBooks} from '../host/load.js';
import {shownName, truePath} from '../host/names.js';
import {sweepPassing} from '../host/passing.js';
import {LIMITS, readText} from '../host/read.js';
import {writeFiles} from '../host/write.js';
import {readProcedure} from '../procedure/read.js';
import {counted} from '../text/counted.js';
import {printable} from '../text/printable.js';
import {unable} from './complain.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export interface AdoptCommandOptions {
  readonly engine?: string;
  readonly out?: string;
  readonly replace?: boolean;
}

/** The draft goes to standard output unless `--out` names a file; the original is never touched unasked. */
export async function adopt(file: string, options: AdoptCommandOptions, streams: Streams): Promise<Exit> {
  const failure = await adoptFile(file, options, streams);
  return failure === undefined ? EXIT.clean : unable(streams, failure);
}

async function adoptFile(
  file: string,
  {engine, out, replace = false}: AdoptCommandOptions,
  {report, aside}: Streams,
): Promise<Failure | undefined> {
  const cwd = process.cwd();
  const taken = out !== undefined && !replace && existsSync(resolve(out));
  // A run that was killed just when it was done left its temporary name beside the draft.
  if (taken) await sweepPassing(dirname(resolve(out)));
  if (taken) return refuse(out, 'it is there already', 'name another file, or say --replace');
  const path = (await truePath(resolve(file))) ?? resolve(file);
  const read = await readText(path, shownName(path, cwd), LIMITS.procedure);
  if (!read.ok) return read;
  const {books, failures} = await loadBooks([engine ?? file], cwd);
  const [first] = books;
  if (first === undefined) return withHint(failures[0], file, engine);
  const {file: shown, mark} = read.source;
  const procedure = readProcedure(read.source);
  if (procedure.steps.length === 0)
    return refuse(shown, 'it has no steps', 'write its steps as a numbered list');
  const draft = draftOf(procedure, {
    spec: first.book.spec,
    others: first.book.procedures.filter(({source}) => source.file !== shown),
    today: today(),
    name: titleOf(path),
  });
  const text = `${mark ? '\uFEFF' : ''}${draft.text}`;
  if (out === undefined) report(text);
  else {
    const written = await writeFiles([{path: resolve(out), text, ...(!replace && {isNew: true})}], cwd);
    if (!written.ok) return written;
  }
  aside(
    `wmark: by ${printable(first.file)}: ${counted(draft.tags, 'tag')} written, ${draft.offers} to settle, ${draft.left} asked for and not said\n`,
  );
  return undefined;
}

function refuse(file: string, says: string, hint: string): Failure {
  return {ok: false, says, hint, where: {file}};
}

function withHint(failure: Failure | undefined, file: string, engine: string | undefined): Failure {
  const found = failure ?? refuse(engine ?? file, 'there is no book here', '');
  return engine === undefined ? {...found, hint: 'name the engine.yaml to go by with --engine'} : found;
}

/** `03-oil-pump.md` as `Oil pump`. */
function titleOf(path: string): string {
  const words = basename(path, extname(path))
    .replace(/^\d+[-_ ]*/, '')
    .replace(/[-_]+/g, ' ')
    .trim();
  return words === '' ? 'Procedure' : `${words[0]?.toUpperCase()}${words.slice(1)}`;
}
