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
    // Without any, the engine takes front matter for Markdown.
    ['source.yaml', '{"scopeName": "source.yaml", "patterns": []}'],
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

/** All that a word is coloured as. */
function scopesOf(text: string, word: string): readonly string[] {
  let state = textmate.INITIAL;
  for (const line of text.split('\n')) {
    const {tokens, ruleStack} = grammar.tokenizeLine(line, state);
    state = ruleStack;
    const at = line.indexOf(word);
    if (at >= 0)
      return tokens.find(({startIndex, endIndex}) => startIndex <= at && at < endIndex)?.scopes ?? [];
  }
  return [];
}

const VERB = 'entity.name.function.verb';
const ITEM = 'variable.other.item';
const CLAUSE = 'keyword.other.clause';
const NUMBER = 'constant.numeric';
const UNIT = 'keyword.other.unit';
const COLON: [string, string] = [':', 'punctuation.separator'];

/** A tag that is often wrapped. */
const LUBED: [string, string][] = [
  ['lube', VERB],
  COLON,
  ['faces', ITEM],
  ['with', CLAUSE],
  ['assembly-lube', ITEM],
];

const OPENERS = ['[', '"'];

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

  it.each<[string, [string, string][]]>([
    [
      '1. Over two lines. `lube: faces\n   with assembly-lube`, and on. `clean: x`',
      [...LUBED, ['clean', VERB], COLON, ['x', ITEM]],
    ],
    ['1. A long step,\n   and further. `lube: faces\n   with assembly-lube`', LUBED],
    ['10. Ten. `lube: faces\n    with assembly-lube`', LUBED],
    ['1. Out.\n\n   1. In. `lube: faces\n      with assembly-lube`\n\n      Quite.', LUBED],
    ['- A point. `lube: faces\n  with assembly-lube`', LUBED],
    ['Words at the margin. `lube: faces\nwith assembly-lube`', LUBED],
    ['> **Caution:** Words. `lube: faces\n> with assembly-lube`', LUBED],
    ['1. Three. `lube:\n   faces with\n   assembly-lube`', LUBED],
    ['1. Two ticks. ``lube: faces\n   with assembly-lube``', LUBED],
    ['1. See `x = 1` and **mind**. `lube: faces\n   with assembly-lube`', LUBED],
    ['1. `lube: faces\n   with assembly-lube` first, then words.', LUBED],
    [
      '1. Two in a row. `clean: x` `clean: y,\n   z` `clean: u,\n   v`',
      [
        ['clean', VERB],
        COLON,
        ['x', ITEM],
        ['clean', VERB],
        COLON,
        ['y', ITEM],
        ['z', ITEM],
        ['clean', VERB],
        COLON,
        ['u', ITEM],
        ['v', ITEM],
      ],
    ],
    [
      '1. Trial. `waive: clean-first because it comes\n   out again`',
      [
        ['waive', VERB],
        COLON,
        ['clean-first', ITEM],
        ['because', CLAUSE],
        ['it comes', 'string.unquoted.reason'],
        ['out again', 'string.unquoted.reason'],
      ],
    ],
    [
      '1. Sign. `witness: bottom-end[front,\n   rear] by "shop\n   lead"`',
      [
        ['witness', VERB],
        COLON,
        ['bottom-end', ITEM],
        ['[', 'punctuation.section.brackets.begin'],
        ['front,', 'constant.other.place'],
        ['rear', 'constant.other.place'],
        [']', 'punctuation.section.brackets.end'],
        ['by', CLAUSE],
        ['"', 'string.quoted.double'],
        ['shop', 'string.quoted.double'],
        ['lead', 'string.quoted.double'],
        ['"', 'string.quoted.double'],
      ],
    ],
    [
      '1. Up. `torque: bolts to 80 lbf·ft in\n   30, 60, 80`',
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
  ])('colours a tag over lines: %j', (text, expected) => {
    expect(coloured(text)).toEqual(expected);
  });

  it('colours every tag of a real procedure the same, wherever it is wrapped between its clauses', () => {
    const text = readFileSync('procedures/ottermouth-four/04-crankshaft.md', 'utf8');
    const tags = [...new Set(text.match(/`[a-z]+: [^`]+`/g))];
    expect(tags.length).toBeGreaterThan(30);
    for (const tag of tags) {
      const plain = coloured(`1. Do. ${tag}`);
      for (const {0: space, index} of tag.matchAll(
        / (?=(?:with|using|to|in(?= \d)|within|for|by|because) )/g,
      )) {
        const wrapped = `${tag.slice(0, index)}\n   ${tag.slice(index + space.length)}`;
        expect(coloured(`1. Do. ${wrapped}`), wrapped).toEqual(plain);
      }
    }
  });

  it.each([
    ['1. Wash. `clean: x', '2. Set the part with care.'],
    ['1. Wash. `clean: x', '', '   Set the part with care.'],
    ['1. Wash. `clean: x', '   ', '   Set the part with care.'],
    ['1. Wash. `clean: x', '   - a point', '   - another'],
    ['1. Wash. `clean: x', '   1. a sub-step'],
    ['1. Wash. `clean: x', '## Next'],
    ['1. Wash. `clean: x', '> a quote'],
    ['1. Wash. `clean: x', '   ```sh', '   ls with care', '   ```', '   after it'],
    ['Wash. `clean: x', '', 'Set the part.', 'And more.'],
    ['> Wash. `clean: x', '', '> Set the part.'],
    ['> Wash. `clean: x', '> 1. Set the part.'],
    ['1. Wash. `clean: x [', '2. Set the part with care.'],
    ['1. Wash. `clean: x "', '', 'Set the part with care.'],
  ])('stops an unclosed tag where its paragraph ends: %j, %j', (...lines) => {
    expect(coloured(lines.join('\n')).slice(0, 3)).toEqual([['clean', VERB], COLON, ['x', ITEM]]);
    expect(coloured(lines.join('\n')).filter(([word]) => !OPENERS.includes(word))).toHaveLength(3);
  });

  it.each([
    '```lube: x\nwith y\n```',
    '   ```lube: x\n   with y\n   ```',
    '<!-- `clean: x\nwith y` -->',
    '---\ntitle: `clean: x\n---\n\nwords',
  ])('takes no other code for the beginning of a tag over lines: %j', (text) => {
    expect(coloured(text)).toEqual([]);
  });

  it('goes on with Markdown behind a tag over lines', () => {
    expect(scopesOf('1. Up. `lube: x\n   with y` **mind**', 'mind')).toContain('markup.bold.markdown');
    expect(scopesOf('1. Up. **mind** `lube: x\n   with y`', 'mind')).toContain('markup.bold.markdown');
    expect(scopesOf('1. Up. `lube: x\n   with y`\n2. On. **mind**', 'mind')).toContain(
      'markup.bold.markdown',
    );
    expect(scopesOf('`lube: x\nwith y`\n\n# Head', 'Head').join(' ')).toContain('heading');
  });
});
