/** A sheet as one self-contained HTML file: no request, every text escaped by the serialiser, no script but ours. */
import type {Element, ElementContent} from 'hast';
import {h} from 'hastscript';
import {beforeSection} from './html-lists.js';
import {paperPage} from './html-paper.js';
import {stepSection} from './html-rows.js';
import {scriptNodes} from './html-script.js';
import {closing, waiverTable} from './html-signs.js';
import {cells, standing, titleBlock} from './html-title-block.js';
import {CLOSING} from './keys.js';
import type {Sheet, SheetSection} from './model.js';
import {TABLET_STYLE} from './tablet-style.js';
import {fill, type Words} from './words.js';

export interface HtmlOptions {
  /** The text of the script by which the sheet can be filled in on a tablet; left out, it is for paper alone. */
  readonly script?: string | undefined;
}

export function sheetHtml(sheet: Sheet, {script}: HtmlOptions = {}): string {
  const {head, words} = sheet;
  const revision = fill(words.revisionShort, {revision: head.revision});
  return paperPage({
    words,
    title: `${head.title} · ${revision} · ${head.engine}`,
    paper: sheet.paper,
    running: {
      left: {name: head.title, rest: ` · ${revision}`},
      right: {name: head.engine, rest: ` · ${head.fingerprint}`},
      engineNumber: head.engineNumber,
      job: head.job,
    },
    body: [
      header(sheet),
      h('main', content(sheet)),
      ...(script === undefined ? [] : scriptNodes(sheet, script)),
    ],
    ...(script === undefined ? {} : {active: {script, style: TABLET_STYLE}}),
  });
}

function header({head, words}: Sheet): Element {
  const turn = head.turn === undefined ? '' : ` ${fill(words.turn, head.turn)}`;
  return h('header', [
    titleBlock({shop: head.shop, kind: `${words.sheet}${turn}`, title: head.title}, [
      cells([
        {label: words.engine, text: head.engine, width: 6},
        {label: words.revision, text: head.revision},
        {label: words.date, text: head.date},
        {label: words.engineNumber, text: head.engineNumber ?? '', width: 4, write: 'engineNumber'},
        {label: words.job, text: head.job ?? '', width: 4},
        {label: words.fingerprint, text: head.fingerprint, width: 4, digits: true},
        {label: words.author, text: head.author ?? '', width: 6},
        {label: words.approved, text: head.approved ?? '', width: 6},
      ]),
    ]),
    ...(head.engineNote === undefined ? [] : [h('p.engine-note', `${head.engine}: ${head.engineNote}`)]),
    standing(words),
  ]);
}

function content(sheet: Sheet): ElementContent[] {
  const {words, waivers} = sheet;
  const signOff = closing(words.closing, words.closingText, words, CLOSING);
  const isLast = (at: number) => at === sheet.sections.length - 1 && waivers.length === 0;
  const held = (section: SheetSection, at: number) => isLast(at) && endsWithSteps(section);
  const sections = sheet.sections.map((section, at) =>
    stepSection(section, at, words, held(section, at) ? signOff : undefined),
  );
  const opening =
    sheet.sections[0] !== undefined && isOpening(sheet.sections[0]) ? sections.splice(0, 1) : [];
  return [
    ...opening,
    beforeSection(sheet.before, words),
    ...sections,
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

/** What the author says before the first step is read before anything is laid out. */
export function isOpening({title, content}: SheetSection): boolean {
  return title === '' && content.every(({type}) => type !== 'row');
}
