/** One engine on the stand, read from jobs/NUMBER.yaml against the specification of its engine. */

import type {Amount} from '../quantity/model.js';
import {readAmount} from '../quantity/parse.js';
import {alternatives} from '../text/alternatives.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Source, Where} from '../text/source.js';
import {defined} from './defined.js';
import {amountProblem, wordsIn} from './fields.js';
import {bookFile} from './file.js';
import type {ItemKind, Located, Specification} from './model.js';
import {nearName} from './near.js';
import {optionProblems} from './options.js';
import {KIND_SAYS} from './sections.js';
import {jobFile} from './shapes/job.js';
import {type Entry, entryOf, isScalar, type MapNode, textOf} from './tree.js';

/** One engine on the stand, from a file of `jobs/`. */
export interface Job {
  readonly number: string;
  /** Whose engine it is, or what it is for. */
  readonly for?: string;
  /** ISO 8601 date. */
  readonly received?: string;
  readonly lead?: string;
  readonly note?: string;
  /** What the marks of this engine read, by the id of the mark. */
  readonly marks: ReadonlyMap<string, Located<string>>;
  /** How far surfaces were ground, by the id of the surface. */
  readonly grinds: ReadonlyMap<string, Located<Amount | 'standard'>>;
  /** The undersize of parts bought for this engine, by the id of the part. */
  readonly fitted: ReadonlyMap<string, Located<Amount | 'standard'>>;
  /** Name of the substitute fitted, by the id of the part whose place it takes. */
  readonly substitutes: ReadonlyMap<string, Located<string>>;
  readonly options: readonly Located<string>[];
  /** Where its number is written; the start of the file where it has none. */
  readonly where: Where;
  readonly source: Source;
  readonly problems: readonly Problem[];
}

/** Reads the YAML of a job of a book. Always gives what could be understood, and the problems. Put it into `Book.job`. */
export function readJob(source: Source, spec: Specification): Job {
  const file = bookFile(source, jobFile);
  const problems = [...file.problems];
  const reader: JobReader = {tree: file.tree, spec, problems};
  const head = entryOf(file.tree, 'job')?.value;
  const part = (key: string) => textOf(entryOf(head, key)?.value);
  checkEngine(reader, entryOf(head, 'engine')?.value.where, part('engine'));
  const options = wordsIn(entryOf(file.tree, 'options')?.value);
  problems.push(
    ...optionProblems(
      options.map(({value, where}) => ({id: value, where})),
      spec.options,
    ),
  );
  return {
    number: part('number') ?? '',
    ...defined({for: part('for'), received: part('received'), lead: part('lead'), note: part('note')}),
    marks: byItem(reader, 'marks', ['mark'], ({value}) => textOf(value)),
    grinds: byItem(reader, 'grinds', ['surface'], (entry) => undersizeOf(reader, entry)),
    fitted: byItem(reader, 'fitted', ['part'], ({value}) => {
      const inner = value.type === 'map' ? value.entries.find(({key}) => key === 'undersize') : undefined;
      return inner && undersizeOf(reader, inner);
    }),
    substitutes: byItem(reader, 'substitutes', ['part'], (entry) => substituteOf(reader, entry)),
    options,
    where: entryOf(head, 'number')?.value.where ?? {file: source.file, span: {start: 0, end: 0}},
    source,
    problems,
  };
}

interface JobReader {
  readonly tree: MapNode;
  readonly spec: Specification;
  readonly problems: Problem[];
}

function checkEngine({spec, problems}: JobReader, where: Where | undefined, id: string | undefined): void {
  if (where === undefined || id === undefined || id === spec.engine.id) return;
  problems.push({
    name: 'unknown-item',
    where,
    says: `this job is for ${id}, and the book beside it is for ${spec.engine.id}`,
    hint:
      nearName(id, [spec.engine.id], problems.length) === undefined
        ? 'put the job into the folder of its own engine'
        : `did you mean ${spec.engine.id}?`,
  });
}

function byItem<T>(
  reader: JobReader,
  section: string,
  kinds: readonly ItemKind[],
  read: (entry: Entry) => T | undefined,
): ReadonlyMap<string, Located<T>> {
  const map = entryOf(reader.tree, section)?.value;
  if (map?.type !== 'map') return new Map();
  return new Map(
    map.entries.flatMap((entry): [string, Located<T>][] => {
      if (!isItem(reader, entry, kinds)) return [];
      const value = read(entry);
      return value === undefined ? [] : [[entry.key, {value, where: entry.value.where}]];
    }),
  );
}

function isItem({spec, problems}: JobReader, {key, keyWhere}: Entry, kinds: readonly ItemKind[]): boolean {
  const item = spec.items.get(key);
  if (item !== undefined && kinds.includes(item.kind)) return true;
  const due = alternatives(kinds.map((kind) => KIND_SAYS[kind]));
  const fitting = [...spec.items.values()].filter(({kind}) => kinds.includes(kind)).map(({id}) => id);
  const near = nearName(key, fitting, problems.length);
  problems.push({
    name: item === undefined ? 'unknown-item' : 'wrong-kind',
    where: keyWhere,
    says: item === undefined ? `${key} is not in the specification` : `${key} is not ${due}`,
    hint:
      near === undefined
        ? `name ${due} of engine.yaml${someOf(fitting, problems.length)}`
        : `did you mean ${near}?`,
    item: key,
  });
  return false;
}

/** Few names are told, and for the first slips; of many a person looks in the file. */
const MOST_TOLD = 6;

function someOf(names: readonly string[], before: number): string {
  return names.length === 0 || names.length > MOST_TOLD || before > MOST_TOLD
    ? ''
    : `: ${alternatives(names)}`;
}

function undersizeOf({problems}: JobReader, {key, value}: Entry): Amount | 'standard' | undefined {
  const said = textOf(value);
  if (said === undefined || !isScalar(value) || said === 'standard') {
    return said === 'standard' ? 'standard' : undefined;
  }
  const reading = readAmount(said, 'length');
  if (reading.ok) return reading.amount;
  const problem = amountProblem(value, reading.fault, key);
  const isWord = !/\d/.test(said) && nearest(said, ['standard']) !== undefined;
  problems.push(isWord ? {...problem, hint: 'did you mean standard?'} : problem);
  return undefined;
}

function substituteOf({spec, problems}: JobReader, {key, value}: Entry): string | undefined {
  const name = textOf(value);
  const part = spec.items.get(key);
  if (name === undefined || part?.kind !== 'part') return undefined;
  if (part.substitutes.has(name)) return name;
  const near = nearName(name, part.substitutes.keys(), problems.length);
  problems.push({
    name: 'unknown-item',
    where: value.where,
    says: `${name} is not a substitute for ${key}`,
    hint:
      near === undefined
        ? `list it under substitutes of ${key} in engine.yaml, with what it needs`
        : `did you mean ${near}?`,
    item: key,
    related: [{where: part.where, says: `${key} is specified here`}],
  });
  return undefined;
}
