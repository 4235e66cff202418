/** Tags inside Markdown as VS Code's own engine of grammars colours them, on top of its own grammar of Markdown. */
import {readFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {beforeAll, describe, expect, it} from 'vitest';
import oniguruma from 'vscode-oniguruma';
import textmate, {type IGrammar} from 'vscode-textmate';
import {SCOPE, tagGrammar} from '../../src/editor/vscode/grammar.js';
import {VERBS} from '../../src/procedure/verbs.js';

const {resolve} = createRequire(import.meta.url);
const MARKDOWN = 'text.html.markdown';

let grammar: IGrammar;

beforeAll(async () => {
  await oniguruma.loadWASM(readFileSync(resolve('vscode-oniguruma/release/onig.wasm')));
  const texts = new Map([
    [MARKDOWN, readFileSync(resolve('tm-grammars/grammars/markdown.json'), 'utf8')],
    [SCOPE, JSON.stringify(tagGrammar())],
  ]);
  const registry = new textmate.Registry({
    onigLib: Promise.resolve(oniguruma),
    loadGrammar: async (scope) => {
      const text = texts.get(scope);
      return text === undefined ? null : textmate.parseRawGrammar(text, `${scope}.json`);
    },
    getInjections: (scope) => (scope === MARKDOWN ? [SCOPE] : []),
  });
  const loaded = await registry.loadGrammar(MARKDOWN);
  if (loaded === null) throw new Error('the grammar of Markdown could not be loaded');
  grammar = loaded;
});

/** What each word is coloured as, by the last scope of ours that it has. */
function coloured(text: string): [string, string][] {
  let state = textmate.INITIAL;
  return text.split('\n').flatMap((line) => {
    const {tokens, ruleStack} = grammar.tokenizeLine(line, state);
    state = ruleStack;
    return tokens.flatMap(({startIndex, endIndex, scopes}): [string, string][] => {
      const ours = scopes.findLast((scope) => scope.endsWith('.witness-mark') && !scope.startsWith('meta'));
      const word = line.slice(startIndex, endIndex).trim();
      return ours === undefined || word === '' ? [] : [[word, ours.replace('.witness-mark', '')]];
    });
  });
}

const VERB = 'entity.name.function.verb';
const ITEM = 'variable.other.item';
const CLAUSE = 'keyword.other.clause';
const NUMBER = 'constant.numeric';
const UNIT = 'keyword.other.unit';
const COLON: [string, string] = [':', 'punctuation.separator'];

describe('the grammar', () => {
  it.each<[string, [string, string][]]>([
    [
      '1. Wash. `clean: main-saddles with solvent`',
      [['clean', VERB], COLON, ['main-saddles', ITEM], ['with', CLAUSE], ['solvent', ITEM]],
    ],
    [
      '1. Up. `torque: bolts to 80 lbf·ft in 30, 60, 80`',
      [
        ['torque', VERB],
        COLON,
        ['bolts', ITEM],
        ['to', CLAUSE],
        ['80', NUMBER],
        ['lbf·ft', UNIT],
        ['in', CLAUSE],
        ['30,', NUMBER],
        ['60,', NUMBER],
        ['80', NUMBER],
      ],
    ],
    [
      '1. Read. `measure: gap within 0.004–0.009 in`',
      [['measure', VERB], COLON, ['gap', ITEM], ['within', CLAUSE], ['0.004–0.009', NUMBER], ['in', UNIT]],
    ],
    [
      '1. Trial. `waive: clean-first because it comes out again`',
      [
        ['waive', VERB],
        COLON,
        ['clean-first', ITEM],
        ['because', CLAUSE],
        ['it comes out again', 'string.unquoted.reason'],
      ],
    ],
    ['> **Warning:** It burns. `hazard: fire`', [['hazard', VERB], COLON, ['fire', ITEM]]],
  ])('colours %j', (text, expected) => {
    expect(coloured(text)).toEqual(expected);
  });

  it('colours places', () => {
    expect(coloured('1. Wire. `lock: bolts[front]`')).toContainEqual(['front', 'constant.other.place']);
  });

  it.each(VERBS.map((verb) => [verb]))('knows %s', (verb) => {
    expect(coloured(`1. Do. \`${verb}: x\``)[0]).toEqual([verb, VERB]);
  });

  it.each([
    'See `https://example.invalid`.',
    'Run `x = 1`.',
    '```\nclean: x\n```',
    '    `clean: x`',
    'clean: x',
    'Turn `clean` it.',
  ])('leaves %j alone', (text) => {
    expect(coloured(text)).toEqual([]);
  });

  it('colours what stands on the first line of a tag; the server colours the rest by what it means', () => {
    expect(coloured('1. Over two lines. `lube: faces\n   with assembly-lube`')).toEqual([
      ['lube', VERB],
      COLON,
      ['faces', ITEM],
    ]);
  });

  it('stops an unclosed tag at the next step', () => {
    expect(coloured('1. Wash. `clean: x\n2. Set the part with care.')).toEqual([
      ['clean', VERB],
      COLON,
      ['x', ITEM],
    ]);
  });
});
