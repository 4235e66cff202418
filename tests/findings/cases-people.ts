/** Cautions, waivers, signatures, and steps that do too much. */
import {EXAMPLE_SHOP} from '../help/example.js';
import {CAPS, FITS, GAUGED, GLUE, HAZARDS, HEAVY, HOLD, PLUGS, TURNED} from './case-engines.js';
import type {Case} from './cases.js';

const VAPOUR = `
parts:
  block: {given: true}
  cap: {}
`;

export const PEOPLE_CASES: readonly Case[] = [
  {
    finding: 'caution-missing',
    title: 'a sealant and a part, each once',
    engine: HAZARDS,
    shop: GLUE,
    procedure: `1. Wipe the faces. \`clean: sump-joint\`
2. Run a bead. \`seal: sump-joint with hot-glue\`
3. Set the sump down. \`install: sump\`
4. Run another. \`seal: sump-joint with hot-glue\`
5. Leave it alone. \`cure: sump-joint for 1 h\`
`,
    says: [
      `8:17 hot-glue brings the hazards burn and vapour at step 2, and no caution before it warns of them`,
      `9:24 sump brings the hazard heavy at step 3, and no caution before it warns of that`,
    ],
  },
  {
    finding: 'caution-missing',
    title: 'the only sealant specified, though the tag does not name it; CRLF',
    engine: HAZARDS,
    shop: GLUE,
    procedure: `> **Caution:** The sump is heavy. \`hazard: heavy\`\r
\r
1. Wipe the faces. \`clean: sump-joint\`\r
2. 🔥 Run a bead. \`seal: sump-joint\`\r
3. Set the sump down. \`install: sump\`\r
4. Leave it alone. \`cure: sump-joint for 1 h\`\r
`,
    says: [
      `10:20 hot-glue brings the hazards burn and vapour at step 2, and no caution before it warns of them`,
    ],
  },
  {
    finding: 'caution-missing',
    title: 'the same hazard of another part, in a section of its own',
    engine: HEAVY,
    procedure: `> **Caution:** Two to lift the head. \`hazard: heavy\`

## Head

1. Lower the head on. \`install: head\`

## Flywheel

### Fitting

2. Swing the flywheel on. \`install: flywheel\`
3. Lift it off again. \`remove: flywheel\`

## Once more

4. Swing the flywheel on. \`install: flywheel\`
5. Push the gearbox home. \`install: gearbox\`
`,
    says: [],
  },
  {
    finding: 'caution-missing',
    title: 'a caution speaks for its section and those below, and for the first step of the next',
    engine: HEAVY,
    procedure: `## Head

> **Caution:** Two to lift the head. \`hazard: heavy\`

1. Lower the head on. \`install: head\`

## Flywheel

2. Swing the flywheel on. \`install: flywheel\`

## Gearbox

3. Stand back and look.

> **Caution:** The gearbox is heavier than it looks. \`hazard: heavy\`

### Pushing it home

4. Push the gearbox home. \`install: gearbox\`
`,
    says: [`15:28 flywheel brings the hazard heavy at step 2, and no caution before it warns of that`],
  },
  {
    finding: 'caution-late',
    title: 'after the step',
    engine: HAZARDS,
    shop: GLUE,
    procedure: `> **Caution:** The sump is heavy. \`hazard: heavy\`

1. Wipe the faces. \`clean: sump-joint\`
2. Run a bead. \`seal: sump-joint with hot-glue\`

> **Warning:** Glue burns and fumes. \`hazard: burn, vapour\`

3. Set the sump down. \`install: sump\`
4. Leave it alone. \`cure: sump-joint for 1 h\`
`,
    says: [
      `12:47 hot-glue brings the hazards burn and vapour at step 2, and the caution stands only after it`,
    ],
  },
  {
    finding: 'caution-late',
    title: 'one in time, one late',
    engine: HAZARDS,
    shop: GLUE,
    procedure: `> **Caution:** The sump is heavy, the glue hot. \`hazard: heavy, burn\`

1. Wipe the faces. \`clean: sump-joint\`
2. Run a bead. \`seal: sump-joint with hot-glue\`
3. Set the sump down. \`install: sump\`
4. Leave it alone. \`cure: sump-joint for 1 h\`

> **Warning:** 🔥 Fumes. \`hazard: vapour\`
`,
    says: [`14:35 hot-glue brings the hazard vapour at step 2, and the caution stands only after it`],
  },
  {
    finding: 'caution-late',
    title: 'CRLF, no blank line before the step',
    engine: HAZARDS,
    shop: GLUE,
    procedure: `> **Caution:** The sump is heavy. \`hazard: heavy\`\r
\r
1. Wipe the faces. \`clean: sump-joint\`\r
2. Run a bead. \`seal: sump-joint with hot-glue\`\r
\r
> **Warning:** Glue burns.\r
> It fumes, too. \`hazard: burn, vapour\`\r
\r
3. Set the sump down. \`install: sump\`\r
4. Leave it alone. \`cure: sump-joint for 1 h\`\r
`,
    says: [
      `13:27 hot-glue brings the hazards burn and vapour at step 2, and the caution stands only after it`,
    ],
  },
  {
    finding: 'two-actions',
    title: 'two parts',
    engine: TURNED,
    procedure: `1. Slide it in, and tap the plugs in. \`install: camshaft using soft-mallet\` \`turn: camshaft\` \`install: core-plugs\`
`,
    says: [
      `7:95 core-plugs: step 1 does several things that have nothing to do with each other (install camshaft, install core-plugs); make each a step`,
    ],
  },
  {
    finding: 'two-actions',
    title: 'a part and bolts of another',
    engine: CAPS.replace('  main-caps:', '  sump: {}\n  main-caps:'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Set the sump down, and bring the cap bolts up. \`install: sump\` \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      `8:68 main-cap-bolts: step 2 does several things that have nothing to do with each other (install sump, torque main-cap-bolts); make each a step`,
    ],
  },
  {
    finding: 'hold-by-same-person',
    title: 'did the check',
    engine: HOLD,
    procedure: `1. Set the crankshaft down. \`install: crankshaft\`
2. Check that it turns. \`check: crank-turns by A. Penrose\`
3. Sign. \`witness: bottom-end-closed by a penrose\`
`,
    says: [`9:41 bottom-end-closed is signed by a penrose, who did what is to be looked at (crank-turns)`],
  },
  {
    finding: 'hold-by-same-person',
    title: 'wrote the procedure',
    engine: HOLD,
    procedure: `---
title: Bottom end
revision: A
date: 2026-03-01
author: R. Tamsin, shop lead
approved: J. Orrin
---

1. Set the crankshaft down. \`install: crankshaft\`
2. Check that it turns. \`check: crank-turns\`
3. Sign. \`witness: bottom-end-closed by R. Tamsin\`
`,
    says: [`11:41 bottom-end-closed is signed by R. Tamsin, who wrote the procedure`],
  },
  {
    finding: 'hold-by-same-person',
    title: 'approved the procedure',
    engine: HOLD,
    procedure: `---
title: Bottom end
revision: A
date: 2026-03-01
author: R. Tamsin, shop lead
approved: J. Orrin
---

1. Set the crankshaft down. \`install: crankshaft\`
2. Check that it turns. \`check: crank-turns\`
3. Sign. \`witness: bottom-end-closed by J. Orrin\`
`,
    says: [`11:41 bottom-end-closed is signed by J. Orrin, who approved the procedure`],
  },
  {
    finding: 'hold-by-same-person',
    title: 'the role that is specified did the check',
    engine: HOLD,
    procedure: `1. Set the crankshaft down. \`install: crankshaft\`
2. Check that it turns. \`check: crank-turns by shop lead\`
3. Sign. \`witness: bottom-end-closed\`
`,
    says: [`9:11 bottom-end-closed is signed by shop lead, who did what is to be looked at (crank-turns)`],
  },
  {
    finding: 'waiver-without-reason',
    title: 'neither reason nor name',
    engine: PLUGS,
    procedure: `1. Wipe the seats. \`clean: plug-seats\`
2. Drive in the plugs. \`install: core-plugs\` \`waive: clean-first\`
`,
    says: [
      `8:47 the waiver of clean-first does not say why (\`because …\`), nor who answers for it (\`by …\`)`,
    ],
  },
  {
    finding: 'waiver-without-reason',
    title: 'no reason: what it waives stands, CRLF',
    engine: PLUGS,
    procedure: `1. 🔨 Drive in the plugs. \`install: core-plugs\` \`waive: clean-first by R. Tamsin\`\r
`,
    says: [`7:50 the waiver of clean-first does not say why (\`because …\`)`],
    also: ['clean-first'],
  },
  {
    finding: 'waiver-stale',
    title: 'the mistake is gone',
    engine: PLUGS,
    procedure: `1. Wipe the seats. \`clean: plug-seats\`
2. Drive in the plugs. \`install: core-plugs\` \`waive: clean-first by R. Tamsin because they are new\`
`,
    says: [`8:54 the waiver of clean-first silences nothing at this step; take it out`],
  },
  {
    finding: 'waiver-stale',
    title: 'no such finding',
    engine: PLUGS,
    procedure: `1. Wipe the seats. \`clean: plug-seats\`
2. 🔨 Drive in the plugs. \`install: core-plugs\` \`waive: clean-frist by R. Tamsin because they are new\`
`,
    says: [`8:57 the waiver names clean-frist, which is not a finding; did you mean clean-first?`],
  },
  {
    finding: 'caution-missing',
    title: 'a caution that nearly says it',
    engine: VAPOUR,
    shop: EXAMPLE_SHOP.replace('solvent: {use: cleaner}', 'solvent: {use: cleaner, hazards: [vapour]}'),
    procedure: `> **Warning:** Fumes. \`hazard: vapor\`

1. Wash the cap. \`clean: cap with solvent\`
2. Set it in place. \`install: cap\`
`,
    says: [
      '9:19 solvent brings the hazard vapour at step 1, and no caution before it warns of that; did you mean vapour where a caution says vapor?',
    ],
  },
  {
    finding: 'caution-missing',
    title: 'a caution that is of another hazard',
    engine: VAPOUR,
    shop: EXAMPLE_SHOP.replace('solvent: {use: cleaner}', 'solvent: {use: cleaner, hazards: [vapour]}'),
    procedure: `> **Warning:** It is hot. \`hazard: burns\`

1. Wash the cap. \`clean: cap with solvent\`
2. Set it in place. \`install: cap\`
`,
    says: ['9:19 solvent brings the hazard vapour at step 1, and no caution before it warns of that'],
  },
  {
    finding: 'left-slack',
    title: 'the turn after the torque is missing',
    engine: CAPS.replace('torque: 85 lbf·ft', 'torque: 85 lbf·ft\n    angle: 90°'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    says: [
      '8:25 main-cap-bolts end the build slack: step 2 of procedure.md brings them to their torque, and no step turns them on by 90°',
    ],
  },
  {
    finding: 'left-slack',
    title: 'the turn after snug is missing',
    engine: CAPS.replace('torque: 85 lbf·ft', 'torque: snug\n    angle: 90°'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Run the bolts down. \`torque: main-cap-bolts to snug\`
`,
    says: [
      '8:25 main-cap-bolts end the build slack: step 2 of procedure.md brings them to snug, and no step turns them on by 90°',
    ],
  },
  {
    finding: 'left-slack',
    title: 'torque and turn are missing',
    engine: CAPS.replace('torque: 85 lbf·ft', 'torque: 85 lbf·ft\n    angle: 90°'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Run the bolts down. \`torque: main-cap-bolts to snug\`
`,
    says: [
      '8:25 main-cap-bolts end the build slack: step 2 of procedure.md leaves them below the specified torque',
    ],
  },
  {
    finding: 'rework-missing',
    title: 'a list that begins with 2 right below prose is none',
    engine: FITS,
    shop: GAUGED,
    procedure: `1. Set the crankshaft in. \`install: crankshaft\`
2. Read the play and the drag. \`measure: end-play using dial-gauge\` \`check: crank-drag\`
3. If it is out: \`if: end-play is out\`
   2. Fetch the lead.
`,
    says: [
      '10:4 end-play: the branch has no steps under it; a list right below a line of prose must begin with 1, and this one begins with 2 (CommonMark)',
    ],
  },
  {
    finding: 'rework-missing',
    title: 'the steps below the branch are indented too little to be its sub-steps',
    engine: FITS,
    shop: GAUGED,
    procedure: `1. Set the crankshaft in. \`install: crankshaft\`
2. Read the play and the drag. \`measure: end-play using dial-gauge\` \`check: crank-drag\`
3. If it is out: \`if: end-play is out\`
  1. Fetch the lead.
  2. Take the play
     to him.
4. Go on.
`,
    says: [
      '10:3 end-play: the branch has no steps under it; the steps below it are indented by 2 where its sub-steps want 3, as far as its text begins (CommonMark)',
    ],
  },
  {
    finding: 'rework-missing',
    title: 'the step below the branch is indented too little for a number of two figures',
    engine: FITS,
    shop: GAUGED,
    procedure: `9. Set the crankshaft in. \`install: crankshaft\`
10. Read the play and the drag. \`measure: end-play using dial-gauge\` \`check: crank-drag\`
11. If it is out: \`if: end-play is out\`
   1. Fetch the lead.
12. Go on.
`,
    says: [
      '10:4 end-play: the branch has no steps under it; the step below it is indented by 3 where its sub-steps want 4, as far as its text begins (CommonMark)',
    ],
  },
  {
    finding: 'rework-missing',
    title: 'the next step stands at the margin like the branch',
    engine: FITS,
    shop: GAUGED,
    procedure: `1. Set the crankshaft in. \`install: crankshaft\`
2. Read the play and the drag. \`measure: end-play using dial-gauge\` \`check: crank-drag\`
3. If it is out: \`if: end-play is out\`
4. Fetch the lead.
`,
    says: ['9:19 end-play: the branch has no steps under it'],
  },
  {
    finding: 'rework-missing',
    title: 'nothing stands below the branch',
    engine: FITS,
    shop: GAUGED,
    procedure: `1. Set the crankshaft in. \`install: crankshaft\`
2. Read the play and the drag. \`measure: end-play using dial-gauge\` \`check: crank-drag\`
3. If it is out, fetch the lead: \`if: end-play is out\`
`,
    says: ['9:35 end-play: the branch has no steps under it'],
  },
];
