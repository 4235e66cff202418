/** The bearing that the findings about gauging strips share as an example. */

export const STRIP_ENGINE = `
parts:
  block: {given: true}
  crankshaft: {given: true}
  main-caps: {closes: [shell-faces, journals]}
surfaces:
  shell-faces: {on: main-caps, assembly: lubed, lubricants: [assembly-lube]}
  journals: {on: crankshaft, assembly: lubed, lubricants: [assembly-lube]}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
fits:
  main-clearance:
    between: [shell-faces, journals]
    limits: 0.0015–0.0030 in
    by: strip
    using: [strip-green]
    when: {installed: [main-caps], tight: [main-cap-bolts]}
`;

/** Trial fit, reading and final assembly, in eleven steps, right. */
export const STRIP_STEPS: readonly string[] = [
  'Wipe shells and journals dry. `clean: shell-faces, journals`',
  'Lay a strip along each journal. `lay: main-clearance with strip-green`',
  'Set the caps in place. `install: main-caps`',
  'Bring the bolts up. `torque: main-cap-bolts to 85 lbf·ft`',
  'Slacken the bolts. `loosen: main-cap-bolts`',
  'Lift the caps off. `remove: main-caps`',
  'Read the strips at their widest. `measure: main-clearance using strip-green`',
  'Wipe every trace of strip away. `clean: shell-faces, journals`',
  'Coat shells and journals. `lube: shell-faces, journals with assembly-lube`',
  'Set the caps in place. `install: main-caps`',
  'Bring the bolts up. `torque: main-cap-bolts to 85 lbf·ft`',
];

/** Steps as an ordered list. */
export function numbered(steps: readonly string[]): string {
  return `\n${steps.map((step, index) => `${index + 1}. ${step}`).join('\n')}\n`;
}

/** The eleven steps with one left out. */
export function without(index: number): string {
  return numbered(STRIP_STEPS.filter((_, at) => at !== index));
}

/** The eleven steps with another put in before one. */
export function withExtra(index: number, step: string): string {
  return numbered([...STRIP_STEPS.slice(0, index), step, ...STRIP_STEPS.slice(index)]);
}
