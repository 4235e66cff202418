/** Tools, and how parts go in. */
import {FITS, TURNED} from './case-engines.js';
import type {Case} from './cases.js';

export const TOOL_CASES: readonly Case[] = [
  {
    finding: 'barred-tool',
    title: 'a steel hammer',
    engine: TURNED,
    procedure: `1. Tap it in. \`install: camshaft using soft-mallet, steel-hammer\` \`turn: camshaft\`
`,
    says: [`7:53 camshaft is worked on with steel-hammer, which is barred there: it burrs what it hits`],
    also: ['left-out'],
  },
  {
    finding: 'barred-tool',
    title: 'on the way out, at one place, CRLF',
    engine: TURNED,
    procedure: `1. Slide it in. \`install: camshaft using soft-mallet\` \`turn: camshaft\`\r
2. 🔨 Tap the plug out. \`remove: core-plugs[rear] using steel-hammer\`\r
3. Tap the plugs in. \`install: core-plugs\`\r
`,
    says: [
      `8:57 core-plugs[rear] are worked on with steel-hammer, which is barred there: it burrs what it hits`,
    ],
    also: ['install-order'],
  },
  {
    finding: 'barred-tool',
    title: 'the only tool named',
    engine: TURNED,
    procedure: `1. Tap it in. \`install: camshaft using steel-hammer\` \`turn: camshaft\`
2. Tap the plugs in. \`install: core-plugs\`
`,
    says: [`7:40 camshaft is worked on with steel-hammer, which is barred there: it burrs what it hits`],
  },
  {
    finding: 'install-manner',
    title: 'no tool named',
    engine: TURNED,
    procedure: `1. Slide it in, turning. \`install: camshaft\` \`turn: camshaft\`
2. Tap the plugs in. \`install: core-plugs\`
`,
    says: [`7:27 camshaft must go in with soft-mallet, and step 1 names no tool`],
  },
  {
    finding: 'install-manner',
    title: 'another tool',
    engine: TURNED,
    procedure: `1. Slide it in, turning. \`install: camshaft using feeler-gauges\` \`turn: camshaft\`
2. Tap the plugs in. \`install: core-plugs\`
`,
    says: [`7:27 camshaft must go in with soft-mallet, and step 1 uses feeler-gauges`],
  },
  {
    finding: 'install-manner',
    title: 'not turned, emoji and CRLF',
    engine: TURNED,
    procedure: `1. 🔧 Slide it in. \`install: camshaft using soft-mallet\`\r
2. Tap the plugs in. \`install: core-plugs\`\r
`,
    says: [`7:21 camshaft must be turned as it goes in, and step 1 does not turn it`],
  },
  {
    finding: 'install-manner',
    title: 'turned in a sub-step',
    engine: TURNED,
    procedure: `1. Slide it in. \`install: camshaft using soft-mallet\`
   1. Turn it as it goes. \`turn: camshaft\`
2. Tap the plugs in. \`install: core-plugs\`
`,
    says: [],
  },
  {
    finding: 'tool-not-in-shop',
    title: 'a slip of the pen',
    engine: TURNED,
    procedure: `1. Slide it in. \`install: camshaft using soft-malet, soft-mallet\` \`turn: camshaft\`
2. Tap the plugs in. \`install: core-plugs\`
`,
    says: [`7:42 soft-malet is not a tool of the shop; did you mean soft-mallet?`],
  },
  {
    finding: 'tool-not-in-shop',
    title: 'nothing like it, emoji before',
    engine: TURNED,
    procedure: `1. 🔨 Slide it in. \`install: camshaft using soft-mallet\` \`turn: camshaft\`
2. 🔨 Tap the plugs in. \`install: core-plugs using hydraulic-press\`
`,
    says: [`8:52 hydraulic-press is not a tool of the shop; add it to shop.yaml, or correct the id`],
  },
  {
    finding: 'calibration-due',
    title: 'past today, and past the procedure',
    engine: FITS.replace(', using: [dial-gauge]', ''),
    shop: `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  dial-gauge: {name: dial gauge, gauge: true, due: 2026-05-31}
  spring-scale: {name: spring scale, gauge: true, due: 2026-02-01}
  feeler-gauges: {name: feeler gauges, gauge: true, due: 2026-06-01}
`,
    procedure: `1. Set the crankshaft down. \`install: crankshaft\`
2. Read the play. \`measure: end-play using dial-gauge\`
3. Read it again. \`measure: end-play using dial-gauge\`
4. Spin it. \`check: crank-drag using spring-scale\`
5. Feel under it. \`check: crank-drag using feeler-gauges\`
`,
    says: [
      `8:44 dial-gauge was due for calibration on 2026-05-31, and today is 2026-06-01`,
      `10:38 spring-scale was due for calibration on 2026-02-01, and today is 2026-06-01`,
    ],
  },
  {
    finding: 'calibration-due',
    title: 'the only gauge specified',
    engine: FITS,
    shop: `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  dial-gauge: {name: dial gauge, gauge: true, due: 2026-05-31}
  spring-scale: {name: spring scale, gauge: true, due: 2026-02-01}
  feeler-gauges: {name: feeler gauges, gauge: true, due: 2026-06-01}
`,
    procedure: `1. Set the crankshaft down. \`install: crankshaft\`
2. Read the play. \`measure: end-play\`
3. Spin it. \`check: crank-drag\`
`,
    says: [`8:20 dial-gauge was due for calibration on 2026-05-31, and today is 2026-06-01`],
  },
];
