/**
 * Names that lead nowhere, in tags, in a specification, in a waiver and in the shop's list of severities: all that is told
 * of them, and of what stands at the same place. Every engine is invented.
 */
import {describe, expect, it} from 'vitest';
import {book, EXAMPLE_SHOP} from '../help/example.js';
import {toldOf} from '../help/found.js';
import {tells} from '../help/stories.js';

type Texts = Parameters<typeof book>[0];

/** What is particular, the texts of the book, and every line that is told, first an empty one. */
type Row = readonly [title: string, texts: Texts, lines: string];

const tellsOfBooks = (rows: readonly Row[]) =>
  it.each<Row>(rows)('%s', (_, texts, lines) => {
    expect(['', ...toldOf(book(texts))].join('\n').trimEnd()).toBe(lines);
  });

const WHEEL = `
parts:
  block: {given: true}
  wheel: {}
fasteners:
  rim-bolts: {holds: [wheel], torque: 22 N·m, threads: dry, lock: {value: none, because: dowels}}
  rim-bolts: {holds: [wheel], torque: 80 N·m, threads: dry, lock: {value: none, because: the taper holds}}
`;

const RIGGED = `
parts:
  block: {given: true}
  yokes: {reused: true}
`;

const TOOLS = `
parts:
  tools: {given: true}
`;

const INSPECTED = `1. Look at it. \`inspect: yoke for cracks\`
2. Set it on. \`install: yoke\``;

const LOOSE = `
parts:
  block: {given: true}
  cover: {}
  lid: {}
fasteners:
  screws: {count: 4, holds: [cover], torque: 10 N·m, threads: dry, lock: {value: none, because: stretch}}
`;

