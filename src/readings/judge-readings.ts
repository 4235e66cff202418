/** Remarks on readings: out, near, no number at all, and how they came to be what they are. */
import type {Specification, Tool} from '../spec/model.js';
import {fill} from '../text/fill.js';
import {few, limitsText, minuteUtc, namedAt, plain, withUnit} from './figures.js';
import {readingNumber} from './reading-number.js';
import {remark} from './remark.js';
import type {ReadingLine, Remark, Round} from './report.js';
import {sideOf, verdictOf} from './verdict.js';
import type {ReportWords} from './words.js';

/** The last round of a reading is judged; the rounds before it are told. */
export function readingRemarks(
  lines: readonly ReadingLine[],
  spec: Specification,
  words: ReportWords,
): Remark[] {
  return [...lines.flatMap((line) => ofLine(line, words)), ...gaugeRemarks(lines, spec, words)];
}

function ofLine(line: ReadingLine, words: ReportWords): Remark[] {
  const last = line.rounds.at(-1);
  if (last === undefined) return [];
  return [
    ...standing(line, last, words),
    ...reworked(line, last, words),
    ...line.rounds.flatMap((round) => writtenOver(line, round, words)),
  ];
}

function standing(line: ReadingLine, last: Round, words: ReportWords): Remark[] {
  const {state, doubt, unit} = line;
  const {remarks} = words;
  const read = `${readingOf(line, last)}${byWhom(last)}`;
  const limits = limitsText(line, words) ?? '';
  const beyond = fill(remarks[sideOf(last.number ?? Number.NaN, line) ?? 'beyond'], {limits});
  if (state === 'out' && last.accepted) {
    const {by, at, because} = last.accepted;
    const says = fill(remarks.accepted, {read, beyond, by, at: minuteUtc(at), because});
    return [about(line, 'accepted', says)];
  }
  if (state === 'out') return [about(line, 'out', `${read}; ${beyond}`)];
  if (state === 'unreadable') {
    const {by, at} = last;
    // What is a number all the same is one that the reading cannot be.
    const [says, value] =
      readingNumber(last.value) === undefined
        ? [remarks.unreadable, last.value]
        : [remarks.belowNought, readingOf(line, last)];
    return [about(line, 'unreadable', fill(says, {value, by, at: minuteUtc(at)}))];
  }
  if (state !== 'near') return [];
  if (doubt === undefined) return [about(line, 'near', fill(remarks.nearTenth, {read, limits}))];
  const says = fill(remarks.nearDoubt, {read, limits, doubt: withUnit(plain(doubt), unit)});
  return [about(line, 'near', says)];
}

/** Out in one round, and put right by a later one. */
function reworked(line: ReadingLine, last: Round, {remarks}: ReportWords): Remark[] {
  const out = line.rounds.filter((round) => round !== last && round.verdict === 'out');
  const [first] = out;
  if (first === undefined || last.verdict === 'out') return [];
  const before = `${readingOf(line, first)}${byWhom(first)}`;
  return [about(line, 'reworked', fill(remarks.reworked, {before, now: readingOf(line, last)}))];
}

/** An honest second reading has a box of its own: what was out and is in now, in the same box, wants a look. */
function writtenOver(line: ReadingLine, round: Round, {remarks}: ReportWords): Remark[] {
  const verdict = (value: string) => {
    const number = readingNumber(value);
    return number === undefined ? undefined : verdictOf(number, line);
  };
  const out = round.before.find(({value}) => verdict(value) === 'out');
  if (out === undefined || round.verdict === 'out') return [];
  const [old, fresh] = [withUnit(out.value, line.unit), `${readingOf(line, round)}${byWhom(round)}`];
  return [about(line, 'written-over', fill(remarks.writtenOver, {old, fresh}))];
}

/** A gauge past its date on the day of the reading, once for a gauge and what it read in a step. */
function gaugeRemarks(lines: readonly ReadingLine[], spec: Specification, words: ReportWords): Remark[] {
  const late = new Map<string, {readonly line: ReadingLine; readonly tool: Tool; readonly days: string[]}>();
  for (const line of lines) {
    for (const tool of toolsOf(line.item, spec)) {
      const days = line.rounds
        .map(({at}) => at.slice(0, 10))
        .filter((day) => tool.due && tool.due.value < day);
      const key = JSON.stringify([line.step, line.item, tool.id]);
      const known = late.get(key);
      if (known) known.days.push(...days);
      else if (days.length > 0) late.set(key, {line, tool, days});
    }
  }
  return [...late.values()].map(({line: {sheet, step, item, name}, tool, days}) => {
    // Of several gauges that would do, a record does not say which was used.
    const others = toolsOf(item, spec).filter(({id}) => id !== tool.id);
    const {gaugeDue, gaugeDueUnless} = words.remarks;
    const message = fill(others.length > 0 ? gaugeDueUnless : gaugeDue, {
      name,
      days: few([...new Set(days)].sort(), words),
      tool: tool.id,
      due: tool.due?.value ?? '',
      others: few(
        others.map(({id}) => id),
        words,
      ),
    });
    return remark('gauge-due', {sheet, step, item, message});
  });
}

function toolsOf(item: string, spec: Specification): Tool[] {
  const asked = spec.items.get(item);
  if (asked?.kind !== 'fit' && asked?.kind !== 'check') return [];
  return asked.using.flatMap(({value}) => {
    const tool = spec.items.get(value);
    return tool?.kind === 'tool' ? [tool] : [];
  });
}

function about(line: ReadingLine, kind: Remark['name'], says: string): Remark {
  const {sheet, step, item, place} = line;
  const message = `${namedAt(line)}: ${says}`;
  return remark(kind, {sheet, step, item, ...(place !== '' && {place}), message});
}

function readingOf({unit}: ReadingLine, {value}: Round): string {
  return withUnit(value.trim(), unit);
}

function byWhom({by, at}: Round): string {
  return ` (${by}, ${minuteUtc(at)})`;
}
