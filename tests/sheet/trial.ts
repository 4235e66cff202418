/** A book with something of everything that a sheet prints, for tests and for looking at. Every value is invented. */
import {book} from '../help/example.js';

const SHOP = `
shop: {name: Brackwater Engine Works, paper: A4, units: inch}
sources:
  house: {title: Brackwater house notes, date: 2026-01-15, note: invented}
tools:
  torque-wrench-half:
    {name: 1/2 in torque wrench, range: 20–150 lbf·ft, due: 2027-03-01, serial: BW-14, gauge: true, source: house}
  soft-mallet: soft-faced mallet
  bench-grinder: {}
  dial-gauge: {name: dial gauge and stand, gauge: true, due: 2026-11-30}
  feeler-gauges: {gauge: true, due: 2027-01-15}
consumables:
  assembly-lube: {use: lubricant, hazards: [skin]}
  engine-oil: {name: engine oil SAE 30, use: lubricant, hazards: [skin]}
  coolant: {use: fluid, hazards: [poison, skin]}
  brake-cleaner: {use: cleaner, hazards: [fire, vapour]}
  liquid-gasket: {use: sealant, hazards: [vapour], cure: 24 h, source: house}
  strip-green: {name: green gauging strip, use: strip}
`;

const MAINS = '[front, second, centre, fourth, rear]';

const ENGINE = `
parts:
  block: {given: true}
  camshaft: {using: [soft-mallet], turning: true}
  main-caps: {at: ${MAINS}}
  crankshaft: {hazards: [heavy-lift], note: number one throw is at the front}
  main-shells: {at: ${MAINS}, quantity: 10, alterations: [grind-off-lip]}
  core-plugs: {at: [front, middle, rear], single-use: true}
  cylinder-head: {hazards: [heavy-lift]}
surfaces:
  camshaft-bores: {on: block, at: [front, second, third, rear], assembly: lubed, lubricants: [assembly-lube]}
  main-saddles: {on: block, at: ${MAINS}, assembly: dry}
joints:
  sump-joint: {seal: [liquid-gasket]}
fasteners:
  main-cap-bolts:
    at: ${MAINS}
    count: 10
    torque: {value: 85 lbf·ft, note: oiled threads}
    passes: [30 lbf·ft, 60 lbf·ft, 85 lbf·ft]
    threads: [engine-oil]
    lock: safety-wire
  head-bolts:
    count: 10
    torque: 65 lbf·ft
    lock: {value: none, because: stretched past the point where they turn back}
    angle: 90°
    passes: [25 lbf·ft, 45 lbf·ft, 65 lbf·ft]
    threads: dry
    layout:
      unit: in
      exhaust-1: [0, 0]
      inlet-1: [0, 5.2]
      exhaust-2: [3.6, 0]
      inlet-2: [3.6, 5.2]
      exhaust-3: [7.2, 0]
      inlet-3: [7.2, 5.2]
      exhaust-4: [10.8, 0]
      inlet-4: [10.8, 5.2]
      exhaust-5: [14.4, 0]
      inlet-5: [14.4, 5.2]
    order: [inlet-3, exhaust-3, exhaust-2, inlet-2, inlet-4, exhaust-4, exhaust-1, inlet-1, inlet-5, exhaust-5]
  pump-bolts: {count: 3, torque: 120 lbf·in, threads: dry, lock: threadlocker}
fits:
  main-clearance: {at: ${MAINS}, limits: 0.0015–0.0035 in, by: strip, using: [strip-green], when: {tight: [main-cap-bolts]}}
  camshaft-end-float: {limits: 0.004–0.009 in, using: [dial-gauge, feeler-gauges], when: {installed: [camshaft]}}
checks:
  valve-lash:
    at: [1-inlet, 1-exhaust, 2-inlet, 2-exhaust, 3-inlet, 3-exhaust, 4-inlet, 4-exhaust]
    limits: 0.011–0.013 in
    using: [feeler-gauges]
  turns-freely: {expect: the crankshaft turns by hand through two whole turns without a tight spot}
marks:
  engine-number: {stamped: front left of the block, matches: hull-plate-number}
  hull-plate-number: {stamped: hull plate}
hold-points:
  bottom-end-closed: {asks: [main-cap-bolts, main-clearance, turns-freely], by: shop lead}
systems:
  cooling: {name: cooling system, with: [coolant], amount: 7 US qt}
alterations:
  grind-off-lip:
    of: [main-shells]
    does: grind the locating lip flush with the back of the shell
    using: [bench-grinder]
    hazards: [eyes, hot-metal]
`;

