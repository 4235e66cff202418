/** Locks and passes of a single nut, of which the specification says little, and all that is told. Common practice, no source. */
import {describe} from 'vitest';
import {EXAMPLE_SHOP} from '../help/example.js';
import {SILENT, tells} from '../help/stories.js';

const nut = (says: string) => `
parts:
  block: {given: true}
  cap: {}
fasteners:
  nut: {holds: [cap]${says}}
`;

const TIGHT = ', torque: 40 lbf·ft, threads: dry';

describe('a nut without a torque', () => {
  tells(nut(', threads: dry, lock: spring-washer'), [
    [
      'is locked',
      'install: cap; lock: nut with spring-washer; torque: nut to 40 lbf·ft',
      `
spec-silent nut: nut does not say its torque; write torque: 85 lbf·ft, snug, unknown, or none with a reason`,
    ],
  ]);
});

describe('a nut whose lock nobody wrote down', () => {
  tells(nut(TIGHT), [
    [
      'is locked',
      'install: cap; torque: nut; lock: nut with wire-032',
      `
spec-silent nut: nut does not say its lock; write lock: safety-wire or another kind, unknown, or none with a reason`,
    ],
    [
      'is locked too early',
      'install: cap; lock: nut; torque: nut',
      `
spec-silent nut: nut does not say its lock; write lock: safety-wire or another kind, unknown, or none with a reason
lock-before-torque nut: nut is locked before the final torque
  see engine.yaml:9: nut is specified here`,
    ],
  ]);
});

describe('a nut that is wired', () => {
  tells(nut(`${TIGHT}, lock: safety-wire`), [
    [
      'is locked otherwise',
      'install: cap; torque: nut; lock: nut with cotter-pins',
      `
lock-wrong-kind nut: nut is locked with cotter-pins, and the specification asks for safety-wire
  see engine.yaml:9: nut is specified with lock: safety-wire
  fix: Lock with safety-wire: "safety-wire" for "cotter-pins"`,
    ],
    [
      'is locked with two',
      'install: cap; torque: nut; lock: nut with wire-032, cotter-pins',
      `
lock-wrong-kind nut: nut is locked with cotter-pins, and the specification asks for safety-wire
  see engine.yaml:9: nut is specified with lock: safety-wire
  fix: Lock with safety-wire: "safety-wire" for "cotter-pins"`,
    ],
    [
      'is locked before its torque',
      'install: cap; lock: nut with wire-032; torque: nut; lock: nut with wire-032',
      `
lock-before-torque nut: nut is locked before the final torque
  see engine.yaml:9: nut is specified here`,
    ],
  ]);
});

describe('a nut with two locks', () => {
  tells(nut(`${TIGHT}, lock: [safety-wire, cotter-pin]`), [
    [
      'is locked with another',
      'install: cap; torque: nut; lock: nut with tab-washer',
      `
left-unlocked nut: nut ends the build without safety-wire and cotter-pin; the specification asks for safety-wire and cotter-pin
  story: step 2 of procedure.md: tight (torque: nut)
  story: step 3 of procedure.md: locked (lock: nut)
  see engine.yaml:9: nut is specified with lock: [safety-wire, cotter-pin]
  fix: Write the missing step: lock nut: "\\n3. Lock the nut. \`lock: nut with safety-wire, cotter-pin\`" after "…ue: nut\`"
lock-wrong-kind nut: nut is locked with tab-washer, and the specification asks for safety-wire and cotter-pin
  see engine.yaml:9: nut is specified with lock: [safety-wire, cotter-pin]`,
    ],
    [
      'is locked with two others',
      'install: cap; torque: nut; lock: nut with tab-washer, staking',
      `
lock-wrong-kind nut: nut is locked with tab-washer, and the specification asks for safety-wire and cotter-pin
  see engine.yaml:9: nut is specified with lock: [safety-wire, cotter-pin]`,
    ],
  ]);
});