describe('a name', () => {
  tellsOfBooks([
    [
      'that a key written twice should bear is told there, with three of the places that want it',
      {
        engine: WHEEL,
        procedures: {
          'a.md':
            '1. a `install: wheel`\n2. b `torque: rim-bolts to 22 N·m`\n3. c `torque: hub-nut to 80 N·m`\n4. d `loosen: hub-nut`\n5. e `torque: hub-nut to 80 N·m`\n6. f `loosen: hub-nut`\n',
        },
      },
      `
spec-form: the key rim-bolts stands here a second time; did you mean hub-nut here?
  see engine.yaml:9: it is first here
  see a.md:9: hub-nut is not in the specification
  see a.md:10: hub-nut is not in the specification
  see a.md:11: hub-nut is not in the specification
  fix: Write hub-nut here: "hub-nut" for "rim-bolts"`,
    ],
    [
      'that only its definition writes is the slip of the definition',
      {engine: RIGGED, procedures: {'a.md': `${INSPECTED}\n`}},
      `
left-out yokes: yokes are never installed
  see engine.yaml:7: yokes belong in the engine
unknown-item yoke: yokes is named nowhere, and every place that means it says yoke; did you mean yoke here?
  see a.md:7: yoke is named here
  see a.md:8: yoke is named here
  fix: Write yoke here, as the 2 places do: "yoke" for "yokes"`,
    ],
    [
      'that stands as the last word of a text is named there too',
      {engine: RIGGED, procedures: {'a.md': `${INSPECTED}, one of the yokes`}},
      `
unknown-item yoke: yoke is not in the specification; did you mean yokes?
  see a.md:8: here too
  fix: Write yokes at all 2 places: "yokes" for "yoke", "yokes" for "yoke"
left-out yokes: yokes are never installed
  see a.md:7: follows from this slip: yoke is not in the specification; did you mean yokes?
  see engine.yaml:7: yokes belong in the engine`,
    ],
    [
      'that stands as the first word of a text is named there too',
      {
        engine: TOOLS,
        shop: 'tools:\n  saw: bow saw\nshop: {name: Works}\nsources:\n  house: {title: Notes, note: invented}\n',
        procedures: {'a.md': '1. a `clean: tolls`\n2. b `inspect: tolls for rust`\n'},
      },
      `
unknown-item tolls: tolls is not in the specification; did you mean tools?
  see a.md:8: here too
  fix: Write tools at all 2 places: "tools" for "tolls", "tools" for "tolls"`,
    ],
    [
      'is joined over a step that waives another finding',
      {
        engine: RIGGED,
        procedures: {
          'a.md':
            '1. a `inspect: yokess for cracks` `waive: left-out by A. Lead because it is new`\n2. b `install: yokess`\n',
        },
      },
      `
left-out yokes: yokes are never installed
  see engine.yaml:7: yokes belong in the engine
unknown-item yokess: yokes is named nowhere, and every place that means it says yokess; did you mean yokess here?
  see a.md:7: yokess is named here
  see a.md:8: yokess is named here
  fix: Write yokess here, as the 2 places do: "yokess" for "yokes"
waiver-stale: the waiver of left-out silences nothing at this step; take it out
  fix: Take the waiver out: "" for " \`waive: left-out by A. Lead because it is new\`"`,
    ],
    [
      'in a file of the specification and one in a tag are told apart',
      {
        engine: `${RIGGED}  loop: {after: [yokess]}\n`,
        procedures: {'a.md': '1. a `install: yokess`\n2. b `install: loop`\n'},
      },
      `
left-out yokes: yokes are never installed
  see engine.yaml:7: yokes belong in the engine
unknown-item yokess: yokes is named nowhere, and every place that means it says yokess; did you mean yokess here?
  see engine.yaml:8: yokess is named here
  see a.md:7: yokess is named here
  fix: Write yokess here, as the 2 places do: "yokess" for "yokes"`,
    ],
    [
      'that a tag writes twice is told once, and once what is wrong with the item twice over',
      {engine: RIGGED, procedures: {'a.md': '1. a `install: yokes, yokes, yoke, yoke`\n'}},
      `
inspect-first yokes: yokes are reused parts and go in without inspection
  see engine.yaml:7: yokes is specified here
install-order yokes: yokes go in but are in already since step 1
  story: step 1 of a.md: in (install: yokes)
unknown-item yoke: yoke is not in the specification; did you mean yokes?
  see a.md:7: here too
  fix: Write yokes at all 2 places: "yokes" for "yoke", "yokes" for "yoke"`,
    ],
    [
      'of an option that there is none of stands in its job, before all else',
      {
        engine: `options: {sail: a sail}\n${RIGGED}`,
        shop: `${EXAMPLE_SHOP}\nseverity: {wibble: off}\n`,
        procedures: {'a.md': '1. a `inspect: yokes for cracks`\n2. b `instal: yokes`\n'},
        job: 'options: [sial]\n',
      },
      `
unknown-verb: "instal" is no verb; did you mean install?
  fix: Write \`install\`: "install" for "instal"
unknown-item: sial is not an option of this engine; did you mean sail?
spec-form: severity: wibble is not a finding; \`wmark why\` lists them all
left-out yokes: yokes are never installed
  see a.md:8: follows from this slip: "instal" is no verb; did you mean install?
  see engine.yaml:8: yokes belong in the engine`,
    ],
  ]);
});

