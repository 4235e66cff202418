/** Values of tags that are not the specified ones. */
import {CAPS, FITS, GAUGED, SUMP} from './case-engines.js';
import type {Case} from './cases.js';

export const VALUE_CASES: readonly Case[] = [
  {
    finding: 'value-disagrees',
    title: 'a torque above the specified one',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 95 lbf·ft\`
`,
    says: [`8:51 main-cap-bolts are torqued to 95 lbf·ft (129 N·m), and 85 lbf·ft (115 N·m) is specified`],
  },
  {
    finding: 'value-disagrees',
    title: 'a last torque below it, emoji before',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. 🔩 Bring the bolts up. \`torque: main-cap-bolts to 75 lbf·ft\`
`,
    says: [`8:54 main-cap-bolts are torqued to 75 lbf·ft (102 N·m), and 85 lbf·ft (115 N·m) is specified`],
  },
  {
    finding: 'value-disagrees',
    title: 'a torque in another unit that only the coarser figures would let pass',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 115.8 N·m\`
`,
    says: [
      `8:51 main-cap-bolts are torqued to 85.4 lbf·ft (115.8 N·m), and 85 lbf·ft (115 N·m) is specified`,
    ],
  },
  {
    finding: 'value-disagrees',
    title: 'a lower torque that leads up is fine, in N·m, one place wrong',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Go round once. \`torque: main-cap-bolts to 40 N·m\`
3. Bring the bolts up. \`torque: main-cap-bolts[front, rear] to 115 N·m\`
4. Bring the middle ones up. \`torque: main-cap-bolts[centre] to 151 N·m\`
`,
    says: [
      `10:65 main-cap-bolts[centre] are torqued to 111 lbf·ft (151 N·m), and 85 lbf·ft (115 N·m) is specified`,
    ],
  },
  {
    finding: 'value-disagrees',
    title: 'CRLF and another unit',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`\r
2. Bring the bolts up. \`torque: main-cap-bolts to 85 N·m\`\r
`,
    says: [`8:51 main-cap-bolts are torqued to 63 lbf·ft (85 N·m), and 85 lbf·ft (115 N·m) is specified`],
  },
  {
    finding: 'value-disagrees',
    title: 'the end of the passes',
    engine: CAPS,
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts in 30, 60, 75 lbf·ft\`
`,
    says: [`8:51 main-cap-bolts are torqued to 75 lbf·ft (102 N·m), and 85 lbf·ft (115 N·m) is specified`],
  },
  {
    finding: 'value-disagrees',
    title: 'passes other than specified',
    engine: CAPS.replace('85 lbf·ft', '85 lbf·ft\n    passes: [30 lbf·ft, 60 lbf·ft, 85 lbf·ft]'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft in 40, 85\`
`,
    says: [
      `8:64 main-cap-bolts are torqued in passes of 40 lbf·ft (54 N·m), 85 lbf·ft (115 N·m), and 30 lbf·ft (41 N·m), 60 lbf·ft (81 N·m), 85 lbf·ft (115 N·m) are specified`,
    ],
  },
  {
    finding: 'value-disagrees',
    title: 'an angle',
    engine: CAPS.replace('85 lbf·ft', '85 lbf·ft\n    angle: 90°'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft turn 60°\`
`,
    says: [`8:66 main-cap-bolts are turned 60° on, and 90° is specified`],
  },
  {
    finding: 'value-disagrees',
    title: 'a torque where snug is specified',
    engine: CAPS.replace('85 lbf·ft', 'snug'),
    procedure: `1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 15 lbf·ft\`
`,
    says: [`8:51 main-cap-bolts are torqued to 15 lbf·ft (20 N·m), and snug is specified`],
  },
  {
    finding: 'value-disagrees',
    title: 'limits wider than specified',
    engine: FITS,
    shop: GAUGED,
    procedure: `1. Set the crankshaft down. \`install: crankshaft\`
2. Read the play. \`measure: end-play within 0.004–0.010 in\`
3. Spin it. \`check: crank-drag within max 5 lbf·ft\`
`,
    says: [
      `8:45 end-play is measured within 0.004–0.010 in (0.11–0.25 mm), which is wider, and 0.004–0.008 in (0.11–0.20 mm) is specified`,
    ],
  },
  {
    finding: 'value-disagrees',
    title: 'limits narrower, and a drag wider',
    engine: FITS,
    shop: GAUGED,
    procedure: `1. Set the crankshaft down. \`install: crankshaft\`
2. Read the play. \`measure: end-play within 0.005–0.008 in\`
3. Spin it. \`check: crank-drag within max 8 lbf·ft\`
`,
    says: [
      `8:45 end-play is measured within 0.005–0.008 in (0.13–0.20 mm), and 0.004–0.008 in (0.11–0.20 mm) is specified`,
      `9:39 crank-drag is checked within max 8 lbf·ft (max 10.8 N·m), which is wider, and max 5 lbf·ft (max 6.7 N·m) is specified`,
    ],
  },
  {
    finding: 'value-disagrees',
    title: 'another gauge than specified',
    engine: FITS,
    shop: GAUGED,
    procedure: `1. Set the crankshaft down. \`install: crankshaft\`
2. Read the play. \`measure: end-play using soft-mallet\`
3. Spin it. \`check: crank-drag\`
`,
    says: [`8:44 end-play is measured using soft-mallet, and dial-gauge is specified`],
  },
  {
    finding: 'value-disagrees',
    title: 'another sealant and another amount',
    engine: SUMP,
    procedure: `1. Wipe the faces. \`clean: sump-joint\`
2. Run a bead. \`seal: sump-joint with silicone-sealant\`
3. Set the sump down. \`install: sump\`
4. Leave it alone. \`cure: sump-joint for 24 h\`
5. Pour in the oil. \`fill: lubrication with engine-oil to 6 qt\`
`,
    says: [
      `8:39 sump-joint is sealed with silicone-sealant, and liquid-gasket is specified`,
      `11:59 lubrication is filled to 6 US qt (5.7 L), and 7 US qt (6.6 L) is specified`,
    ],
  },
  {
    finding: 'value-disagrees',
    title: 'the wrong fluid',
    engine: SUMP,
    procedure: `1. Wipe the faces. \`clean: sump-joint\`
2. Run a bead. \`seal: sump-joint with liquid-gasket\`
3. Set the sump down. \`install: sump\`
4. Leave it alone. \`cure: sump-joint for 24 h\`
5. Pour it in. \`fill: lubrication with coolant to 7 qt\`
`,
    says: [`11:40 lubrication is filled with coolant, and engine-oil is specified`],
  },
];
