/** The steps of both sides beside each other, a procedure at a time: those that changed in view, the others folded away. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import type {StepRef} from '../build/program.js';
import {baseName} from '../build/tell.js';
import {type Change, EFFECTS, type Effect, type StepPair} from '../compare/model.js';
import {wordsOfStep} from '../compare/prose.js';
import {printable} from '../text/printable.js';
import type {Compared} from './compare-report.js';
import {type Stretch, wordDiff} from './word-diff.js';

/** Where a change of the book points into: the row of the step, to link to. */
export type RowOf = (where: Where) => string | undefined;

type Where = Change['now']['at'][number]['where'];

/** Ids of rows begin with `name`, so that those of several books differ. */
export function rowsOf({comparison}: Compared, name: string): RowOf {
  const pairs = comparison?.steps ?? [];
  return (where) => {
    const index = pairs.findIndex(({before, now}) => [before, now].some((step) => step && isIn(where, step)));
    return index === -1 ? undefined : `${name}-${index}`;
  };
}

/** Where only some files were asked for, theirs. */
export function stepTables({comparison, books: {before, now}}: Compared, name: string): Element[] {
  if (comparison === undefined) return [];
  const wanted = ({before: old, now: fresh}: StepPair) => {
    if (now?.only === undefined) return true;
    return (
      now.only.has(fresh?.procedure.source.file ?? '') ||
      (before?.only ?? now.only).has(old?.procedure.source.file ?? '')
    );
  };
  const rows = comparison.steps.map((pair, index) => rowOf(pair, `${name}-${index}`, comparison.changes));
  return stretchesOf(
    rows.filter(({pair}) => wanted(pair)),
    fileOf,
  ).map(procedurePart);
}

interface Row {
  readonly pair: StepPair;
  readonly id: string;
  readonly says: string;
  readonly effect: Effect | undefined;
}

function rowOf(pair: StepPair, id: string, changes: readonly Change[]): Row {
  const effect = effectOf(pair, changes);
  const says = [...(pair.moved ? ['moved'] : []), ...(effect === undefined ? [] : [effect])].join(', ');
  return {pair, id, says, effect};
}

function fileOf({pair: {before, now}}: Row): string {
  return (now ?? before)?.procedure.source.file ?? '';
}

/** Neighbours that are the same by `key`, together. */
function stretchesOf(rows: readonly Row[], key: (row: Row) => string): (readonly Row[])[] {
  const found: Row[][] = [];
  for (const row of rows) {
    const last = found.at(-1);
    if (last?.[0] !== undefined && key(last[0]) === key(row)) last.push(row);
    else found.push([row]);
  }
  return found;
}

function procedurePart(rows: readonly Row[]): Element {
  const changed = rows.filter(isChanged).length;
  const [first] = rows;
  const file = first === undefined ? '' : printable(baseName(fileOf(first)));
  const parts = stretchesOf(rows, (row) => String(isChanged(row))).map((part) => {
    const [head, last] = [part[0], part.at(-1)];
    // Where nothing changed, the whole procedure is folded away already.
    if (head === undefined || last === undefined || isChanged(head) || changed === 0) return table(part);
    const one = head === last;
    const numbers = one ? `Step ${numberOf(head)}` : `Steps ${numberOf(head)}–${numberOf(last)}`;
    return h('details', [h('summary', `${numbers} as before`), table(part)]);
  });
  const summary = `${file}: ${changed === 0 ? 'no step changed' : `${changed} of ${rows.length} steps changed`}`;
  return h('details.procedure', {open: changed > 0}, [h('summary', summary), ...parts]);
}

function isChanged({says, pair: {before, now}}: Row): boolean {
  return says !== '' || before === undefined || now === undefined;
}

function numberOf({pair: {before, now}}: Row): string {
  return (now ?? before)?.step.number ?? '';
}

function table(rows: readonly Row[]): Element {
  const heads = ['No.', 'Before', 'No.', 'Now', 'Means'].map((head) => h('th', {scope: 'col'}, head));
  return h('table.list.sides', [h('thead', h('tr', heads)), h('tbody', rows.map(rowNode))]);
}

function rowNode({pair: {before, now}, id, says, effect}: Row): Element {
  const {before: old, now: fresh} = wordDiff(textOf(before), textOf(now));
  return h('tr', {id, className: [effect ?? 'plain']}, [
    h('td', {dataSide: before ? 'Before' : undefined}, before?.step.number ?? ''),
    cell(before, now, old, 'del'),
    h('td', {dataSide: now ? 'Now' : undefined}, now?.step.number ?? ''),
    cell(now, before, fresh, 'ins'),
    h('td', says),
  ]);
}

function textOf(step: StepRef | undefined): string {
  return step === undefined ? '' : wordsOfStep(step.step);
}

/** The worst of the changes that point into the step, on its own side. */
function effectOf(pair: StepPair, changes: readonly Change[]): Effect | undefined {
  const touching = (['before', 'now'] as const).flatMap((side) => {
    const step = pair[side];
    return step === undefined
      ? []
      : changes.filter((change) => change[side].at.some(({where}) => isIn(where, step)));
  });
  return EFFECTS.find((effect) => touching.some((change) => change.effect === effect));
}

function isIn({file, span}: Where, {procedure, step}: StepRef): boolean {
  const below = step.steps.some((sub) => sub.span.start <= span.start && span.start < sub.span.end);
  return (
    file === procedure.source.file && !below && step.span.start <= span.start && span.start < step.span.end
  );
}

function cell(
  step: StepRef | undefined,
  other: StepRef | undefined,
  words: readonly Stretch[],
  mark: 'ins' | 'del',
): Element {
  if (step === undefined) return h('td.empty');
  const theirs = new Set(other?.step.tags.map(({raw}) => raw.trim()));
  return h('td', [
    h('p', marked(words, mark)),
    ...step.step.tags.map(({raw}) =>
      h('p', theirs.has(raw.trim()) ? h('code', printable(raw)) : h(mark, h('code', printable(raw)))),
    ),
  ]);
}

function marked(words: readonly Stretch[], mark: 'ins' | 'del'): ElementContent[] {
  return words.flatMap(({text, kept}, index): ElementContent[] => [
    ...(index === 0 ? [] : [{type: 'text' as const, value: ' '}]),
    kept ? {type: 'text', value: printable(text)} : h(mark, printable(text)),
  ]);
}
