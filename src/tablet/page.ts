/** Puts the parts of a page together, and does what people ask of it: tick, read, sign, look for what is open. */
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type {Box} from '../build/form.js';
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import {makeBar} from './bar.js';
import {makeBranches} from './branches.js';
import {keyOf, makeControls, type Shown} from './controls.js';
import {make} from './dom.js';
import {isAnswered} from './due.js';
import {exportRecord, freshRecord, importRecord} from './files.js';
import {signedWith, stepsOf} from './hands.js';
import {typedReading} from './judge.js';
import type {Page} from './page-parts.js';
import {paint, paintVerdict, verdictOn} from './paint.js';
import type {Session} from './session.js';
import type {Storage} from './store.js';
import {refusalText, Workers} from './workers.js';

/** `memory` lasts as long as the window: it remembers who works. */
export function work(session: Session, words: TabletWords, memory: Storage | undefined): void {
  const shown = makeControls(session.form, words);
  const page: Page = {
    session,
    words,
    shown,
    branches: makeBranches(session, words),
    bar: makeBar(session, shown, words),
    workers: new Workers(session, words, memory),
  };
  const engine = engineCell(page);
  const all = () => {
    for (const one of shown.values()) paint(one, session.answers.get(one.box.key)?.now, words);
    if (engine !== undefined) engine.value = session.engineNumber ?? '';
    standing(page);
  };
  listen(page, all);
  all();
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
function listen(page: Page, all: () => void): void {
  const {bar, shown, session, workers, words} = page;
  let queue: Promise<void> = Promise.resolve();
  const soon = (act: () => Promise<void> | void) => {
    queue = queue.then(act).catch(reportError);
  };
  document.addEventListener('click', ({target}) => {
    const one = shown.get(keyOf(target) ?? '');
    if (one?.control instanceof HTMLButtonElement) soon(() => toggle(page, one));
  });
  document.addEventListener('input', ({target}) => {
    const one = shown.get(keyOf(target) ?? '');
    if (one?.control instanceof HTMLInputElement) paintVerdict(one, one.control.value, words);
  });
  document.addEventListener('change', ({target}) => {
    const one = shown.get(keyOf(target) ?? '');
    if (one?.control instanceof HTMLInputElement) soon(() => write(page, one));
  });
  window.addEventListener('storage', ({key}) => {
    if (key !== null && key !== session.key) return;
    session.reload();
    all();
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
  bar.file.addEventListener('change', () => soon(() => importRecord(page, all)));
  bar.buttons.fresh.addEventListener('click', () => soon(() => freshRecord(page, all)));
}

async function toggle(page: Page, shown: Shown): Promise<void> {
  const {session, words} = page;
  const {box} = shown;
  const value = isAnswered(box, session.answers) ? '' : 'done';
  if (await answer(page, shown, value)) page.bar.say(value === '' ? words.takenBack : tickedText(page, box));
}

async function write(page: Page, shown: Shown): Promise<void> {
  const {session, words, bar} = page;
  const {box, control} = shown;
  const typed =
    box.kind === 'reading'
      ? typedReading(control.value, box.unit)
      : {ok: true as const, value: control.value.trim()};
  if (!typed.ok) return bar.say(verdictOn(box, control.value, words)?.text ?? words.noNumber);
  if (typed.value === (session.answers.get(box.key)?.now?.value ?? '')) return;
  const called = session.due;
  if (!(await answer(page, shown, typed.value))) {
    control.value = session.answers.get(box.key)?.now?.value ?? '';
    paint(shown, session.answers.get(box.key)?.now, words);
    return;
  }
  const opened =
    box.kind === 'reading' && page.session.form.boxes.some((one) => !called.box(one) && session.due.box(one));
  const says = verdictOn(box, typed.value, words)?.text;
  const what = typed.value === '' ? words.takenBack : words.recorded;
  bar.say([what, ...(says === undefined ? [] : [says]), ...(opened ? [words.branchOpened] : [])].join(' '));
}

/** Adds the answer, with the initials of whoever gives it; false where there are none, or not the right ones. */
async function answer(page: Page, shown: Shown, value: string): Promise<boolean> {
  const {session, words, workers, bar} = page;
  const by = await workers.whoAnswers(shown.box, value);
  if (by === undefined) return false;
  const added = session.add(shown.box, value, by);
  if (!added.ok) {
    bar.say(refusalText(added.refusal, by, words));
    return false;
  }
  paint(shown, session.answers.get(shown.box.key)?.now, words);
  standing(page);
  return true;
}

/** What is still open where somebody has just said that all is done. */
function tickedText({session, words}: Page, box: Box): string {
  const {form, answers, due} = session;
  const open = form.boxes.filter((one) => due.box(one) && !isAnswered(one, answers));
  if (box.kind === 'hold') {
    const vouched = new Set(box.not);
    const steps = stepsOf(
      form,
      open.flatMap(({key}) => (vouched.has(key) ? [key] : [])),
    );
    return steps.length === 0 ? words.ticked : fill(words.stillOpen, {steps: steps.join(', ')});
  }
  if (box.step === '' || box.key !== `${box.step}:done`) return words.ticked;
  const left = open.filter((one) => one.step === box.step && signedWith(form, one) === undefined);
  return left.length === 0 ? words.ticked : fill(words.stepOpen, {step: box.step, count: left.length});
}

function nextOpen({session, shown, branches, bar, words}: Page): void {
  const {form, answers, due} = session;
  const box = form.boxes.find((one) => due.box(one) && !isAnswered(one, answers) && shown.has(one.key));
  const control = shown.get(box?.key ?? '')?.control;
  if (box === undefined || control === undefined) {
    bar.say(words.allDone);
    return;
  }
  branches.reveal(box);
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
