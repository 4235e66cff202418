/** What every value that is worked out from readings shares: its line, its remark, its words. */
import {convert, decimalStep} from '../quantity/convert.js';
import type {Quantity, Unit} from '../quantity/model.js';
import {findUnit} from '../quantity/units.js';
import {fill} from '../text/fill.js';
import {decimals, limitPlaces, limitsText, namedAt, plain, withUnit} from './figures.js';
import {remark} from './remark.js';
import type {ReadingLine, Remark, Worked} from './report.js';
import {verdictOf} from './verdict.js';
import type {ReportWords} from './words.js';

/** A value that is worked out, and the remark where it is out of the limits of its fit. */
export interface Found {
  readonly line: Worked;
  readonly remark?: Remark;
}

/** `least` and `most` are what the readings allow, and `from` the words for them; `read` is the fit at its place. */
export function foundAt(
  read: ReadingLine,
  {least: low, most: high, from}: {readonly least: Quantity; readonly most: Quantity; readonly from: string},
  words: ReportWords,
): Found[] {
  const to = findUnit(read.unit);
  if (to?.dimension !== 'length') return [];
  const {item, name, place, unit, least, most, figures} = read;
  const [smallest, largest] = [inUnit(low, to), inUnit(high, to)];
  const verdicts = [smallest, largest].map((value) => verdictOf(value, {least, most}));
  const line: Worked = {
    ...{item, name, place, unit, smallest, largest},
    ...(least !== undefined && {least}),
    ...(most !== undefined && {most}),
    ...(figures !== undefined && {figures}),
    from,
    state: verdicts.includes(undefined) ? 'unjudged' : verdicts.includes('out') ? 'out' : 'in',
  };
  return line.state === 'out' ? [{line, remark: wrong(read, line, words)}] : [{line}];
}

/** Ten figures drop the noise of the conversion. */
function inUnit(length: Quantity, to: Unit): number {
  return Number(convert(length, to).value.toPrecision(10));
}

function wrong({sheet, step, rounds, unit}: ReadingLine, line: Worked, words: ReportWords): Remark {
  const {item, place} = line;
  const last = rounds.at(-1);
  const {worksOut, worksOutRead} = words.remarks;
  const says = fill(last ? worksOutRead : worksOut, {
    span: spanText(line),
    from: line.from,
    limits: limitsText(line, words) ?? '',
    read: withUnit(last?.value ?? '', unit),
  });
  const message = `${namedAt(line)}: ${says}`;
  return remark('works-out-wrong', {sheet, step, item, ...(place !== '' && {place}), message});
}

/** `0.0024 in`, or `0.0024–0.0026 in` where the sizes were read more than once. */
export function spanText(line: Worked): string {
  const {smallest, largest, unit} = line;
  const places = Math.max(limitPlaces(line), decimals(smallest), decimals(largest));
  const [low, high] = [plain(smallest, places), plain(largest, places)];
  return withUnit(low === high ? low : `${low}–${high}`, unit);
}

/** `journal by the web 2.4990 in, journal by the flange 2.4992 in`. */
export function sizesText(lines: readonly ReadingLine[]): string {
  return lines
    .map(({name, rounds, unit}) => `${name} ${withUnit(rounds.at(-1)?.value ?? '', unit)}`)
    .join(', ');
}

/** The last reading of each, where that is a number in a unit that is known. */
export function sizesOf(lines: readonly ReadingLine[]): Quantity[] {
  return lines.flatMap(({rounds, unit}) => {
    const [value, found] = [rounds.at(-1)?.number, findUnit(unit)];
    return value === undefined || found === undefined ? [] : [{value, unit: found, step: decimalStep(value)}];
  });
}
