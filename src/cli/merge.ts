/** `wmark merge`: puts the JSON reports of all slices together to what one run over all books would have said. */
import {resolve} from 'node:path';
import type {Failure} from '../host/failure.js';
import {shownName} from '../host/names.js';
import {LIMITS, readText} from '../host/read.js';
import {type CheckJson, checkShape, type SliceJson} from './check-shape.js';
import {type TellOptions, told} from './check-told.js';
import {unable} from './complain.js';
import type {Exit} from './exit.js';
import {answersIn, failureIn} from './slice-part.js';
import type {Streams} from './streams.js';

export type MergeOptions = Omit<TellOptions, 'job'>;

export async function merge(
  files: readonly string[],
  options: MergeOptions,
  streams: Streams,
): Promise<Exit> {
  const slices = await slicesIn(files);
  if ('ok' in slices) return unable(streams, slices);
  const [{slice}] = slices;
  const answers = slices
    .flatMap((one) => answersIn(one.slice, one.findings))
    .sort((one, other) => one.at - other.at);
  const asked = {failures: slice.failures.map(failureIn), answers, path: slice.path};
  return told(asked, {...options, ...(slice.job !== null && {job: slice.job})}, streams);
}

interface ReadSlice {
  readonly file: string;
  readonly slice: SliceJson;
  readonly findings: CheckJson['findings'];
}

type Slices = readonly [ReadSlice, ...ReadSlice[]];

/** Every slice of one run, each once; or why they are not that. */
async function slicesIn(files: readonly string[]): Promise<Slices | Failure> {
  const read: ReadSlice[] = [];
  for (const file of files) {
    const one = await sliceIn(file);
    if ('ok' in one) return one;
    read.push(one);
  }
  const [first, ...rest] = read;
  if (first === undefined) return {ok: false, says: 'no report was named'};
  return stranger(first, rest) ?? missing(first, read) ?? [first, ...rest];
}

async function sliceIn(path: string): Promise<ReadSlice | Failure> {
  const cwd = process.cwd();
  const file = shownName(path, cwd);
  const refused = (says: string): Failure => ({
    ok: false,
    says,
    hint: 'name what `wmark check --slice K/N --as json` printed',
    where: {file},
  });
  // A report comes from another machine: it is read as any other stranger's file.
  const read = await readText(resolve(cwd, path), file, LIMITS.report);
  if (!read.ok) return read;
  const parsed = checkShape.safeParse(jsonIn(read.source.text));
  if (!parsed.success) return refused('it is no report of the check');
  const {slice, findings} = parsed.data;
  return slice === undefined ? refused('it is not the report of a slice') : {file, slice, findings};
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** A report that is not of the same run: other books, another number of slices, another job, another build of the tool. */
function stranger(first: ReadSlice, rest: readonly ReadSlice[]): Failure | undefined {
  const runOf = ({slice: {of, list, job, build, path}}: ReadSlice) =>
    JSON.stringify([of, list, job, build, path]);
  const other = rest.find((one) => runOf(one) !== runOf(first));
  if (other === undefined) return undefined;
  const says = `it is not of the same run as ${first.file}`;
  const hint = 'check the same paths of the same revision with the same wmark, --slice 1/N to N/N';
  return {ok: false, says, hint, where: {file: other.file}};
}

function missing({slice: {of}}: ReadSlice, read: readonly ReadSlice[]): Failure | undefined {
  const numbers = read.map(({slice}) => slice.number);
  const twice = numbers.find((number, at) => numbers.indexOf(number) !== at);
  if (twice !== undefined)
    return {ok: false, says: `slice ${twice}/${of} is there twice`, hint: 'name each once'};
  const lacks = Array.from({length: of}, (_, index) => index + 1).find((number) => !numbers.includes(number));
  if (lacks === undefined) return undefined;
  return {ok: false, says: `slice ${lacks}/${of} is missing`, hint: 'name the reports of all slices'};
}
