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
  readonly contentName?: string;
  readonly include?: string;
  readonly captures?: Captures;
  readonly beginCaptures?: Captures;
  readonly endCaptures?: Captures;
  readonly patterns?: readonly Rule[];
}

type Captures = Readonly<Record<string, {readonly name: string}>>;

/** The name by which an editor knows this grammar. */
export const SCOPE = 'witness-mark.tag.injection';

const TICKS = {name: 'punctuation.definition.raw.markdown'};

/** `because` takes the rest, and `in` after a number is the inch. */
const PLAIN_WORDS = CLAUSE_WORDS.filter((word) => word !== 'because' && word !== 'in').join('|');

/** A verb and its colon, in groups two and three; the ticks before it are group one. Three alone are a fence. */
const OPENS = `(?!\`{3,}[^\`]*$)(\`+)(?!\`)\\s*(${VERBS.join('|')})(:)(?!//|\\\\)`;

/** An empty line, a step, a point, a quote, a heading or a fence ends a paragraph, and all that is open in it. */
const PARAGRAPH_ENDS = '(?=(?:^|\\G(?<=[\\s>]))\\s*(?:$|(?:\\d+[.)]|[-*+]|#{1,6})\\s|>|`{3}))';

/** Words, and code that is closed on its line: the first group is its ticks. */
const CLOSED = '(?:[^`\\\\]|\\\\.|(`+)(?!`)(?:[^`]|(?!(?<!`)\\1(?!`))`)+(?<!`)\\1(?!`))*+';

/** The words before and behind a place, at the edges of a line too. */
const AFTER = '(?<=\\s|^)';
const BEFORE = '(?=\\s|$)';

/** What is opened inside a tag ends with it. */
const TAG_ENDS = `(?=\`)|${PARAGRAPH_ENDS}`;

const INSIDE: readonly Rule[] = [
  {
    begin: `${AFTER}(because)${BEFORE}`,
    beginCaptures: {1: {name: 'keyword.other.clause.witness-mark'}},
    end: TAG_ENDS,
    contentName: 'string.unquoted.reason.witness-mark',
  },
  {name: 'string.quoted.double.witness-mark', begin: '"', end: `"|${TAG_ENDS}`},
  {name: 'string.quoted.double.witness-mark', begin: '“', end: `”|${TAG_ENDS}`},
  {
    begin: '(\\[)',
    beginCaptures: {1: {name: 'punctuation.section.brackets.begin.witness-mark'}},
    end: `(\\])|${TAG_ENDS}`,
    endCaptures: {1: {name: 'punctuation.section.brackets.end.witness-mark'}},
    contentName: 'constant.other.place.witness-mark',
  },
  {name: 'keyword.other.clause.witness-mark', match: `${AFTER}(?:${PLAIN_WORDS})${BEFORE}`},
  {name: 'keyword.other.clause.witness-mark', match: `${AFTER}in(?=\\s+[±≥≤]?\\d|\\s*$)`},
  {
    match: `(?<![\\w-])([±≥≤+−-]?\\d[\\d.,/–½¼¾⅛⅜⅝⅞-]*)(?:\\s*(?!(?:because|${PLAIN_WORDS})${BEFORE})([a-zA-Zµ°Ω]+(?:·[a-zA-Z]+)?)(?![\\w-]))?`,
    captures: {
      1: {name: 'constant.numeric.witness-mark'},
      2: {name: 'keyword.other.unit.witness-mark'},
    },
  },
  {name: 'variable.other.item.witness-mark', match: '[a-z0-9]+(?:-[a-z0-9]+)*'},
];

const TAG: Rule = {
  name: 'markup.inline.raw.string.markdown meta.tag.witness-mark',
  begin: OPENS,
  beginCaptures: {
    1: TICKS,
    2: {name: 'entity.name.function.verb.witness-mark'},
    3: {name: 'punctuation.separator.witness-mark'},
  },
  end: `(?<!\`)(\\1)(?!\`)|${PARAGRAPH_ENDS}`,
  endCaptures: {1: TICKS},
  patterns: INSIDE,
};

/**
 * The editor's own rule for a paragraph goes line by line, and takes with it whatever is still open. So a line on which
 * a tag stays open is a paragraph of ours, which lasts until a line ends with no tag open. Nothing is injected
 * there: the rule would begin again where it begins.
 */
const WRAPPED: Rule = {
  name: 'meta.paragraph.markdown meta.tags.witness-mark',
  begin: `(?:^|\\G) {0,3}(?=[^\\s>|<#\`]|\`(?!\`\`))(?!(?:\\d+[.)]|[-*+])\\s)(?=${CLOSED}${OPENS})`,
  end: `$|${PARAGRAPH_ENDS}`,
  patterns: [TAG, {include: 'text.html.markdown#inline'}, {include: 'text.html.derivative'}],
};

/** Goes in before the editor's own rule for code spans, and leaves all other code to it. */
export function tagGrammar(): Grammar {
  return {
    scopeName: SCOPE,
    injectionSelector:
      'L:text.html.markdown - markup.fenced_code - markup.raw.block - markup.inline.raw - comment - meta.embedded - meta.tags',
    patterns: [WRAPPED, TAG],
  };
}
