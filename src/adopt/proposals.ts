/** The tags that the prose of an untagged procedure calls for, step by step, each with how sure it is. */
import type {StepRef} from '../build/program.js';
import {type Command, commandsIn} from '../findings/commands.js';
import {type Prose, paragraphEnd, proseOf} from '../findings/step-prose.js';
import type {Procedure, Step} from '../procedure/model.js';
import type {Verb} from '../procedure/verbs.js';
import type {Item, Specification} from '../spec/model.js';
import {materialAgreement, materialOf, toolOf, withoutMaterials} from './material.js';
import {type Phrase, phrasesOf} from './phrases.js';
import type {Said} from './scores.js';
import {type Candidate, type Targets, targetsOf} from './target.js';
import {numberAgreement, type Stretch, stretchOf, valueClauses} from './values.js';
import {completed, mentioned, type Vocabulary, vocabularyOf} from './vocabulary.js';
import {type Word, wordsOf} from './words.js';

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

export function proposalsFor(procedure: Procedure, spec: Specification): readonly Proposal[] {
  const vocabulary = vocabularyOf(spec);
  const title = wordsOf(procedure.front.title);
  let recent: readonly string[] = [];
  return procedure.steps.flatMap((step, order) => {
    const heading = stemsOf([...title, ...wordsOf(step.section)]);
    const found = new StepReader({procedure, step, order}, vocabulary, heading, recent).proposals();
    recent = unique([
      ...found
        .filter(({confidence}) => confidence >= SURE)
        .flatMap(({targets}) => targets)
        .reverse(),
      ...recent,
    ]);
    return found;
  });
}

function unique(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)];
}

/** Lives while one step is read: remembers what its commands have dealt with so far. */
class StepReader {
  readonly #ref: StepRef;
  readonly #vocabulary: Vocabulary;
  readonly #heading: ReadonlySet<string>;
  readonly #before: readonly string[];
  readonly #prose: Prose;
  readonly #commands: readonly Command[];
  #own: string[] = [];

  constructor(ref: StepRef, vocabulary: Vocabulary, heading: ReadonlySet<string>, before: readonly string[]) {
    this.#ref = ref;
    this.#vocabulary = vocabulary;
    this.#heading = heading;
    this.#before = before;
    this.#prose = proseOf(ref);
    this.#commands = commandsIn(this.#prose.text);
  }

