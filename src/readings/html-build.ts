/** One build in HTML: what is wrong first, then readings, signatures, waivers, and the sheets with their seals. */
import type {Element} from 'hast';
import {h} from 'hastscript';
import {printable} from '../text/printable.js';
import {paragraph, part, strong, table} from './html-parts.js';
import {readingsPart} from './html-readings.js';
import {limitsText, minute} from './remark.js';
import type {BuildReport, Remark, SheetLine, Signature} from './report.js';
import {HEADINGS, placeOf, SEALS_SAY, sizeOf, titleOf} from './text.js';
import {spanText} from './worked.js';

export function buildPart(build: BuildReport, id: string): Element[] {
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

function remarksPart(remarks: readonly Remark[]): Element[] {
  if (remarks.length === 0) return [paragraph('Nothing is out, missing or otherwise to be remarked on.')];
  return HEADINGS.flatMap(({title, names}) => {
    const own = remarks.filter(({name}) => names.includes(name));
    return own.length === 0 ? [] : part(3, title, [h('ul', {className: 'remarks'}, own.map(remarkNode))]);
  });
}

const WEIGHS = {error: 'Wrong', warning: 'Look at', information: 'To know'} as const;

function remarkNode(remark: Remark): Element {
  const word = WEIGHS[remark.severity];
  return h('li', [
    remark.severity === 'error' ? strong(word) : h('strong', word),
    printable(` ${placeOf(remark)}: ${remark.message}`),
  ]);
}

function workedPart({worked}: BuildReport): Element[] {
  const rows = worked.map((line) => [
    `${line.name}${line.place && `, ${line.place}`}`,
    spanText(line),
    limitsText(line) ?? '–',
    line.state === 'out' ? strong('out') : line.state === 'in' ? 'in' : 'no limits',
    line.from,
  ]);
  return part(3, 'Worked out from sizes', table(['What', 'Works out at', 'Limits', 'Verdict', 'From'], rows));
}

function signaturesPart({signatures}: BuildReport): Element[] {
  const rows = signatures.map((one) => [
    one.name,
    one.role ?? '–',
    signedNode(one),
    one.at === undefined ? '–' : minute(one.at),
    placeOf(one),
  ]);
  return part(3, 'Who witnessed what', table(['What', 'Role', 'Initials', 'When (UTC)', 'Where'], rows));
}

function signedNode({by, state}: Signature) {
  if (by !== undefined) return by;
  return state === 'missing' ? strong('missing') : 'not called for';
}

function waiversPart({waivers}: BuildReport): Element[] {
  const rows = waivers.map((one) => [one.finding, one.reason || '–', one.approvedBy ?? '–', placeOf(one)]);
  return part(3, 'Waivers', table(['What is waived', 'Why', 'Approved by', 'Where'], rows));
}

const STATES: Readonly<Record<SheetLine['state'], string>> = {
  judged: 'judged',
  'book-changed': 'book changed since',
  unknown: 'not in the book',
  missing: 'no record',
};

function sheetsPart({sheets}: BuildReport): Element[] {
  const rows = sheets.map((one) => [
    one.procedure,
    one.revision,
    h('code', printable(one.fingerprint.slice(0, 10))),
    one.state === 'judged' ? 'judged' : strong(STATES[one.state]),
    `${one.answered} of ${one.asked}`,
    one.seals === 'broken' ? strong('broken') : one.entries === 0 ? '–' : 'follow',
    one.first === undefined ? '–' : `${minute(one.first)} to ${minute(one.last ?? one.first)}`,
  ]);
  const heads = ['Sheet', 'Revision', 'Fingerprint', 'State', 'Boxes', 'Seals', 'Entries (UTC)'];
  return part(3, 'Sheets and seals', [...table(heads, rows), paragraph(SEALS_SAY.join(' '))]);
}
