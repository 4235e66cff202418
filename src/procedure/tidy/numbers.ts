/**
 * Numbers the steps of a procedure as the sheet does: right through its top-level lists, and from 1 below each step.
 * Where every step bears the number 1, as some write so as never to renumber, that stays.
 */
import type {Edit} from '../../text/edit.js';
import type {Procedure, Step} from '../model.js';
import {type Line, lineAbove, linesBelow, type Marker, markerOf} from './marker.js';

/** What changes where steps get the numbers of the sheet. */
export interface Renumbered {
  readonly edits: readonly Edit[];
  /** By how many columns a line moves, by the offset of its start. */
  readonly shifts: ReadonlyMap<number, number>;
}

/** `shift` moves a step's further lines with its number's width; `keep-width` makes up for it behind the number. */
export type WidthMode = 'shift' | 'keep-width';

/** Edits of the numbers, and of the indentation below those whose width changes. */
export function renumbered({source: {text}, sections}: Procedure, mode: WidthMode): Renumbered {
  const tops = sections.flatMap(({content}) =>
    content.flatMap((block) => (block.type === 'step' ? [block.step] : [])),
  );
  const work: Work = {text, mode, edits: [], shifts: new Map()};
  number(tops, work);
  const moves = [...work.shifts].flatMap(([start, columns]) => moved(start, columns));
  return {edits: [...work.edits, ...moves], shifts: work.shifts};
}

/** Lives while one procedure is numbered. */
interface Work {
  readonly text: string;
  readonly mode: WidthMode;
  readonly edits: Edit[];
  readonly shifts: Map<number, number>;
}

function moved(start: number, columns: number): Edit[] {
  if (columns === 0) return [];
  return columns > 0
    ? [{span: {start, end: start}, text: ' '.repeat(columns)}]
    : [{span: {start, end: start - columns}, text: ''}];
}

function number(steps: readonly Step[], work: Work): void {
  const lists = listsOf(steps, work.text);
  const keep = isAllOnes(lists);
  let before = 0;
  for (const list of lists) {
    const from = mayBeginAnew(list, work.text) ? before + 1 : 1;
    list.items.forEach(({step, marker}, index) => {
      if (!keep) write(step, marker, String(from + index), work);
    });
    before += list.items.length;
  }
  for (const {steps: below} of steps) if (below.length > 0) number(below, work);
}

interface Item {
  readonly step: Step;
  readonly marker: Marker;
}

interface List {
  readonly items: Item[];
  /** The step before it at the same level, of another list. */
  readonly after: Step | undefined;
}

/** Steps of one list have nothing but white space between them, and the same mark after their numbers. */
function listsOf(steps: readonly Step[], text: string): List[] {
  const lists: List[] = [];
  steps.forEach((step, index) => {
    const marker = markerOf(text, step.span.start);
    if (marker === undefined) return;
    const before = steps[index - 1];
    const last = lists.at(-1);
    const near = before !== undefined && text.slice(before.span.end, step.span.start).trim() === '';
    if (near && last?.items.at(-1)?.marker.mark === marker.mark) last.items.push({step, marker});
    else lists.push({items: [{step, marker}], after: before});
  });
  return lists;
}

function isAllOnes(lists: readonly List[]): boolean {
  const ones = lists.every(({items}) => items.every(({marker}) => Number(marker.numeral) === 1));
  return ones && lists.some(({items}) => items.length > 1);
}

/** Right below a paragraph only a 1 begins a list (CommonMark 0.31.2, section 5.3). */
function mayBeginAnew({items, after}: List, text: string): boolean {
  const [first] = items;
  if (first === undefined || first.marker.opens) return true;
  const above = lineAbove(text, first.marker.lineStart);
  if (after !== undefined && after.span.end > above.start) return true;
  return NO_PARAGRAPH.test(text.slice(above.start, above.end).trim());
}

/** A blank line, a heading, a rule, the end of fenced code. */
const NO_PARAGRAPH = /^(?:$|#{1,6}(?:\s|$)|`{3,}$|~{3,}$|[-=*_]+$)/;

function write(step: Step, marker: Marker, numeral: string, work: Work): void {
  if (numeral === marker.numeral) return;
  const {start} = step.span;
  const end = start + marker.numeral.length;
  const wider = numeral.length - marker.numeral.length;
  const below = linesBelow(work.text, step.span, marker);
  if (wider === 0) {
    work.edits.push({span: {start, end}, text: numeral});
  } else if (work.mode === 'shift' && !marker.tabbed && below.every(({tabbed}) => !tabbed)) {
    work.edits.push({span: {start, end}, text: numeral});
    for (const {start: line} of below.filter((one) => isContent(one, marker)))
      work.shifts.set(line, (work.shifts.get(line) ?? 0) + wider);
  } else {
    const gap = marker.gap - wider;
    // A wider gap would make indented code of what follows, and no gap no list.
    if (marker.empty || gap < 1 || gap > 4) return;
    work.edits.push({
      span: {start, end: marker.contentStart},
      text: `${numeral}${marker.mark}${' '.repeat(gap)}`,
    });
  }
}

/** Less indented lines go on with a paragraph as they are (lazy continuation). */
function isContent({indent}: Line, {contentColumn}: Marker): boolean {
  return indent >= contentColumn;
}
