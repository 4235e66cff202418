/** Questions that stop everything else: whose initials, and whether a record may go. */
/// <reference lib="dom" />
import {isInitials} from '../readings/initials.js';
import type {TabletWords} from '../sheet/page-data.js';
import {make} from './dom.js';
import {LONGEST, LONGEST_INITIALS} from './shape.js';

/** What stands in the way of everything else until it is answered. */
export interface Question {
  readonly title: string;
  readonly text: string;
  /** What the answer begins with. */
  readonly initials?: string | undefined;
  /** Why an answer won't do; undefined for one that will. */
  readonly fault?: (initials: string) => string | undefined;
}

/** Initials without blanks around them; undefined where the question was turned away. */
export function askInitials(question: Question, words: TabletWords): Promise<string | undefined> {
  const input = make('input', {
    type: 'text',
    maxlength: String(LONGEST_INITIALS),
    autocomplete: 'off',
    autocapitalize: 'characters',
    spellcheck: 'false',
  });
  input.value = question.initials ?? '';
  const fault = make('p', {class: 't-fault', role: 'alert'});
  const label = make('label', {}, [`${words.initials} `, input]);
  return ask(question, {content: [label, fault], go: words.ok, first: input}, words, () => {
    const initials = input.value.trim();
    const wrong = initialsFault(initials, question, words);
    fault.textContent = wrong ?? '';
    return wrong === undefined ? initials : undefined;
  });
}

function initialsFault(initials: string, {fault}: Question, words: TabletWords): string | undefined {
  return isInitials(initials) ? fault?.(initials) : words.initialsMissing;
}

/** Initials and a reason; undefined where the question was turned away. */
export async function askReason(
  question: Question,
  go: string,
  words: TabletWords,
): Promise<{readonly by: string; readonly reason: string} | undefined> {
  const [by, reason] = [LONGEST_INITIALS, LONGEST].map((most) =>
    make('input', {type: 'text', maxlength: String(most), autocomplete: 'off'}),
  );
  if (by === undefined || reason === undefined) return undefined;
  const fault = make('p', {class: 't-fault', role: 'alert'});
  const content = [
    make('label', {}, [`${words.because} `, reason]),
    make('label', {}, [`${words.initials} `, by]),
    fault,
  ];
  const given = await ask(question, {content, go, first: reason, enter: by}, words, () => {
    const initials = by.value.trim();
    const wrong = reason.value.trim() === '' ? words.reasonMissing : initialsFault(initials, question, words);
    fault.textContent = wrong ?? '';
    return wrong === undefined ? initials : undefined;
  });
  return given === undefined ? undefined : {by: given, reason: reason.value.trim()};
}

/** True where the question is answered with yes. */
export async function askYes(question: Question, go: string, words: TabletWords): Promise<boolean> {
  const yes = await ask(question, {content: [], go}, words, () => 'yes');
  return yes !== undefined;
}

/** Says what can't be done; there is nothing to answer. */
export async function tell(question: Question, words: TabletWords): Promise<void> {
  await ask(question, {content: [], go: undefined}, words, () => undefined);
}

interface Dialog {
  readonly content: readonly Node[];
  /** The word that answers; undefined where there is nothing to answer. */
  readonly go: string | undefined;
  /** What has the focus at first; the word that turns away where nothing is given. */
  readonly first?: HTMLElement;
  /** Where the Enter key answers, if not in the first. */
  readonly enter?: HTMLElement;
}

/** `answer` gives undefined for as long as there is none that will do. */
function ask(
  {title, text}: Question,
  {content, go, first, enter = first}: Dialog,
  words: TabletWords,
  answer: () => string | undefined,
): Promise<string | undefined> {
  const yes = make('button', {type: 'button'}, [go ?? words.ok]);
  const no = make('button', {type: 'button'}, [go === undefined ? words.ok : words.cancel]);
  const heading = make('h2', {id: 'question'}, [title]);
  // Where OK stands in other questions, nothing may be lost by a habit: there, the way out comes first.
  const order = go === undefined ? [no] : first === undefined ? [no, yes] : [yes, no];
  const buttons = make('div', {class: 't-buttons'}, order);
  const dialog = make('dialog', {'aria-labelledby': 'question'}, [
    heading,
    make('p', {}, [text]),
    ...content,
    buttons,
  ]);
  document.body.append(dialog);
  dialog.showModal();
  (first ?? no).focus();
  return new Promise((resolve) => {
    const finish = (given: string | undefined) => {
      dialog.close();
      dialog.remove();
      resolve(given);
    };
    const tryAnswer = () => {
      const given = answer();
      if (given !== undefined) finish(given);
    };
    yes.addEventListener('click', tryAnswer);
    no.addEventListener('click', () => finish(undefined));
    dialog.addEventListener('cancel', (event) => {
      event.preventDefault();
      finish(undefined);
    });
    enter?.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter') return;
      // The key that closes the question must not press what has the focus after it.
      event.preventDefault();
      tryAnswer();
    });
  });
}
