/** Where a torque that is missing is written: behind what it needs, and before what comes only after it. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {fixOf} from '../help/found.js';

const SHOP = `
shop: {name: Example Works}
source: house
sources:
  house: {title: Example house notes, note: invented}
tools:
  feeler-gauges: {name: feeler gauges, gauge: true}
consumables:
  engine-oil: {use: lubricant}
  moly: {use: lubricant}
  locker: {use: lock, lock: threadlocker}
  wire: {use: lock, lock: safety-wire}
  strip: {use: strip, range: 0.001–0.003 in}
  paper-gasket: {use: gasket}
  card-gasket: {use: gasket}
  liquid-gasket: {use: sealant, cure: 24 h}
  hot-glue: {use: sealant, hazards: [burn]}
`;

/** No one step more would do. */
const NOWHERE = undefined;

const LOCK = 'lock: {value: none, because: stretch holds them}';

const bolts = (fields: string, holds = 'block, caps') => `
parts:
  block: {given: true}
  caps: {at: [front, rear]}
  lid: {after: [bolts]}
  cowl: {closes: [faces], after: [lid]}
  pipe: {}
surfaces:
  faces: {on: block, assembly: clean}
options: {keel: {}}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [${holds}], ${fields}}
fits:
  play: {between: [caps], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [caps], tight: [bolts]}}
  gap: {between: [caps], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [caps]}}
  float: {between: [caps], limits: 0.001–0.003 in, using: [feeler-gauges]}
marks:
  number: {stamped: front}
systems:
  oil: {joints: [], closed-by: [pipe], with: [engine-oil], amount: 7 qt}
hold-points:
  closed: {asks: [bolts], by: shop lead}
  other: {asks: [number], by: shop lead}
`;
const REST =
  '; clean: faces; install: lid; install: cowl; install: pipe; measure: play, gap, float; record: number; fill: oil; witness: closed; witness: other';