describe('a name of a finding', () => {
  tellsOfBooks([
    [
      'in the severities of the shop',
      {
        engine: 'parts:\n  block: {given: true}\n',
        shop: `${EXAMPLE_SHOP}\nseverity: {wibble: off, unknwn-verb: off, left-owt: off, left-out: warning, house-rule: off}\n`,
        procedures: {'a.md': '1. a `clean: block`\n'},
      },
      `
spec-form: severity: wibble is not a finding; \`wmark why\` lists them all
spec-form: severity: unknwn-verb is not a finding; did you mean unknown-verb?
  fix: Write unknown-verb: "unknown-verb" for "unknwn-verb"
spec-form: severity: left-owt is not a finding; did you mean left-out?`,
    ],
    [
      'in a waiver, near to one that nobody can waive',
      {
        engine: 'parts:\n  lid: {}\n',
        procedures: {
          'a.md': '1. a `install: lid` `` waive: waiver-stal by A. Lead because it is a trial ``\n',
        },
      },
      `
waiver-stale: the waiver names waiver-stal, which is not a finding; \`wmark why\` lists them all
  fix: Take the waiver out: "" for " \`\` waive: waiver-stal by A. Lead because it is a trial \`\`"`,
    ],
    [
      'in a waiver, found at this step',
      {
        engine: LOOSE,
        procedures: {
          'a.md':
            '1. a `install: cover`\n2. b `install: lid`\n3. c `install: lid` `` waive: instal-order by A. Lead because it is a trial ``\n4. d `torque: screws to 10 N·m`\n',
        },
      },
      `
install-order lid: lid goes in but is in already since step 2
  story: step 2 of a.md: in (install: lid)
waiver-stale: the waiver names instal-order, which is not a finding; did you mean install-order?
  fix: Write install-order: "install-order" for "instal-order"`,
    ],
    [
      'in a waiver, found at another step, is taken out with the ticks and spaces around it',
      {
        engine: LOOSE,
        procedures: {
          'a.md':
            '1. a `install: cover`\n2. b `install: lid`\n3. c `install: lid`\n4. d `torque: screws to 10 N·m` ``  waive: instal-order by A. Lead because it is a trial   ``\n',
        },
      },
      `
install-order lid: lid goes in but is in already since step 2
  story: step 2 of a.md: in (install: lid)
waiver-stale: the waiver names instal-order, which is not a finding; did you mean install-order?
  fix: Take the waiver out: "" for " \`\`  waive: instal-order by A. Lead because it is a trial   \`\`"`,
    ],
  ]);
});

describe('an item that waits for what its specification may not name', () => {
  tells(
    `
options: {sail: a sail}
parts:
  block: {given: true}
  shaft: {after: [lip]}
  mast: {only: [sail]}
surfaces:
  lip: {on: block, assembly: clean}
  edge: {on: blok, assembly: clean}
  rim: {on: shaft, assembly: clean}
checks:
  drag: {expect: turns by hand, after: [rim]}
`,
    [
      [
        'waits for it all the same',
        'install: shaft; check: drag; clean: lip; clean: rim; install: mast, sprit; lube: edge with engine-oil',
        `
wrong-kind shaft: lip is a surface where a part, a joint, a fastener, a fit, a mark, a check, a hold point or a system is due
  see engine.yaml:11: lip is here
unknown-item edge: nothing is called blok; did you mean block?
  fix: Write block: "block" for "blok"
wrong-kind drag: rim is a surface where a part, a joint, a fastener, a fit, a mark, a check, a hold point or a system is due
  see engine.yaml:13: rim is here
install-order shaft: shaft goes in before lip, which must be done first
  see engine.yaml:8: shaft comes after lip
install-order drag: drag is checked before rim is done
  see engine.yaml:15: drag is checked after rim
only-missing mast: only engines with sail have mast, and step 5 deals with nothing else
  fix: Say for which engines the step is: " \`only: sail\`" after "…, sprit\`"
unknown-item sprit: sprit is not in the specification; add it to engine.yaml or shop.yaml, or correct the id
clean-first edge: edge is lubed but was never cleaned
  see engine.yaml:12: edge is specified here`,
      ],
    ],
  );
});

describe('a joint that waits for a sealant', () => {
  tells(
    `
parts:
  block: {given: true}
  sump: {closes: [seam]}
  cap: {after: [seam]}
joints:
  seam: {between: [block, sump], seal: [glue]}
`,
    [
      [
        'waits also where the sealant is given places, which none has, and cured at one of them',
        'clean: seam; seal: seam with glue; install: sump; install: cap; cure: glue[tube] for 24 h',
        `
spec-form glue: glue takes no key at; it takes name, type, source, note, use, lock, hazards, cure, k, range or size
install-order cap: cap goes in before seam, which must be cured first
  see engine.yaml:8: cap comes after seam`,
      ],
    ],
    EXAMPLE_SHOP.replace(
      'consumables:',
      'consumables:\n  glue: {use: sealant, cure: {value: 24 h, source: house}, at: [tube, tin]}',
    ),
  );
});
