/** Small engines that several cases share. Every value is invented. */

/** Three caps, each held by its own bolts. */
export const CAPS = `
parts:
  block: {given: true}
  main-caps: {at: [front, centre, rear]}
fasteners:
  main-cap-bolts:
    at: [front, centre, rear]
    holds: [main-caps]
    torque: 85 lbf·ft
    threads: dry
    lock: {value: none, because: stretch holds them}
`;

/** A crankshaft whose play and drag are read. */
export const FITS = `
parts:
  block: {given: true}
  crankshaft: {}
fits:
  end-play: {between: [block, crankshaft], limits: 0.004–0.008 in, using: [dial-gauge], when: {installed: [crankshaft]}}
checks:
  crank-drag: {limits: max 5 lbf·ft}
`;

/** The shop that has the gauge for it. */
export const GAUGED = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  dial-gauge: {name: dial gauge, gauge: true}
  soft-mallet: soft-faced mallet
`;

/** A sump on a joint, and the oil in it. */
export const SUMP = `
parts:
  block: {given: true}
  sump: {closes: [sump-joint]}
joints:
  sump-joint: {between: [block, sump], seal: [liquid-gasket]}
systems:
  lubrication: {joints: [sump-joint], closed-by: [sump], with: [engine-oil], amount: 7 qt}
`;

/** A camshaft in lubed bores. */
export const CAM = `
parts:
  block: {given: true}
  camshaft: {closes: [camshaft-bores]}
surfaces:
  camshaft-bores: {on: block, assembly: lubed, lubricants: [assembly-lube]}
`;

/** A camshaft that is turned as it goes in, and plugs; no steel hammer on either. */
export const TURNED = `
parts:
  block: {given: true}
  camshaft: {using: [soft-mallet], turning: true}
  core-plugs: {at: [front, rear]}
barred:
  - {what: [steel-hammer], on: [camshaft, core-plugs], because: it burrs what it hits}
`;

/** A heavy sump that is glued on. */
export const HAZARDS = `
parts:
  block: {given: true}
  sump: {closes: [sump-joint], hazards: [heavy]}
joints:
  sump-joint: {between: [block, sump], seal: [hot-glue]}
`;

/** Three parts that are heavy each in its own way. */
export const HEAVY = `
parts:
  block: {given: true}
  head: {hazards: [heavy]}
  flywheel: {hazards: [heavy]}
  gearbox: {hazards: [heavy]}
`;

/** The shop that has the glue. */
export const GLUE = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  hot-glue: {use: sealant, cure: {value: 1 h, source: house}, hazards: [burn, vapour]}
`;

/** A check, and the hold point that asks for it. */
export const HOLD = `
parts:
  block: {given: true}
  crankshaft: {}
checks:
  crank-turns: {expect: turns freely by hand}
hold-points:
  bottom-end-closed: {asks: [crank-turns], by: shop lead}
`;

/** Plugs in seats that must be clean. */
export const PLUGS = `
parts:
  block: {given: true}
  core-plugs: {closes: [plug-seats]}
surfaces:
  plug-seats: {on: block, assembly: clean}
`;