describe('a nut on a spring washer', () => {
  tells(nut(`${TIGHT}, lock: spring-washer`), [
    [
      'is locked too late',
      'install: cap; torque: nut; lock: nut with spring-washer',
      `
lock-before-torque nut: nut is already at final torque, and spring-washer goes on before it
  story: step 2 of procedure.md: tight (torque: nut)
  see engine.yaml:9: nut is specified here`,
    ],
  ]);
});

describe('a part that is locked as if it were a nut', () => {
  tells(nut(`${TIGHT}, lock: safety-wire`), [
    [
      'is told as such',
      'install: cap; lock: cap with wire-032; torque: nut; lock: nut with wire-032',
      `
wrong-kind cap: cap is a part, and \`lock\` takes a fastener
  see engine.yaml:7: cap is specified here`,
    ],
  ]);
});

const BOLTS = `
parts:
  block: {given: true}
  cap: {}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [cap], torque: 40 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
`;

describe('a torque after another', () => {
  tells(BOLTS, [
    [
      'of no value',
      'install: cap; torque: bolts to snug; torque: bolts to 20 lbf·ft; torque: bolts to 40 lbf·ft',
      SILENT,
    ],
    [
      'with an angle and no value',
      'install: cap; torque: bolts turn 90°; torque: bolts to 40 lbf·ft',
      SILENT,
    ],
    [
      'in another unit, and as much',
      'install: cap; torque: bolts to 40 lbf·ft; torque: bolts to 54.2 N·m',
      SILENT,
    ],
    [
      'below it at one of its places',
      'install: cap; torque: bolts[rear] to 30 lbf·ft; torque: bolts to 20 lbf·ft; torque: bolts to 40 lbf·ft',
      `
passes-not-rising bolts[rear]: bolts[rear]: 20 lbf·ft is below the 30 lbf·ft of step 2
  story: step 2 of procedure.md: tight (torque: bolts)`,
    ],
    [
      'not below it',
      'install: cap; torque: bolts to 20 lbf·ft; torque: bolts to 40 lbf·ft in 20, 40',
      SILENT,
    ],
  ]);
});

const PINNED = EXAMPLE_SHOP.replace(
  'consumables:\n',
  'consumables:\n  thin-pin: {use: lock, lock: cotter-pin, size: 1/16 in}\n  thin-wire: {use: lock, lock: safety-wire, size: 0.020 in}\n',
);

