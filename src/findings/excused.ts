/** `untagged:` in the front matter of a procedure: what its prose may speak of without a tag, and what it may not excuse. */
import type {Found} from '../build/found.js';
import type {Procedure} from '../procedure/model.js';
import type {Verb} from '../procedure/verbs.js';
import type {Item, Specification} from '../spec/model.js';
import {DETERMINERS} from './shop-grammar.js';

/** Deeds that hold an engine together, or judge it: no list of words makes one of them go without its tag. */
const NEVER: ReadonlySet<Verb> = new Set([
  'torque',
  'loosen',
  'lock',
  'seal',
  'cure',
  'measure',
  'lay',
  'check',
  'witness',
  'alter',
  'renew',
]);

/** Lives while a procedure is judged: remembers which words were of use. */
export class Excused {
  readonly #procedure: Procedure;
  readonly #spec: Specification;
  readonly #used = new Set<string>();

  constructor(procedure: Procedure, spec: Specification) {
    this.#procedure = procedure;
    this.#spec = spec;
  }

  /** Whether a command of this verb needs no tag, by the words after it. */
  excuses(verb: Verb, rest: string): boolean {
    const listed = this.#procedure.front.untagged ?? [];
    if (NEVER.has(verb)) return false;
    const said = inWords(rest);
    const named = listed.filter(
      ({words}) => saysEnough(words) && said.includes(inWords(words)) && !this.#itemOf(words),
    );
    for (const {words} of named) this.#used.add(words);
    return named.length > 0;
  }

  /** What stands in the list and may not, or is of no use. Call it when every step has been judged. */
  faults(): Found[] {
    const {front, source} = this.#procedure;
    return (front.untagged ?? []).flatMap(({words, span}) => {
      if (this.#used.has(words)) return [];
      const where = {file: source.file, span};
      if (!saysEnough(words))
        return [{where, message: `untagged: ${words} could be anything; name the thing itself`}];
      const item = this.#itemOf(words);
      const message = item
        ? `untagged: ${words} is ${item.id} of the specification, which a tag can speak of; take it out`
        : `untagged: ${words} excuses no command of this procedure; take it out`;
      return [{where, message}];
    });
  }

  #itemOf(words: string): Item | undefined {
    const said = inWords(words);
    return [...this.#spec.items.values()].find(
      (item) => item.kind !== 'tool' && namesOf(item).some((name) => inWords(name) === said),
    );
  }
}

/** A word that stands in any sentence would excuse any. */
function saysEnough(words: string): boolean {
  return inWords(words)
    .split(' ')
    .some((word) => word.length > 2 && !DETERMINERS.has(word) && !VAGUE.has(word));
}

const VAGUE = new Set(
  'all and any each end everything for from into off out part parts thing things with'.split(' '),
);

/** In lower case, with a single space around each word: ` set of shims `. Articles say nothing at the front. */
export function inWords(text: string): string {
  const words = text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  return ` ${words.replace(/^(?:the|an?|your) /, '')} `;
}

/** How prose may call an item: by its name, or by its id in words. */
export function namesOf({id, name}: Item): readonly string[] {
  return [inWords(name).trim(), id.replaceAll('-', ' ')];
}
