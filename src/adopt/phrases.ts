/** The noun phrases of a command: what is done, what it is done to, and what with. */
import type {Word} from './words.js';

/** What a phrase is to the command, by the word before it. */
export type Role = 'object' | 'onto' | 'with' | 'off' | 'other';

export interface Phrase {
  readonly role: Role;
  readonly words: readonly Word[];
  /** An article stands before it, so it is a thing and not a manner. */
  readonly named: boolean;
  /** `threads of the cap bolts`, and the two parts of such a one. */
  readonly of?: 'whole' | 'head' | 'owner';
  /** Of a whole one, how many of its words stand before the `of`. */
  readonly heads?: number;
}

/** The phrases after a commanding word, in order; of `threads of the cap bolts` the whole, and then each part. */
export function phrasesOf(words: readonly Word[]): Phrase[] {
  // `Look over the shaft`, `drive in the plugs`: the first small word belongs to the command.
  const [first] = words;
  const particle = first !== undefined && (PARTICLES.has(first.text) || first.text === 'at');
  const runs = runsOf(particle ? words.slice(1) : words);
  return runs.flatMap((run, index): Phrase[] => {
    const next = runs[index + 1];
    const own = whole(run, next);
    if (next?.opener === 'of') {
      return [
        {...own, words: [...own.words, ...next.words], of: 'whole', heads: own.words.length},
        {...own, of: 'head'},
      ];
    }
    return [run.opener === 'of' ? {...own, of: 'owner'} : own];
  });
}

interface Run {
  readonly named: boolean;
  /** `of`, `and`, a preposition, or '' where nothing but an article or the command opens it. */
  readonly opener: string;
  readonly role: Role;
  readonly words: Word[];
}

function runsOf(words: readonly Word[]): Run[] {
  const runs: Run[] = [];
  let role: Role = 'object';
  let opener = '';
  let current: Word[] = [];
  let named = false;
  const close = () => {
    if (current.length > 0) {
      runs.push({opener, role, named, words: current});
      opener = '';
      named = false;
    }
    current = [];
  };
  for (const word of words) {
    const {text} = word;
    if (ROLES.has(text)) {
      close();
      role = ROLES.get(text) ?? 'other';
      opener = text;
    } else if (text === 'of' || text === 'and' || text === 'or' || text === ',') {
      close();
      opener = text;
    } else if (SMALL.has(text)) {
      close();
      named ||= ARTICLES.has(text);
    } else current.push(word);
  }
  close();
  return runs;
}

/** `upper and lower main shells`: what has one word only takes the end of the phrase after `and`. */
function whole({opener, role, named, words}: Run, next: Run | undefined): Phrase {
  const shares = words.length === 1 && next?.opener === 'and' && next.words.length > 1 && opener !== 'of';
  return {role, named, words: shares ? [...words, ...next.words.slice(1)] : words};
}

const PARTICLES: ReadonlySet<string> = new Set('over up in on out down off through back along'.split(' '));

const ROLES: ReadonlyMap<string, Role> = new Map([
  ...['with', 'using'].map((word) => [word, 'with'] as const),
  ...'on onto over round around along across into in inside to up down through against at under'
    .split(' ')
    .map((word) => [word, 'onto'] as const),
  ...['off', 'from', 'out'].map((word) => [word, 'off'] as const),
  ...'for by until before after while when as behind between beside without than since so if where that which because'
    .split(' ')
    .map((word) => [word, 'other'] as const),
]);

const ARTICLES: ReadonlySet<string> = new Set('the a an its their his your each every both all'.split(' '));

/** Articles and the like, and what is said of anything: they part phrases or stand in them, and name nothing. */
const SMALL: ReadonlySet<string> = new Set(
  `the a an its their his your this that these those each every both all any it them they is are be must will
  should not no then again once more own other one two three four five six eight new old clean dry whole thin
  little fresh`.split(/\s+/),
);
