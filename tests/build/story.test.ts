/** The life of an item, and the coverage made from it. */
import {describe, expect, it} from 'vitest';
import {coverage} from '../../src/build/coverage.js';
import {ledger} from '../../src/build/ledger.js';
import {lives} from '../../src/build/story.js';
import {baseName, stepName, tell} from '../../src/build/tell.js';
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

describe('lives, where the way goes round', () => {
  const LOOP = book({
    engine: `
parts:
  block: {given: true}
  cover: {}
  hose: {}
fasteners:
  bolts: {holds: [cover], torque: 30 lbf·ft, lock: [threadlocker, safety-wire]}
checks:
  leak: {}
`,
    procedures: {
      'a.md': `
1. Set the cover on. \`install: cover\`
2. Lock it. \`lock: bolts\` \`step: up\`
3. Bring the bolts up. \`torque: bolts\`
4. Look. \`check: leak\`
5. If it leaks: \`if: leak is out\`
   1. Go back. \`repeat: up\`
`,
    },
  });

  it('are told as they go the first time, each turn once', () => {
    const all = lives(ledger(LOOP));
    const told = all
      .get('bolts')
      ?.turns.map(({kind, holds, places, action}) => `${tell(kind, holds, action)} ${places.length}`);
    expect(told).toEqual([
      'step 2 of a.md: locked (lock: bolts) 1',
      'step 2 of a.md: threads coated (lock: bolts) 1',
      'step 3 of a.md: tight (torque: bolts) 1',
      'step 3 of a.md: no longer locked (torque: bolts) 1',
    ]);
    expect(all.get('hose')?.turns).toEqual([]);
    expect(all.get('hose')?.end).toEqual(new Map([['', []]]));
  });

  it('a fastener with one of its two locks is not locked', () => {
    expect(lives(ledger(LOOP)).get('bolts')?.end).toEqual(new Map([['', ['threads', 'tight']]]));
  });
});

it('a step is told with its file where that is not the one being read', () => {
  const {steps} = ledger(BOOK).program;
  const [first, second] = [steps[0], steps[3]];
  if (first === undefined || second === undefined) throw new Error('the book has seven steps');
  expect(stepName(second)).toBe('step 1 of 02-second.md');
  expect(stepName(second, second)).toBe('step 1');
  expect(stepName(second, first)).toBe('step 1 of 02-second.md');
});

it.each([
  ['01-first.md', '01-first.md'],
  ['procedures/engine/01-first.md', '01-first.md'],
  ['procedures\\engine\\01-first.md', '01-first.md'],
  ['procedures\\engine/01-first.md', '01-first.md'],
])('the name of %s without its folder', (file, name) => expect(baseName(file)).toBe(name));

describe('coverage', () => {
  it('asks of each kind of item what must hold of it at the end, and of some nothing', () => {
    const engine = `
parts:
  block: {given: true}
  pump: {}
  pin: {temporary: true}
surfaces:
  seat: {on: block}
joints:
  glued: {seal: [liquid-gasket]}
  bare: {seal: {value: none, because: faces are lapped}}
  asked: {seal: unknown}
  silent: {}
fasteners:
  bolts: {holds: [pump], torque: 30 lbf·ft, lock: safety-wire, stripe: true}
  studs: {holds: [pump], torque: none, lock: {value: none, because: stretch}}
  nuts: {holds: [pump], torque: unknown, lock: unknown}
  screws: {holds: [pump]}
  pin-bolts: {holds: [pin], torque: 30 lbf·ft}
fits:
  play: {between: [block, pump]}
marks:
  number: {}
checks:
  leak: {}
systems:
  oil: {with: [engine-oil]}
hold-points:
  closed: {asks: [bolts]}
alterations:
  relieve: {of: [pump]}
`;
    const done =
      '1. a `install: pump` `install: pin` `torque: bolts` `lock: bolts` `stripe: bolts` `torque: nuts` `seal: glued` `seal: silent` `measure: play` `record: number` `check: leak` `fill: oil` `witness: closed`\n2. b `loosen: bolts`\n';
    const rows = coverage(ledger(book({engine, procedures: {'a.md': done}})));
    expect(
      rows.map(({item, due, steps}) => [
        item.id,
        [...due].map(([kind, held]) => `${kind} ${held}`).join(', '),
        [...steps].flatMap(([kind, some]) => (some.length > 0 ? [kind] : [])).join(', '),
      ]),
    ).toEqual([
      ['pump', 'installed true', 'installed'],
      ['glued', 'sealed true', 'sealed'],
      ['bolts', 'tight false, locked false, striped false', 'tight, locked, striped'],
      ['play', 'measured true', 'measured'],
      ['number', 'recorded true', 'recorded'],
      ['leak', 'checked true', 'checked'],
      ['closed', 'witnessed false', 'witnessed'],
      ['oil', 'filled true', 'filled'],
    ]);
  });

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
