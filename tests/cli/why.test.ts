/** `wmark why`: the list, every page, and names that are not there. */
import {expect, test} from 'vitest';
import {FINDINGS} from '../../src/findings/registry.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

test('the list names every finding', async () => {
  const {code, out, err} = wmark(await temporaryFolder(), 'why');
  expect({code, err}).toEqual({code: 0, err: ''});
  const named = [...out.matchAll(/^ {2}([a-z-]+) /gm)].map(([, name]) => name);
  expect(named.sort()).toEqual(FINDINGS.map(({name}) => name).sort());
});

test('a page says what, why, wrong, right, how to silence it and its source', async () => {
  const {code, out, err} = wmark(await temporaryFolder(), 'why', 'clean-first');
  expect({code, err}).toEqual({code: 0, err: ''});
  const headings = [...out.matchAll(/^#+ (.*)$/gm)].map(([, heading]) => heading);
  expect(headings).toEqual([
    'clean-first',
    'Why',
    'engine.yaml of the example',
    'Wrong',
    'Right',
    'How to silence it',
    'Source',
  ]);
});

test.each([
  {name: 'left-slak', hint: 'did you mean left-slack?'},
  {name: 'xyzzy', hint: '`wmark why` lists them all'},
  {name: '\u001B[31m', shown: '\\u001b[31m', hint: '`wmark why` lists them all'},
])('$hint', async ({name, shown = name, hint}) => {
  expect(wmark(await temporaryFolder(), 'why', name)).toEqual({
    code: 2,
    out: '',
    err: `wmark: no finding is called ${shown}; ${hint}\n`,
  });
});
