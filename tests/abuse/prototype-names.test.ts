/**
 * Names that every object of JavaScript has by birth are names like any other: a book whose items, places, sources and
 * words are called so is judged and printed as one that calls them something else.
 */

import {relative} from 'node:path';
import {describe, expect, test} from 'vitest';
import {readRecord} from '../../src/readings/read.js';
import {plainValue} from '../../src/spec/tree.js';
import {readYaml} from '../../src/spec/yaml.js';
import {source} from '../../src/text/source.js';
import {ran} from '../help/command.js';
import {temporaryFolder} from '../host/temporary.js';
import {startingFiles} from './hostile-files.js';

/** The members of `Object.prototype`, and of what texts, lists and functions have, that anybody could take for a word. */
const NAMES = [
  'constructor',
  '__proto__',
  'hasOwnProperty',
  'toString',
  'valueOf',
  '__defineGetter__',
  'length',
];

async function run(folder: string, ...words: readonly string[]): Promise<{code: number; said: string}> {
  const here = relative(process.cwd(), folder);
  const {code, out, err} = await ran(...words.map((word) => word.replace('@', `${here}/`)));
  return {code, said: (out + err).replaceAll(here, '').replaceAll(folder, '')};
}

/** Commands that between them read, judge and print everything. */
const COMMANDS = [
  ['check', '@book', '--as', 'json'],
  ['coverage', '@book'],
  ['lists', '@book', '--as', 'csv'],
  ['tidy', '@book', '--check'],
  ['compare', '@book', '@before'],
  ['adopt', '@plain.md', '--engine', '@book/engine.yaml'],
] as const;

/** The starting book without its last step, and its text before that; every `word` is replaced in all of it. */
async function files(word: string, name: string): Promise<{[path: string]: string}> {
  const before = await startingFiles('before');
  const made: {[path: string]: string} = {};
  const renamed = (text: string) => text.replace(new RegExp(`(?<![\\w-])${word}(?![\\w-])`, 'g'), () => name);
  for (const [path, text] of Object.entries(before)) {
    made[path] = renamed(text);
    made[path.replace('before', 'book')] = renamed(text.replace(/^\d+\. Wire the bolts.*\n/m, ''));
  }
  const pump = made['before/01-oil-pump.md'] ?? '';
  return {...made, 'plain.md': pump.replace(/`[^`\n]*`/g, '')};
}

/** One of each kind of thing that has a name: part, surface, fastener, fit, mark, hold point, source, tool, consumable, verb word. */
const WORDS = [
  ...['oil-pump', 'sump', 'pump-face', 'sump-joint', 'pump-bolts', 'pump-backlash', 'engine-number'],
  ...['bottom-closed', 'manual', 'torque-wrench', 'wire-032', 'soft-mallet', 'assembly-lube', 'my-engine'],
];

describe('`constructor` as the name of', () => {
  test.each(WORDS)('%s', async (word) => {
    // A plain name of the same length keeps the columns.
    const [odd, plain] = await Promise.all(
      ['constructor', 'zonstructor'].map(async (name) => temporaryFolder(await files(word, name))),
    );
    for (const command of COMMANDS) {
      const [one, other] = [await run(odd ?? '', ...command), await run(plain ?? '', ...command)];
      expect(one.code).not.toBe(3);
      expect(one.said.replaceAll('constructor', 'zonstructor')).toBe(other.said);
      expect(one.code).toBe(other.code);
    }
  });
});

test.each(NAMES)('%s in every place of a book, wherever a name or a word may stand', async (name) => {
  const text = `---
title: ${name}
revision: ${name}
date: 2026-01-15
only: [${name}]
${name}: ${name}
---

## ${name} \`only: ${name}\`

> **Warning:** ${name} \`hazard: ${name}\`

1. ${name} the ${name} with ${name}. \`install: ${name}[${name}] with ${name} using ${name}\` \`step: ${name}\`
2. Torque ${name} to 5 ${name}. \`torque: ${name} to 5 ${name} in ${name}\` \`lock: ${name} with ${name}\`
3. Clean the ${name}. \`${name}: ${name}\` \`clean: ${name}\` \`waive: ${name} because ${name}\` \`repeat: ${name}\`
   1. ${name} \`if: ${name} is out\` ![${name}](${name})
   2. [${name}][] [${name}]: ${name}

[${name}]: ${name}
`;
  const item = `{name: ${name}, at: [${name}], holds: [${name}], closes: [${name}], torque: ${name}, lock: ${name}, limits: 1 ${name}, ${name}: ${name}}`;
  const sections =
    'parts surfaces joints fasteners fits marks checks hold-points options systems barred bars practice sources'
      .split(' ')
      .map((section) => `${section}: {${name}: ${item}}\n`);
  const folder = await temporaryFolder({
    'book/shop.yaml': `shop: {name: ${name}, language: ${name}}\nsources: {${name}: {title: x}}\nconsumables: {${name}: {use: ${name}, hazards: [${name}]}}\ntools: {${name}: ${name}}\nseverity: {${name}: ${name}, left-out: ${name}}\n${name}: {${name}: 1}\n`,
    'book/engine.yaml': `engine: {id: ${name}, name: ${name}}\nsource: ${name}\n${sections.join('')}${name}: ${name}\nbuild: [plug.md]\n`,
    'book/plug.md': text,
    'book/jobs/1.yaml': `job: {number: ${name}, engine: ${name}}\nmarks: {${name}: ${name}}\nsubstitutes: {${name}: ${name}}\ngrinds: {${name}: ${name}}\noptions: [${name}]\n${name}: x\n`,
    'before/engine.yaml': `engine: {id: ${name}}\nbuild: []\n`,
    'before/shop.yaml': 'shop: {name: x}\n',
    'plain.md': text.replaceAll('`', ''),
  });
  for (const command of [
    ...COMMANDS,
    ['story', name, '@book'],
    ['check', '@book', '--job', name],
    ['why', name],
    ['figure', name],
  ]) {
    const {code, said} = await run(folder, ...command);
    expect(said).not.toContain('a fault of wmark itself');
    expect(code).not.toBe(3);
    expect(said).not.toMatch(/\[native code\]|\[object |function Object/);
  }
});

test('a key of YAML or JSON never reaches the prototype of anything', () => {
  const yaml = source(
    'a.yaml',
    '__proto__: {polluted: yes}\nconstructor: {prototype: {polluted: yes}}\na: {__proto__: {polluted: yes}}\n',
  );
  const {tree} = readYaml(yaml);
  expect(tree && Object.keys(plainValue(tree) as object)).toEqual(['constructor', 'a']);
  const hash = '0'.repeat(64);
  for (const key of ['__proto__', 'constructor']) {
    const text = `{"record":1,"engine":"a","${key}":{"polluted":true},"sheets":[{"procedure":"p","title":"","revision":"","fingerprint":"${hash}","entries":[],"${key}":{"polluted":true}}]}`;
    expect(readRecord({text})).toMatchObject({ok: false});
  }
  expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
});
