/** Remarks on readings: out, near, no number at all, and how they came to be what they are. */
import type {Specification, Tool} from '../spec/model.js';
import {readingNumber} from './number.js';
import {few, limitsText, minuteUtc, plain, remark, withUnit} from './remark.js';
import type {ReadingLine, Remark, Round} from './report.js';
import {sideOf, verdictOf} from './verdict.js';

export function readingRemarks(lines: readonly ReadingLine[], spec: Specification): Remark[] {
  return [...lines.flatMap(ofLine), ...gaugeRemarks(lines, spec)];
}

function ofLine(line: ReadingLine): Remark[] {
  const last = line.rounds.at(-1);
  if (last === undefined) return [];
  return [
    ...standing(line, last),
    ...reworked(line, last),
    ...line.rounds.flatMap((round) => writtenOver(line, round)),
  ];
}

function standing(line: ReadingLine, last: Round): Remark[] {
  const {state, doubt, unit} = line;
  const read = `${readingOf(line, last)}${byWhom(last)}`;
  if (state === 'out' && last.accepted) {
    const {by, at, because} = last.accepted;
    const says = `${read}; ${beyondOf(line, last)}; accepted by ${by}, ${minuteUtc(at)}, because “${because}”`;
    return [about(line, 'accepted', says)];
  }
  if (state === 'out') return [about(line, 'out', `${read}; ${beyondOf(line, last)}`)];
  if (state === 'unreadable') {
    return [
      about(
        line,
        'unreadable',
        `"${last.value}" is no number${byWhom(last)}; read it again, or write the number alone`,
      ),
    ];
  }
  if (state !== 'near') return [];
  const limits = limitsText(line);
  if (doubt === undefined) {
    const says = `${read} is in the last tenth of ${limits}, and how far its gauge may be out is not known`;
    return [about(line, 'near', `${says}; read it again with a gauge that is known`)];
  }
  const says = `${read} is within ${limits} by less than the gauge may be out, ±${withUnit(plain(doubt), unit)}`;
  return [about(line, 'near', `${says}, so it proves nothing; read it with a finer gauge`)];
}

/** "over its limits, 0.004–0.008 in". */
function beyondOf(line: ReadingLine, {number}: Round): string {
  const side = number === undefined ? undefined : sideOf(number, line);
  return side === undefined ? `limits ${limitsText(line)}` : `${side} its limits, ${limitsText(line)}`;
}

/** Out in one round, and put right by a later one. */
function reworked(line: ReadingLine, last: Round): Remark[] {
  const out = line.rounds.filter((round) => round !== last && round.verdict === 'out');
  const [first] = out;
  if (first === undefined || last.verdict === 'out') return [];
  return [
    about(
      line,
      'reworked',
      `was ${readingOf(line, first)}${byWhom(first)}, and ${readingOf(line, last)} when read again`,
    ),
  ];
}

/** An honest second reading has a box of its own: what was out and is in now, in the same box, wants a look. */
function writtenOver(line: ReadingLine, round: Round): Remark[] {
  const verdict = (value: string) => {
    const number = readingNumber(value);
    return number === undefined ? undefined : verdictOf(number, line);
  };
  const out = round.before.find(({value}) => verdict(value) === 'out');
  if (out === undefined || round.verdict === 'out') return [];
  const says = `${withUnit(out.value, line.unit)}, which is out of its limits, was written over with ${readingOf(line, round)}`;
  return [about(line, 'written-over', `${says}${byWhom(round)}`)];
}

/** A gauge past its date on the day of the reading, once for a gauge and what it read in a step. */
function gaugeRemarks(lines: readonly ReadingLine[], spec: Specification): Remark[] {
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
    const others = toolsOf(item, spec).filter(({id}) => id !== tool.id);
    const or =
      others.length > 0 ? `, unless ${few(others.map(({id}) => id))} read it: the record does not say` : '';
    const says = `${name} was read on ${few([...new Set(days)].sort())} with ${tool.id}`;
    return remark('gauge-due', {
      sheet,
      step,
      item,
      message: `${says}, whose calibration ran out on ${tool.due?.value}${or}`,
    });
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

function about({sheet, step, item, place, name}: ReadingLine, kind: Remark['name'], says: string): Remark {
  const message = `${name}${place === '' ? '' : `, ${place}`}: ${says}`;
  return remark(kind, {sheet, step, item, ...(place !== '' && {place}), message});
}

function readingOf({unit}: ReadingLine, {value}: Round): string {
  return withUnit(value.trim(), unit);
}

function byWhom({by, at}: Round): string {
  return ` (${by}, ${minuteUtc(at)})`;
}
