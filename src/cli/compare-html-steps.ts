/** The steps of both sides, row by row, with what each pair means to the engine. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import type {StepRef} from '../build/program.js';
import {baseName} from '../build/tell.js';
import {type Change, EFFECTS, type Effect, type StepPair} from '../compare/model.js';
import {printable} from '../text/printable.js';
import type {Compared} from './compare-report.js';

/** Where only some files were asked for, theirs. */
export function stepRows({comparison, books: {before, now}}: Compared): Element[] {
  if (comparison === undefined) return [];
  const wanted = ({before: old, now: fresh}: StepPair) => {
    if (now?.only === undefined) return true;
    return (
      now.only.has(fresh?.procedure.source.file ?? '') ||
      (before?.only ?? now.only).has(old?.procedure.source.file ?? '')
    );
  };
  let file = '';
  return comparison.steps.filter(wanted).flatMap((pair) => {
    const here = (pair.now ?? pair.before)?.procedure.source.file ?? '';
    const head =
      here === file ? [] : [h('tr', [h('th', {colSpan: 5, scope: 'colgroup'}, printable(baseName(here)))])];
    file = here;
    return [...head, row(pair, comparison.changes)];
  });
}

function row({before, now, moved}: StepPair, changes: readonly Change[]): Element {
  const effect = effectOf({before, now}, changes);
  const says = [...(moved ? ['moved'] : []), ...(effect === undefined ? [] : [effect])].join(', ');
  return h('tr', {className: [effect ?? 'plain']}, [
    h('td', before?.step.number ?? ''),
    cell(before, now, 'del'),
    h('td', now?.step.number ?? ''),
    cell(now, before, 'ins'),
    h('td', says),
  ]);
}

/** The worst of the changes that point into the step, on its own side. */
function effectOf(
  pair: {readonly before: StepRef | undefined; readonly now: StepRef | undefined},
  changes: readonly Change[],
): Effect | undefined {
  const touching = (['before', 'now'] as const).flatMap((side) => {
    const step = pair[side];
    return step === undefined
      ? []
      : changes.filter((change) => change[side].at.some(({where}) => isIn(where, step)));
  });
  return EFFECTS.find((effect) => touching.some((change) => change.effect === effect));
}

function isIn({file, span}: Change['now']['at'][number]['where'], {procedure, step}: StepRef): boolean {
  const below = step.steps.some((sub) => sub.span.start <= span.start && span.start < sub.span.end);
  return (
    file === procedure.source.file && !below && step.span.start <= span.start && span.start < step.span.end
  );
}

function cell(step: StepRef | undefined, other: StepRef | undefined, mark: 'ins' | 'del'): Element {
  if (step === undefined) return h('td.empty');
  const {text, tags} = step.step;
  const theirs = new Set(other?.step.tags.map(({raw}) => raw.trim()));
  const prose: ElementContent =
    other?.step.text === text ? {type: 'text', value: printable(text)} : h(mark, printable(text));
  return h('td', [
    h('p', prose),
    ...tags.map(({raw}) =>
      h('p', theirs.has(raw.trim()) ? h('code', printable(raw)) : h(mark, h('code', printable(raw)))),
    ),
  ]);
}
