/**
 * Findings that a shop knows of and lets stand for now, each with its reason and owner, so that a hundred old
 * procedures can be checked from the first day and only new mistakes fail. Matched by meaning, never by line.
 */
import {bookFile} from '../spec/file.js';
import {knownFile} from '../spec/shapes/known.js';
import {entryOf, type MapNode, textOf} from '../spec/tree.js';
import type {Problem} from '../text/problem.js';
import type {Source, Where} from '../text/source.js';
import {meaningOf} from './meaning.js';

export interface Known {
  readonly finding: string;
  /** Relative to the list. */
  readonly file: string;
  readonly item?: string;
  readonly place?: string;
  /** Where it is about no item. */
  readonly says?: string;
  readonly times: number;
  readonly because: string;
  readonly owner: string;
  readonly where: Where;
}

export function readKnown(from: Source): {
  readonly known: readonly Known[];
  readonly problems: readonly Problem[];
} {
  const {tree, problems} = bookFile(from, knownFile);
  const list = entryOf(tree, 'known')?.value;
  const entries = list?.type === 'list' ? list.items : [];
  return {known: entries.flatMap((node) => (node.type === 'map' ? [entryIn(node)] : [])), problems};
}

function entryIn(node: MapNode): Known {
  const part = (key: string) => textOf(entryOf(node, key)?.value);
  const [item, place, says] = [part('item'), part('place'), part('says')];
  return {
    finding: part('finding') ?? '',
    file: part('file') ?? '',
    ...(item !== undefined && {item}),
    ...(place !== undefined && {place}),
    ...(says !== undefined && {says}),
    times: Number(part('times') ?? 1),
    because: part('because') ?? '',
    owner: part('owner') ?? '',
    where: node.where,
  };
}

/** What a finding must be like to be matched; its file is relative to the list. */
export interface Candidate {
  readonly name: string;
  readonly message: string;
  readonly file: string;
  readonly item?: string;
  readonly place?: string;
}

export interface Sorted<F> {
  readonly fresh: readonly F[];
  readonly known: readonly (readonly [finding: F, entry: Known])[];
  /** Entries of which fewer are found than they say, and how many are. */
  readonly settled: readonly (readonly [entry: Known, found: number])[];
}

export function sorted<F extends Candidate>(findings: readonly F[], entries: readonly Known[]): Sorted<F> {
  const left = entries.map((entry) => ({entry, key: keyOf(entry), found: 0}));
  const fresh: F[] = [];
  const known: (readonly [F, Known])[] = [];
  for (const finding of findings) {
    const key = meaningOf(finding, finding.file);
    const place = left.find((one) => one.key === key && one.found < one.entry.times);
    if (place === undefined) fresh.push(finding);
    else {
      place.found++;
      known.push([finding, place.entry]);
    }
  }
  const settled = left.flatMap(({entry, found}) => (found < entry.times ? [[entry, found] as const] : []));
  return {fresh, known, settled};
}

function keyOf({finding, file, says = '', ...about}: Known): string {
  return meaningOf({...about, name: finding, message: says}, file);
}