describe('the torque of bolts is written', () => {
  it.each<[where: string, tags: string, step: string | undefined]>([
    [
      'behind the caps, which all go on in one step',
      `install: caps${REST}`,
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere where one cap goes on later',
      `install: caps[front]; record: number; install: caps[rear]${REST}`,
      NOWHERE,
    ],
    ['nowhere where the caps are out', REST.slice(2), NOWHERE],
    [
      'at the one place where it is missing',
      `install: caps[front]; torque: bolts[front]; install: caps[rear]${REST}`,
      '4. Tighten the bolts. `torque: bolts[rear] to 60 lbf·ft`',
    ],
    [
      'behind the pass that went before',
      `install: caps; record: number; torque: bolts to snug${REST}`,
      '4. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere where the lid goes on in the same step',
      '`install: caps` `install: lid`; clean: faces; install: cowl; install: pipe',
      NOWHERE,
    ],
    [
      'behind a step that does what waits for something else',
      '`install: caps` `install: cowl` `install: pipe`; install: lid',
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    ['nowhere where the play is read in that step', '`install: caps` `measure: play`; install: lid', NOWHERE],
    [
      'behind a reading that does not wait for it',
      '`install: caps` `measure: gap`; install: lid',
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'behind a look at the play that is none',
      '`install: caps` `record: number`; install: lid',
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere where the signature is given in that step',
      '`install: caps` `witness: closed`; install: lid',
      NOWHERE,
    ],
    [
      'behind a signature for something else',
      '`record: number` `install: caps` `witness: other`; install: lid',
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    ['nowhere where one cap never goes on', `install: caps[front]${REST}`, NOWHERE],
    ['nowhere where the caps came off again', `install: caps; remove: caps${REST}`, NOWHERE],
    [
      'behind a reading of which nothing is said',
      '`install: caps` `measure: float`; install: lid',
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'behind a look at the lid',
      '`install: caps` `inspect: lid for cracks`; install: lid',
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'behind a strip that is laid for later',
      '`install: caps` `lay: play with strip`; install: lid',
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'behind the step that slackened them, took the caps off and put them on',
      `install: caps; torque: bolts; \`loosen: bolts\` \`remove: caps\` \`install: caps\`${REST}`,
      '4. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'where the lid went on in the step that slackened them',
      'install: caps; torque: bolts; `install: lid` `loosen: bolts`; remove: caps; install: caps; clean: faces',
      '6. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    ['nowhere behind a lock that is not named', `\`install: caps\` \`lock: bolts\`${REST}`, NOWHERE],
    [
      'nowhere behind a lock on one of them',
      `\`install: caps\` \`lock: bolts[rear] with wire\`${REST}`,
      NOWHERE,
    ],
    [
      'nowhere where they were slackened, with nothing put on since',
      `install: caps; torque: bolts; loosen: bolts${REST}`,
      NOWHERE,
    ],
    [
      'behind the caps that went on again',
      `install: caps; torque: bolts; loosen: bolts; remove: caps; install: caps${REST}`,
      '6. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere where the lid goes on between slackening and caps',
      'install: caps; torque: bolts; loosen: bolts; remove: caps; `install: lid` `install: caps`; clean: faces',
      NOWHERE,
    ],
    [
      'where the lid went on before they were slackened',
      'install: caps; torque: bolts; install: lid; loosen: bolts; remove: caps; install: caps; clean: faces',
      '7. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere where one was slackened later than the cap went on',
      `install: caps; torque: bolts; loosen: bolts; remove: caps; install: caps; torque: bolts[rear]; loosen: bolts[rear]${REST}`,
      NOWHERE,
    ],
    [
      'nowhere where oil is on threads that go dry',
      `lube: bolts with engine-oil; install: caps${REST}`,
      NOWHERE,
    ],
    [
      'nowhere behind a lock that comes off for it',
      `\`install: caps\` \`lock: bolts with wire\`${REST}`,
      NOWHERE,
    ],
    [
      'behind the caps, and before a lock that comes later',
      `install: caps; record: number; lock: bolts with wire${REST}`,
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
  ])('%s', (_, tags, step) => {
    expect(fixOf('left-slack', bolts(`torque: 60 lbf·ft, threads: dry, ${LOCK}`), tags, SHOP)).toBe(step);
  });
});

describe('the torque of bolts that ask for more is written', () => {
  it.each<[where: string, engine: string, tags: string, step: string | undefined]>([
    [
      'with its turn',
      bolts(`torque: 60 lbf·ft, angle: 90 °, threads: dry, ${LOCK}`),
      `install: caps${REST}`,
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft turn 90°`',
    ],
    [
      'snug',
      bolts(`torque: snug, threads: dry, ${LOCK}`),
      `install: caps${REST}`,
      '2. Tighten the bolts. `torque: bolts to snug`',
    ],
    [
      'behind the oil',
      bolts(`torque: 60 lbf·ft, threads: [engine-oil, moly], ${LOCK}`),
      `install: caps; lube: bolts with moly${REST}`,
      '3. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'behind the caps, where the oil is on by then',
      bolts(`torque: 60 lbf·ft, threads: [engine-oil, moly], ${LOCK}`),
      `lube: bolts with moly; install: caps${REST}`,
      '3. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere where one of them is oiled by then',
      bolts(`torque: 60 lbf·ft, threads: [engine-oil], ${LOCK}`),
      `lube: bolts[rear] with engine-oil; install: caps${REST}`,
      NOWHERE,
    ],
    [
      'nowhere where one of them is new by then',
      bolts(`torque: 60 lbf·ft, threads: dry, single-use: true, ${LOCK}`),
      `renew: bolts[rear]; install: caps${REST}`,
      NOWHERE,
    ],
    [
      'behind the washers that go on first',
      bolts('torque: 60 lbf·ft, threads: dry, lock: spring-washer'),
      `install: caps; record: number; lock: bolts with spring-washer${REST}`,
      '4. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere behind a lock that goes on first and one that goes on last',
      bolts('torque: 60 lbf·ft, threads: [locker], lock: [locker, wire]'),
      `install: caps; record: number; lock: bolts with locker, wire${REST}`,
      NOWHERE,
    ],
    [
      'nowhere where threadlocker came off with the slackening',
      bolts('torque: 60 lbf·ft, threads: [locker], lock: locker'),
      `install: caps; lock: bolts with locker; torque: bolts; loosen: bolts; remove: caps; install: caps${REST}`,
      NOWHERE,
    ],
    [
      'behind oil that is not named',
      bolts(`torque: 60 lbf·ft, threads: [engine-oil], ${LOCK}`),
      `install: caps; lube: bolts${REST}`,
      '3. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere without the oil',
      bolts(`torque: 60 lbf·ft, threads: [engine-oil], ${LOCK}`),
      `install: caps${REST}`,
      NOWHERE,
    ],
    [
      'nowhere behind another oil',
      bolts(`torque: 60 lbf·ft, threads: [engine-oil], ${LOCK}`),
      `install: caps; lube: bolts with moly${REST}`,
      NOWHERE,
    ],
    [
      'nowhere where the oil is on one end',
      bolts(`torque: 60 lbf·ft, threads: [engine-oil], ${LOCK}`),
      `install: caps; lube: bolts[rear] with engine-oil${REST}`,
      NOWHERE,
    ],
    [
      'whatever is on threads of which nothing is known',
      bolts(`torque: 60 lbf·ft, threads: unknown, ${LOCK}`),
      `install: caps; lube: bolts with moly${REST}`,
      '3. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'whatever is on threads of which nothing is said',
      bolts(`torque: 60 lbf·ft, ${LOCK}`),
      `install: caps; lube: bolts with moly${REST}`,
      '3. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'behind threadlocker',
      bolts('torque: 60 lbf·ft, threads: [locker], lock: locker'),
      `install: caps; record: number; lock: bolts with locker${REST}`,
      '4. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere where threadlocker is on one end',
      bolts('torque: 60 lbf·ft, threads: [locker], lock: locker'),
      `install: caps; record: number; lock: bolts[rear] with locker${REST}`,
      NOWHERE,
    ],
    [
      'behind new bolts',
      bolts(`torque: 60 lbf·ft, threads: dry, single-use: true, ${LOCK}`),
      `install: caps; renew: bolts${REST}`,
      '3. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
    [
      'nowhere without new bolts',
      bolts(`torque: 60 lbf·ft, threads: dry, single-use: true, ${LOCK}`),
      `install: caps${REST}`,
      NOWHERE,
    ],
    [
      'nowhere where one end has none',
      bolts(`torque: 60 lbf·ft, threads: dry, single-use: true, ${LOCK}`),
      `install: caps; renew: bolts[rear]${REST}`,
      NOWHERE,
    ],
    [
      'nowhere for bolts that some engines have',
      bolts(`torque: 60 lbf·ft, threads: dry, only: keel, ${LOCK}`),
      `install: caps${REST}`,
      NOWHERE,
    ],
    [
      'whatever they hold that nobody knows',
      bolts(`torque: 60 lbf·ft, threads: dry, ${LOCK}`, 'block, caps, cpas'),
      `install: caps${REST}`,
      '2. Tighten the bolts. `torque: bolts to 60 lbf·ft`',
    ],
  ])('%s', (_, engine, tags, step) => {
    expect(fixOf('left-slack', engine, tags, SHOP)).toBe(step);
  });
});
