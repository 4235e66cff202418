/** A sheet as Markdown, for a change request, a wiki or a screen reader: the same model, its drawings as words. */
import type {BlockContent, List, ListItem, RootContent} from 'mdast';
import {
  bullets,
  heading,
  listItem,
  listLine,
  markdownOf,
  paragraph,
  strong,
  text,
} from '../print/markdown.js';
import {ifNotOf} from './condition.js';
import {drawingText, placeItems} from './drawing-text.js';
import {figureText, openingsOf} from './layout.js';
import {BLANK, BOX, boxes, entryLines} from './markdown-entry.js';
import type {Before, Hold, Notice, PartLine, Row, Sheet, SheetBlock, SheetSection, Waiver} from './model.js';
import {valueText} from './value.js';
import {fill, type Words} from './words.js';

/** CommonMark; boxes and blanks are characters, for it has none of its own. */
export function sheetMarkdown(sheet: Sheet): string {
  const {words} = sheet;
  const opening = openingsOf(sheet);
  const sections = sheet.sections.map((section) => sectionNodes(section, words));
  return markdownOf([
    heading(1, sheet.head.title),
    headList(sheet),
    paragraph(words.standing),
    paragraph(words.protect),
    ...sections.slice(0, opening).flat(),
    ...beforeNodes(sheet.before, words),
    ...sections.slice(opening).flat(),
    ...waiverNodes(sheet.waivers, words),
    heading(2, words.closing),
    paragraph(words.closingText),
    bullets([listLine(`${BOX} ${words.closingBox}`), signature(words.builtBy), signature(words.checkedBy)]),
  ]);
}

/** Steps before the first heading have none: Markdown needs no name for them. */
function sectionNodes({title, level, content}: SheetSection, words: Words): RootContent[] {
  const nodes = content.flatMap((block) => blockNodes(block, words));
  return title === '' ? nodes : [heading(level, title), ...nodes];
}

function headList({head, words}: Sheet): List {
  const pairs = [
    [words.shop, head.shop],
    [words.engine, head.engine],
    [words.engineNumber, head.engineNumber ?? BLANK],
    [words.job, head.job ?? BLANK],
    [words.revision, head.revision],
    [words.date, head.date],
    [words.author, head.author],
    [words.approved, head.approved],
    [words.fingerprint, head.fingerprint],
    [words.note, head.engineNote],
  ];
  return bullets(
    pairs.flatMap(([label, value]) => (value === undefined ? [] : [listLine(`${label}: ${value}`)])),
  );
}

function beforeNodes(before: Before, words: Words): RootContent[] {
  const at = (steps: readonly string[]) => `(${words.neededAt}: ${steps.join(', ')})`;
  const named = (names: readonly string[]) => names.join(words.or);
  const warns = (hazards: readonly string[]) =>
    hazards.length === 0 ? undefined : `${words.hazards}: ${hazards.join(words.and)}`;
  const tools = before.tools.map(({names, range, serial, due, steps}) =>
    together(named(names), at(steps), [
      range && valueText(range),
      serial && fill(words.serial, {serial}),
      due && `${words.calibrationDue} ${due}`,
    ]),
  );
  const consumables = before.consumables.map(({names, hazards, cure, steps}) =>
    together(named(names), at(steps), [warns(hazards), cure && `${words.cureTime} ${valueText(cure)}`]),
  );
  const partLine = ({name, quantity, hazards, steps}: PartLine) =>
    together(`${quantity} × ${name}`, at(steps), [warns(hazards)]);
  return [
    heading(2, words.before),
    ...checklist(words.tools, tools),
    ...checklist(words.consumables, consumables),
    ...checklist(words.parts, before.parts.map(partLine)),
    ...checklist(words.newParts, before.newParts.map(partLine)),
    ...placeNodes(before.places, words),
  ];
}

function together(name: string, at: string, details: readonly (string | undefined)[]): string {
  return `${[name, ...details.filter((one) => one !== undefined)].join(', ')} ${at}`;
}

function placeNodes(places: Before['places'], words: Words): RootContent[] {
  const lines = places.map((one) =>
    listLine(`${placeItems(one, words)}: ${drawingText(one.drawing, words)}`),
  );
  return lines.length === 0 ? [] : [heading(3, words.places), bullets(lines)];
}

function checklist(title: string, lines: readonly string[]): RootContent[] {
  return lines.length === 0
    ? []
    : [heading(3, title), bullets(lines.map((text) => listLine(`${BOX} ${text}`)))];
}

function blockNodes(block: SheetBlock, words: Words): BlockContent[] {
  switch (block.type) {
    case 'row':
      return rowNodes(block.row, words);
    case 'prose':
      return [paragraph(block.prose)];
    case 'notice':
      return [noticeNode(block.notice, words)];
    case 'figure':
      return [paragraph(`${words.picture}: ${figureText(block.figure)}`)];
    case 'list':
      return [bullets(block.items.map(({prose}) => listLine(prose)))];
    case 'typed':
      return [{type: 'code', value: block.text}];
  }
}

/** The number is text: a list would count for itself, and knows no `3b`. */
function rowNodes(row: Row, words: Words): BlockContent[] {
  const number = [text(`${BOX} `), strong(row.number), text(' ')];
  const below: ListItem[] = [
    ...entryLines(row.entries, words).map(listLine),
    ...row.holds.flatMap((hold) => holdLines(hold, words).map(listLine)),
  ];
  const sub = row.rows.map((one) => listItem(rowNodes(one, words)));
  return [
    ...row.notices.map((notice) => noticeNode(notice, words)),
    paragraph([...number, ...row.prose]),
    ...row.more.flatMap((block) => blockNodes(block, words)),
    ...(below.length === 0 ? [] : [bullets(below)]),
    ...(row.onlyIf === undefined ? [] : [paragraph(`${row.onlyIf}: ${ifNotOf(row, words)}`)]),
    ...(sub.length === 0 ? [] : [bullets(sub)]),
  ];
}

function holdLines({name, by, asked}: Hold, words: Words): string[] {
  return [
    ...(asked.length === 0 ? [] : [`${words.holdAsks}: ${boxes(asked)}`]),
    `${words.hold}: ${name} (${by ?? words.witnessedBy}) ${BLANK}`,
  ];
}

function noticeNode({signal, prose, hazards}: Notice, words: Words): BlockContent {
  const word = strong(`${words.signals[signal]}:`);
  const warns = hazards.length === 0 ? '' : `${hazards.join(words.and)}: `;
  return {type: 'blockquote', children: [paragraph([word, text(` ${warns}`), ...prose])]};
}

function waiverNodes(waivers: readonly Waiver[], words: Words): RootContent[] {
  if (waivers.length === 0) return [];
  const lines = waivers.map(({step, finding, reason, approvedBy}) => {
    const who = approvedBy === undefined ? '' : ` (${words.approvedBy}: ${approvedBy})`;
    return listLine(`${words.number} ${step}: ${finding}: ${reason}${who}`);
  });
  return [heading(2, words.waivers), bullets(lines)];
}

function signature(person: string): ListItem {
  return listLine(`${person}: ${BLANK}`);
}
