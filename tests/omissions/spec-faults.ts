/** Faults of the specification: a lock, a thread condition, a limit or a source taken out. */
import {isMap, isPair, isScalar, isSeq, type Pair, parseDocument, visit} from 'yaml';
import type {Book} from '../../src/build/book.js';
import type {Fault} from './fault.js';

const DROPS: Readonly<Record<string, string>> = {
  lock: 'drop a lock from the specification',
  threads: 'drop a thread condition from the specification',
  limits: 'drop a limit from the specification',
  torque: 'drop a torque from the specification',
  seal: 'drop a seal from the specification',
  assembly: 'drop an assembly state from the specification',
};

/** Slips in the engineering fields that no step repeats, each to a value that cannot be right. */
const CHANGES: Readonly<Record<string, {readonly kind: string; readonly to: (value: string) => string}>> = {
  grade: {
    kind: 'weaken a grade in the specification',
    to: (value) => (/^\d/.test(value) ? "'4.6'" : 'SAE 1'),
  },
  hole: {
    kind: 'halve a hole in the specification',
    to: (value) => `${+(Number.parseFloat(value) / 2).toFixed(4)} in`,
  },
  engagement: {
    kind: 'shorten an engagement in the specification',
    to: (value) => `${+(Number.parseFloat(value) / 4).toFixed(3)} in`,
  },
  thread: {
    kind: 'misspell a thread in the specification',
    to: (value) =>
      value.replace(/(-|x)(\d)/, (_, sign: string, digit: string) => `${sign}${(Number(digit) + 1) % 10}`),
  },
};

function changed(
  {kind, to}: {readonly kind: string; readonly to: (value: string) => string},
  {value}: Pair,
  at: {readonly verb: string; readonly file: string; readonly names: readonly string[]},
): Fault[] {
  const scalar = isMap(value) ? value.get('value', true) : value;
  const range = isScalar(scalar) ? scalar.range : undefined;
  if (!isScalar(scalar) || range === null || range === undefined) return [];
  return [{...at, kind, edits: [{span: {start: range[0], end: range[1]}, text: to(String(scalar.value))}]}];
}

export function specFaults(book: Book): Fault[] {
  return [...book.spec.files.values()].flatMap(({file, text}) => {
    if (file.endsWith('shop.yaml')) return [];
    const faults: Fault[] = [];
    visit(parseDocument(text), {
      Pair(_, pair, path) {
        faults.push(...sourceFaults(book, file, text, pair, path.length));
        const key = isScalar(pair.key) ? String(pair.key.value) : '';
        const kind = DROPS[key];
        const owner = [...path].reverse().find((node): node is Pair => isPair(node));
        const id = owner !== undefined && isScalar(owner.key) ? String(owner.key.value) : '';
        const item = book.spec.items.get(id);
        if (item?.where.file !== file) return;
        faults.push(...dropOfTwo(pair, {verb: key, file, names: [id]}));
        const change = CHANGES[key];
        // Where an angle ends the torque, it is the angle that makes the preload, and the grade says nothing.
        const byAngle = key === 'grade' && item.kind === 'fastener' && item.angle !== undefined;
        if (change !== undefined && !byAngle)
          faults.push(...changed(change, pair, {verb: key, file, names: [id]}));
        if (kind === undefined) return;
        const map = path.at(-1);
        const edit = isMap(map) ? cutPair(text, pair, map.flow === true) : undefined;
        if (edit !== undefined) faults.push({kind, verb: key, file, edits: [edit], names: [id]});
      },
    });
    return faults;
  });
}

/** One lock of two taken out: the other is still asked for. */
function dropOfTwo({key, value}: Pair, at: Pick<Fault, 'verb' | 'file' | 'names'>): Fault[] {
  if (!isScalar(key) || key.value !== 'lock' || !isSeq(value) || value.items.length < 2) return [];
  const kind = 'drop one of two locks from the specification';
  const range = value.range;
  const names = value.items.flatMap((one) => (isScalar(one) ? [String(one.value)] : []));
  if (range === null || range === undefined) return [];
  return names.map((gone) => {
    const text = `[${names.filter((one) => one !== gone).join(', ')}]`;
    return {...at, kind, edits: [{span: {start: range[0], end: range[1]}, text}]};
  });
}

/** The source of the whole file, and each source that the file lists: what an item names itself, the file's stands in for. */
function sourceFaults(book: Book, file: string, text: string, pair: Pair, depth: number): Fault[] {
  const key = isScalar(pair.key) ? String(pair.key.value) : '';
  const kind = 'drop a source from the specification';
  const own = [...book.spec.items.values()].filter(({where}) => where.file === file).map(({id}) => id);
  const top = depth === 2;
  if (top && key === 'source') {
    const edit = cutPair(text, pair, false);
    return edit === undefined ? [] : [{kind, verb: key, file, edits: [edit], names: own}];
  }
  if (!top || key !== 'sources' || !isMap(pair.value)) return [];
  return pair.value.items.flatMap((listed) => {
    const edit = cutPair(text, listed, false);
    if (edit === undefined || !isScalar(listed.key)) return [];
    return [{kind, verb: 'sources', file, edits: [edit], names: [String(listed.key.value)]}];
  });
}

/** Cuts `key: value` with the comma after it (or before it, when it is the last), or its lines. */
function cutPair(text: string, pair: Pair, flow: boolean) {
  const start = isScalar(pair.key) ? pair.key.range?.[0] : undefined;
  const value = pair.value as {range?: [number, number, number]} | null;
  const end = value?.range?.[1];
  if (start === undefined || end === undefined) return undefined;
  if (!flow) {
    const line = text.lastIndexOf('\n', start) + 1;
    const next = text.indexOf('\n', end - 1);
    return {span: {start: line, end: next === -1 ? text.length : next + 1}, text: ''};
  }
  const after = /^\s*,\s*/.exec(text.slice(end));
  if (after !== null) return {span: {start, end: end + after[0].length}, text: ''};
  const before = /,\s*$/.exec(text.slice(0, start));
  return {span: {start: before === null ? start : start - before[0].length, end}, text: ''};
}
