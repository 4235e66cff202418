/** Whose initials an answer gets: those of whoever works, asked for once, or of the second person at a hold point. */
import type {Box} from '../build/form.js';
import {isInitials} from '../readings/initials.js';
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import {askInitials} from './ask.js';
import {type Refusal, refusal, signedWith} from './hands.js';
import type {Session} from './session.js';
import type {Storage} from './store.js';

const WHO = 'witness-mark who';

/** Lives as long as the page, and remembers who works for as long as the window is open. */
export class Workers {
  readonly #session: Session;
  readonly #words: TabletWords;
  readonly #memory: Storage | undefined;
  /** Second persons, by the keys of the hold points that they look at. */
  readonly #witnesses = new Map<string, string>();
  #who: string | undefined;

  constructor(session: Session, words: TabletWords, memory: Storage | undefined) {
    this.#session = session;
    this.#words = words;
    this.#memory = memory;
    const who = memory?.getItem(WHO)?.trim() ?? '';
    this.#who = isInitials(who) ? who : undefined;
  }

  get who(): string | undefined {
    return this.#who;
  }

  /** Asks who works from now on; undefined where nobody says. */
  async ask(): Promise<string | undefined> {
    const {whoTitle: title, whoText: text} = this.#words;
    const who = await askInitials({title, text, initials: this.#who}, this.#words);
    if (who === undefined) return undefined;
    this.#who = who;
    try {
      this.#memory?.setItem(WHO, who);
    } catch {
      // It is remembered for as long as the page stands, then.
    }
    return who;
  }

  async whoAnswers(box: Box, value: string): Promise<string | undefined> {
    const {form} = this.#session.standing;
    const hold = value === '' ? undefined : signedWith(form, box);
    if (hold === undefined) return this.#who ?? this.ask();
    const known = this.#witnesses.get(hold.key);
    // A signature is always given anew; what is looked at before it, by the same person.
    if (known !== undefined && box.kind !== 'hold') return known;
    const witness = await askInitials(
      {
        title: fill(this.#words.witnessTitle, {
          name: hold.by === undefined ? hold.label : `${hold.label} (${hold.by})`,
        }),
        text: this.#words.witnessText,
        initials: known,
        fault: (by) => {
          const refused = refusal(form, this.#session.answers, box, by);
          return refused && refusalText(refused, by, this.#words);
        },
      },
      this.#words,
    );
    if (witness !== undefined) this.#witnesses.set(hold.key, witness);
    return witness;
  }
}

export function refusalText(refused: Refusal, by: string, words: TabletWords): string {
  if (refused.why === 'own-reading') return fill(words.ownReading, {by});
  if (refused.why === 'own-hold') return fill(words.ownHold, {by, hold: refused.hold.label});
  if (refused.steps.length === 0) return fill(words.ownWorkHere, {by});
  return fill(words.ownWork, {by, steps: stepsText(refused.steps, words)});
}

/** `step 9`, `steps 9, 11`. */
export function stepsText(steps: readonly string[], words: TabletWords): string {
  return fill(steps.length === 1 ? words.oneStep : words.manySteps, {list: steps.join(', ')});
}
