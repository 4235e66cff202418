/** Questions that stop everything else: whose initials, and whether a record may go. */
/// <reference lib="dom" />
import type {TabletWords} from '../sheet/page-data.js';
import {make} from './dom.js';
import {LONGEST_INITIALS} from './shape.js';

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
    const wrong = initials === '' ? words.initialsMissing : question.fault?.(initials);
    fault.textContent = wrong ?? '';
    return wrong === undefined ? initials : undefined;
  });
}

/** True where the question is answered with yes. */
export async function askYes(question: Question, go: string, words: TabletWords): Promise<boolean> {
  const yes = await ask(question, {content: [], go}, words, () => 'yes');
  return yes !== undefined;
}

interface Dialog {
  readonly content: readonly Node[];
  /** The word that answers. */
  readonly go: string;
  /** What has the focus at first; the word that turns away where nothing is given. */
  readonly first?: HTMLElement;
}

/** `answer` gives undefined for as long as there is none that will do. */
function ask(
  {title, text}: Question,
  {content, go, first}: Dialog,
  words: TabletWords,
  answer: () => string | undefined,
): Promise<string | undefined> {
  const [yes, no] = [
    make('button', {type: 'button'}, [go]),
    make('button', {type: 'button'}, [words.cancel]),
  ];
  const heading = make('h2', {id: 'question'}, [title]);
  const buttons = make('div', {class: 't-buttons'}, [yes, no]);
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
    first?.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter') return;
      // The key that closes the question must not press what has the focus after it.
      event.preventDefault();
      tryAnswer();
    });
  });
}
