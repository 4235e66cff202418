/** The specification that the held-out sentences of the adopt benchmark speak of: a fictional two-cylinder diesel. */

export const HELD_OUT_SHOP = `
shop: {name: Skerry Sheds, units: metric}
sources:
  house: {title: Skerry house notes, note: invented}
source: house
tools:
  torque-wrench: 1/2 in torque wrench
  micrometer: outside micrometer
  bore-gauge: dial bore gauge
  feeler-gauges: feeler gauges
  dial-indicator: dial indicator on its magnetic stand
  ring-compressor: ring compressor
  soft-mallet: soft-faced mallet
  seal-driver: oil seal driver
  hoist: chain hoist
  spring-compressor: valve spring compressor
  straightedge: straightedge
  brass-drift: brass drift
  spill-pipe: spill pipe
consumables:
  solvent: {name: cleaning solvent, use: cleaner}
  paraffin: {use: cleaner}
  assembly-lube: {use: lubricant}
  engine-oil: {use: lubricant}
  moly-grease: {name: molybdenum grease, use: lubricant}
  jointing-compound: {use: sealant, cure: {value: 6 h, source: house}}
  wire-10: {name: 1.0 mm safety wire, use: lock, lock: safety-wire}
  split-pins: {name: 2 mm split pins, use: lock, lock: cotter-pin}
  tab-washers: {use: lock, lock: tab-washer}
  threadlocker-blue: {name: blue threadlocker, use: lock, lock: threadlocker}
  strip-green: {name: green gauging strip, use: strip}
  marking-blue: {use: other}
  coolant: {use: fluid}
  diesel: {name: diesel fuel, use: fluid}
`;

