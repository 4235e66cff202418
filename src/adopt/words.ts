/** Shop prose and names of items as words that can be compared: singular, in small letters, with one word for each thing. */
import type {Span} from '../text/source.js';

export interface Word {
  /** As it is compared: `crankshaft` for `crank`, `galleries` as `gallery`. */
  readonly stem: string;
  /** As it stands, in small letters; a comma is a word of its own. */
  readonly text: string;
  readonly span: Span;
}

/** The words, numbers and commas of a text, in order. */
export function wordsOf(text: string): Word[] {
  const plain = [...text.matchAll(WORD)].map(({0: found, index}): Word => {
    const lower = found.toLowerCase();
    const single = singular(lower);
    return {
      stem: SAME.get(lower) ?? SAME.get(single) ?? single,
      text: lower,
      span: {start: index, end: index + found.length},
    };
  });
  return joined(plain);
}

const WORD = /[a-z]+|\d+(?:[.,/]\d+)*|,/gi;

/** Two words that are one thing: `big end`, `end play`, `split pin`. */
function joined(words: readonly Word[]): Word[] {
  const result: Word[] = [];
  for (let index = 0; index < words.length; index++) {
    const [one, two] = [words[index], words[index + 1]];
    if (one === undefined) break;
    const stem = two && PAIRS.get(`${one.stem} ${two.stem}`);
    if (stem === undefined || two === undefined) {
      result.push(one);
      continue;
    }
    result.push({stem, text: `${one.text} ${two.text}`, span: {start: one.span.start, end: two.span.end}});
    index++;
  }
  return result;
}

function singular(word: string): string {
  if (word.length < 4 || /(?:ss|us|is)$/.test(word)) return word;
  if (/[^aeiou]ies$/.test(word)) return `${word.slice(0, -3)}y`;
  if (/(?:ch|sh|x|ss)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith('s') ? word.slice(0, -1) : word;
}

/** What shops call the same thing by. Common practice, no source. */
const SAME: ReadonlyMap<string, string> = new Map(
  Object.entries({
    crankshaft: 'crank crankshafts',
    camshaft: 'cam camshafts cams',
    rod: 'conrod conrods',
    lifter: 'tappet tappets follower followers',
    sump: 'pan oilpan',
    gallery: 'oilway oilways passage passages gallery galleries drilling drillings',
    inlet: 'intake',
    shell: 'insert inserts',
    gasket: 'gaskets',
    sealant: 'sealer sealers sealants',
    lube: 'lubricant lubricants',
    moly: 'molybdenum',
    wire: 'lockwire lockwires wires',
    tab: 'tabs',
    threadlocker: 'threadlock',
    micrometer: 'mike mikes',
    measuring: 'gauging',
    screw: 'capscrew capscrews setscrew setscrews',
    dial: 'indicator indicators',
    play: 'float',
    thread: 'threads',
    hand: 'manual',
  }).flatMap(([stem, others]) => others.split(' ').map((other) => [other, stem] as const)),
);

const PAIRS: ReadonlyMap<string, string> = new Map([
  ['big end', 'rod'],
  ['connecting rod', 'rod'],
  ['con rod', 'rod'],
  ['end play', 'endplay'],
  ['split pin', 'cotter'],
  ['cotter pin', 'cotter'],
  ['safety wire', 'wire'],
  ['locking wire', 'wire'],
  ['lock wire', 'wire'],
  ['tab washer', 'tab'],
  ['lock tab', 'tab'],
  ['locking tab', 'tab'],
  ['thread locker', 'threadlocker'],
  ['measuring strip', 'strip'],
  ['lock washer', 'lockwasher'],
  ['liquid gasket', 'liquidgasket'],
  ['oil hole', 'oilhole'],
]);