const PROCEDURE = `---
title: Camshaft, crankshaft and head
revision: C
date: 2026-05-14
author: J. Marsh
approved: R. Tide
---

Nobody works alone on this one: the crankshaft takes two.

## Camshaft

1. Read the engine number off the block and write it down. \`record: engine-number\`

> **Danger:** Brake cleaner vapour near the heater explodes. Turn the heater off and open the doors before you
> start. \`hazard: fire, vapour\`

> **Warning:** Compressed air throws chips into eyes. Keep the nozzle away from people. \`hazard: eyes\`

2. Wash every camshaft bore with brake cleaner and dry it with *clean* air.
   \`clean: camshaft-bores with brake-cleaner\`
3. Brush lube on every camshaft journal and lobe. \`lube: camshaft-bores with assembly-lube\`

> **Notice:** A steel hammer cracks the core. Use the soft mallet.

4. Slide the camshaft in from the front, turning as it goes. \`install: camshaft using soft-mallet\`
   \`turn: camshaft\`
5. Measure the end float with the dial gauge. \`measure: camshaft-end-float using dial-gauge\`

## Crankshaft and main bearings

> **Caution:** The shell gets hot, and the wheel throws sparks. Wear a face shield, and hold the shell with
> pliers. \`hazard: eyes, hot-metal\`

6. Grind the locating lip off each shell, cooling between passes. \`alter: main-shells by grind-off-lip\`
7. Lay the crankshaft in its shells, dry. \`install: crankshaft\` \`step: crank-in\`
8. Lay a strip along each journal and fit the caps. \`lay: main-clearance\` \`install: main-caps\`
9. Bring the main cap bolts up in three passes.
   \`torque: main-cap-bolts to 85 lbf·ft in 30, 60, 85 using torque-wrench-half\`
10. Take the caps off and read each strip at its widest.
    \`measure: main-clearance within 0.0015–0.0035 in with strip-green\` \`if: main-clearance is out\`
    1. Find out why: wrong shell size, dirt behind a shell, or a worn journal.
    2. Put it right, clean all five saddles again, and lay new strips. \`clean: main-saddles\`
       \`repeat: crank-in\`
11. Bring the bolts up for good. \`torque: main-cap-bolts using torque-wrench-half\`
12. Wire the bolts in pairs, pulling tight. \`lock: main-cap-bolts with safety-wire 0.041 in\`
13. Turn the crankshaft by hand through two turns. \`check: turns-freely\` \`witness: bottom-end-closed\`

## Head, sump and filling

14. Fit three new core plugs. \`renew: core-plugs\` \`install: core-plugs\`
    \`waive: single-use-reused by shop lead because the rear plug was new last winter and never saw coolant\`
15. Lower the head on and run the bolts down by hand. \`install: cylinder-head\`
16. Bring the head bolts up in the order drawn. \`torque: head-bolts using torque-wrench-half\`
17. Set the valve lash on a cold engine. \`check: valve-lash\`
18. Seal the sump joint. \`seal: sump-joint with liquid-gasket\`
19. Nip up the pump bolts. \`torque: pump-bolts\` \`lock: pump-bolts\`
20. Leave the sump joint alone. \`cure: sump-joint\`

> **Caution:** Coolant is sweet and poisonous. Wipe up every drop: dogs drink it. \`hazard: poison\`

21. Fill the cooling system. \`fill: cooling with coolant to the bottom of the filler neck\`
`;

/** Everything that its author wrote. */
export const TRIAL_TEXTS = [SHOP, ENGINE, PROCEDURE];

export const trialBook = book({shop: SHOP, engine: ENGINE, procedures: {'03-camshaft.md': PROCEDURE}});
