/** One build for print and screen: what is wrong first, then readings, signatures, waivers, and the sheets with their seals. */
import {type Block, bad, type Cell, paragraph, part, table} from './page.js';
import {readingsPart} from './page-readings.js';
import {limitsText, minute} from './remark.js';
import type {BuildReport, Remark, SheetLine, Signature} from './report.js';
import {HEADINGS, placeOf, SEALS_SAY, sizeOf, titleOf} from './text.js';
import {spanText} from './worked-line.js';

export function buildPart(build: BuildReport, id: string): Block[] {
  return part(
    2,
    titleOf(build),
    [
      paragraph(`${sizeOf(build)}. From ${build.files.join(', ')}.`),
      ...remarksPart(build.remarks),
      ...readingsPart(build),
      ...workedPart(build),
      ...signaturesPart(build),
      ...waiversPart(build),
      ...sheetsPart(build),
    ],
    id,
  );
}

function remarksPart(remarks: readonly Remark[]): Block[] {
  if (remarks.length === 0) return [paragraph('Nothing is out, missing or otherwise to be remarked on.')];
  return HEADINGS.flatMap(({title, names}) => {
    const own = remarks.filter(({name}) => names.includes(name));
    return own.length === 0 ? [] : part(3, title, [{type: 'remarks', lines: own.map(remarkText)}]);
  });
}

const WEIGHS = {error: 'Wrong', warning: 'Look at', information: 'To know'} as const;

function remarkText(remark: Remark) {
  const {severity, message} = remark;
  return {word: WEIGHS[severity], bad: severity === 'error', text: `${placeOf(remark)}: ${message}`};
}

function workedPart({worked}: BuildReport): Block[] {
  const rows = worked.map((line) => [
    `${line.name}${line.place && `, ${line.place}`}`,
    spanText(line),
    limitsText(line) ?? '–',
    line.state === 'out' ? bad('out') : line.state === 'in' ? 'in' : 'no limits',
    line.from,
  ]);
  const heads = ['What', 'Works out at', 'Limits', 'Verdict', 'From'];
  return part(3, 'Worked out from sizes', table(heads, rows));
}

function signaturesPart({signatures}: BuildReport): Block[] {
  const rows = signatures.map((one) => [
    one.name,
    one.role ?? '–',
    signedCell(one),
    one.at === undefined ? '–' : minute(one.at),
    placeOf(one),
  ]);
  return part(3, 'Who witnessed what', table(['What', 'Role', 'Initials', 'When (UTC)', 'Where'], rows));
}

function signedCell({by, state}: Signature): Cell {
  if (by !== undefined) return by;
  if (state === 'missing') return bad('missing');
  return state === 'open' ? 'still open' : 'not called for';
}

function waiversPart({waivers}: BuildReport): Block[] {
  const rows = waivers.map((one) => [one.finding, one.reason || '–', one.approvedBy ?? '–', placeOf(one)]);
  return part(3, 'Waivers', table(['What is waived', 'Why', 'Approved by', 'Where'], rows));
}

const STATES: Readonly<Record<SheetLine['state'], string>> = {
  judged: 'judged',
  'book-changed': 'book changed since',
  unknown: 'not in the book',
  missing: 'no record',
  'not-begun': 'not begun',
};

function sheetsPart({sheets}: BuildReport): Block[] {
  const rows = sheets.map((one): Cell[] => [
    one.procedure,
    one.revision,
    {text: one.fingerprint.slice(0, 10), look: 'code'},
    one.state === 'judged' || one.state === 'not-begun' ? STATES[one.state] : bad(STATES[one.state]),
    `${one.answered} of ${one.asked}`,
    one.seals === 'broken' ? bad('broken') : one.entries === 0 ? '–' : 'follow',
    one.first === undefined ? '–' : spanOfTime(one.first, one.last ?? one.first),
  ]);
  const heads = ['Sheet', 'Revision', 'Fingerprint', 'State', 'Boxes', 'Seals', 'Entries (UTC)'];
  return part(3, 'Sheets and seals', [paragraph(SEALS_SAY.join(' ')), ...table(heads, rows)]);
}

/** The day is said once where it is one day. */
function spanOfTime(first: string, last: string): string {
  const [from, to] = [minute(first), minute(last)];
  return `${from} to ${from.slice(0, 10) === to.slice(0, 10) ? to.slice(11) : to}`;
}
