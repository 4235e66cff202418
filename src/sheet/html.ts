/** A sheet as one self-contained HTML file: no request, every text escaped by the serialiser, no script but ours. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import {beforeSection} from './html-lists.js';
import {paperPage} from './html-paper.js';
import {stepSection} from './html-rows.js';
import {scriptNodes} from './html-script.js';
import {closing, waiverTable} from './html-signs.js';
import {sheetHeader} from './html-title-block.js';
import {CLOSING} from './keys.js';
import {openingsOf} from './layout.js';
import type {Sheet, SheetSection} from './model.js';
import {TABLET_STYLE} from './tablet-style.js';
import {sheetTitles} from './title-block.js';
import type {Words} from './words.js';

export interface HtmlOptions {
  /** The text of the script by which the sheet can be filled in on a tablet; left out, it is for paper alone. */
  readonly script?: string | undefined;
}

/** One file that needs nothing else: for paper, or with the script for a tablet as well. */
export function sheetHtml(sheet: Sheet, {script}: HtmlOptions = {}): string {
  const {words} = sheet;
  const titles = sheetTitles(sheet);
  return paperPage({
    words,
    title: titles.document,
    paper: sheet.paper,
    running: titles.running,
    body: [
      sheetHeader(titles, words),
      h('main', content(sheet)),
      ...(script === undefined ? [] : scriptNodes(sheet, script)),
    ],
    ...(script === undefined ? {} : {active: {script, style: TABLET_STYLE}}),
  });
}

function content(sheet: Sheet): ElementContent[] {
  const {words, waivers} = sheet;
  const signOff = closing(words.closing, words.closingText, words, CLOSING);
  const isLast = (at: number) => at === sheet.sections.length - 1 && waivers.length === 0;
  const held = (section: SheetSection, at: number) => isLast(at) && endsWithSteps(section);
  const sections = sheet.sections.map((section, at) =>
    stepSection(section, at, words, held(section, at) ? signOff : undefined),
  );
  const opening = openingsOf(sheet);
  return [
    ...sections.slice(0, opening),
    beforeSection(sheet.before, words),
    ...sections.slice(opening),
    ...(sheet.sections.some(held) ? [] : [signedBelow(waivers, signOff, words)]),
  ];
}

/** The sign-off stands never alone: the last step holds it, and where there are waivers they do. */
function endsWithSteps({content: blocks}: SheetSection): boolean {
  return blocks.at(-1)?.type === 'row';
}

function signedBelow(waivers: Sheet['waivers'], signOff: Element, words: Words): Element {
  if (waivers.length === 0) return signOff;
  const className = waivers.length > TOGETHER ? [] : ['together'];
  return h('div', {className}, [waiverTable(waivers, words), signOff]);
}

/** So many waivers leave room for the sign-off on one page. */
const TOGETHER = 8;
