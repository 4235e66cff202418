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

/** Sentences of which a number disagrees with the tag, as the finding reports them: each a procedure of one book. */
export function scoreNumbers(cases: readonly ProseCase[]): Score {
  const numbered = cases.filter(({tag}) => tag !== undefined);
  const procedures = Object.fromEntries(
    numbered.map(({says, tag}, index) => [`${index}.md`, `1. ${says} \`${tag}\`\n`]),
  );
  const {findings} = check(book({engine: CORPUS_ENGINE, shop: CORPUS_SHOP, procedures}));
  const found = new Set(findings.filter(({name}) => name === 'prose-disagrees').map(({where}) => where.file));
  const shown = ({says, tag}: ProseCase) => `${says} → ${tag}`;
  const reported = numbered.filter((_, index) => found.has(`${index}.md`));
  const right = reported.filter(({number}) => number === 'disagrees');
  const wrong = reported.filter(({number}) => number !== 'disagrees');
  const missed = numbered.filter((one) => one.number === 'disagrees' && !right.includes(one));
  return score(right.length, wrong.map(shown), missed.map(shown));
}
