/** What stands beside a step, as lines of text. */
import {drawingText} from './drawing-text.js';
import {laterRounds} from './layout.js';
import type {Blanks, Entry} from './model.js';
import {valueText} from './value.js';
import type {Words} from './words.js';

/** A box to tick: CommonMark has none. */
export const BOX = '☐';
/** A line to write on. Underscores would have to be escaped. */
export const BLANK = '………';

/** For each entry a line that says what it is and its values, then a line for each set of boxes or blanks. */
export function entryLines(entries: readonly Entry[], words: Words): string[] {
  return entries.flatMap(({title, subject, facts, blanks, drawing}) => {
    const values = facts.map(({label, note, ...value}) => {
      const says = `${label} ${valueText(value)}`;
      return note === undefined ? says : `${says} (${note})`;
    });
    const head = `${title} ${subject}`.trim();
    return [
      [head, ...limitsOf(blanks, words), ...values].join(' · '),
      ...(drawing === undefined ? [] : [drawingText(drawing, words)]),
      ...(blanks === undefined ? [] : blankLines(blanks, words)),
    ];
  });
}

function limitsOf(blanks: Blanks | undefined, words: Words): string[] {
  if (blanks?.type !== 'readings' || blanks.limits === undefined) return [];
  return [`${words.limits} ${valueText(blanks.limits)}`];
}

function blankLines(blanks: Blanks, words: Words): string[] {
  switch (blanks.type) {
    case 'ticks':
      return [boxes(blanks.labels)];
    case 'lines':
      return blanks.labels.map((label) => `${label} ${BLANK}`.trim());
    case 'readings': {
      return blanks.labels.map((label) => {
        const again = laterRounds(blanks, words)
          .map((round) => `, ${round} ${BLANK}`)
          .join('');
        return `${label || words.reading}: ${BLANK} ${blanks.unit}${again}`;
      });
    }
    case 'tightening': {
      const names = blanks.positions.map((name, at) => (blanks.ordered ? `${at + 1} ${name}` : name));
      const note = blanks.note === undefined ? [] : [blanks.note];
      const passes = blanks.passes.map(({label, value}) => {
        const says = value === undefined ? label : `${label} ${valueText(value)}`;
        return `${says}: ${boxes(names)}`;
      });
      return [...note, ...passes];
    }
  }
}

/** Each with its name behind it. */
export function boxes(labels: readonly string[]): string {
  return labels.map((label) => `${BOX} ${label}`.trim()).join('  ');
}
