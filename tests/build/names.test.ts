/** Names that stand in a tag: what is done to which item at which places, and what is said of a name that fits nothing. */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {program} from '../../src/build/program.js';
import {positionAt} from '../../src/text/source.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  caps: {at: [front, rear]}
  cover: {}
fasteners:
  bolts: {at: [front, rear], holds: [caps]}
fits:
  float: {between: [block, caps]}
checks:
  turns: {}
`;

function made(...tags: readonly string[]): Book {
  const steps = tags.map((tag, at) => `${at + 1}. Do it. ${tag}\n`).join('');
  return book({engine: ENGINE, procedures: {'procedure.md': `\n${steps}`}});
}

/** As `install caps[front, rear]`. */
function actions({parts}: ReturnType<typeof program>): string[] {
  return parts.flatMap((part) =>
    part.actions.map(({verb, item, places}) => `${verb} ${item.id}[${places.join(', ')}]`),
  );
}

function told(made: Book): string[] {
  return program(made).problems.map(({name, says, hint, related, fix}) => {
    const places = related?.map(({where, says}) => {
      const file = made.spec.files.get(where.file);
      return `${says} (${where.file}:${file && positionAt(file, where.span.start).line})`;
    });
    return [`${name}: ${says}`, hint, fix?.title, ...(places ?? [])].filter(Boolean).join(' | ');
  });
}

const ADD = 'add it to engine.yaml or shop.yaml, or correct the id';

type Row = readonly [tag: string, does: readonly string[], says: readonly string[]];

describe.each<[title: string, ...rows: Row[]]>([
  [
    'what is known',
    ['`install: caps`', ['install caps[front, rear]'], []],
    ['`install: caps[rear, front], cover`', ['install caps[rear, front]', 'install cover[]'], []],
    ['`torque: bolts using soft-mallet` `turn: cover`', ['torque bolts[front, rear]', 'turn cover[]'], []],
    ['`lock: bolts with safety-wire, wire-032`', ['lock bolts[front, rear]'], []],
    ['`if: turns is out`', [], []],
  ],
  [
    'what is not in the specification',
    [
      '`install: cap`',
      [],
      [`unknown-item: cap is not in the specification | did you mean caps? | Write caps`],
    ],
    ['`torque: cap`', [], [`unknown-item: cap is not in the specification | ${ADD}`]],
    [
      '`install: flywheel, cover`',
      ['install cover[]'],
      [`unknown-item: flywheel is not in the specification | ${ADD}`],
    ],
    [
      '`lube: bolts with engine-oyl`',
      ['lube bolts[front, rear]'],
      ['unknown-item: engine-oyl is not in the specification | did you mean engine-oil? | Write engine-oil'],
    ],
    [
      '`install: cover using soft-malet`',
      ['install cover[]'],
      [
        'tool-not-in-shop: soft-malet is not a tool of the shop | did you mean soft-mallet? | Write soft-mallet',
      ],
    ],
    [
      '`install: cover using pry-bar`',
      ['install cover[]'],
      ['tool-not-in-shop: pry-bar is not a tool of the shop | add it to shop.yaml, or correct the id'],
    ],
    [
      '`if: flaot is out`',
      [],
      ['unknown-item: flaot is not in the specification | did you mean float? | Write float'],
    ],
  ],
  [
    'what is of another kind',
    [
      '`install: bolts`',
      [],
      [
        'wrong-kind: bolts is a fastener, and `install` takes a part | bolts is specified here (engine.yaml:10)',
      ],
    ],
    [
      '`inspect: bolts`',
      [],
      [
        'wrong-kind: bolts is a fastener, and `inspect` takes a part or a surface | bolts is specified here (engine.yaml:10)',
      ],
    ],
    [
      '`clean: bolts`',
      [],
      [
        'wrong-kind: bolts is a fastener, and `clean` takes a surface, a part or a joint | bolts is specified here (engine.yaml:10)',
      ],
    ],
    [
      '`if: caps is out`',
      [],
      [
        'wrong-kind: caps is a part, and `if` takes a fit or a check | caps is specified here (engine.yaml:7)',
      ],
    ],
    [
      '`lube: bolts with caps`',
      ['lube bolts[front, rear]'],
      ['wrong-kind: caps is a part, and `with` takes a consumable | caps is specified here (engine.yaml:7)'],
    ],
    [
      '`lock: bolts with caps`',
      ['lock bolts[front, rear]'],
      ['wrong-kind: caps is a part, and `with` takes a consumable | caps is specified here (engine.yaml:7)'],
    ],
    [
      '`lube: bolts with safety-wire`',
      ['lube bolts[front, rear]'],
      ['wrong-kind: safety-wire is a kind of lock, and `with` takes a consumable'],
    ],
    [
      '`install: cover using safety-wire`',
      ['install cover[]'],
      ['wrong-kind: safety-wire is a kind of lock, and `using` takes a tool or a consumable'],
    ],
  ],
  [
    'a place that the item does not have',
    [
      '`install: caps[frnt]`',
      [],
      ['unknown-item: caps has no place frnt | did you mean front? | caps is specified here (engine.yaml:7)'],
    ],
    [
      '`install: caps[centre, rear]`',
      ['install caps[rear]'],
      [
        'unknown-item: caps has no place centre | its places are: front, rear | caps is specified here (engine.yaml:7)',
      ],
    ],
    [
      '`install: cover[front]`',
      [],
      [
        'unknown-item: cover has no places, so [front] says nothing | its places are: none | cover is specified here (engine.yaml:8)',
      ],
    ],
  ],
  [
    'a step to go back to',
    ['`turn: cover` `step: press` `repeat: press`', ['turn cover[]'], []],
    [
      '`step: press` `repeat: pres`',
      [],
      ['unknown-item: no step of this procedure is named pres | did you mean press?'],
    ],
    [
      '`repeat: lift`',
      [],
      ['unknown-item: no step of this procedure is named lift | name the step with `step: lift`'],
    ],
  ],
  [
    'a tag that names nothing',
    ['`if:` `turn: cover`', ['turn cover[]'], []],
    ['`repeat:` `turn: cover`', ['turn cover[]'], []],
    ['`torque: bolts to 40 lbf·ft because safety-wire`', ['torque bolts[front, rear]'], []],
    ['`torque: bolts with harmonic`', ['torque bolts[front, rear]'], []],
  ],
])('%s', (_, ...rows) => {
  it.each(rows)('%s', (tag, does, says) => {
    const one = made(tag);
    expect(actions(program(one))).toEqual(does);
    expect(told(one)).toEqual(says);
  });
});

it('a step is later than every one before it, and than all of the procedures before', () => {
  const texts = ['1.md', '2.md', '3.md'].map((file) => [file, '1. a\n   1. b\n2. c\n'] as const);
  const {steps} = program(book({engine: ENGINE, procedures: Object.fromEntries(texts)}));
  const orders = steps.map(({order}) => order);
  expect(orders).toHaveLength(9);
  expect(new Set(orders).size).toBe(9);
  expect(orders).toEqual(orders.toSorted((one, other) => one - other));
});
