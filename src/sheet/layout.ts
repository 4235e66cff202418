/** What HTML and PDF decide alike of how a sheet is laid out: what stands beside a step or below it, and in which tables. */
import type {
  Blanks,
  Entry,
  Figure,
  Hold,
  ReadingBlanks,
  Row,
  Sheet,
  SheetBlock,
  SheetSection,
  TighteningBlanks,
} from './model.js';
import {fill, type Words} from './words.js';

/** How many sections, 0 or 1, are read before anything is laid out: what the author says before the first step. */
export function openingsOf({sections: [first]}: Sheet): number {
  return first?.title === '' && first.content.every(({type}) => type !== 'row') ? 1 : 0;
}

/** A section as tables of steps, with what stands before each. */
export interface LaidOut {
  /** Never empty: a section without a heading is called by what it holds. */
  readonly title: string;
  /** 6 at the most, as a heading has it. */
  readonly level: number;
  readonly groups: readonly Group[];
  /** Place of the last group that has steps, which ends the section; -1 where none has. */
  readonly last: number;
}

/** Blocks that are not rows, and the rows that follow them. */
export interface Group {
  readonly blocks: SheetBlock[];
  readonly rows: Row[];
}

/** What stands between two steps parts their table in two. */
export function laidOut({title, level, content}: SheetSection, words: Words): LaidOut {
  const groups: Group[] = [];
  for (const block of content) {
    let group = groups.at(-1);
    if (group === undefined || (block.type !== 'row' && group.rows.length > 0)) {
      group = {blocks: [], rows: []};
      groups.push(group);
    }
    if (block.type === 'row') group.rows.push(block.row);
    else group.blocks.push(block);
  }
  const last = groups.findLastIndex(({rows}) => rows.length > 0);
  const untitled = last < 0 ? words.opening : words.steps;
  return {title: title === '' ? untitled : title, level: Math.min(level, 6), groups, last};
}

/** What is ticked below the last step of a section. */
export function sectionEndText({title}: SheetSection, words: Words): string {
  return title === '' ? words.sectionDone : `${words.sectionDone}: ${title}`;
}

/** More readings than this go below the step, in two columns. */
const BESIDE = 6;

/** More places than this to be ticked go below the step as well. */
const MOST_TICKS = 9;

/**
 * Which entries of a step stand beside it, and which below in its full width. Where one needs the width all of them
 * stand below, in the order in which the work goes: in two places nobody sees what comes first.
 */
export function arranged(entries: readonly Entry[]): {
  readonly beside: readonly Entry[];
  readonly wide: readonly Entry[];
} {
  return entries.some(isWide) ? {beside: [], wide: entries} : {beside: entries, wide: []};
}

/** Whether an entry needs the width of the step, below it. */
function isWide({blanks, drawing}: Entry): boolean {
  return drawing !== undefined || (blanks !== undefined && areWide(blanks));
}

function areWide(blanks: Blanks): boolean {
  switch (blanks.type) {
    case 'readings':
      // The blanks of later rounds stand beside the first, and take the width of the step.
      return blanks.again || blanks.labels.length > BESIDE;
    case 'ticks':
      return blanks.labels.length > MOST_TICKS;
    case 'tightening':
      return blanks.positions.length > 1 || blanks.drawing !== undefined;
    case 'lines':
      return false;
  }
}

/** Whether the places are set in two columns. */
export function readsInColumns({labels, again}: ReadingBlanks): boolean {
  return labels.length > BESIDE && !again;
}

/** The later rounds that a reading has a blank for on paper; each round on a tablet has boxes of its own. */
const LATER_ROUNDS = [2, 3];

/** The heads of the blanks for later rounds; none where the step cannot come round again. */
export function laterRounds({again}: ReadingBlanks, words: Words): string[] {
  return again ? LATER_ROUNDS.map((number) => fill(words.nextRound, {number})) : [];
}

/** With no more fasteners than this, each box has the name of its own beside it. */
const MOST_NAMED = 4;

/** Whether each box has a number, explained by a list, instead of a name of its own beside it. */
export function isNumbered({positions, ordered, drawing}: TighteningBlanks): boolean {
  return ordered && (drawing !== undefined || positions.length > MOST_NAMED);
}

/** What stands in place of a picture that can't be shown: its words, or where it is. */
export function figureText({url, alt, caption}: Figure): string {
  return (caption ?? alt) || url;
}

/** Who signs a hold point beside the one who did the work. */
export function secondSigner({by}: Hold, words: Words): string {
  return by === undefined ? words.witnessedBy : fill(words.witnessedByRole, {role: by});
}
