/** The life of an item, and the coverage made from it. */
import {describe, expect, it} from 'vitest';
import {coverage} from '../../src/build/coverage.js';
import {ledger} from '../../src/build/ledger.js';
import {lives} from '../../src/build/story.js';
import {tell} from '../../src/build/tell.js';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const BOOK = book({
  engine: `
parts:
  block: {given: true}
  main-caps: {at: [front, rear]}
fasteners:
  main-cap-bolts: {at: [front, rear], holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: safety-wire, stripe: true}
`,
  procedures: {
    '01-first.md': `
1. Set the caps on. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
3. Wire them. \`lock: main-cap-bolts with wire-032\`
`,
    '02-second.md': `
1. Slacken the front bolts. \`loosen: main-cap-bolts[front]\`
2. Lift the front cap off. \`remove: main-caps[front]\`
3. Set the front cap on. \`install: main-caps[front]\`
4. Bring the front bolts up. \`torque: main-cap-bolts[front] to 85 lbf·ft\`
`,
  },
});

describe('lives', () => {
  it('tells every turn in build order, with places', () => {
    const life = lives(ledger(BOOK)).get('main-cap-bolts');
    const told = life?.turns.map(
      ({kind, holds, places, action}) => `${tell(kind, holds, action)} [${places.join(', ')}]`,
    );
    expect(told).toEqual([
      'step 2 of 01-first.md: tight (torque: main-cap-bolts) [front, rear]',
      'step 3 of 01-first.md: locked (lock: main-cap-bolts) [front, rear]',
      'step 1 of 02-second.md: no longer tight (loosen: main-cap-bolts) [front]',
      'step 1 of 02-second.md: no longer locked (loosen: main-cap-bolts) [front]',
      'step 4 of 02-second.md: tight (torque: main-cap-bolts) [front]',
    ]);
    expect(life?.end.get('front')).toEqual(['tight']);
    expect(life?.end.get('rear')).toEqual(['tight', 'locked']);
  });

  it('stands in the findings in the same words', () => {
    const [finding] = check(BOOK).findings;
    expect(finding?.name).toBe('left-unlocked');
    expect(finding?.message).toContain('main-cap-bolts[front]');
    expect(finding?.story.map(({says}) => says)).toContain(
      'step 1 of 02-second.md: no longer locked (loosen: main-cap-bolts)',
    );
  });
});

describe('coverage', () => {
  it('has a row an item and place, with what is due and done', () => {
    const rows = coverage(ledger(BOOK)).map(({item, place, steps, due}) => [
      `${item.id} ${place}`,
      [...due].map(([kind, done]) => `${kind} ${done}`).join(', '),
      steps
        .get('tight')
        ?.map(({step}) => step.number)
        .join(' ') ?? '',
    ]);
    expect(rows).toEqual([
      ['main-caps front', 'installed true', ''],
      ['main-caps rear', 'installed true', ''],
      ['main-cap-bolts front', 'tight true, locked false, striped false', '2 4'],
      ['main-cap-bolts rear', 'tight true, locked true, striped false', '2'],
    ]);
  });
});
