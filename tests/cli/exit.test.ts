/** A fault of the tool itself is told apart from everything else: one message, exit status 3. */
import {expect, test} from 'vitest';
import {EXIT, guarded} from '../../src/cli/exit.js';

test.each([
  {name: 'an error', thrown: new Error('it broke')},
  {name: 'anything else', thrown: 'it broke'},
])('$name that is thrown', async ({thrown}) => {
  const said: string[] = [];
  const streams = {report: () => expect.unreachable(), aside: (text: string) => void said.push(text)};
  const exit = await guarded(async () => {
    throw thrown;
  }, streams);
  expect(exit).toBe(3);
  expect(said.join('')).toMatch(/^wmark: this is a fault of wmark itself, .*\n.*it broke/);
});

test('what a command returns is the exit status', async () => {
  const streams = {report: () => undefined, aside: () => undefined};
  expect(await guarded(async () => EXIT.errors, streams)).toBe(1);
});
