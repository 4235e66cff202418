/**
 * A sheet as the data that its Typst template lays out for PDF: the model with everything decided that needs no
 * measuring. It is handed over as JSON, so that no text of a book is ever read as Typst.
 */
import {documentDate, type Print, paperName} from '../print/document.js';
import {fitted, footOf} from '../print/running.js';
import type {Paper} from '../spec/model.js';
import {placeItems} from './drawing-text.js';
import {laidOut, openingsOf, sectionEndText} from './layout.js';
import type {Sheet, SheetSection} from './model.js';
import {printDrawing} from './print-drawing.js';
import {printRuns} from './print-groups.js';
import {printLists} from './print-lists.js';
import {type PathOf, printBlock} from './print-prose.js';
import {isLongTitle, sheetTitles, type Titles} from './title-block.js';
import type {Words} from './words.js';

/** `pathOf` says under which name the template finds a picture; nothing where it can't be shown. */
export function sheetPrint(sheet: Sheet, pathOf: PathOf): Print {
  const {words} = sheet;
  const opening = openingsOf(sheet);
  const sections = sheet.sections.map((section) => printSection(section, words, pathOf));
  return {
    template: 'sheet',
    data: {
      ...frameOf(sheetTitles(sheet), sheet.paper, words),
      ...documentOf(sheet),
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

/** What every page of a sheet or cover needs, and the title block on the first. */
export function frameOf({document, block, running, notes}: Titles, paper: Paper, words: Words) {
  const {engineNumber = null, job} = footOf(running, words);
  return {
    words,
    paper: paperName(paper),
    running: fitted(running),
    engineNumber,
    job,
    title: document,
    shop: block.shop,
    kind: block.kind,
    heading: block.title,
    long: isLongTitle(block),
    notes,
    cells: block.cells.map(({label, text, width = 3, digits = false}) => ({label, text, width, digits})),
  };
}

/** Who wrote the document and when, which a reader of PDF shows. */
function documentOf({head}: Sheet) {
  return {authors: head.author === undefined ? [] : [head.author], date: documentDate(head.date)};
}

function printSection(section: SheetSection, words: Words, pathOf: PathOf) {
  const {title, level, groups, last} = laidOut(section, words);
  const end = sectionEndText(section, words);
  return {
    level,
    title,
    parts: groups.map(({blocks, rows}, at) => ({
      blocks: blocks.map((block) => printBlock(block, pathOf)),
      runs: printRuns(rows, at === last ? end : undefined, words, pathOf),
    })),
  };
}
