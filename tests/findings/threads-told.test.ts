/** What is on the threads when a fastener comes to torque, angle and lock: all that is told of it. Common practice, no source. */
import {describe} from 'vitest';
import {EXAMPLE_SHOP} from '../help/example.js';
import {SILENT, tells} from '../help/stories.js';

const SHOP = EXAMPLE_SHOP.replace(
  'consumables:\n',
  'consumables:\n  thread-lock: {use: lock, lock: threadlocker}\n',
);

const head = (bolts: string) => `
parts:
  block: {given: true}
  caps: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, ${bolts}}
`;

const UNLOCKED = 'lock: {value: none, because: stretch holds them}';

describe('bolts that go in oiled and are turned by an angle', () => {
  tells(
    head(`angle: 90°, threads: [engine-oil], ${UNLOCKED}`),
    [
      [
        'are oiled and turned',
        'lube: bolts with engine-oil; install: caps; torque: bolts to 40 lbf·ft; torque: bolts turn 90°',
        SILENT,
      ],
      [
        'are dry, which is told where the angle begins and not again where it ends',
        'install: caps; torque: bolts to 40 lbf·ft; torque: bolts turn 90°',
        `
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
      [
        'are dry where the angle begins, and get something else before it ends',
        'install: caps; torque: bolts to 40 lbf·ft; lube: bolts with assembly-lube; torque: bolts turn 90°',
        `
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads
thread-condition bolts: bolts come to torque with assembly-lube on the threads, and the torque is for engine-oil on the threads
  story: step 3 of procedure.md: threads coated (lube: bolts)
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
      [
        'are oiled where the angle begins, and get something else before it ends',
        'lube: bolts with engine-oil; install: caps; torque: bolts to 40 lbf·ft; lube: bolts[rear] with assembly-lube; torque: bolts turn 90°',
        `
thread-condition bolts[rear]: bolts[rear] come to torque with assembly-lube on the threads, and the torque is for engine-oil on the threads
  story: step 4 of procedure.md: threads coated (lube: bolts)
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
      [
        'had something else on them that is told where the angle begins',
        'lube: bolts with assembly-lube; install: caps; torque: bolts to 40 lbf·ft; torque: bolts turn 90°',
        `
thread-condition bolts: bolts come to torque with assembly-lube on the threads, and the torque is for engine-oil on the threads
  story: step 1 of procedure.md: threads coated (lube: bolts)
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
      [
        'are slackened between, so that both ends are judged',
        'install: caps; torque: bolts to 40 lbf·ft; loosen: bolts; torque: bolts to 40 lbf·ft; torque: bolts turn 90°',
        `
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
    ],
    SHOP,
  );
});

describe('bolts that go in oiled', () => {
  tells(
    head(`threads: [engine-oil], ${UNLOCKED}`),
    [
      [
        'are dry when they are run down, which says nothing yet',
        'install: caps; torque: bolts to snug; torque: bolts',
        `
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
    ],
    SHOP,
  );
  tells(
    head(`angle: 90°, threads: [engine-oil], ${UNLOCKED}`).replace('torque: 40 lbf·ft', 'torque: snug'),
    [
      [
        'are dry, and turned on from snug',
        'install: caps; torque: bolts to 20 lbf·ft; torque: bolts turn 90°',
        `
value-disagrees bolts: bolts are torqued to 20 lbf·ft (27 N·m), and snug is specified
  see engine.yaml:9: bolts is specified here
  fix: Write snug: "snug" for "20 lbf·ft"
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
    ],
    SHOP,
  );
  tells(
    head(`angle: 90°, threads: [engine-oil], ${UNLOCKED}`),
    [
      [
        'are dry, and brought up once more',
        'install: caps; torque: bolts to 40 lbf·ft; torque: bolts turn 90°; torque: bolts to 40 lbf·ft; torque: bolts turn 90°',
        `
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
    ],
    SHOP,
  );
  tells(
    head(`threads: [engine-oil], ${UNLOCKED}`)
      .replaceAll('bolts', 'nut')
      .replace('at: [front, rear], count: 4, ', ''),
    [
      [
        'are one nut',
        'install: caps; torque: nut',
        `
thread-condition nut: nut comes to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: nut is specified with engine-oil on the threads`,
      ],
    ],
    SHOP,
  );
});

describe('bolts that go in dry', () => {
  tells(
    head(`threads: dry, ${UNLOCKED}`),
    [
      [
        'come oiled with two materials',
        'lube: bolts with engine-oil, assembly-lube; install: caps; torque: bolts',
        `
thread-condition bolts: bolts come to torque with engine-oil and assembly-lube on the threads, and the torque is for dry threads
  story: step 1 of procedure.md: threads coated (lube: bolts)
  see engine.yaml:9: bolts is specified with dry threads`,
      ],
      [
        'come oiled with what is not said',
        'lube: bolts; install: caps; torque: bolts',
        `
thread-condition bolts: bolts come to torque with lubricant on the threads, and the torque is for dry threads
  story: step 1 of procedure.md: threads coated (lube: bolts)
  see engine.yaml:9: bolts is specified with dry threads`,
      ],
      [
        'come oiled at one place',
        'lube: bolts[rear] with engine-oil; install: caps; torque: bolts',
        `
thread-condition bolts[rear]: bolts[rear] come to torque with engine-oil on the threads, and the torque is for dry threads
  story: step 1 of procedure.md: threads coated (lube: bolts)
  see engine.yaml:9: bolts is specified with dry threads`,
      ],
    ],
    SHOP,
  );
});

describe('bolts that go in with one of two', () => {
  tells(
    head('threads: [engine-oil, assembly-lube, thread-lock], lock: thread-lock'),
    [
      [
        'come dry',
        'install: caps; torque: bolts; lock: bolts with thread-lock',
        `
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil, assembly-lube or thread-lock on the threads
  see engine.yaml:9: bolts is specified with engine-oil, assembly-lube or thread-lock on the threads
lock-before-torque bolts: bolts are already at final torque, and thread-lock goes on before it
  story: step 2 of procedure.md: tight (torque: bolts)
  see engine.yaml:9: bolts is specified here`,
      ],
      [
        'come oiled with what is not said',
        'lube: bolts; install: caps; lock: bolts with thread-lock; torque: bolts',
        SILENT,
      ],
      [
        'come dry at one place and oiled otherwise at the other',
        'lube: bolts[rear] with solvent; install: caps; torque: bolts; lock: bolts with thread-lock',
        `
thread-condition bolts: bolts come to torque with solvent on the threads, and the torque is for engine-oil, assembly-lube or thread-lock on the threads
  story: step 1 of procedure.md: threads coated (lube: bolts)
  see engine.yaml:9: bolts is specified with engine-oil, assembly-lube or thread-lock on the threads
lock-before-torque bolts: bolts are already at final torque, and thread-lock goes on before it
  story: step 3 of procedure.md: tight (torque: bolts)
  see engine.yaml:9: bolts is specified here`,
      ],
    ],
    SHOP,
  );
});

describe('a nut that goes in oiled', () => {
  const nut = (rest: string) => `
parts:
  block: {given: true}
  caps: {}
fasteners:
  nut: {holds: [caps], ${rest}}
`;
  tells(
    nut(`torque: 40 lbf·ft, threads: [engine-oil], ${UNLOCKED}`),
    [
      [
        'is dry',
        'install: caps; torque: nut',
        `
thread-condition nut: nut comes to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: nut is specified with engine-oil on the threads`,
      ],
      [
        'is oiled after a first pass',
        'install: caps; torque: nut to 20 lbf·ft; lube: nut with engine-oil; torque: nut to 40 lbf·ft',
        SILENT,
      ],
      [
        'is dry at both of two torques',
        'install: caps; torque: nut; torque: nut',
        `
thread-condition nut: nut comes to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: nut is specified with engine-oil on the threads
thread-condition nut: nut comes to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: nut is specified with engine-oil on the threads`,
      ],
    ],
    SHOP,
  );
  tells(
    nut(`torque: unknown, threads: [engine-oil], ${UNLOCKED}`),
    [
      [
        'and has a torque that is unknown',
        'install: caps; torque: nut to 40 lbf·ft',
        `
spec-silent nut: torque of nut is unknown; find out, and write it down with its source`,
      ],
    ],
    SHOP,
  );
  tells(
    nut(`threads: [engine-oil], ${UNLOCKED}`),
    [
      [
        'and has no torque',
        'install: caps; torque: nut to 20 lbf·ft; torque: nut to 40 lbf·ft',
        `
spec-silent nut: nut does not say its torque; write torque: 85 lbf·ft, snug, unknown, or none with a reason`,
      ],
    ],
    SHOP,
  );
});

describe('bolts that go in oiled in passes before their angle', () => {
  tells(
    head(`angle: 90°, threads: [engine-oil], ${UNLOCKED}`),
    [
      [
        'are dry',
        'install: caps; torque: bolts to 20 lbf·ft; torque: bolts to 40 lbf·ft; torque: bolts turn 90°',
        `
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
      [
        'are dry, and turned twice at once',
        'install: caps; torque: bolts to 40 lbf·ft turn 90°; torque: bolts to 40 lbf·ft turn 90°',
        `
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads
thread-condition bolts: bolts come to torque with dry threads, and the torque is for engine-oil on the threads
  see engine.yaml:9: bolts is specified with engine-oil on the threads`,
      ],
    ],
    SHOP,
  );
});

describe('bolts that go in dry, oiled with nothing that is named', () => {
  tells(
    head(`threads: dry, ${UNLOCKED}`),
    [
      [
        'come to torque',
        'lube: bolts; install: caps; torque: bolts',
        `
thread-condition bolts: bolts come to torque with lubricant on the threads, and the torque is for dry threads
  story: step 1 of procedure.md: threads coated (lube: bolts)
  see engine.yaml:9: bolts is specified with dry threads`,
      ],
    ],
    SHOP,
  );
});
