/** What the reader of the specification reports. */
import {CAPS} from './case-engines.js';
import type {Case} from './cases.js';

export const SPEC_CASES: readonly Case[] = [
  {
    finding: 'spec-form',
    title: 'a key mistyped',
    engine: CAPS.replace('threads: dry', 'tread: dry'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`engine.yaml:13:5 main-cap-bolts takes no key tread; did you mean thread?`],
    also: ['spec-silent'],
  },
  {
    finding: 'spec-form',
    title: 'a severity for what is no finding',
    engine: 'parts:\n  block: {given: true}\n',
    shop: 'shop: {name: Example Works}\nsources: {house: {title: Notes}}\nseverity:\n  left-ot: warning\n  gribble: off\n  left-out: warning\n',
    procedure: '1. Have a rest.\n',
    says: [
      'shop.yaml:4:3 severity: left-ot is not a finding; did you mean left-out?',
      'shop.yaml:5:3 severity: gribble is not a finding; `wmark why` lists them all',
    ],
  },
  {
    finding: 'spec-form',
    title: 'a list where one name is due',
    engine: CAPS.replace('torque: 85 lbf·ft', 'torque: [85 lbf·ft]'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [`engine.yaml:12:13 torque is a list where snug, none, unknown, text or keys with values is due`],
  },
  {
    finding: 'spec-silent',
    title: 'nothing on the lock',
    engine: CAPS.replace(/ {4}lock:.*\n/, ''),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      `engine.yaml:9:3 main-cap-bolts does not say its lock; write lock: safety-wire or another kind, unknown, or none with a reason`,
    ],
  },
  {
    finding: 'spec-silent',
    title: 'a lock of none without a reason',
    engine: CAPS.replace(/ lock: .*/, ' lock: none'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      `engine.yaml:14:11 lock of main-cap-bolts is none without a reason; write lock: {value: none, because: …}`,
    ],
  },
  {
    finding: 'spec-silent',
    title: 'an honest unknown, CRLF',
    engine: CAPS.replace('threads: dry', 'threads: unknown').replaceAll('\n', '\r\n'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      `engine.yaml:13:14 threads of main-cap-bolts is unknown; find out, and write it down with its source`,
    ],
  },
  {
    finding: 'source-missing',
    title: 'a cure time without one',
    engine: CAPS,
    shop: `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  liquid-gasket: {use: sealant, cure: 24 h}
`,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      `shop.yaml:6:39 cure of liquid-gasket has no source; write {value: …, source: …}, or give the item or the whole file a source`,
    ],
  },
  {
    finding: 'spec-contradiction',
    title: 'passes that end below the torque',
    engine: CAPS.replace('85 lbf·ft', '85 lbf·ft\n    passes: [30 lbf·ft, 60 lbf·ft]'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      `engine.yaml:13:13 the last pass of main-cap-bolts is not its torque; end the passes at the torque`,
    ],
  },
];
