/** `untagged:` in the front matter: which commands of the prose it excuses, and what is wrong with a word of it. */
import {expect, it} from 'vitest';
import {Excused, namesOf} from '../../src/findings/excused.js';
import {readProcedure} from '../../src/procedure/read.js';
import type {Verb} from '../../src/procedure/verbs.js';
import {source} from '../../src/text/source.js';
import {book} from '../help/example.js';

const {spec} = book({
  engine: `
parts:
  block: {given: true}
  main-caps: {name: bearing caps}
`,
  procedures: {'a.md': ''},
});

const IDLE = 'excuses no command of this procedure; take it out';
const VAGUE = 'could be anything; name the thing itself';
const KNOWN = 'is main-caps of the specification, which a tag can speak of; take it out';

it.each<[list: string, verb: Verb, rest: string, excused: boolean, fault?: string]>([
  ['shim pack', 'clean', ' the shim pack with a rag', true],
  ['shim pack', 'clean', ' the shim box', false, IDLE],
  ['shim pack', 'install', ' Shim--Pack', true],
  ['shim pack', 'torque', ' the shim pack', false, IDLE],
  ['shim pack', 'lock', ' the shim pack', false, IDLE],
  ['a shim pack', 'clean', ' one shim pack', true],
  ['an old shim', 'clean', ' one old shim', true],
  ['your hands', 'clean', ' both hands', true],
  ['the pack', 'clean', ' one pack', true],
  ['(the) pack', 'clean', ' one pack', true],
  ['set of shims', 'clean', ' the set of shims', true],
  ['set of shims', 'clean', ' the set of the shims', false, IDLE],
  ['set of shims', 'clean', ' set of the shims', false, IDLE],
  ['pack no 3', 'clean', ' pack no 3', true],
  ['pack no 3', 'clean', ' pack no 4', false, IDLE],
  ['the parts', 'clean', ' the parts', false, VAGUE],
  ['up', 'clean', ' up', false, VAGUE],
  ['each of them', 'clean', ' each of them', false, VAGUE],
  ['bearing caps', 'clean', ' the bearing caps', false, KNOWN],
  ['main caps', 'clean', ' the main caps', false, KNOWN],
  ['the Main-Caps', 'clean', ' the main caps', false, KNOWN],
  ['soft mallet', 'clean', ' the soft mallet', true],
])('%s, where it says %s:%s', (list, verb, rest, excused, fault) => {
  const text = `---\ntitle: T\nrevision: A\ndate: 2026-01-15\nuntagged: ["${list}"]\n---\n\n1. Look.\n`;
  const judged = new Excused(readProcedure(source('a.md', text)), spec);
  expect(judged.excuses(verb, rest)).toBe(excused);
  expect(judged.faults().map(({message}) => message)).toEqual(fault ? [`untagged: ${list} ${fault}`] : []);
});

it('excuses nothing where there is no list, and finds nothing wrong', () => {
  const judged = new Excused(readProcedure(source('a.md', '1. Look.\n')), spec);
  expect(judged.excuses('clean', ' the shim pack')).toBe(false);
  expect(judged.faults()).toEqual([]);
});

it('knows an item by its name and by its id in words', () => {
  const caps = spec.items.get('main-caps');
  expect(caps && namesOf({...caps, name: 'The Bearing-Caps!'})).toEqual(['bearing caps', 'main caps']);
});
