/**
 * Mistakes that people who rebuild old engines keep finding, each as a small book wrong and right. Every one of
 * them is common practice, no source; the values are invented.
 */
export interface TradeCase {
  /** The fact of the trade. */
  readonly fact: string;
  readonly finding: string;
  /** The item that the finding must name. */
  readonly item: string;
  readonly engine: string;
  readonly wrong: string;
  readonly right: string;
  /** Where the mistake is in the specification itself. */
  readonly rightEngine?: string;
  readonly job?: string;
  readonly rightJob?: string;
}

const BLOCK = 'parts:\n  block: {given: true}\n';

const SHELLS = `${BLOCK}  crankshaft: {given: true}
  main-shells: {}
surfaces:
  main-journals: {on: crankshaft, assembly: clean, grinds: [0.010 in, 0.020 in]}
  shell-faces: {on: main-shells, assembly: clean}
fits:
  main-clearance: {between: [main-journals, shell-faces], limits: 0.0015–0.0030 in, using: [feeler-gauges], when: {installed: [main-shells], tight: []}}
`;

const SHELL_STEPS = `
1. Wipe journals and shells. \`clean: main-journals, shell-faces\`
2. Press the shells in. \`install: main-shells\`
3. Read the clearance. \`measure: main-clearance\`
`;

/** Beside the shells a rod that only floats there. */
const FLOATING = `${SHELLS.replace('  main-shells: {}', '  main-shells: {}\n  rods: {}')}  side-float: {between: [main-journals, rods], limits: 0.006–0.012 in, using: [feeler-gauges], when: {installed: [rods], tight: []}}
`;

const FLOATING_STEPS = SHELL_STEPS.replace('install: main-shells', 'install: main-shells, rods').replace(
  'measure: main-clearance',
  'measure: main-clearance, side-float',
);

