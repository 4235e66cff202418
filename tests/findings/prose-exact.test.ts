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
    ['Oil crankcase face.', 'lube: Oil crankcase face'],
    ['Oil sprockets.', 'lube: Oil sprockets'],
    ['Oil sprockets often.'],
    ['Oil old sprockets often.', 'lube: Oil old sprockets often'],
    ['Oil o-rings often.', 'lube: Oil o-rings often'],
    ['Oil bores in which it runs dry.', 'lube: Oil bores in'],
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
    ['Oil the bores, so fit the cam.', 'lube: Oil the bores', 'install: fit the cam'],
    ['The bores are dry, then oil them.', 'lube: oil them'],
    ['Avoid oil on the faces, fit the cam.', 'install: fit the cam'],
    ['No oil on the faces, fit the cam.', 'install: fit the cam'],
    ['Lights on, oil the bores.'],
    ['Align the marks and fit the gear.', 'install: fit the gear'],
    ['Align marks and fit the gear.', 'install: fit the gear'],
    ['Shake the tin, oil the bores.', 'lube: oil the bores'],
    ['Fit the cam, do not oil it.', 'install: Fit the cam'],
    ['Fit the cam and do not oil it.', 'install: Fit the cam'],
    ['Fit the cam, and never oil it, then lock the bolt.', 'install: Fit the cam', 'lock: lock the bolt'],
    ['Clean the bores and oil threads.', 'clean: Clean the bores and oil threads', 'lube: oil threads'],
    ['Clean the bores then oil.', 'clean: Clean the bores', 'lube: oil'],
    ['Clean the bores and oil.', 'clean: Clean the bores and oil'],
    ['Clean, oil and fit the cam.', 'clean: Clean', 'lube: oil', 'install: fit the cam'],
    ['Clean and oil the bores.', 'clean: Clean', 'lube: oil the bores'],
    ['Oil and grease lie ready.'],
    ['Check then lock.', 'check: Check', 'lock: lock'],
    ['Torque to 40 then to 85 lbf·ft.', 'torque: Torque to 40 then to 85 lbf·ft.'],
    [
      'Torque to 40 then 85 lbf·ft, lock the bolts.',
      'torque: Torque to 40 then 85 lbf·ft',
      'lock: lock the bolts',
    ],
    ['Clean the bores unless they are new.'],
    ['Clean the bores and oil them unless they are new.', 'clean: Clean the bores'],
    ['Clean the bores and oil them if needed.', 'clean: Clean the bores'],
    ['Clean the bores and oil them where required.', 'clean: Clean the bores'],
    ['Clean the bores and oil them when necessary.', 'clean: Clean the bores'],
    ['Clean the rags that are needed and oil the bores.', 'lube: oil the bores'],
    ['Fly the flag, oil the bores.', 'lube: oil the bores'],
    ['Apply oil to the bores.', 'lube: Apply oil to the bores'],
    ['Slowly oil the bores.', 'lube: oil the bores'],
    ['Slowly, oil the bores.', 'lube: oil the bores'],
    ['Now, then, oil the bores.', 'lube: oil the bores'],
    ['Take care to oil the bores.', 'lube: oil the bores'],
    ['Take the cap off.', 'remove: Take the cap off'],
    ['Make sure to oil the bores.', 'lube: oil the bores'],
    ['Make a note, oil the bores.', 'lube: oil the bores'],
    ['Remember the oil.'],
    ['Oil'],
    ['Fit 3 plugs.', 'install: Fit 3 plugs'],
    ['Oil 3 plugs.', 'lube: Oil 3 plugs'],
    ['First oil the bores.', 'lube: oil the bores'],
    ['Oil bores and lock bolts.', 'lube: Oil bores and lock bolts', 'lock: lock bolts'],
    [
      'Clean the bores, oil threads, lock bolts.',
      'clean: Clean the bores',
      'lube: oil threads',
      'lock: lock bolts',
    ],
    ['Clean the bores, oil until they run, and lock.', 'clean: Clean the bores', 'lube: oil'],
    ['Bolt, nut and washer are clean.'],
    ['Check', 'check: Check'],
    ['Torque'],
    ['Before the cam goes in'],
    ['In turn, oil the bores.', 'lube: oil the bores'],
    [
      'After cleaning, oil the bores and, before it dries, fit the cam.',
      'lube: oil the bores and',
      'install: fit the cam',
    ],
    ['The cam must turn, oil the bores.'],
    ['Whenever it stops, oil the bores.'],
    ['Should it stop, oil the bores.'],
    ['Clean the bores, then, oil the bores.', 'clean: Clean the bores', 'lube: oil the bores'],
    ['Clean the bores and then lightly oil the bores.', 'clean: Clean the bores', 'lube: oil the bores'],
    ['Clean the bores as needed, oil the bores.', 'lube: oil the bores'],
    ['Clean the bores, oil the cam as required.', 'clean: Clean the bores'],
    ['Clean, dry threads are a must.'],
    ['Before fitting the cam, if it is dry, oil it.'],
    ['Do not force it, then oil the bores.', 'lube: oil the bores'],
    ['Install the cap then m8 nuts.', 'install: Install the cap'],
    [
      'Check that it turns, oil the bores unless they are new, fit the cam.',
      'check: Check',
      'install: fit the cam',
    ],
    ['Clean and oil'],
    ['Do not oil the bores then fit the cam.'],
    ['Never clean and oil the bores.'],
    ['Do not clean and oil the bores, fit the cam.', 'install: fit the cam'],
    [
      'Fit the cam, and never clean and oil it, then lock the bolt.',
      'install: Fit the cam',
      'lock: lock the bolt',
    ],
    ['Lube not only the bores but the lobes.', 'lube: Lube not only the bores but the lobes'],
    ['3mm the most, oil the bores.'],
    ['First oil.', 'lube: oil'],
    ['Clean the bores, first oil.', 'clean: Clean the bores', 'lube: oil'],
    ['Clean the bores and oil first.', 'clean: Clean the bores and oil first'],
    ['Fit the cap, m8 nuts last.', 'install: Fit the cap'],
    ['Fit the cap then m8 nuts.', 'install: Fit the cap'],
    ['Fit the cap then torque the bolts.', 'install: Fit the cap', 'torque: torque the bolts'],
    ['Clean, dry threads are what we need.'],
    ['Torque the bolts, 60 at the most.', 'torque: Torque the bolts, 60 at the most'],
    ['Torque the bolts in 30, 60 and 85.', 'torque: Torque the bolts in 30, 60 and 85'],
    ['Polyfill the pits and oil the bores.', 'lube: oil the bores'],
    ['Hand-apply the paste and fit the cam.', 'install: fit the cam'],
    [', oil the bores.', 'lube: oil the bores'],
    ['Clean the bores, and, slowly, oil them.', 'clean: Clean the bores', 'lube: oil them'],
  ])('%s', (sentence, ...commands) => {
    const read = commandsIn(sentence);
    expect(read.map(({verb, clause: {start, end}}) => `${verb}: ${sentence.slice(start, end)}`)).toEqual(
      commands,
    );
    for (const {span, clause} of read) expect(span.start).toBe(clause.start);
  });

  it.each([
    ['80 words', ' x'.repeat(78), ' x'.repeat(79)],
    ['600 characters', ` ${'x'.repeat(590)}`, ` ${'x'.repeat(591)}`],
  ])('looks no farther than %s', (_, near, far) => {
    const takesStrips = (between: string) =>
      commandsIn(`Remove the${between} strip.`)[0]?.fits.includes('measure');
    expect([takesStrips(near), takesStrips(far)]).toEqual([true, false]);
  });
});
