/** What the story says of an item at the end. */
import {expect, test} from 'vitest';
import {ledger} from '../../src/build/ledger.js';
import {lives} from '../../src/build/story.js';
import {storyJson, storyText} from '../../src/cli/story-report.js';
import {book} from '../help/example.js';

const made = book({
  engine: 'parts: {block: {given: true}, pin: {temporary: true}, plug: {temporary: true}, cap: {}}\n',
  procedures: {
    'p.md':
      '\n1. In. `install: pin`\n2. Out. `remove: pin`\n3. On. `install: cap`\n4. Off. `remove: cap`\n5. In. `install: plug`\n',
  },
});

test.each([
  ['pin', 'out again, as it must be'],
  ['cap', 'nothing done'],
  ['plug', 'in'],
])('%s at the end: %s', (id, says) => {
  const life = lives(ledger(made)).get(id);
  if (life === undefined) throw new Error('no such item');
  expect(storyText(storyJson(life, made))).toContain(`at the end: ${says}`);
});
