/**
 * What the rules read in each sentence of the corpus, and in sentences that stand at the edges of a rule: a share of
 * 95 in 100, as `prose.test.ts` asks for, would not notice a rule that is lost. Sentences are ours, in the way that
 * shops write.
 */
import {describe, expect, it} from 'vitest';
import {commandsIn} from '../../src/findings/commands.js';
import {scoreCommands, scoreNumbers} from './prose.js';
import {TUNED} from './prose-corpus.js';
import {HELD_OUT} from './prose-held-out.js';

describe('sentence by sentence', () => {
  it('reads the tuned part without a mistake', () => {
    expect(scoreCommands(TUNED)).toMatchObject({wrong: [], missed: []});
    expect(scoreNumbers(TUNED)).toMatchObject({wrong: [], missed: []});
  });

  it('makes in the held out part only the mistakes that are known', () => {
    const {wrong, missed} = scoreCommands(HELD_OUT);
    expect(wrong).toEqual([
      'Turn the block over on the stand. → turn',
      'Paint a stripe across each bolt head and its cap. → stripe',
      'Set the wrench at 58 lbf·ft and go round once. → torque',
      'Push the crank back, zero the dial, pull it forward: 4–8 thou. → install',
      'Push the crank back, zero the dial, pull it forward: 4–18 thou. → install',
    ]);
    expect(missed).toEqual([
      'Look for bright spots on the back of each shell. → inspect',
      'Now that the strip is off, wipe the journal dry. → clean',
    ]);
    expect(scoreNumbers(HELD_OUT)).toMatchObject({
      wrong: [],
      missed: ['Gap between 0.30 and 0.50 mm. → measure: ring-gap'],
    });
  });
});

/** Each command with its clause, which is what the message and the fix speak of. */
describe('commands at the edges of a rule', () => {
  it.each<[sentence: string, ...commands: string[]]>([
    ['Oil the bores.', 'lube: Oil the bores'],
    ['Oil the bores and fit the cam.', 'lube: Oil the bores', 'install: fit the cam'],
    ['Oil the bores, then fit the cam.', 'lube: Oil the bores', 'install: fit the cam'],
    ['Oil the bores then fit the cam.', 'lube: Oil the bores', 'install: fit the cam'],
    ['Oil the bores before fitting the cam.', 'lube: Oil the bores'],
    ['Before fitting the cam, oil the bores.', 'lube: oil the bores'],
    ['Do not oil the bores.'],
    ['Do not oil the bores, fit the cam.', 'install: fit the cam'],
    ['Do not oil or grease the bores.'],
    ['Never oil the bores.'],
    ['If the bores are dry, oil them.'],
    ['Oil the bores if they are dry.'],
    ['Clean the bores and oil them as needed.', 'clean: Clean the bores'],
    ['Be sure to oil the bores.', 'lube: oil the bores'],
    ['Be careful to oil the bores.', 'lube: oil the bores'],
    ['Remember to oil the bores.', 'lube: oil the bores'],
    ['Carefully oil the bores.', 'lube: oil the bores'],
    ['The bores are oiled and clean.'],
    ['The oil and the bolts lie ready, fit for use.'],
    ['Torque: 85 lbf·ft.'],
    ['Check: the tang faces forward.', 'check: Check'],
  ])('%s', (sentence, ...commands) => {
    const read = commandsIn(sentence);
    expect(read.map(({verb, clause: {start, end}}) => `${verb}: ${sentence.slice(start, end)}`)).toEqual(
      commands,
    );
    for (const {span, clause} of read) expect(span.start).toBe(clause.start);
  });
});
