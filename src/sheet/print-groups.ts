/** The steps of a table as groups of rows for the Typst template, each to be kept on one page. */
import {ifNotOf} from './condition.js';
import {arranged, isNumbered, laterRounds, readsInColumns, secondSigner} from './layout.js';
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

/** Groups that stand on one page if they can: a step and the first below it, else a step alone. */
export interface PrintRun {
  readonly groups: readonly PrintGroup[];
  /** Together they may be taller than a page, and want measuring. */
  readonly long: boolean;
}

/** `ends` is said below the last of these rows; undefined where the section goes on. */
export function printRuns(
  rows: readonly Row[],
  ends: string | undefined,
  words: Words,
  pathOf: PathOf,
): PrintRun[] {
  const groups = rows.flatMap((row, at) =>
    groupsOf(row, {sub: false, only: false, even: at % 2 === 1, first: at === 0}, words, pathOf),
  );
  const last = groups.at(-1);
  if (last === undefined) return [];
  return runsOf(ends === undefined ? groups : [...groups.slice(0, -1), {...last, ends}]);
}

function runsOf(groups: readonly Measured[]): PrintRun[] {
  const runs: Measured[][] = [];
  groups.forEach((group, at) => {
    if (groups[at - 1]?.opens === true) runs.at(-1)?.push(group);
    else runs.push([group]);
  });
  return runs.map((run) => ({
    groups: run.map(({lines: _, opens: __, ...group}) => group),
    long: run.reduce((sum, {lines}) => sum + lines, 0) > WORTH_MEASURING,
  }));
}

interface Measured extends PrintGroup {
  readonly lines: number;
  /** Steps stand below it. */
  readonly opens: boolean;
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

function groupsOf(row: Row, standing: Standing, words: Words, pathOf: PathOf): Measured[] {
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

function groupOf(row: Row, standing: Standing, words: Words, pathOf: PathOf): Measured {
  const lines = linesOf(row);
  const {beside, wide} = arranged(row.entries);
  return {
    ...standing,
    number: row.number,
    prose: printProse(row.prose),
    notices: row.notices.map(printNotice),
    more: row.more.map((block) => printBlock(block, pathOf)),
    beside: beside.map((entry) => printEntry(entry, words)),
    wide: wide.map((entry) => printEntry(entry, words)),
    holds: row.holds.map((hold) => ({name: hold.name, asks: hold.asked, second: secondSigner(hold, words)})),
    long: lines > WORTH_MEASURING,
    lines,
    opens: row.rows.length > 0,
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
