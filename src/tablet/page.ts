/** Puts the parts of a page together, and listens to what people ask of it. */
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import {isAnswered} from '../readings/unrolled.js';
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import {accept, toggle, typedInto, write} from './answering.js';
import {makeBar} from './bar.js';
import {makeBranches} from './branches.js';
import {keyOf, makeControls, type Shown} from './controls.js';
import {make} from './dom.js';
import {exportRecord, freshRecord, importRecord} from './files.js';
import {signedWith} from './hands.js';
import type {Page} from './page-parts.js';
import {localTime, paint, paintedOf, paintVerdict, stateOf} from './paint.js';
import type {Session} from './session.js';
import {makeStops} from './stops.js';
import type {Storage} from './store.js';
import {Workers} from './workers.js';

/** `memory` lasts as long as the window: it remembers who works. */
export function work(session: Session, words: TabletWords, memory: Storage | undefined): void {
  const shown = makeControls(session.form, words);
  const stops = makeStops(session, shown, words);
  const seen = new Map<Shown, string>();
  const page: Page = {
    session,
    words,
    shown,
    branches: makeBranches(session, words),
    bar: makeBar(session, shown, words),
    workers: new Workers(session, words, memory),
    repaint(anyway) {
      for (const one of shown.values()) {
        const painted = paintedOf(session, one.box);
        const state = stateOf(painted);
        if (one === anyway || seen.get(one) !== state) paint(one, painted, words);
        seen.set(one, state);
      }
      stops.paint();
      if (engine !== undefined) engine.value = session.engineNumber ?? '';
      standing(page);
    },
  };
  const engine = engineCell(page);
  listen(page);
  page.repaint();
}

/** Everything that is not a single box. */
function standing({session, words, branches, bar, workers}: Page): void {
  if (branches.paint()) bar.say(words.branchOpened);
  bar.paint(workers.who);
  const {trouble, broken} = session;
  bar.alarm(
    [
      ...(trouble === undefined ? [] : [troubleText(trouble, words)]),
      ...(broken === undefined ? [] : [fill(words.sealBroken, {entry: broken})]),
    ].join(' '),
  );
}

function troubleText(trouble: NonNullable<Session['trouble']>, words: TabletWords): string {
  if (trouble === 'no-storage') return words.noStorage;
  return trouble === 'storage-full' ? words.storageFull : words.storageBad;
}

/** One listener for all boxes; what is asked is done one after another, for a question may stand in between. */
function listen(page: Page): void {
  const {bar, shown, session, workers, words, repaint} = page;
  let queue: Promise<void> = Promise.resolve();
  const soon = (act: () => Promise<void> | void) => {
    queue = queue.then(act).catch(reportError);
  };
  document.addEventListener('click', ({target}) => {
    const one = shown.get(keyOf(target) ?? '');
    if (one?.control instanceof HTMLButtonElement) soon(() => toggle(page, one));
    else if (target instanceof Element) soon(() => press(page, target));
  });
  document.addEventListener('input', ({target}) => {
    const one = shown.get(keyOf(target) ?? '');
    if (one?.control instanceof HTMLInputElement) {
      paintVerdict(one, paintedOf(session, one.box), one.control.value, words);
    }
  });
  document.addEventListener('change', ({target}) => {
    const one = shown.get(keyOf(target) ?? '');
    if (one?.control instanceof HTMLInputElement) soon(() => write(page, one));
  });
  window.addEventListener('storage', ({key}) => {
    if (key !== null && key !== session.key) return;
    session.reload();
    repaint();
  });
  // What was typed and not left is written down before the page goes.
  window.addEventListener('pagehide', () => writeLast(page));
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') writeLast(page);
  });
  bar.buttons.who.addEventListener('click', () =>
    soon(async () => {
      await workers.ask();
      standing(page);
    }),
  );
  bar.buttons.next.addEventListener('click', () => nextOpen(page));
  bar.buttons.export.addEventListener('click', () => exportRecord(page));
  bar.buttons.import.addEventListener('click', () => bar.file.click());
  bar.file.addEventListener('change', () => soon(() => importRecord(page, repaint)));
  bar.buttons.fresh.addEventListener('click', () => soon(() => freshRecord(page, repaint)));
}

/** Buttons that stand beside boxes. */
async function press(page: Page, target: Element): Promise<void> {
  const {session, shown} = page;
  const key = (name: string) => target.closest(`button[${name}]`)?.getAttribute(name) ?? '';
  const again = shown.get(key('data-again'));
  if (again !== undefined) {
    session.readAgain(again.box);
    page.repaint();
    again.control.focus();
    return;
  }
  const back = shown.get(key('data-back'));
  if (back !== undefined) return toggle(page, back);
  const timed = shown.get(key('data-now'));
  if (timed?.control instanceof HTMLInputElement) {
    timed.control.value = localTime(new Date().toISOString());
    await write(page, timed);
    return;
  }
  const reading = session.standing.out.find((box) => box.key === key('data-accept'));
  if (reading !== undefined) await accept(page, reading);
}

/** No question can be asked any more, so it needs somebody who works, and a box that is theirs. */
function writeLast({session, shown, workers}: Page): void {
  const one = shown.get(keyOf(document.activeElement) ?? '');
  if (!(one?.control instanceof HTMLInputElement) || workers.who === undefined) return;
  const box = session.now(one.box);
  const typed = typedInto(box, one.control.value);
  if (!typed.ok || typed.value === (session.answers.get(box.key)?.now?.value ?? '')) return;
  if (signedWith(session.standing.form, box) === undefined) session.add(box, typed.value, workers.who);
}

function nextOpen({session, shown, branches, bar, words}: Page): void {
  const {answers, standing: now} = session;
  const next = session.form.boxes.find((first) => {
    const box = session.now(first);
    return now.due(box) && !isAnswered(box.key, answers) && shown.has(first.key);
  });
  const control = shown.get(next?.key ?? '')?.control;
  if (next === undefined || control === undefined) {
    bar.say(words.allDone);
    return;
  }
  branches.reveal(next);
  control.scrollIntoView({block: 'center'});
  control.focus({preventScroll: true});
}

/** The number of the engine, where the sheet was printed without it. */
function engineCell({session, words}: Page): HTMLInputElement | undefined {
  const cell = document.querySelector('[data-write="engineNumber"]');
  if (cell === null) return undefined;
  const input = make('input', {
    type: 'text',
    class: 'written',
    'aria-label': words.engineNumber,
    maxlength: '80',
  });
  input.addEventListener('change', () => session.nameEngine(input.value.trim()));
  cell.replaceChildren(input);
  return input;
}
