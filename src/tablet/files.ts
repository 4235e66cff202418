/** The record going out as a file, coming in from one, and making room for the next. */
/// <reference lib="dom" />
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import {askYes} from './ask.js';
import {make} from './dom.js';
import type {Unfit} from './exchange.js';
import type {Page} from './page-parts.js';

/** Larger than any record, in millions of bytes. */
const MOST = 20;

/** A file of its own each time: what was given out before is somebody’s copy. */
export function exportRecord({session, bar, words}: Page): void {
  const {file, text} = session.exported();
  const url = URL.createObjectURL(new Blob([text], {type: 'application/json'}));
  make('a', {href: url, download: file}).click();
  // Some browsers read the address only after this turn.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  bar.say(fill(words.exported, {file}));
}

/** Puts the entries of a file together with those of the page, and says what became of them. */
export async function importRecord({session, bar, words}: Page, repaint: () => void): Promise<void> {
  const file = bar.file.files?.[0];
  if (file === undefined) return;
  const tooLarge = file.size > MOST * 1e6;
  const text = tooLarge ? '' : await file.text();
  bar.file.value = '';
  if (tooLarge) return bar.say(fill(words.tooLarge, {most: MOST}));
  const done = session.import(text);
  repaint();
  if (!done.ok) return bar.say(unfitText(done, session.form, words));
  bar.say(fill(done.apart ? words.importedApart : words.imported, {taken: done.taken, known: done.known}));
}

/** Asks first where anything is written down: it is gone from the device then. */
export async function freshRecord({session, words}: Page, repaint: () => void): Promise<void> {
  const question = {title: words.freshTitle, text: fill(words.freshText, {count: session.length})};
  if (session.length > 0 && !(await askYes(question, words.delete, words))) return;
  session.clear();
  repaint();
}

function unfitText(unfit: Unfit, own: Page['session']['form'], words: TabletWords): string {
  switch (unfit.why) {
    case 'not-record':
      return words.notJson;
    case 'broken':
      return fill(words.importBroken, {entry: unfit.entry, sheet: unfit.sheet});
    case 'other-engine':
      return fill(words.otherEngine, {engine: unfit.engine});
    case 'other-job':
      return fill(words.otherJob, {number: unfit.number, own: unfit.own});
    case 'other-revision': {
      const {title, revision, fingerprint} = unfit.sheet;
      const short = (digits: string) => digits.slice(0, 10);
      return fill(words.otherRevision, {
        sheet: title,
        revision,
        fingerprint: short(fingerprint),
        own: short(own.fingerprint),
      });
    }
  }
}
