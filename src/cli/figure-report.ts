/**
 * What `wmark figure` prints: the list of subjects, the page of one, and a figure with all that it takes to judge it.
 */
import {dimensionOf, unitOf} from '../quantity/convert.js';
import {formatAmount, formatBoth, inOtherSystem, type System} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import type {Figure, Given} from '../trade/figure.js';
import type {Named, WorkedOut} from '../trade/worked.js';

/** Every subject with what it answers and a call that works. */
export function figureList(figures: readonly Figure[]): string {
  const entries = figures.map((one) => `${one.name}\n    ${one.says}\n    ${exampleText(one)}\n`);
  return `${entries.join('\n')}\n\`wmark figure SUBJECT\` explains its options.\n`;
}

/** One subject: its options, what each takes, and the example. */
export function figurePage(one: Figure): string {
  const options = [...one.options].flatMap(([name, {says, takes, required, repeats, examples}]) => [
    `  --${name}${required ? '' : ' (may be left out)'}${repeats ? ' (may be given more than once)' : ''}`,
    ...wrapped(says, 6),
    ...wrapped(`${takes}; such as ${quoted(examples[0] ?? '')}`, 6),
  ]);
  return [`${one.name}: ${one.says}`, '', ...options, '', 'Example', `  ${exampleText(one)}`, ''].join('\n');
}

/** Result, formula, inputs as understood, band, source and what to be told before using it; in both unit systems. */
export function figureText({name, says}: Figure, worked: WorkedOut<readonly Named[]>): string {
  const {result, formula, inputs, band, source, advisory} = worked;
  const first = systemOf(inputs);
  const lines = (all: readonly Named[], tell: typeof told) =>
    all.flatMap((one) => wrapped(`${one.name}: ${tell(one.value, first)}`, 2));
  return [
    `${name}: ${says}`,
    '',
    'Result',
    ...lines(result, told),
    'Formula',
    ...wrapped(formula, 2),
    'Inputs as understood',
    ...lines(inputs, understood),
    'Band',
    ...(band ? lines([band], told) : ['  none of its own: as good as what was put in']),
    'Source',
    ...wrapped(source, 2),
    ...(advisory === undefined ? [] : ['Mind', ...wrapped(advisory, 2)]),
    '',
  ].join('\n');
}

/** `wmark figure ring-gap --bore "4.000 in"`. */
export function exampleText({name, example}: {readonly name: string; readonly example: Given}): string {
  const words = [...example].flatMap(([option, texts]) => texts.map((text) => `--${option} ${quoted(text)}`));
  return ['wmark figure', name, ...words].join(' ');
}

function quoted(text: string): string {
  return /^[\w./-]+$/.test(text) ? text : `"${text}"`;
}

/** The system that the person thinks in: that of the first input that has one. */
function systemOf(inputs: readonly Named[]): System {
  for (const {value} of inputs) {
    const found = typeof value === 'string' ? 'both' : unitOf(amountOf(value)).system;
    if (found !== 'both') return found;
  }
  return 'inch';
}

function told(value: Named['value'], first: System): string {
  return typeof value === 'string' ? value : formatBoth(amountOf(value), first);
}

/**
 * A length is worked with as stated, so that a bore of 4 in is 101.6 mm here, and not the 100 mm that its one figure
 * bears.
 */
function understood(value: Named['value'], first: System): string {
  const amount = typeof value === 'string' ? undefined : amountOf(value);
  if (amount?.form !== 'single' || dimensionOf(amount) !== 'length') return told(value, first);
  const [stated, other] = [
    formatAmount(amount),
    inOtherSystem({form: 'single', value: {...amount.value, step: 0}}),
  ];
  return unitOf(amount).system === first ? `${stated} (${other})` : `${other} (${stated})`;
}

/** A range from a value to itself is that value. */
function amountOf(value: Quantity | Amount): Amount {
  if (!('form' in value)) return {form: 'single', value};
  const {form} = value;
  const one = form === 'range' && value.low.value === value.high.value && value.low.unit === value.high.unit;
  return one ? {form: 'single', value: value.low} : value;
}

const WIDTH = 96;

/** Words in lines of at most the width, each behind so many spaces, those after the first behind two more. */
function wrapped(text: string, indent: number): string[] {
  const lines: string[] = [];
  let line = ' '.repeat(indent);
  let bare = true;
  for (const word of text.split(' ')) {
    if (!bare && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = ' '.repeat(indent + 2);
      bare = true;
    }
    line += bare ? word : ` ${word}`;
    bare = false;
  }
  return [...lines, line];
}
