/** How well the rules read the corpus: counted once, for the tests and for the benchmark. */
import {check} from '../../src/findings/check.js';
import {commandsIn} from '../../src/findings/commands.js';
import {book} from '../help/example.js';
import {CORPUS_ENGINE, CORPUS_SHOP, type ProseCase} from './prose-corpus.js';

export interface Score {
  readonly right: number;
  /** Said by the rules and not by the labels, and the other way round: `sentence → what`. */
  readonly wrong: readonly string[];
  readonly missed: readonly string[];
  /** Shares of one; 1 where nothing is said or due. */
  readonly precision: number;
  readonly recall: number;
}

/** Commands, counted by sentence and verb. */
export function scoreCommands(cases: readonly ProseCase[]): Score {
  let right = 0;
  const wrong: string[] = [];
  const missed: string[] = [];
  for (const {says, commands} of cases) {
    const read = new Set(commandsIn(says.replaceAll('*', ' ')).map(({verb}) => verb));
    for (const verb of read) {
      if (commands.includes(verb)) right += 1;
      else wrong.push(`${says} → ${verb}`);
    }
    for (const verb of commands) if (!read.has(verb)) missed.push(`${says} → ${verb}`);
  }
  return score(right, wrong, missed);
}

export function score(right: number, wrong: readonly string[], missed: readonly string[]): Score {
  return {
    right,
    wrong,
    missed,
    precision: share(right, wrong.length),
    recall: share(right, missed.length),
  };
}

function share(right: number, off: number): number {
  return right + off === 0 ? 1 : right / (right + off);
}

/** Sentences of which a number disagrees with the tag, as the finding reports them. */
export function scoreNumbers(cases: readonly ProseCase[]): Score {
  let right = 0;
  const wrong: string[] = [];
  const missed: string[] = [];
  for (const {says, tag, number} of cases) {
    if (tag === undefined) continue;
    const found = check(
      book({engine: CORPUS_ENGINE, shop: CORPUS_SHOP, procedures: {'one.md': `1. ${says} \`${tag}\`\n`}}),
    ).findings.some(({name}) => name === 'prose-disagrees');
    if (found && number === 'disagrees') right += 1;
    else if (found) wrong.push(`${says} → ${tag}`);
    else if (number === 'disagrees') missed.push(`${says} → ${tag}`);
  }
  return score(right, wrong, missed);
}
