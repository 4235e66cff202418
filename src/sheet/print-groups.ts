/** The steps of a table as groups of rows for the Typst template, each to be kept on one page. */
import {ifNotOf} from './condition.js';
import {isNumbered, isWide, laterRounds, readsInColumns, secondSigner} from './layout.js';
import type {Blanks, Entry, Row} from './model.js';
import {printDrawing} from './print-drawing.js';
import {linesOf} from './print-height.js';
import {type PathOf, type PrintNode, printBlock, printNotice, printProse} from './print-prose.js';
import type {Words} from './words.js';

/** The rows of one step. Typst parts what it likes, so what belongs together is said to. */
export interface PrintGroup {
  readonly number: string;
  readonly prose: readonly PrintNode[];
  readonly notices: readonly object[];
  readonly more: readonly object[];
  readonly beside: readonly object[];
  readonly wide: readonly object[];
  readonly holds: readonly object[];
  /** The condition of a branch, before its first step. */
  readonly onlyIf?: string;
  /** What to strike where it does not hold. */
  readonly ifNot?: string;
  /** What the end of the section says, after its last step. */
  readonly ends?: string;
  readonly first: boolean;
  readonly even: boolean;
  readonly sub: boolean;
  readonly only: boolean;
  /** It may be taller than a page, and wants measuring. */
  readonly long: boolean;
}

/** `ends` is said below the last of these rows; undefined where the section goes on. */
export function printGroups(
  rows: readonly Row[],
  ends: string | undefined,
  words: Words,
  pathOf: PathOf,
): PrintGroup[] {
  const groups = rows.flatMap((row, at) =>
    groupsOf(row, {sub: false, only: false, even: at % 2 === 1, first: at === 0}, words, pathOf),
  );
  const last = groups.pop();
  if (last === undefined) return [];
  if (ends === undefined) return [...groups, last];
  return [...groups, {...last, ends}];
}

/** Lines, of some 43 on the smaller paper, above which a group is measured. */
const WORTH_MEASURING = 30;

interface Standing {
  readonly sub: boolean;
  readonly only: boolean;
  readonly even: boolean;
  readonly first: boolean;
  readonly onlyIf?: string;
  readonly ifNot?: string;
}

function groupsOf(row: Row, standing: Standing, words: Words, pathOf: PathOf): PrintGroup[] {
  const below = {
    sub: true,
    only: standing.only || row.onlyIf !== undefined,
    even: standing.even,
    first: false,
  };
  return [
    groupOf(row, standing, words, pathOf),
    ...row.rows.flatMap((sub, at) => {
      const opens =
        at === 0 && row.onlyIf !== undefined ? {onlyIf: row.onlyIf, ifNot: ifNotOf(row, words)} : {};
      return groupsOf(sub, {...below, ...opens}, words, pathOf);
    }),
  ];
}

function groupOf(row: Row, standing: Standing, words: Words, pathOf: PathOf): PrintGroup {
  return {
    ...standing,
    number: row.number,
    prose: printProse(row.prose),
    notices: row.notices.map(printNotice),
    more: row.more.map((block) => printBlock(block, pathOf)),
    beside: row.entries.filter((entry) => !isWide(entry)).map((entry) => printEntry(entry, words)),
    wide: row.entries.filter(isWide).map((entry) => printEntry(entry, words)),
    holds: row.holds.map((hold) => ({name: hold.name, asks: hold.asked, second: secondSigner(hold, words)})),
    long: linesOf(row) > WORTH_MEASURING,
  };
}

function printEntry(entry: Entry, words: Words) {
  const {blanks, drawing, ...others} = entry;
  return {
    ...others,
    ...(drawing === undefined ? {} : {drawing: printDrawing(drawing, words)}),
    ...(blanks === undefined ? {} : {blanks: printBlanks(blanks, words)}),
  };
}

function printBlanks(blanks: Blanks, words: Words) {
  if (blanks.type === 'readings') {
    return {...blanks, columns: readsInColumns(blanks), later: laterRounds(blanks, words)};
  }
  if (blanks.type !== 'tightening') return blanks;
  const {drawing, ...rest} = blanks;
  const drawn = drawing === undefined ? {} : {drawing: printDrawing(drawing, words)};
  return {...rest, ...drawn, numbered: isNumbered(blanks)};
}
