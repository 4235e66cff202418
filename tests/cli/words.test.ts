/** The words of the command line: help, version, slips of the keyboard, and the exit status of each. */
import {expect, test} from 'vitest';
import manifest from '../../package.json' with {type: 'json'};
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

test.each([['--version'], ['-V']])('wmark %s', async (word) => {
  expect(wmark(await temporaryFolder(), word)).toEqual({code: 0, out: `${manifest.version}\n`, err: ''});
});

test('no word at all prints the help as advice, and is no success', async () => {
  const {code, out, err} = wmark(await temporaryFolder());
  expect({code, out}).toEqual({code: 2, out: ''});
  expect(err).toContain('Usage: wmark');
});

test.each([
  {words: ['--help'], has: ['Usage: wmark', 'Examples:', 'Exit status:']},
  {words: ['check', '--help'], has: ['Usage: wmark check', 'Examples:', '--as <form>']},
  {words: ['sheet', '--help'], has: ['Usage: wmark sheet', 'Examples:', '--even-with-errors']},
  {words: ['why', '--help'], has: ['Usage: wmark why', 'Examples:']},
  {words: ['help', 'begin'], has: ['Usage: wmark begin', 'Example:']},
])('wmark $words', async ({words, has}) => {
  const {code, out, err} = wmark(await temporaryFolder(), ...words);
  expect({code, err}).toEqual({code: 0, err: ''});
  for (const part of has) expect(out).toContain(part);
});

test.each([
  {words: ['chek'], err: "wmark: unknown command 'chek'\n(Did you mean check?)\n"},
  {words: ['check', '--ass', 'json'], err: "wmark: unknown option '--ass'\n(Did you mean --as?)\n"},
  {
    words: ['check', '--as', 'xml'],
    err: "wmark: option '--as <form>' argument 'xml' is invalid. Allowed choices are text, json, sarif, annotations, junit.\n",
  },
  {words: ['sheet', '.'], err: "wmark: required option '--out <dir>' not specified\n"},
  {words: ['begin'], err: "wmark: missing required argument 'dir'\n"},
  {
    words: ['begin', 'one', 'two'],
    err: "wmark: too many arguments for 'begin'. Expected 1 argument but got 2.\n",
  },
])('wmark $words', async ({words, err}) => {
  expect(wmark(await temporaryFolder(), ...words)).toEqual({code: 2, out: '', err});
});
