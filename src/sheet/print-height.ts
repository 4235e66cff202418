/** How many lines a step may take on paper, rather too many than too few: it says which are worth measuring. */
import type {Blanks, Entry, Row, SheetBlock} from './model.js';

/** An estimate: measuring every step would take longer than setting all of them. */
export function linesOf({prose, notices, entries, more, holds}: Row): number {
  return (
    charactersOf(prose) / NARROW +
    sumOf(notices, (notice) => 3 + charactersOf(notice) / WIDE) +
    sumOf(entries, entryLines) +
    sumOf(more, blockLines) +
    sumOf(holds, (hold) => 9 + hold.asked.length + charactersOf(hold) / WIDE)
  );
}

/** Characters of a line, at the least, in a column of the steps and across them. */
const NARROW = 24;
const WIDE = 56;

/** Lines that a drawing or a picture takes at the most. */
const DRAWING = 15;
const PICTURE = 20;

function entryLines({title, subject, facts, drawing, blanks}: Entry): number {
  const words = charactersOf([title, subject, facts]) / NARROW;
  return 1 + words + facts.length + (drawing === undefined ? 0 : DRAWING) + blankLines(blanks);
}

function blankLines(blanks: Blanks | undefined): number {
  if (blanks === undefined) return 0;
  if (blanks.type !== 'tightening') return 2 + 2 * blanks.labels.length;
  const {passes, positions, drawing} = blanks;
  return (
    3 + passes.length * (2 + positions.length / 2) + positions.length + (drawing === undefined ? 0 : DRAWING)
  );
}

function blockLines(block: SheetBlock): number {
  if (block.type === 'figure') return PICTURE;
  const breaks = block.type === 'typed' ? block.text.split('\n').length : 1;
  const items = block.type === 'list' ? block.items.length : 0;
  return 1 + breaks + items + charactersOf(block) / NARROW;
}

function sumOf<T>(list: readonly T[], of: (one: T) => number): number {
  return list.reduce((sum, one) => sum + of(one), 0);
}

/** The letters of every text in it; the names of its kinds are counted too, which does no harm. */
function charactersOf(value: unknown): number {
  let count = 0;
  JSON.stringify(value, (_, part: unknown) => {
    if (typeof part === 'string') count += part.length;
    return part;
  });
  return count;
}
