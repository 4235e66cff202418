/** How well the tags that are proposed for a text are those that it should have: precision and recall, counted by step. */
import {type Proposal, proposalsFor, SURE} from '../../src/adopt/proposals.js';
import type {Procedure, Tag} from '../../src/procedure/model.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readTag} from '../../src/procedure/tag.js';
import type {Verb} from '../../src/procedure/verbs.js';
import type {Specification} from '../../src/spec/model.js';
import {applyEdits} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';

export interface Count {
  right: number;
  wrong: number;
  missed: number;
}

export interface Score {
  /** Proposals that are written as tags. */
  readonly sure: Count;
  /** Those and the ones left to a person: right where any of a step's offers is. */
  readonly all: Count;
  /** Clauses of the tags that are right: a value, material or tool that is as it should be, another, or left out. */
  readonly clauses: Count;
  /** `step: what`, for whoever mends the rules. */
  readonly slips: string[];
}

/** What speaks of the step itself is not in the prose to be found. */
const NOT_PROPOSED: ReadonlySet<Verb> = new Set(['hazard', 'step', 'only', 'if', 'repeat', 'waive']);

export function emptyScore(): Score {
  const count = () => ({right: 0, wrong: 0, missed: 0});
  return {sure: count(), all: count(), clauses: count(), slips: []};
}

/** Takes the tags out of a procedure, has them proposed, and holds the two against each other. */
export function scoreProcedure(procedure: Procedure, spec: Specification, score: Score): void {
  const bare = readProcedure(source(procedure.source.file, withoutTags(procedure)));
  if (bare.steps.length !== procedure.steps.length) throw new Error(`${procedure.source.file} lost a step`);
  const proposals = proposalsFor(bare, spec);
  procedure.steps.forEach((step, index) => {
    const due = step.tags.filter(({verb}) => !NOT_PROPOSED.has(verb));
    // A step of which a part is said by structure alone is still a step: only its plain tags are counted.
    scoreStep(
      step.text,
      due,
      proposals.filter((one) => one.step.index === index),
      score,
    );
  });
}

export function withoutTags({source: {text}, steps}: Procedure): string {
  const edits = steps
    .flatMap(({tags}) => tags)
    .filter(({verb}) => !NOT_PROPOSED.has(verb))
    .map(({span}) => {
      const before = /\s*`+ ?$/.exec(text.slice(0, span.start))?.[0].length ?? 0;
      const after = /^ ?`+/.exec(text.slice(span.end))?.[0].length ?? 0;
      return {span: {start: span.start - before, end: span.end + after}, text: ''};
    })
    .sort((one, other) => one.span.start - other.span.start);
  return applyEdits(text, edits);
}

export function scoreStep(
  says: string,
  due: readonly Tag[],
  proposals: readonly Proposal[],
  score: Score,
): void {
  const wanted = new Map(due.flatMap((tag) => pairsOf(tag).map((pair) => [pair, tag] as const)));
  const read = proposals.map((proposal) => ({proposal, tag: readTag(proposal.tag, 0, '').tag}));
  const sure = read.filter(({proposal}) => proposal.confidence >= SURE);
  count(
    wanted,
    sure.map(({tag}) => tag),
    score.sure,
    (slip) => score.slips.push(`${says} → ${slip}`),
  );
  count(
    wanted,
    read.map(({tag}) => tag),
    score.all,
  );
  for (const {tag} of sure) if (tag) countClauses(tag, wanted, score);
}

function count(
  wanted: ReadonlyMap<string, Tag>,
  tags: readonly (Tag | undefined)[],
  into: Count,
  slip?: (says: string) => void,
): void {
  const said = new Set(tags.flatMap((tag) => (tag ? pairsOf(tag) : ['no tag'])));
  for (const pair of said) {
    if (wanted.has(pair)) into.right++;
    else {
      into.wrong++;
      slip?.(`not ${pair}`);
    }
  }
  for (const pair of wanted.keys()) {
    if (said.has(pair)) continue;
    into.missed++;
    slip?.(`misses ${pair}`);
  }
}

/** A verb and an item, with its places: the unit that is counted. */
function pairsOf({verb, targets}: Tag): string[] {
  return targets.map(
    ({id, places}) =>
      `${verb}: ${id}${
        places.length > 0
          ? `[${places
              .map(({name}) => name)
              .sort()
              .join(', ')}]`
          : ''
      }`,
  );
}

function countClauses(tag: Tag, wanted: ReadonlyMap<string, Tag>, score: Score): void {
  const [pair] = pairsOf(tag);
  const due = pair === undefined ? undefined : wanted.get(pair);
  if (due === undefined) return;
  const said = new Set(clausesOf(tag));
  const asked = new Set(clausesOf(due));
  for (const one of said)
    if (asked.has(one)) score.clauses.right++;
    else {
      score.clauses.wrong++;
      score.slips.push(`${due.raw} → clause ${one}`);
    }
  for (const one of asked) if (!said.has(one)) score.clauses.missed++;
}

/** What to look for is free text, and is not compared. */
function clausesOf({verb, clauses}: Tag): string[] {
  return clauses
    .filter(({word}) => !(word === 'for' && verb !== 'cure'))
    .map(
      ({word, value}) =>
        `${word} ${JSON.stringify(value, (key, one) => (key === 'span' || key === 'step' ? undefined : one))}`,
    );
}

export function precision({right, wrong}: Count): number {
  return right + wrong === 0 ? 1 : right / (right + wrong);
}

export function recall({right, missed}: Count): number {
  return right + missed === 0 ? 1 : right / (right + missed);
}