  proposals(): Proposal[] {
    const said = new Set(this.#ref.step.tags.map(({verb}) => verb));
    const found: Proposal[] = [];
    for (const [index, command] of this.#commands.entries()) {
      if (command.fits.some((verb) => said.has(verb))) continue;
      for (const proposal of this.#of(command, index))
        if (
          !found.some(
            ({tag, verb, targets}) =>
              tag === proposal.tag || (verb === proposal.verb && targets.join() === proposal.targets.join()),
          )
        )
          found.push(proposal);
    }
    return found;
  }

  #of(command: Command, index: number): Proposal[] {
    const heard = this.#hear(command, index);
    const {verb, targets} = this.#best(command, heard);
    const [first] = targets.candidates;
    if (first === undefined) return [];
    const at = paragraphEnd(this.#ref, this.#prose, command.clause.end);
    const groups = targets.all ? [targets.candidates] : targets.candidates.map((one) => [one]);
    const made = groups.map((group) => this.#proposal(verb, group, heard, at));
    if (targets.candidates.length === 1 || targets.all)
      this.#own = [...targets.candidates.map(({item}) => item.id), ...this.#own];
    return [
      ...this.#renewed(verb, first, heard, at),
      ...made,
      ...this.#turned(verb, first, heard, at),
      ...this.#washered(verb, first, heard, at),
    ];
  }

  /** Of the verbs that the word may stand for, the one with the likeliest item. */
  #best(command: Command, heard: Heard): {verb: Verb; targets: Targets} {
    const verbs = command.fits.filter(
      (verb) => verb !== 'renew' || command.verb === 'renew' || /\bnew\b/i.test(heard.text),
    );
    const tried = [...verbs, ...(ALSO[command.verb] ?? [])].map((verb, rank) => {
      const targets = targetsOf(this.#said(verb, heard), this.#vocabulary);
      const confidence = targets.candidates[0]?.confidence ?? 0;
      return {
        verb,
        targets,
        score: confidence - (rank === 0 ? 0 : command.verb === 'inspect' ? 2 * SECOND_CHOICE : SECOND_CHOICE),
      };
    });
    return tried.reduce((best, one) => (one.score > best.score ? one : best));
  }

  #said(verb: Verb, {phrases, clause, sentence, stretch}: Heard): Said {
    return {
      verb,
      phrases: withoutMaterials(verb, phrases, this.#vocabulary),
      sentence,
      recent: [...this.#own, ...this.#before],
      own: this.#own,
      heading: this.#heading,
      agreement: (item, of) => {
        const number = numberAgreement(of, item, stretch, this.#vocabulary.spec);
        return number === 0 ? materialAgreement(of, item, phrases, clause, this.#vocabulary) : number;
      },
    };
  }

  /** What the words of a command say, up to the next command. */
  #hear(command: Command, index: number): Heard {
    const {text} = this.#prose;
    const next = this.#commands[index + 1]?.span.start ?? text.length;
    const clauseEnd = listEnd(text, Math.min(command.clause.end, next), next);
    const word = wordsOf(text.slice(command.span.start, command.span.end));
    const words = wordsOf(text.slice(command.span.end, clauseEnd)).map((one) => ({
      ...one,
      stem: completed(one.stem, this.#heading, this.#vocabulary),
    }));
    const sentence = text.slice(command.span.start, sentenceEnd(text, command.span.start, next));
    return {
      phrases: phrasesOf(words),
      withWord: [{role: 'with', named: false, words: word}, ...phrasesOf(words)],
      clause: stemsOf([...word, ...words]),
      sentence: stemsOf(wordsOf(sentence)),
      stretch: stretchOf(text.slice(command.span.start, this.#nextOf(command.verb, index) ?? text.length)),
      text: text.slice(command.span.start, clauseEnd),
    };
  }

  #nextOf(verb: Verb, index: number): number | undefined {
    return this.#commands.slice(index + 1).find((command) => command.verb === verb)?.span.start;
  }

  #proposal(verb: Verb, group: readonly Candidate[], heard: Heard, at: number): Proposal {
    const confidence = Math.min(...group.map((one) => one.confidence));
    const [first] = group;
    const items = group.map(({item}) => worked(verb, item, this.#vocabulary.spec));
    const names = items.map((item) => item.id + placesIn(item, heard.phrases));
    const clauses = first === undefined ? '' : this.#clauses(verb, first.item, heard);
    const targets = items.map(({id}) => id);
    return {
      step: this.#ref.step,
      verb,
      targets,
      tag: `${verb}: ${names.join(', ')}${clauses}`,
      confidence,
      at,
    };
  }

  #clauses(verb: Verb, item: Item, {phrases, withWord, stretch, sentence, text}: Heard): string {
    if (verb === 'alter') return alterationClause(item, sentence, this.#vocabulary);
    const material = materialOf(verb, item, withWord, this.#vocabulary);
    const tool = toolOf(phrases, this.#vocabulary);
    const defects = verb === 'inspect' ? /\bfor\s+(.+)$/s.exec(text)?.[1] : undefined;
    return [
      material && verb !== 'install' ? ` with ${material.id}` : '',
      valueClauses(verb, item, stretch),
      tool && TOOLED.has(verb) ? ` using ${tool.id}` : '',
      defects === undefined ? '' : ` for ${quotedWhereNeeded(defects.replace(/\s+/g, ' ').trim())}`,
    ].join('');
  }

  /** `fit a new oil filter`: the new one is taken from its box here, where nothing said so before. */
  #renewed(verb: Verb, {item, confidence}: Candidate, {text}: Heard, at: number): Proposal[] {
    if (
      verb !== 'install' ||
      item.kind !== 'part' ||
      !item.singleUse ||
      !/^\w+\s+(?:in |on )?an?\s+new\b/i.test(text)
    )
      return [];
    return [
      {step: this.#ref.step, verb: 'renew', targets: [item.id], tag: `renew: ${item.id}`, confidence, at},
    ];
  }

  /** `slide the camshaft in, turning as it goes`, of what the specification wants turned. */
  #turned(verb: Verb, {item, confidence}: Candidate, {sentence}: Heard, at: number): Proposal[] {
    if (verb !== 'install' || item.kind !== 'part' || !item.turning || !sentence.has('turning')) return [];
    return [
      {step: this.#ref.step, verb: 'turn', targets: [item.id], tag: `turn: ${item.id}`, confidence, at},
    ];
  }

  /** `torque the bolts, a spring washer under each`. */
  #washered(verb: Verb, {item, confidence}: Candidate, {stretch}: Heard, at: number): Proposal[] {
    if (verb !== 'torque' || item.kind !== 'fastener' || item.lock?.value !== 'spring-washer') return [];
    if (!/\bspring washers?\b/i.test(stretch.text)) return [];
    return [
      {step: this.#ref.step, verb: 'lock', targets: [item.id], tag: `lock: ${item.id}`, confidence, at},
    ];
  }
}

/** What the lexicon's word may come to where the specification has a check for it. */
const ALSO: {readonly [verb in Verb]?: readonly Verb[]} = {turn: ['check'], fill: ['check'], cure: []};

/** Another verb than the first that the word stands for has to be that much likelier. */
const SECOND_CHOICE = 0.12;

interface Heard {
  readonly phrases: readonly Phrase[];
  /** The same, with the commanding word before them: `oil the threads`. */
  readonly withWord: readonly Phrase[];
  readonly clause: ReadonlySet<string>;
  readonly sentence: ReadonlySet<string>;
  readonly stretch: Stretch;
  readonly text: string;
}

/** Verbs that take a tool and whose tool the prose names. */
const TOOLED: ReadonlySet<Verb> = new Set([
  'clean',
  'inspect',
  'measure',
  'lube',
  'seal',
  'install',
  'remove',
  'torque',
  'loosen',
  'check',
  'turn',
]);

function stemsOf(words: readonly Word[]): ReadonlySet<string> {
  return new Set(words.map(({stem}) => stem));
}

/** `the bores, the journals and the seat`: a clause goes on with what the next commas add to its object. */
function listEnd(text: string, from: number, most: number): number {
  FURTHER.lastIndex = from;
  const found = FURTHER.exec(text);
  const end = from + (found?.[0].length ?? 0);
  return found === null || end > most ? from : end;
}

const FURTHER =
  /(?:,?\s+and\s+(?:the|both|all|its|their)\s[^,.;:!?]{1,60}|,\s+(?:the|both|all|its|their)\s[^,.;:!?]{1,60}(?=[,.;:]))*/y;

function sentenceEnd(text: string, from: number, most: number): number {
  const end = /[.!?;](?=\s|$)/.exec(text.slice(from, most));
  return end === null ? most : from + end.index;
}

/** What is cleaned or lubed of a part with one surface is that surface. */
function worked(verb: Verb, item: Item, spec: Specification): Item {
  if (item.kind !== 'part' || (verb !== 'clean' && verb !== 'lube')) return item;
  const [surface, second] = [...spec.items.values()].filter(
    (one) => one.kind === 'surface' && one.on?.value === item.id,
  );
  return surface === undefined || second !== undefined ? item : surface;
}

/** `[front]` where a phrase names some of the item's places and not all. */
function placesIn(item: Item, phrases: readonly Phrase[]): string {
  const said = new Set(phrases.flatMap(({words}) => words.map(({text}) => text)));
  const own = new Set(wordsOf(`${item.name} ${item.id.replaceAll('-', ' ')}`).map(({text}) => text));
  const named = item.at.filter((place) => said.has(place) && !own.has(place));
  return named.length === 0 || named.length === item.at.length ? '' : `[${named.join(', ')}]`;
}

function alterationClause(part: Item, sentence: ReadonlySet<string>, vocabulary: Vocabulary): string {
  const ranked = [...vocabulary.spec.items.values()]
    .filter((one) => one.kind === 'alteration' && one.of.some(({value}) => value === part.id))
    .map((one) => ({id: one.id, share: mentioned(one, sentence, vocabulary)}))
    .sort((one, other) => other.share - one.share);
  const [best] = ranked;
  return best === undefined || best.share === 0 ? '' : ` by ${best.id}`;
}

function quotedWhereNeeded(text: string): string {
  return /\b(?:with|using|to|in|within|for|turn|by|is|because)\b/.test(text) && !text.includes('"')
    ? `"${text}"`
    : text;
}