describe('pins and wires in one hole', () => {
  tells(
    nut(`${TIGHT}, thread: 1/2-20 UNF, hole: 1/8 in, lock: [thin-pin, thin-wire]`),
    [
      [
        'as they are specified',
        'install: cap; torque: nut; lock: nut with thin-pin, thin-wire',
        `
cotter-size nut: nut: thin-pin of 1/16 in (1.5875 mm) is too thin for a hole of 1/8 in (3.175 mm) on 1/2-20 UNF, which takes 3/32 in (2.3812 mm) to 7/64 in (2.7781 mm) (pin by hole and thread, ASME B18.8.1)
  see engine.yaml:9: nut is specified here
wire-size nut: nut: thin-wire of 0.020 in (0.51 mm) is too thin for a hole of 1/8 in (3.175 mm), which takes 0.032–0.091 in (0.82–2.31 mm) (wire by hole, AC 43.13-1B 7-124)
  see engine.yaml:9: nut is specified here
source-missing thin-pin: size of thin-pin has no source; write {value: …, source: …}, or give the item or the whole file a source
source-missing thin-wire: size of thin-wire has no source; write {value: …, source: …}, or give the item or the whole file a source`,
      ],
      [
        'as a tag says them',
        'install: cap; torque: nut; lock: nut with cotter-pin 3/32 in, wire-032',
        `
cotter-size nut: nut: thin-pin of 1/16 in (1.5875 mm) is too thin for a hole of 1/8 in (3.175 mm) on 1/2-20 UNF, which takes 3/32 in (2.3812 mm) to 7/64 in (2.7781 mm) (pin by hole and thread, ASME B18.8.1)
  see engine.yaml:9: nut is specified here
wire-size nut: nut: thin-wire of 0.020 in (0.51 mm) is too thin for a hole of 1/8 in (3.175 mm), which takes 0.032–0.091 in (0.82–2.31 mm) (wire by hole, AC 43.13-1B 7-124)
  see engine.yaml:9: nut is specified here
source-missing thin-pin: size of thin-pin has no source; write {value: …, source: …}, or give the item or the whole file a source
source-missing thin-wire: size of thin-wire has no source; write {value: …, source: …}, or give the item or the whole file a source
lock-wrong-kind nut: nut is locked with cotter-pin, and the specification asks for thin-pin and thin-wire
  see engine.yaml:9: nut is specified with lock: [thin-pin, thin-wire]`,
      ],
      [
        'as no tag says',
        'install: cap; torque: nut; lock: nut',
        `
cotter-size nut: nut: thin-pin of 1/16 in (1.5875 mm) is too thin for a hole of 1/8 in (3.175 mm) on 1/2-20 UNF, which takes 3/32 in (2.3812 mm) to 7/64 in (2.7781 mm) (pin by hole and thread, ASME B18.8.1)
  see engine.yaml:9: nut is specified here
wire-size nut: nut: thin-wire of 0.020 in (0.51 mm) is too thin for a hole of 1/8 in (3.175 mm), which takes 0.032–0.091 in (0.82–2.31 mm) (wire by hole, AC 43.13-1B 7-124)
  see engine.yaml:9: nut is specified here
source-missing thin-pin: size of thin-pin has no source; write {value: …, source: …}, or give the item or the whole file a source
source-missing thin-wire: size of thin-wire has no source; write {value: …, source: …}, or give the item or the whole file a source
lock-wrong-kind nut: nut: which of thin-pin and thin-wire goes on here is not said
  see engine.yaml:9: nut is specified with lock: [thin-pin, thin-wire]`,
      ],
    ],
    PINNED,
  );
  tells(
    nut(`${TIGHT}, thread: 1/2-20 UNF, hole: 1/8 in, lock: cotter-pin`),
    [
      [
        'with a thin pin that the tag names',
        'install: cap; torque: nut; lock: nut with thin-pin',
        `
source-missing thin-pin: size of thin-pin has no source; write {value: …, source: …}, or give the item or the whole file a source
source-missing thin-wire: size of thin-wire has no source; write {value: …, source: …}, or give the item or the whole file a source
cotter-size nut: nut: thin-pin of 1/16 in (1.5875 mm) is too thin for a hole of 1/8 in (3.175 mm) on 1/2-20 UNF, which takes 3/32 in (2.3812 mm) to 7/64 in (2.7781 mm) (pin by hole and thread, ASME B18.8.1)
  see engine.yaml:9: nut is specified here`,
      ],
      [
        'with a wire',
        'install: cap; torque: nut; lock: nut with thin-wire',
        `
source-missing thin-pin: size of thin-pin has no source; write {value: …, source: …}, or give the item or the whole file a source
source-missing thin-wire: size of thin-wire has no source; write {value: …, source: …}, or give the item or the whole file a source
lock-wrong-kind nut: nut is locked with thin-wire, and the specification asks for cotter-pin
  see engine.yaml:9: nut is specified with lock: cotter-pin
  fix: Lock with cotter-pin: "cotter-pin" for "thin-wire"
wire-size nut: nut: thin-wire of 0.020 in (0.51 mm) is too thin for a hole of 1/8 in (3.175 mm), which takes 0.032–0.091 in (0.82–2.31 mm) (wire by hole, AC 43.13-1B 7-124)
  see engine.yaml:9: nut is specified here`,
      ],
    ],
    PINNED,
  );
});
