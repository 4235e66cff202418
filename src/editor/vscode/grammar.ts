/** The grammar that colours tags inside Markdown, made from the table of verbs so that it never falls behind. */
import {CLAUSE_WORDS, VERBS} from '../../procedure/verbs.js';

/** A TextMate grammar, as far as this one goes. */
export interface Grammar {
  readonly scopeName: string;
  readonly injectionSelector: string;
  readonly patterns: readonly Rule[];
}

interface Rule {
  readonly name?: string;
  readonly match?: string;
  readonly begin?: string;
  readonly end?: string;
  readonly captures?: Captures;
  readonly beginCaptures?: Captures;
  readonly endCaptures?: Captures;
  readonly patterns?: readonly Rule[];
}

type Captures = Readonly<Record<string, {readonly name: string}>>;

export const SCOPE = 'witness-mark.tag.injection';

const TICKS = {name: 'punctuation.definition.raw.markdown'};

/** `because` takes the rest, and `in` after a number is the inch. */
const PLAIN_WORDS = CLAUSE_WORDS.filter((word) => word !== 'because' && word !== 'in').join('|');

/** Goes in before the editor's own rule for code spans, and leaves all other code to it. */
export function tagGrammar(): Grammar {
  return {
    scopeName: SCOPE,
    injectionSelector: 'L:text.html.markdown - markup.fenced_code - markup.raw.block - markup.inline.raw',
    patterns: [
      {
        name: 'markup.inline.raw.string.markdown meta.tag.witness-mark',
        begin: `(\`+)\\s*(${VERBS.join('|')})(:)(?!//|\\\\)`,
        beginCaptures: {
          1: TICKS,
          2: {name: 'entity.name.function.verb.witness-mark'},
          3: {name: 'punctuation.separator.witness-mark'},
        },
        // An unclosed tag ends with its paragraph or its step.
        end: '(\\1)(?!`)|(?=^\\s*$)|(?=^\\s*(?:\\d+[.)]|[-*+>#])\\s)',
        endCaptures: {1: TICKS},
        patterns: INSIDE,
      },
    ],
  };
}

const INSIDE: readonly Rule[] = [
  {
    match: '(?<=\\s)(because)\\s+([^`]+)',
    captures: {
      1: {name: 'keyword.other.clause.witness-mark'},
      2: {name: 'string.unquoted.reason.witness-mark'},
    },
  },
  {name: 'string.quoted.double.witness-mark', match: '"[^"`]*"|“[^”`]*”'},
  {
    match: '(\\[)([^\\]`]*)(\\])',
    captures: {
      1: {name: 'punctuation.section.brackets.begin.witness-mark'},
      2: {name: 'constant.other.place.witness-mark'},
      3: {name: 'punctuation.section.brackets.end.witness-mark'},
    },
  },
  {name: 'keyword.other.clause.witness-mark', match: `(?<=\\s)(?:${PLAIN_WORDS})(?=\\s)`},
  {name: 'keyword.other.clause.witness-mark', match: '(?<=\\s)in(?=\\s+[±≥≤]?\\d)'},
  {
    match: '(?<![\\w-])([±≥≤+−-]?\\d[\\d.,/–½¼¾⅛⅜⅝⅞-]*)(?:\\s*([a-zA-Zµ°Ω]+(?:·[a-zA-Z]+)?)(?![\\w-]))?',
    captures: {
      1: {name: 'constant.numeric.witness-mark'},
      2: {name: 'keyword.other.unit.witness-mark'},
    },
  },
  {name: 'variable.other.item.witness-mark', match: '[a-z0-9]+(?:-[a-z0-9]+)*'},
];
