/** The tags that the prose of an untagged procedure calls for, step by step, each with how sure it is. */
import type {StepRef} from '../build/program.js';
import {type Command, commandsIn} from '../findings/commands.js';
import {type Prose, paragraphEnd, proseOf} from '../findings/step-prose.js';
import type {Procedure, Step} from '../procedure/model.js';
import type {Verb} from '../procedure/verbs.js';
import type {Item, Specification} from '../spec/model.js';
import {companionsOf} from './companions.js';
import {clauseEndOf, type Heard, hear} from './heard.js';
import {materialAgreement, withoutMaterials} from './material.js';
import {piecesOf} from './pieces.js';
import type {Said} from './scores.js';
import {namesStrangeMaterial} from './strange.js';
import {tagText, workedItem} from './tag-text.js';
import {type Candidate, type Targets, targetsOf} from './target.js';
import {numberAgreement} from './values.js';
import {type Vocabulary, vocabularyOf} from './vocabulary.js';
import {stemsOf, wordsOf} from './words.js';

/** A tag that a step may want, and how sure that is, from 0 to 1. */
export interface Proposal {
  readonly step: Step;
  readonly verb: Verb;
  /** The items that it is about; more than one only where the text names them all. */
  readonly targets: readonly string[];
  /** The tag's text, without its backticks. */
  readonly tag: string;
  /** From 0 to 1. */
  readonly confidence: number;
  /** Where in the file it would stand. */
  readonly at: number;
}

/** At least this sure, and a proposal is written as a tag; below, it is left for a person to settle. */
export const SURE = 0.7;

/** Of what a person must settle, however sure its item is. */
const DOUBTFUL = 0.6;

export function proposalsFor(procedure: Procedure, spec: Specification): readonly Proposal[] {
  return readingFor(procedure, spec).proposals;
}

/** What a half of a command says for which there is no proposal, while there is one for its other half. */
export interface Unfound {
  readonly step: Step;
  readonly says: string;
}

export interface Reading {
  readonly proposals: readonly Proposal[];
  readonly unfound: readonly Unfound[];
}

export function readingFor(procedure: Procedure, spec: Specification): Reading {
  const vocabulary = vocabularyOf(spec);
  const title = wordsOf(procedure.front.title);
  let recent: readonly string[] = [];
  const unfound: Unfound[] = [];
  const proposals = procedure.steps.flatMap((step, order) => {
    const heading = stemsOf([...title, ...wordsOf(step.section)]);
    const reader = new StepReader({procedure, step, order}, {vocabulary, heading, before: recent});
    const found = reader.proposals();
    unfound.push(...reader.unfound);
    const sure = found.filter(({confidence}) => confidence >= SURE).flatMap(({targets}) => targets);
    recent = [...new Set([...sure.reverse(), ...recent])];
    return found;
  });
  return {proposals, unfound};
}

/** What a step is read against. */
interface Around {
  readonly vocabulary: Vocabulary;
  /** Stems of the title and of the heading above. */
  readonly heading: ReadonlySet<string>;
  /** Items that the steps before dealt with, the latest first. */
  readonly before: readonly string[];
}

/** Lives while one step is read: remembers what its commands have dealt with so far. */
class StepReader {
  readonly unfound: Unfound[] = [];
  readonly #ref: StepRef;
  readonly #around: Around;
  readonly #prose: Prose;
  readonly #commands: readonly Command[];
  #own: readonly string[] = [];

  constructor(ref: StepRef, around: Around) {
    this.#ref = ref;
    this.#around = around;
    this.#prose = proseOf(ref);
    this.#commands = commandsIn(this.#prose.text);
  }

