/** Short ways to the values of a tag's clauses, so that nobody else has to take a ClauseValue apart. */
import type {Amount} from '../quantity/model.js';
import type {Clause, Procedure, Step, Tag} from './model.js';
import {BRANCH_STATES, type BranchState, type ClauseWord, type Verb} from './verbs.js';

/** The clause that a word opens. A tag holds each word once. */
export function clauseOf(tag: Tag, word: ClauseWord): Clause | undefined {
  return tag.clauses.find((clause) => clause.word === word);
}

/** The ids of a clause, in order; empty where the tag leaves the clause out. */
export function idsOf(tag: Tag, word: ClauseWord): readonly string[] {
  const value = clauseOf(tag, word)?.value;
  return value?.type === 'ids' ? value.ids.map(({id}) => id) : [];
}

/** The amount of a clause; undefined where it is left out, or says a word or a text instead. */
export function amountOf(tag: Tag, word: ClauseWord): Amount | undefined {
  const value = clauseOf(tag, word)?.value;
  return value?.type === 'amount' ? value.amount : undefined;
}

/** The amounts of a clause that lists them (the passes of a torque), in order. */
export function amountsOf(tag: Tag, word: ClauseWord): readonly Amount[] {
  const value = clauseOf(tag, word)?.value;
  return value?.type === 'amounts' ? value.amounts : [];
}

/** What a clause says in words: `snug`, `out`, or free text with its white space folded. */
export function wordsOf(tag: Tag, word: ClauseWord): string | undefined {
  const value = clauseOf(tag, word)?.value;
  if (value?.type === 'word') return value.word;
  return value?.type === 'text' ? value.text : undefined;
}

/** The tags of a step with this verb, its sub-steps' not among them. */
export function tagsOf(step: Pick<Step, 'tags'>, verb: Verb): readonly Tag[] {
  return step.tags.filter((tag) => tag.verb === verb);
}

/** The outermost steps, in reading order. */
export function topSteps({sections}: Pick<Procedure, 'sections'>): Step[] {
  return sections.flatMap(({content}) =>
    content.flatMap((block) => (block.type === 'step' ? [block.step] : [])),
  );
}

/** Which case an `if:` tag speaks of. */
export function branchState(tag: Tag): BranchState {
  const said = wordsOf(tag, 'is');
  return BRANCH_STATES.find((state) => state === said) ?? 'out';
}
