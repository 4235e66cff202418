/** Faults of the specification: a lock, a thread condition, a limit or a source taken out. */
import {isMap, isPair, isScalar, type Pair, parseDocument, visit} from 'yaml';
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

export function specFaults(book: Book): Fault[] {
  return [...book.spec.files.values()].flatMap(({file, text}) => {
    if (file.endsWith('shop.yaml')) return [];
    const faults: Fault[] = [];
    visit(parseDocument(text), {
      Pair(_, pair, path) {
        const key = isScalar(pair.key) ? String(pair.key.value) : '';
        const kind = DROPS[key];
        const owner = [...path].reverse().find((node): node is Pair => isPair(node));
        const id = owner !== undefined && isScalar(owner.key) ? String(owner.key.value) : '';
        const item = book.spec.items.get(id);
        if (kind === undefined || item?.where.file !== file) return;
        const map = path.at(-1);
        const edit = isMap(map) ? cutPair(text, pair, map.flow === true) : undefined;
        if (edit !== undefined) faults.push({kind, verb: key, file, edits: [edit], names: [id]});
      },
    });
    return faults;
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
