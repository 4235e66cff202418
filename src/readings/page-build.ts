/** One build for print and screen: what is wrong first, then readings, signatures, waivers, and the sheets with their seals. */
import {fill} from '../text/fill.js';
import {limitsText, minute, namedAt} from './figures.js';
import {HEADINGS, placeOf, sizeOf, titleOf} from './headings.js';
import {type Block, bad, type Cell, paragraph, part, table} from './page.js';
import {readingsPart} from './page-readings.js';
import type {BuildReport, Remark, Signature} from './report.js';
import type {ReportWords} from './words.js';
import {spanText} from './worked-line.js';

export function buildPart(build: BuildReport, id: string, words: ReportWords): Block[] {
  return part(
    2,
    titleOf(build, words),
    [
      paragraph(fill(words.from, {size: sizeOf(build, words), files: build.files.join(', ')})),
      ...remarksPart(build.remarks, words),
      ...readingsPart(build, words),
      ...workedPart(build, words),
      ...signaturesPart(build, words),
      ...waiversPart(build, words),
      ...sheetsPart(build, words),
    ],
    id,
  );
}

function remarksPart(remarks: readonly Remark[], words: ReportWords): Block[] {
  if (remarks.length === 0) return [paragraph(words.nothing)];
  return HEADINGS.flatMap(({title, names}) => {
    const own = remarks.filter(({name}) => names.includes(name));
    const lines = own.map((one) => remarkText(one, words));
    return own.length === 0 ? [] : part(3, words.headings[title], [{type: 'remarks', lines}]);
  });
}

function remarkText(remark: Remark, words: ReportWords) {
  const {severity, message} = remark;
  return {
    word: words.weighs[severity],
    bad: severity === 'error',
    text: `${placeOf(remark, words)}: ${message}`,
  };
}

function workedPart({worked}: BuildReport, words: ReportWords): Block[] {
  const rows = worked.map((line) => [
    namedAt(line),
    spanText(line),
    limitsText(line, words) ?? '–',
    line.state === 'out' ? bad(words.states.out) : words.states[line.state],
    line.from,
  ]);
  const heads = [words.what, words.worksOutAt, words.limits, words.verdict, words.workedFrom];
  return part(3, words.worked, table(heads, rows));
}

function signaturesPart({signatures}: BuildReport, words: ReportWords): Block[] {
  const rows = signatures.map((one) => [
    one.name,
    one.role ?? '–',
    signedCell(one, words),
    one.at === undefined ? '–' : minute(one.at),
    placeOf(one, words),
  ]);
  const heads = [words.what, words.role, words.initials, words.when, words.where];
  return part(3, words.witnessed, table(heads, rows));
}

function signedCell({by, state}: Signature, {states}: ReportWords): Cell {
  if (by !== undefined) return by;
  if (state === 'missing') return bad(states.missing);
  return state === 'open' ? states.open : states['not-called-for'];
}

function waiversPart({waivers}: BuildReport, words: ReportWords): Block[] {
  const rows = waivers.map((one) => [
    one.finding,
    one.reason || '–',
    one.approvedBy ?? '–',
    placeOf(one, words),
  ]);
  const heads = [words.waived, words.why, words.approvedBy, words.where];
  return part(3, words.waivers, table(heads, rows));
}

function sheetsPart({sheets}: BuildReport, words: ReportWords): Block[] {
  const states = words.sheetStates;
  const rows = sheets.map((one): Cell[] => [
    one.procedure,
    one.revision,
    {text: one.fingerprint.slice(0, 10), look: 'code'},
    one.state === 'judged' || one.state === 'not-begun' ? states[one.state] : bad(states[one.state]),
    fill(words.answered, {answered: one.answered, asked: one.asked}),
    one.seals === 'broken' ? bad(words.broken) : one.entries === 0 ? '–' : words.follow,
    one.first === undefined ? '–' : spanOfTime(one.first, one.last ?? one.first, words),
  ]);
  const {sheet, revision, fingerprint, state, boxes, seals, entries} = words;
  const heads = [sheet, revision, fingerprint, state, boxes, seals, entries];
  return part(3, words.headings.sheets, [paragraph(words.sealsSay.join(' ')), ...table(heads, rows)]);
}

/** The day is said once where it is one day. */
function spanOfTime(first: string, last: string, {span}: ReportWords): string {
  const [from, to] = [minute(first), minute(last)];
  return fill(span, {from, to: from.slice(0, 10) === to.slice(0, 10) ? to.slice(11) : to});
}
