/** Makes new inputs out of known ones, by a seeded generator: pieces put in, taken out, doubled, moved and crossed. */
import type {Random} from '../help/random.js';

/** What readers of tags, amounts, YAML, Markdown and JSON look for, and what none of them likes. */
export const PIECES: readonly string[] = [
  ...[
    '`',
    '``',
    '`install: ',
    'torque: ',
    ' to ',
    ' with ',
    ' using ',
    ' in ',
    ' within ',
    ' for ',
    ' because ',
    ' is out',
  ],
  ...[
    '[front]',
    '[',
    ']',
    '(',
    ')',
    '![',
    '](',
    '[x]: /u\n',
    ', ',
    ': ',
    '; ',
    '"',
    "'",
    '\\',
    '/',
    '|',
    '&amp;',
    '<!--',
    '-->',
  ],
  ...[
    '\n',
    '\n\n',
    '\r\n',
    '\r',
    '\t',
    '    ',
    '\n1. ',
    '\n   1. ',
    '\n- ',
    '\n> ',
    '\n> **Warning:** ',
    '\n## ',
    '\n---\n',
    '```\n',
    '~~~',
  ],
  ...[
    '0',
    '1',
    '85',
    '1/2',
    '0.0025',
    '1,250',
    '1e400',
    '-0',
    '−',
    '±',
    '–',
    '½',
    ' lbf·ft',
    ' N·m',
    ' in',
    ' mm',
    '°',
    ' h',
    '%',
    'max',
    'unknown',
    'none',
    'standard',
  ],
  ...[
    '{',
    '}',
    '{}',
    '[]',
    '&a ',
    '*a',
    '!!js/function ',
    '<<: ',
    '? ',
    '- ',
    '|\n',
    '>-\n',
    '# ',
    '...\n',
    '%YAML 1.1\n',
    'null',
    '~',
    'true',
  ],
  ...[
    'constructor',
    '__proto__',
    'toString',
    'hasOwnProperty',
    'step: again',
    'repeat: again',
    'if: ',
    'only: ',
    'waive: left-out because x',
  ],
  ...[
    '\0',
    '\u0007',
    '\u001B[31m',
    '\u009B',
    '\uFEFF',
    '\u200B',
    '\u200D',
    '\u202E',
    '\u2028',
    '\u0085',
    '\uD83D',
    '\uDE00',
    '\u{10FFFF}',
    'é',
    '中',
    'ﬀ',
    'İ',
  ],
];

const MOST = 20_000;

/** One to four changes; never longer than 20,000 UTF-16 units. */
export function mutated(text: string, corpus: readonly string[], random: Random): string {
  let now = text;
  for (let left = 1 + Math.floor(random() * 4); left > 0; left--) now = changed(now, corpus, random);
  return now.slice(0, MOST);
}

function changed(text: string, corpus: readonly string[], random: Random): string {
  const [at, to] = rangeIn(text, random);
  const piece = pick(PIECES, random) ?? '';
  switch (Math.floor(random() * 8)) {
    case 0:
      return text.slice(0, at) + text.slice(to);
    case 1:
      return text.slice(0, at) + piece.repeat(1 + Math.floor(random() ** 4 * 300)) + text.slice(at);
    case 2:
      return text.slice(0, to) + text.slice(at);
    case 3:
      return (
        text.slice(0, at) +
        (pick(corpus, random) ?? '').slice(...rangeIn(pick(corpus, random) ?? '', random)) +
        text.slice(to)
      );
    case 4:
      return text.slice(0, at) + text.slice(to) + text.slice(at, to);
    case 5:
      return (
        text.slice(0, at) + String.fromCodePoint(Math.floor(random() ** 3 * 0x10ffff)) + text.slice(at + 1)
      );
    case 6:
      return text.slice(0, at);
    default:
      return text.slice(0, at) + piece + text.slice(at + Math.floor(random() * 3));
  }
}

function rangeIn(text: string, random: Random): [number, number] {
  const start = Math.floor(random() * (text.length + 1));
  return [start, Math.min(text.length, start + Math.floor(random() ** 3 * 200))];
}

export function pick<T>(list: readonly T[], random: Random): T | undefined {
  return list[Math.floor(random() * list.length)];
}