export const HELD_OUT_ENGINE = `
parts:
  block: {given: true}
  crankshaft: {reused: true}
  main-shells: {name: main bearing shells, at: [front, rear], single-use: true}
  main-caps: {name: main bearing caps, at: [front, rear]}
  camshaft: {reused: true}
  tappets: {at: [1, 2, 3, 4]}
  pushrods: {at: [1, 2, 3, 4]}
  pistons: {at: [1, 2], reused: true}
  ring-sets: {name: piston ring sets, at: [1, 2], single-use: true}
  rod-shells: {name: big-end shells, at: [1, 2], single-use: true}
  rod-caps: {name: connecting rod caps, at: [1, 2]}
  cylinder-head: {reused: true}
  head-gasket: {name: cylinder head gasket, single-use: true}
  valves: {at: [inlet-1, exhaust-1, inlet-2, exhaust-2], reused: true}
  rocker-shaft: {name: rocker shaft}
  rocker-cover: {}
  crank-gear: {name: crankshaft gear}
  camshaft-gear: {}
  timing-cover: {}
  front-seal: {name: front crankshaft oil seal, single-use: true}
  flywheel: {}
  flywheel-key: {name: flywheel key}
  oil-pump: {reused: true}
  strainer: {name: oil strainer}
  sump: {}
  oil-filter: {single-use: true}
  water-pump: {reused: true}
  thermostat: {single-use: true}
  injectors: {at: [1, 2], reused: true}
  injection-pump: {reused: true}
  manifold: {name: exhaust manifold}
  core-plugs: {at: [left, right], single-use: true}
surfaces:
  oilways: {name: oil galleries, on: block, assembly: clean}
  cylinder-bores: {on: block, at: [1, 2], assembly: lubed}
  main-saddles: {name: main bearing saddles, on: block, at: [front, rear], assembly: dry}
  main-journals: {on: crankshaft, at: [front, rear], assembly: lubed}
  crankpins: {on: crankshaft, at: [1, 2], assembly: lubed}
  main-shell-faces: {name: running faces of the main shells, on: main-shells, at: [front, rear], assembly: lubed}
  cam-lobes: {on: camshaft, assembly: lubed}
  cam-journals: {name: camshaft journals, on: camshaft, assembly: lubed}
  ring-grooves: {name: piston ring grooves, on: pistons, at: [1, 2], assembly: clean}
  valve-stems: {on: valves, assembly: lubed}
  crank-taper: {name: taper of the crankshaft, on: crankshaft, assembly: dry}
  pump-gears: {name: oil pump gears, on: oil-pump, assembly: lubed}
  seal-lip: {name: lip of the front seal, on: front-seal, assembly: lubed}
  plug-seats: {name: core plug seats, on: block, at: [left, right], assembly: dry}
joints:
  head-joint: {name: cylinder head joint, between: [cylinder-head, block], seal: [head-gasket]}
  sump-joint: {between: [sump, block], seal: [jointing-compound]}
  timing-cover-joint: {between: [timing-cover, block], seal: [jointing-compound]}
  water-pump-joint: {between: [water-pump, block], seal: [jointing-compound]}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 70 N·m, threads: [engine-oil], lock: safety-wire}
  rod-bolts: {name: connecting rod bolts, at: [1, 2], holds: [rod-caps], torque: 45 N·m, threads: [engine-oil], lock: tab-washer}
  head-nuts: {name: cylinder head nuts, holds: [cylinder-head], torque: 90 N·m, threads: dry, lock: {value: none, because: the studs stretch}}
  rocker-nuts: {name: rocker pedestal nuts, holds: [rocker-shaft], torque: 30 N·m, threads: dry, lock: tab-washer}
  flywheel-nut: {holds: [flywheel], torque: 250 N·m, threads: dry, lock: tab-washer}
  oil-pump-bolts: {holds: [oil-pump], torque: 22 N·m, threads: dry, lock: safety-wire}
  sump-screws: {holds: [sump], torque: 10 N·m, threads: dry, lock: threadlocker}
  timing-cover-screws: {holds: [timing-cover], torque: 10 N·m, threads: dry, lock: threadlocker}
  drain-plug: {name: sump drain plug, torque: 40 N·m, threads: dry, lock: safety-wire}
  injector-nuts: {name: injector clamp nuts, at: [1, 2], holds: [injectors], torque: 18 N·m, threads: dry, lock: {value: none, because: the clamp is sprung}}
  camshaft-nut: {name: camshaft gear nut, holds: [camshaft-gear], torque: 55 N·m, threads: dry, lock: cotter-pin}
fits:
  main-clearance: {name: main bearing clearance, at: [front, rear], between: [main-journals, main-shell-faces], limits: 0.04–0.08 mm, by: strip}
  rod-clearance: {name: big-end clearance, at: [1, 2], between: [crankpins, rod-shells], limits: 0.03–0.07 mm, by: strip}
  crank-end-float: {name: crankshaft end float, between: [crankshaft, block], limits: 0.10–0.25 mm}
  cam-end-float: {name: camshaft end float, between: [camshaft, block], limits: 0.08–0.20 mm}
  ring-gap: {name: piston ring gap, at: [1, 2], between: [ring-sets, cylinder-bores], limits: 0.30–0.50 mm}
  bore-wear: {name: wear of the cylinder bores, at: [1, 2], between: [cylinder-bores], limits: max 0.15 mm}
  bump-clearance: {name: piston bump clearance, at: [1, 2], between: [pistons, cylinder-head], limits: 0.90–1.00 mm}
  gear-backlash: {name: timing gear backlash, between: [crank-gear, camshaft-gear], limits: 0.05–0.15 mm}
  inlet-clearance: {name: inlet valve clearance, at: [1, 2], between: [valves], limits: 0.20 mm}
  exhaust-clearance: {name: exhaust valve clearance, at: [1, 2], between: [valves], limits: 0.25 mm}
marks:
  engine-number: {}
  crank-undersize: {name: undersize of the crankshaft}
  pump-number: {name: number of the injection pump}
checks:
  crank-turns: {name: crankshaft turns freely, expect: turns by two fingers}
  oil-pressure: {limits: min 2.5 bar}
  spill-timing: {expect: 24 degrees before top dead centre}
  timing-marks: {name: timing marks in line, expect: in line}
  no-leaks: {name: no leaks, expect: dry all over}
  pump-primed: {name: oil pump primed, expect: oil at the filter head}
hold-points:
  bottom-end-closed: {by: foreman, asks: [main-cap-bolts]}
  head-on: {name: cylinder head on, by: foreman, asks: [head-nuts]}
  ready-to-run: {by: foreman, asks: [oil-pressure]}
systems:
  oil-system: {joints: [sump-joint], closed-by: [sump], with: [engine-oil], amount: 4.5 L}
  cooling-system: {joints: [water-pump-joint], closed-by: [water-pump], with: [coolant], amount: 6 L}
  fuel-system: {joints: [], closed-by: [injection-pump], with: [diesel]}
alterations:
  notch-skirts: {name: notch the piston skirts, of: [pistons], does: notch the skirts for the oil jets}
  open-oil-hole: {name: open the oil hole of the main shells, of: [main-shells], does: drill the oil hole out to 6 mm}
`;
