/** What goes in dirty, oily, as it came or unseen: all that is told of it, with its story. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tells} from '../help/stories.js';

const SHELLS = `
parts:
  block: {given: true}
  shells: {at: [front, rear], alterations: [grind-lip, ream]}
alterations:
  grind-lip: {of: [shells], does: grind the lip flush}
  ream: {of: [shells], does: ream the bore}
`;

const MISSPELT = `
parts:
  block: {given: true}
  shells: {alterations: [grind-lp]}
alterations:
  grind-lip: {of: [shells], does: grind the lip flush}
`;

const SEATS = `
parts:
  block: {given: true}
  plugs: {at: [front, rear], closes: [seats, rims]}
  cover: {closes: [cover-joint]}
surfaces:
  seats: {on: block, at: [front, rear], assembly: dry}
  rims: {on: plugs, at: [front, rear], assembly: clean}
joints:
  cover-joint: {at: [left, right], between: [block, cover], seal: [paper-gasket]}
`;

const REAMED = `
parts:
  block: {given: true}
  shells: {at: [front, rear], alterations: [ream]}
  crankshaft: {closes: [bores, journals]}
surfaces:
  bores: {on: shells, at: [front, rear], assembly: clean}
  journals: {on: crankshaft, assembly: lubed, lubricants: [assembly-lube]}
alterations:
  ream: {of: [shells], does: ream the bore}
`;

const USED = `
parts:
  block: {given: true}
  rods: {at: [front, rear], reused: true}
`;

describe('shells that need altering before they fit', () => {
  tells(SHELLS, [
    [
      'go in as they came',
      'install: shells',
      `
alter-first shells: shells go in without grind-lip
  see engine.yaml:7: shells needs grind-lip
  see engine.yaml:9: grind-lip is specified here
alter-first shells: shells go in without ream
  see engine.yaml:7: shells needs ream
  see engine.yaml:10: ream is specified here`,
    ],
    [
      'are altered at one end only, and in one way',
      'alter: shells[front] by ream; install: shells',
      `
alter-first shells: shells go in without grind-lip
  story: step 1 of procedure.md: altered (alter: shells)
  see engine.yaml:7: shells needs grind-lip
  see engine.yaml:9: grind-lip is specified here
alter-first shells[rear]: shells[rear] go in without ream
  see engine.yaml:7: shells needs ream
  see engine.yaml:10: ream is specified here`,
    ],
    [
      'are altered, and then others are taken',
      'alter: shells by ream, grind-lip; renew: shells; install: shells',
      `
alter-first shells: shells go in without grind-lip
  story: step 1 of procedure.md: altered (alter: shells)
  story: step 2 of procedure.md: no longer altered (renew: shells)
  see engine.yaml:7: shells needs grind-lip
  see engine.yaml:9: grind-lip is specified here
alter-first shells: shells go in without ream
  story: step 1 of procedure.md: altered (alter: shells)
  story: step 2 of procedure.md: no longer altered (renew: shells)
  see engine.yaml:7: shells needs ream
  see engine.yaml:10: ream is specified here`,
    ],
    [
      'are altered in both ways, one after the other',
      'alter: shells by ream; alter: shells by grind-lip; install: shells',
      SILENT,
    ],
    [
      'are tried as they came, and altered after that',
      'install: shells; remove: shells; alter: shells by ream, grind-lip; install: shells',
      SILENT,
    ],
  ]);
});

describe('shells that need what nobody specified', () => {
  tells(MISSPELT, [
    [
      'go in as they came',
      'install: shells',
      `
unknown-item shells: nothing is called grind-lp; did you mean grind-lip?
  fix: Write grind-lip: "grind-lip" for "grind-lp"
alter-first shells: shells go in without grind-lp
  see engine.yaml:7: shells needs grind-lp`,
    ],
  ]);
});

describe('plugs in dry seats, and a cover on its gasket', () => {
  tells(SEATS, [
    [
      'nothing is wiped',
      'install: plugs; clean: cover-joint; seal: cover-joint; install: cover',
      `
clean-first seats: seats are not clean when plugs close them, and go together dry
  see engine.yaml:10: seats is specified here
clean-first rims: rims are not clean when plugs close them, and go together clean
  see engine.yaml:11: rims is specified here`,
    ],
    [
      'one seat is wiped',
      'clean: seats[front], plugs; install: plugs; clean: cover-joint; seal: cover-joint; install: cover',
      `
clean-first seats[rear]: seats[rear] are not clean when plugs close them, and go together dry
  see engine.yaml:10: seats is specified here`,
    ],
    [
      'the seats are oily',
      'clean: seats, rims; lube: seats with engine-oil; install: plugs; clean: cover-joint; seal: cover-joint; install: cover',
      `
clean-first seats: seats still carry lubricant when plugs close them, and go together dry
  story: step 1 of procedure.md: clean (clean: seats)
  story: step 2 of procedure.md: lubed (lube: seats)
  see engine.yaml:10: seats is specified here`,
    ],
    [
      'one seat is oily, the other dirty',
      'clean: rims; lube: seats[front] with engine-oil; install: plugs; clean: cover-joint; seal: cover-joint; install: cover',
      `
clean-first seats[front]: seats[front] are lubed but were never cleaned
  see engine.yaml:10: seats is specified here
clean-first seats[front]: seats[front] still carry lubricant when plugs close them, and go together dry
  story: step 2 of procedure.md: lubed (lube: seats)
  see engine.yaml:10: seats is specified here
clean-first seats[rear]: seats[rear] are not clean when plugs close them, and go together dry
  see engine.yaml:10: seats is specified here`,
    ],
    [
      'new plugs are clean out of their wrapper',
      'renew: plugs; clean: seats; install: plugs; clean: cover-joint; seal: cover-joint; install: cover',
      SILENT,
    ],
    [
      'plugs that were in and came out are clean no longer',
      'clean: seats, rims; install: plugs; remove: plugs; install: plugs; clean: cover-joint; seal: cover-joint; install: cover',
      `
clean-first seats: seats are not clean when plugs close them, and go together dry
  story: step 1 of procedure.md: clean (clean: seats)
  story: step 3 of procedure.md: no longer clean (remove: plugs)
  see engine.yaml:10: seats is specified here
clean-first rims: rims are not clean when plugs close them, and go together clean
  story: step 1 of procedure.md: clean (clean: rims)
  story: step 3 of procedure.md: no longer clean (remove: plugs)
  see engine.yaml:11: rims is specified here`,
    ],
    [
      'seats that were in use are oiled before they are wiped',
      'clean: seats, rims; install: plugs; remove: plugs; lube: seats with engine-oil; clean: seats, rims; install: plugs; clean: cover-joint; seal: cover-joint; install: cover',
      `
clean-first seats: seats are lubed but are no longer clean
  story: step 1 of procedure.md: clean (clean: seats)
  story: step 3 of procedure.md: no longer clean (remove: plugs)
  see engine.yaml:10: seats is specified here`,
    ],
    [
      'the seats are oiled: one was in use, the other never wiped',
      'clean: seats[front], rims[front]; install: plugs[front]; remove: plugs[front]; lube: seats with engine-oil; clean: seats, rims; install: plugs; clean: cover-joint; seal: cover-joint; install: cover',
      `
clean-first seats: seats are lubed but are no longer clean
  story: step 1 of procedure.md: clean (clean: seats)
  story: step 3 of procedure.md: no longer clean (remove: plugs)
  see engine.yaml:10: seats is specified here`,
    ],
    [
      'one side of the joint is wiped',
      'clean: seats, rims; install: plugs; clean: cover-joint[left]; seal: cover-joint; install: cover',
      `
clean-first cover-joint[right]: cover-joint[right] is sealed but its faces are not clean
  see engine.yaml:13: cover-joint is specified here`,
    ],
    [
      'the joint is made up again, one side unwiped',
      'clean: seats, rims; install: plugs; clean: cover-joint; seal: cover-joint; install: cover; remove: cover; seal: cover-joint[right]; clean: cover-joint[left]; seal: cover-joint[left]; install: cover',
      `
clean-first cover-joint[right]: cover-joint[right] is sealed but its faces are not clean
  story: step 3 of procedure.md: clean (clean: cover-joint)
  story: step 6 of procedure.md: no longer clean (remove: cover)
  see engine.yaml:13: cover-joint is specified here`,
    ],
  ]);
});

describe('swarf in bores that were reamed', () => {
  tells(REAMED, [
    [
      'is wiped out',
      'alter: shells by ream; clean: bores; install: shells; clean: journals; lube: journals with assembly-lube; install: crankshaft',
      SILENT,
    ],
    [
      'is closed in, in one of them',
      'clean: bores; alter: shells by ream; clean: bores[front]; install: shells; clean: journals; lube: journals with assembly-lube; install: crankshaft',
      `
clean-first bores[rear]: bores[rear] still carry what step 2 cut loose when crankshaft closes them
  story: step 1 of procedure.md: clean (clean: bores)
  story: step 2 of procedure.md: no longer clean (alter: shells)
  see engine.yaml:10: bores is specified here`,
    ],
    [
      'is closed in even for a trial',
      'alter: shells; install: shells; clean: journals; lube: journals with assembly-lube; install: crankshaft; remove: crankshaft; clean: bores; clean: journals; lube: journals with assembly-lube; install: crankshaft',
      `
clean-first bores: bores still carry what step 1 cut loose when crankshaft closes them
  story: step 1 of procedure.md: no longer clean (alter: shells)
  see engine.yaml:10: bores is specified here`,
    ],
    [
      'is oiled over: that was wrong when it was done',
      'alter: shells; install: shells; lube: bores with engine-oil; clean: journals; lube: journals with assembly-lube; install: crankshaft',
      `
clean-first bores: bores are lubed but are no longer clean
  story: step 1 of procedure.md: no longer clean (alter: shells)
  see engine.yaml:10: bores is specified here
clean-first bores: bores still carry lubricant when crankshaft closes them, and go together clean
  story: step 1 of procedure.md: no longer clean (alter: shells)
  story: step 3 of procedure.md: lubed (lube: bores)
  see engine.yaml:10: bores is specified here`,
    ],
    [
      'is told apart from dirt',
      'install: shells; clean: journals; lube: journals with assembly-lube; install: crankshaft',
      `
alter-first shells: shells go in without ream
  see engine.yaml:7: shells needs ream
  see engine.yaml:13: ream is specified here
clean-first bores: bores are not clean when crankshaft closes them, and go together clean
  see engine.yaml:10: bores is specified here`,
    ],
    [
      'is wiped out, and dirt comes in one of them later',
      'alter: shells; clean: bores; install: shells; clean: journals; lube: journals with assembly-lube; install: crankshaft; remove: crankshaft; clean: bores[front]; clean: journals; lube: journals with assembly-lube; install: crankshaft',
      `
clean-first bores[rear]: bores[rear] are not clean when crankshaft closes them, and go together clean
  story: step 2 of procedure.md: clean (clean: bores)
  story: step 7 of procedure.md: no longer clean (remove: crankshaft)
  see engine.yaml:10: bores is specified here`,
    ],
  ]);
});

describe('rods that have run', () => {
  tells(USED, [
    [
      'go in unseen',
      'install: rods',
      `
inspect-first rods: rods are reused parts and go in without inspection
  see engine.yaml:7: rods is specified here`,
    ],
    [
      'are looked at, one of them',
      'inspect: rods[rear]; install: rods',
      `
inspect-first rods[front]: rods[front] are reused parts and go in without inspection
  see engine.yaml:7: rods is specified here`,
    ],
    [
      'are looked at and renewed, one of them',
      'inspect: rods[rear]; renew: rods[front]; install: rods',
      SILENT,
    ],
    [
      'are looked at, and others are taken that have run too',
      'inspect: rods; renew: rods; install: rods',
      SILENT,
    ],
    ['are tried unseen', 'install: rods; remove: rods; inspect: rods; install: rods', SILENT],
  ]);
});
