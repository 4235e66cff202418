/**
 * A sheet as the data that its Typst template lays out for PDF: the model with everything decided that needs no
 * measuring. It is handed over as JSON, so that no text of a book is ever read as Typst.
 */
import {documentDate, type Print, paperName} from '../print/document.js';
import {fitted, footOf, type Running} from '../print/running.js';
import type {Paper} from '../spec/model.js';
import {placeItems} from './drawing-text.js';
import {isOpening} from './html.js';
import {grouped} from './html-rows.js';
import type {Sheet, SheetSection} from './model.js';
import {printDrawing} from './print-drawing.js';
import {printGroups} from './print-groups.js';
import {printLists} from './print-lists.js';
import {type PathOf, printBlock} from './print-prose.js';
import {fill, type Words} from './words.js';

/** `pathOf` says under which name the template finds a picture; nothing where it can't be shown. */
export function sheetPrint(sheet: Sheet, pathOf: PathOf): Print {
  const {words} = sheet;
  const opening = sheet.sections.findIndex(isOpening) === 0 ? 1 : 0;
  const sections = sheet.sections.map((section) => printSection(section, words, pathOf));
  return {
    template: 'sheet',
    data: {
      ...frameOf(runningOf(sheet), sheet.paper, words),
      ...headOf(sheet),
      lists: printLists(sheet.before, words),
      places: sheet.before.places.map((one) => ({
        drawing: printDrawing(one.drawing, words),
        items: placeItems(one, words),
      })),
      opening: sections.slice(0, opening),
      sections: sections.slice(opening),
      waivers: sheet.waivers,
    },
  };
}

/** What every page of a sheet or cover needs. */
export function frameOf(running: Running, paper: Paper, words: Words) {
  const {engineNumber = null, job} = footOf(running, words);
  return {words, paper: paperName(paper), running: fitted(running), engineNumber, job};
}

function runningOf({head, words}: Sheet): Running {
  return {
    left: {name: head.title, rest: ` · ${fill(words.revisionShort, {revision: head.revision})}`},
    right: {name: head.engine, rest: ` · ${head.fingerprint}`},
    engineNumber: head.engineNumber,
    job: head.job,
  };
}

/** Titles longer than this are set smaller. */
const LONG = 60;

function headOf({head, words}: Sheet) {
  const revision = fill(words.revisionShort, {revision: head.revision});
  const turn = head.turn === undefined ? '' : ` ${fill(words.turn, head.turn)}`;
  const cell = (label: string, text: string | undefined, width: number) => ({
    label,
    text: text ?? '',
    width,
    digits: label === words.fingerprint,
  });
  return {
    title: `${head.title} · ${revision} · ${head.engine}`,
    authors: head.author === undefined ? [] : [head.author],
    date: documentDate(head.date),
    shop: head.shop,
    kind: `${words.sheet}${turn}`,
    heading: head.title,
    long: head.title.length > LONG,
    notes: head.engineNote === undefined ? [] : [`${head.engine}: ${head.engineNote}`],
    cells: [
      cell(words.engine, head.engine, 6),
      cell(words.revision, head.revision, 3),
      cell(words.date, head.date, 3),
      cell(words.engineNumber, head.engineNumber, 4),
      cell(words.job, head.job, 4),
      cell(words.fingerprint, head.fingerprint, 4),
      cell(words.author, head.author, 6),
      cell(words.approved, head.approved, 6),
    ],
  };
}

function printSection(section: SheetSection, words: Words, pathOf: PathOf) {
  const groups = grouped(section.content);
  const last = groups.findLastIndex(({rows}) => rows.length > 0);
  const untitled = last < 0 ? words.opening : words.steps;
  return {
    level: Math.min(section.level, 6),
    title: section.title === '' ? untitled : section.title,
    parts: groups.map(({blocks, rows}, at) => ({
      blocks: blocks.map((block) => printBlock(block, pathOf)),
      groups: printGroups(rows, at === last ? section.title : undefined, words, pathOf),
    })),
  };
}
