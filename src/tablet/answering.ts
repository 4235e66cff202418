/** What happens when somebody ticks, signs or writes: questions first, then the entry, then what is said of it. */
/// <reference lib="dom" />
import type {Box, ReadingBox} from '../build/form.js';
import {isAnswered} from '../readings/unrolled.js';
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import {askReason, askYes, tell} from './ask.js';
import type {Shown} from './controls.js';
import {type Obstacle, obstacleTo, refusal, signedWith} from './hands.js';
import {typedReading, typedTime} from './judge.js';
import type {Page} from './page-parts.js';
import {localTime, paintedOf, verdictOn} from './paint.js';
import {acceptanceOf} from './standing.js';
import {refusalText, stepsText} from './workers.js';

/** Ticks or signs, or takes it back. */
export async function toggle(page: Page, shown: Shown): Promise<void> {
  const {session, words, bar} = page;
  const box = session.now(shown.box);
  const answered = session.answers.get(box.key)?.now;
  if (answered !== undefined) {
    const title = fill(words.takeBack, {name: box.label, by: answered.by});
    if (!(await askYes({title, text: words.takeBackText}, words.takeBackGo, words))) return;
    if (await answer(page, box, '')) bar.say(words.takenBack);
    return;
  }
  const obstacle = obstacleTo(box, session.standing);
  if (obstacle !== undefined) return overcome(page, box, obstacle);
  if (box.kind === 'tick' && box.goesBack !== undefined) return goBack(page, box, box.goesBack.to);
  if (await answer(page, box, 'done')) bar.say(tickedText(page, box));
}

/** Writes down what stands in the field of a box. */
export async function write(page: Page, shown: Shown): Promise<void> {
  const {session, words, bar} = page;
  const painted = paintedOf(session, shown.box);
  const {box, now} = painted;
  const text = shown.control instanceof HTMLInputElement ? shown.control.value : '';
  const typed = typedInto(box, text);
  if (!typed.ok) return bar.say(verdictOn(painted, text, words)?.text ?? '');
  if (typed.value === (now?.value ?? '')) return page.repaint(shown);
  const {due} = session.standing;
  if (!(await answer(page, box, typed.value))) return page.repaint(shown);
  const {form, due: dueNow, out} = session.standing;
  const opened = box.kind === 'reading' && form.boxes.some((one) => !due(one) && dueNow(one));
  const says = verdictOn(painted, typed.value, words)?.text;
  const recorded = says === undefined ? words.recorded : fill(words.recordedAs, {says});
  const stop = out.some(({key}) => key === box.key) ? [words.stopTitle] : [];
  bar.say(
    [typed.value === '' ? words.takenBack : recorded, ...stop, ...(opened ? [words.branchOpened] : [])].join(
      ' ',
    ),
  );
}

/** What is typed, as it is written down. */
export function typedInto(box: Box, text: string): ReturnType<typeof typedTime> {
  if (box.kind === 'reading') return typedReading(text, box);
  if (box.kind === 'time') return typedTime(text, localTime(new Date().toISOString()).slice(0, 10));
  return {ok: true, value: text.trim()};
}

/** Somebody else stands by a reading that is out of its limits, and says why. */
export async function accept(page: Page, reading: ReadingBox): Promise<void> {
  const {session, words, bar} = page;
  const box = acceptanceOf(session.standing, reading);
  if (box === undefined) return;
  const given = await askReason(
    {
      title: fill(words.acceptTitle, {name: reading.label, value: readingText(page, reading)}),
      text: words.acceptText,
      fault: faultIn(page, box),
    },
    words.acceptGo,
    words,
  );
  if (given === undefined || !session.add(box, given.reason, given.by).ok) return;
  page.repaint();
  bar.say(words.accepted);
}

/** Adds the answer, with the initials of whoever gives it; false where there are none, or not the right ones. */
async function answer(page: Page, box: Box, value: string): Promise<boolean> {
  const {session, words, workers, bar} = page;
  const by = await workers.whoAnswers(box, value);
  if (by === undefined) return false;
  const added = session.add(box, value, by);
  if (!added.ok) {
    bar.say(refusalText(added.refusal, by, words));
    return false;
  }
  page.repaint();
  return true;
}

/** Readings that are out stop everybody; for what is open, somebody may sign all the same and say why. */
async function overcome(page: Page, box: Box, {out, open}: Obstacle): Promise<void> {
  const {words, session, bar} = page;
  if (out.length > 0) {
    const readings = out.map((one) =>
      fill(words.readingAt, {step: one.step, name: one.label, value: readingText(page, one)}),
    );
    const text = fill(words.outUnder, {readings: readings.join('; ')});
    return tell({title: words.stopTitle, text}, words);
  }
  const given = await askReason(
    {
      title: fill(words.openUnder, {name: box.label}),
      text: fill(words.openText, {steps: stepsText(open, words)}),
      fault: faultIn(page, box),
    },
    words.signAnyway,
    words,
  );
  if (given === undefined || !session.add(box, given.reason, given.by).ok) return;
  page.repaint();
  bar.say(fill(words.stillOpen, {steps: stepsText(open, words)}));
}

function faultIn({session, words}: Page, box: Box) {
  return (by: string): string | undefined => {
    const refused = refusal(session.standing.form, session.answers, box, by);
    return refused && refusalText(refused, by, words);
  };
}

async function goBack(page: Page, box: Box, to: string): Promise<void> {
  const {words, shown, session, bar} = page;
  const question = {
    title: fill(words.backTitle, {step: to}),
    text: fill(words.backText, {from: to, to: box.step}),
  };
  if (!(await askYes(question, fill(words.backGo, {step: to}), words))) return;
  if (!(await answer(page, box, 'done'))) return;
  const control = shown.get(`${to}:done`)?.control;
  control?.scrollIntoView({block: 'center'});
  control?.focus({preventScroll: true});
  bar.say(fill(words.backDone, {step: to, number: session.now(box).round ?? 2}));
}

function readingText({session}: Page, {key, unit}: ReadingBox): string {
  return `${session.answers.get(key)?.now?.value ?? ''} ${unit}`.trim();
}

/** What is still open where somebody has just said that all is done, and what is out of its limits. */
function tickedText(page: Page, box: Box): string {
  const {session, words} = page;
  const {form, answers, due, out} = session.standing;
  const steps = [...new Set(out.map(({step}) => step))];
  const outside = steps.length === 0 ? [] : [fill(words.stillOut, {steps: stepsText(steps, words)})];
  const left = form.boxes.filter(
    (one) =>
      one.step === box.step &&
      due(one) &&
      !isAnswered(one.key, answers) &&
      signedWith(form, one) === undefined,
  );
  const whole = box.step !== '' && box.kind === 'tick' && left.length > 0 && isStep(box);
  return [whole ? stepOpen(box.step, left.length, words) : words.ticked, ...outside].join(' ');
}

function isStep({key, step}: Box): boolean {
  return key.split('@')[0] === `${step}:done`;
}

function stepOpen(step: string, count: number, words: TabletWords): string {
  return fill(words.stepOpen, {step, count});
}