export const TRADE_CASES: readonly TradeCase[] = [
  {
    fact: 'drilled-head bolts specified for safety wire are given cotter pins',
    finding: 'lock-wrong-kind',
    item: 'cap-bolts',
    engine: `${BLOCK}  rod-caps: {}
fasteners:
  cap-bolts: {type: drilled-head, holds: [rod-caps], torque: 40 lbf·ft, threads: dry, lock: safety-wire}
`,
    wrong: `
1. Set the caps on the rods. \`install: rod-caps\`
2. Bring the bolts up. \`torque: cap-bolts to 40 lbf·ft\`
3. Pin every bolt. \`lock: cap-bolts with cotter-pins\`
`,
    right: `
1. Set the caps on the rods. \`install: rod-caps\`
2. Bring the bolts up. \`torque: cap-bolts to 40 lbf·ft\`
3. Wire the bolts in pairs. \`lock: cap-bolts with wire-032\`
`,
  },
  {
    fact: 'an oil pump goes in with its fasteners not locked',
    finding: 'left-unlocked',
    item: 'pump-bolts',
    engine: `${BLOCK}  oil-pump: {}
fasteners:
  pump-bolts: {holds: [oil-pump], torque: 18 lbf·ft, threads: dry, lock: safety-wire}
`,
    wrong: `
1. Offer the pump up. \`install: oil-pump\`
2. Bring the bolts up. \`torque: pump-bolts to 18 lbf·ft\`
`,
    right: `
1. Offer the pump up. \`install: oil-pump\`
2. Bring the bolts up. \`torque: pump-bolts to 18 lbf·ft\`
3. Wire the bolts together. \`lock: pump-bolts with wire-032\`
`,
  },
  {
    fact: 'silicone is run on a joint where it is barred',
    finding: 'barred-material',
    item: 'rocker-cover-joint',
    engine: `${BLOCK}  rocker-cover: {closes: [rocker-cover-joint]}
joints:
  rocker-cover-joint: {between: [block, rocker-cover], seal: [paper-gasket]}
barred:
  - {what: [silicone-sealant], on: [rocker-cover-joint], because: loose beads find the oil pickup}
`,
    wrong: `
1. Wipe both faces. \`clean: rocker-cover-joint\`
2. Run a bead round the cover. \`seal: rocker-cover-joint with silicone-sealant\`
3. Set the cover down. \`install: rocker-cover\`
`,
    right: `
1. Wipe both faces. \`clean: rocker-cover-joint\`
2. Lay the gasket on the head. \`seal: rocker-cover-joint with paper-gasket\`
3. Set the cover down. \`install: rocker-cover\`
`,
  },
  {
    fact: 'paper is cut for the crankshaft end seals, where it is barred',
    finding: 'barred-material',
    item: 'end-seals',
    engine: `${BLOCK}  seal-carriers: {closes: [end-seals]}
joints:
  end-seals: {between: [block, seal-carriers], at: [front, rear], seal: [liquid-gasket]}
barred:
  - {what: [paper-gasket], on: [end-seals], because: paper wicks oil along the shaft}
`,
    wrong: `
1. Wipe the faces. \`clean: end-seals\`
2. Lay a paper under each carrier. \`seal: end-seals with paper-gasket\`
3. Set the carriers in place. \`install: seal-carriers\`
`,
    right: `
1. Wipe the faces. \`clean: end-seals\`
2. Run a thin bead round each carrier. \`seal: end-seals with liquid-gasket\`
3. Set the carriers in place. \`install: seal-carriers\`
4. Leave both beads alone. \`cure: end-seals for 24 h\`
`,
  },
  {
    fact: 'a camshaft goes in before every one of its bearings has lube',
    finding: 'lube-first',
    item: 'camshaft-bores',
    engine: `${BLOCK}  camshaft: {closes: [camshaft-bores]}
surfaces:
  camshaft-bores: {on: block, at: [front, second, third, rear], assembly: lubed, lubricants: [assembly-lube]}
`,
    wrong: `
1. Wipe every bore. \`clean: camshaft-bores\`
2. Coat the bores that you can reach. \`lube: camshaft-bores[front, rear] with assembly-lube\`
3. Slide the camshaft in. \`install: camshaft\`
`,
    right: `
1. Wipe every bore. \`clean: camshaft-bores\`
2. Coat every bore. \`lube: camshaft-bores with assembly-lube\`
3. Slide the camshaft in. \`install: camshaft\`
`,
  },
  {
    fact: 'a camshaft is driven with a steel hammer',
    finding: 'barred-tool',
    item: 'camshaft',
    engine: `${BLOCK}  camshaft: {using: [soft-mallet]}
barred:
  - {what: [steel-hammer], on: [camshaft], because: a hammered journal carries a burr through every bore}
`,
    wrong: `
1. Tap the camshaft home. \`install: camshaft using steel-hammer\`
`,
    right: `
1. Tap the camshaft home. \`install: camshaft using soft-mallet\`
`,
  },
  {
    fact: 'a camshaft is pushed in without turning it',
    finding: 'install-manner',
    item: 'camshaft',
    engine: `${BLOCK}  camshaft: {turning: true}
`,
    wrong: `
1. Push the camshaft home. \`install: camshaft\`
`,
    right: `
1. Slide the camshaft home, turning as it goes. \`install: camshaft\` \`turn: camshaft\`
`,
  },
  {
    fact: 'camshaft bearing bores are listed out of order: largest at the front, smallest at the rear',
    finding: 'spec-contradiction',
    item: 'camshaft-bores',
    engine: `${BLOCK}  camshaft: {closes: [camshaft-bores]}
surfaces:
  camshaft-bores:
    on: block
    at: [front, middle, rear]
    assembly: clean
    sizes: {front: 2.085 in, middle: 2.105 in, rear: 2.065 in}
    order: falling
`,
    rightEngine: `${BLOCK}  camshaft: {closes: [camshaft-bores]}
surfaces:
  camshaft-bores:
    on: block
    at: [front, middle, rear]
    assembly: clean
    sizes: {front: 2.105 in, middle: 2.085 in, rear: 2.065 in}
    order: falling
`,
    wrong: `
1. Wipe every bore. \`clean: camshaft-bores\`
2. Slide the camshaft in. \`install: camshaft\`
`,
    right: `
1. Wipe every bore. \`clean: camshaft-bores\`
2. Slide the camshaft in. \`install: camshaft\`
`,
  },
  {
    fact: 'a core plug is set into a seat that is still oily from an earlier step',
    finding: 'clean-first',
    item: 'plug-seats',
    engine: `${BLOCK}  core-plugs: {at: [front, rear], closes: [plug-seats]}
surfaces:
  plug-seats: {on: block, at: [front, rear], assembly: dry}
`,
    wrong: `
1. Wipe the seats. \`clean: plug-seats\`
2. Oil the bare iron against rust. \`lube: plug-seats with engine-oil\`
3. Drive in both plugs. \`install: core-plugs\`
`,
    right: `
1. Wipe the seats. \`clean: plug-seats\`
2. Oil the bare iron against rust. \`lube: plug-seats with engine-oil\`
3. Wipe the seats with solvent. \`clean: plug-seats with solvent\`
4. Drive in both plugs. \`install: core-plugs\`
`,
  },
  {
    fact: 'a core plug of the wrong nominal size for its bore: 1-1/8 in for 1-1/2 in',
    finding: 'spec-contradiction',
    item: 'core-plugs',
    engine: `${BLOCK}  core-plugs: {seats-in: plug-seats, size: 1-1/8 in, closes: [plug-seats]}
surfaces:
  plug-seats: {on: block, assembly: dry, size: 1-1/2 in}
`,
    rightEngine: `${BLOCK}  core-plugs: {seats-in: plug-seats, size: 1-1/2 in, closes: [plug-seats]}
surfaces:
  plug-seats: {on: block, assembly: dry, size: 1-1/2 in}
`,
    wrong: `
1. Wipe the seats. \`clean: plug-seats\`
2. Drive in the plugs. \`install: core-plugs\`
`,
    right: `
1. Wipe the seats. \`clean: plug-seats\`
2. Drive in the plugs. \`install: core-plugs\`
`,
  },
  {
    fact: 'a core plug is found rusted through and goes back in',
    finding: 'single-use-reused',
    item: 'core-plugs',
    engine: `${BLOCK}  core-plugs: {single-use: true}
`,
    wrong: `
1. Look at each plug from behind. \`inspect: core-plugs for rust\`
2. Drive in the plugs. \`install: core-plugs\`
`,
    right: `
1. Look at each plug from behind. \`inspect: core-plugs for rust\`
2. Take new plugs from the packet. \`renew: core-plugs\`
3. Drive in the plugs. \`install: core-plugs\`
`,
  },
  {
    fact: 'sealing epoxy on an old pitted seat is not left to cure before coolant goes in',
    finding: 'loaded-before-cure',
    item: 'plug-seat-joint',
    engine: `${BLOCK}joints:
  plug-seat-joint: {between: [block], seal: [liquid-gasket]}
systems:
  cooling: {joints: [plug-seat-joint], closed-by: [], with: [coolant]}
`,
    wrong: `
1. Wipe the seat dry. \`clean: plug-seat-joint\`
2. Fill the pits. \`seal: plug-seat-joint with liquid-gasket\`
3. Fill until coolant stands at the neck. \`fill: cooling with coolant\`
`,
    right: `
1. Wipe the seat dry. \`clean: plug-seat-joint\`
2. Fill the pits. \`seal: plug-seat-joint with liquid-gasket\`
3. Leave the epoxy alone. \`cure: plug-seat-joint for 24 h\`
4. Fill until coolant stands at the neck. \`fill: cooling with coolant\`
`,
  },
  {
    fact: 'a bearing set from a related engine goes in with the locating lip that the original set does not have',
    finding: 'alter-first',
    item: 'main-shells',
    engine: `${BLOCK}  main-shells: {alterations: [grind-off-lip]}
alterations:
  grind-off-lip: {of: [main-shells], does: grind the locating lip flush}
`,
    wrong: `
1. Press the shells into their saddles. \`install: main-shells\`
`,
    right: `
1. Grind the lip off each shell. \`alter: main-shells by grind-off-lip\`
2. Press the shells into their saddles. \`install: main-shells\`
`,
  },
  {
    fact: 'a shell is ground with no caution about eyes and heat, and none to cool between passes',
    finding: 'caution-missing',
    item: 'grind-off-lip',
    engine: `${BLOCK}  main-shells: {alterations: [grind-off-lip]}
alterations:
  grind-off-lip: {of: [main-shells], does: grind the locating lip flush, hazards: [eyes, hot-metal, overheated-shell]}
`,
    wrong: `
1. Grind the lip off each shell. \`alter: main-shells by grind-off-lip\`
2. Press the shells into their saddles. \`install: main-shells\`
`,
    right: `
> **Warning:** Grit flies and the shell gets hot enough to burn. Wear goggles and hold the shell in a clamp.
> \`hazard: eyes, hot-metal\`

> **Notice:** Dip the shell in water between passes. A shell that has turned blue has lost its lining.
> \`hazard: overheated-shell\`

1. Grind the lip off each shell. \`alter: main-shells by grind-off-lip\`
2. Press the shells into their saddles. \`install: main-shells\`
`,
  },
  {
    fact: 'a shell that does not lie fully in its saddle is found only after the crankshaft is in',
    finding: 'install-order',
    item: 'crankshaft',
    engine: `${BLOCK}  main-shells: {}
  crankshaft: {after: [main-shells, shells-seated]}
checks:
  shells-seated: {expect: each shell lies fully in its saddle}
`,
    wrong: `
1. Press the shells into their saddles. \`install: main-shells\`
2. Lower the crankshaft in. \`install: crankshaft\`
3. Look along every saddle from both ends. \`check: shells-seated\`
`,
    right: `
1. Press the shells into their saddles. \`install: main-shells\`
2. Look along every saddle from both ends. \`check: shells-seated\`
3. Lower the crankshaft in. \`install: crankshaft\`
`,
  },
  {
    fact: 'shells for a crankshaft ground 0.010 in under are not the 0.010 in undersize',
    finding: 'undersize-mismatch',
    item: 'main-shells',
    engine: SHELLS,
    wrong: SHELL_STEPS,
    right: SHELL_STEPS,
    job: 'grinds: {main-journals: 0.010 in}\nfitted: {main-shells: {undersize: 0.020 in}}\n',
    rightJob: 'grinds: {main-journals: 0.010 in}\nfitted: {main-shells: {undersize: 0.010 in}}\n',
  },
  {
    fact: 'the upper shells of a ground crankshaft are standard, and the rod beside them has no undersize at all',
    finding: 'undersize-mismatch',
    item: 'main-shells',
    engine: FLOATING,
    wrong: FLOATING_STEPS,
    right: FLOATING_STEPS,
    job: 'grinds: {main-journals: 0.010 in}\n',
    rightJob: 'grinds: {main-journals: 0.010 in}\nfitted: {main-shells: {undersize: 0.010 in}}\n',
  },
  {
    fact: 'the engine number does not match the number on the hull plate',
    finding: 'mark-mismatch',
    item: 'engine-number',
    engine: `marks:
  engine-number: {stamped: front left of the block, matches: hull-plate-number}
  hull-plate-number: {stamped: plate on the engine bearer}
`,
    wrong: '\n1. Write both numbers down. `record: engine-number, hull-plate-number`\n',
    right: '\n1. Write both numbers down. `record: engine-number, hull-plate-number`\n',
    job: 'marks: {engine-number: OF-0412, hull-plate-number: OF-0421}\n',
    rightJob: 'marks: {engine-number: OF-0412, hull-plate-number: OF-0412}\n',
  },
  {
    fact: 'the oil comes on the threads after the torque that the angle is turned from',
    finding: 'thread-condition',
    item: 'head-bolts',
    engine: `${BLOCK}  head: {}
fasteners:
  head-bolts: {holds: [head], torque: 50 N·m, angle: 90°, threads: [engine-oil], lock: {value: none, because: stretch holds them}}
`,
    wrong: `
1. Lower the head on. \`install: head\`
2. Torque the bolts. \`torque: head-bolts to 50 N·m\`
3. Oil the threads. \`lube: head-bolts with engine-oil\`
4. Turn each a quarter further. \`torque: head-bolts turn 90°\`
`,
    right: `
1. Lower the head on. \`install: head\`
2. Oil the threads. \`lube: head-bolts with engine-oil\`
3. Torque the bolts. \`torque: head-bolts to 50 N·m\`
4. Turn each a quarter further. \`torque: head-bolts turn 90°\`
`,
  },
  {
    fact: 'a frame is shifted to centre its air gap while its bolts are still tight',
    finding: 'install-order',
    item: 'frame-bolts',
    engine: `${BLOCK}  frame: {}
fasteners:
  frame-bolts: {holds: [frame], torque: 37 N·m, threads: dry, lock: {value: none, because: dowels hold it}}
fits:
  air-gap: {between: [block, frame], limits: 0.8–1.2 mm, rework: true, using: [feeler-gauges], when: {installed: [frame], tight: [frame-bolts]}}
`,
    wrong: `
1. Draw the frame on. \`install: frame\`
2. Torque the bolts. \`torque: frame-bolts to 37 N·m\` \`step: set-gap\`
3. Measure the gap. \`measure: air-gap\`
4. Where it is out, shift the frame: \`if: air-gap is out\`
   1. Go back with the frame over to the wide side. \`repeat: set-gap\`
`,
    right: `
1. Draw the frame on. \`install: frame\`
2. Torque the bolts. \`torque: frame-bolts to 37 N·m\` \`step: set-gap\`
3. Measure the gap. \`measure: air-gap\`
4. Where it is out, shift the frame: \`if: air-gap is out\`
   1. Slacken the bolts. \`loosen: frame-bolts\`
   2. Go back with the frame over to the wide side. \`repeat: set-gap\`
`,
  },
  {
    fact: 'in a trial fit the caps are on before the shells that they close over are in',
    finding: 'install-order',
    item: 'cap-shells',
    engine: `${BLOCK}  cap-shells: {}
  caps: {closes: [shell-faces], after: [cap-shells]}
surfaces:
  shell-faces: {on: cap-shells, assembly: clean}
`,
    wrong: `
1. Set the caps on. \`install: caps\`
2. Press the shells in. \`install: cap-shells\`
3. Lift the caps off. \`remove: caps\`
4. Wipe the shells. \`clean: shell-faces\`
5. Set the caps on. \`install: caps\`
`,
    right: `
1. Press the shells in. \`install: cap-shells\`
2. Set the caps on. \`install: caps\`
3. Lift the caps off. \`remove: caps\`
4. Wipe the shells. \`clean: shell-faces\`
5. Set the caps on. \`install: caps\`
`,
  },
  {
    fact: 'swarf of a shell that was just reamed is rolled into the journal in the trial fit',
    finding: 'clean-first',
    item: 'shell-faces',
    engine: `${BLOCK}  shells: {alterations: [ream]}
  crankshaft: {closes: [shell-faces]}
surfaces:
  shell-faces: {on: shells, assembly: clean}
alterations:
  ream: {of: [shells], does: ream the oil hole}
`,
    wrong: `
1. Ream the oil hole. \`alter: shells by ream\`
2. Press the shells in. \`install: shells\`
3. Lower the crankshaft in. \`install: crankshaft\`
4. Lift it out. \`remove: crankshaft\`
5. Wipe the shells. \`clean: shell-faces\`
6. Lower the crankshaft in. \`install: crankshaft\`
`,
    right: `
1. Ream the oil hole. \`alter: shells by ream\`
2. Wipe the shells. \`clean: shell-faces\`
3. Press the shells in. \`install: shells\`
4. Lower the crankshaft in. \`install: crankshaft\`
5. Lift it out. \`remove: crankshaft\`
6. Wipe the shells. \`clean: shell-faces\`
7. Lower the crankshaft in. \`install: crankshaft\`
`,
  },
];