  proposals(): Proposal[] {
    const said = new Set(this.#ref.step.tags.map(({verb}) => verb));
    const found: Proposal[] = [];
    for (const [index, command] of this.#commands.entries()) {
      if (command.fits.some((verb) => said.has(verb))) continue;
      for (const one of this.#ofPieces(command, index))
        if (!found.some((other) => saysTheSame(one, other))) found.push(one);
    }
    return found;
  }

  #ofPieces(command: Command, index: number): Proposal[] {
    const {text} = this.#prose;
    const [start, end] = [command.span.end, clauseEndOf(text, this.#commands, index)];
    const pieces = piecesOf(text, {start, end}).map((piece) => ({
      says: piece.slice(start, end).trim(),
      found: this.#of(command, index, piece),
    }));
    if (pieces.some(({found}) => found.length > 0)) {
      const lost = pieces.filter(({found}) => found.length === 0);
      this.unfound.push(...lost.map(({says}) => ({step: this.#ref.step, says})));
    }
    return pieces.flatMap(({found}) => found);
  }

  #of(command: Command, index: number, text: string): Proposal[] {
    const heard = hear(text, this.#commands, index, this.#around);
    if (heard === undefined) return [];
    const {verb, targets} = this.#best(command, heard);
    const {candidates, all} = targets;
    const [first] = candidates;
    if (first === undefined) return [];
    if (candidates.length === 1 || all) this.#own = [...candidates.map(({item}) => item.id), ...this.#own];
    const at = paragraphEnd(this.#ref, this.#prose, command.clause.end);
    const make = (what: Verb, group: readonly Candidate[], tag?: string) =>
      this.#proposal(what, group, {heard, at, tag});
    const bare = (what: Verb) => make(what, [first], `${what}: ${first.item.id}`);
    const {before, after} = companionsOf(verb, first.item, heard);
    const groups = all ? [candidates] : candidates.map((one) => [one]);
    return [...before.map(bare), ...groups.map((group) => make(verb, group)), ...after.map(bare)];
  }

  /** Of the verbs that the word may stand for, the one with the likeliest item. */
  #best(command: Command, heard: Heard): {verb: Verb; targets: Targets} {
    const verbs = command.fits.filter(
      (verb) => verb !== 'renew' || command.verb === 'renew' || /\bnew\b/i.test(heard.text),
    );
    const second = command.verb === 'inspect' ? 2 * SECOND_CHOICE : SECOND_CHOICE;
    const tried = [...verbs, ...(ALSO[command.verb] ?? [])].map((verb, rank) => {
      const targets = targetsOf(this.#said(verb, heard), this.#around.vocabulary);
      const confidence = targets.candidates[0]?.confidence ?? 0;
      return {verb, targets, score: confidence - (rank === 0 ? 0 : second)};
    });
    return tried.reduce((best, one) => (one.score > best.score ? one : best));
  }

  #said(verb: Verb, {phrases, clause, sentence, stretch}: Heard): Said {
    const {vocabulary, heading, before} = this.#around;
    return {
      verb,
      phrases: withoutMaterials(verb, phrases, vocabulary),
      sentence,
      recent: [...this.#own, ...before],
      own: this.#own,
      heading,
      agreement(item: Item, of: Verb) {
        const number = numberAgreement(of, item, stretch, vocabulary.spec);
        return number === 0 ? materialAgreement(of, item, phrases, clause, vocabulary) : number;
      },
    };
  }

  #proposal(
    verb: Verb,
    group: readonly Candidate[],
    {heard, at, tag}: {heard: Heard; at: number; tag: string | undefined},
  ): Proposal {
    const {vocabulary} = this.#around;
    const items = group.map(({item}) => workedItem(verb, item, vocabulary.spec));
    const likely = Math.min(...group.map((one) => one.confidence));
    const strange = namesStrangeMaterial(verb, heard.phrases, vocabulary);
    return {
      step: this.#ref.step,
      verb,
      targets: items.map(({id}) => id),
      tag: tag ?? tagText(verb, items, heard, vocabulary),
      confidence: strange ? Math.min(likely, DOUBTFUL) : likely,
      at,
    };
  }
}

function saysTheSame(one: Proposal, other: Proposal): boolean {
  return one.verb === other.verb && one.targets.join() === other.targets.join();
}

/** What the lexicon's word may come to where the specification has a check for it. */
const ALSO: {readonly [verb in Verb]?: readonly Verb[]} = {turn: ['check'], fill: ['check']};

/** Another verb than the first that the word stands for has to be that much likelier. */
const SECOND_CHOICE = 0.12;
