/** A build that is whole, and ways to leave out one thing of it, do it too little or undo it. Every value is invented. */
import {whole} from '../help/whole.js';

export const ENGINE = `
parts:
  block: {given: true}
  shaft: {}
  caps: {at: [front, rear]}
  cover: {closes: [cover-joint]}
  tap: {}
  pin: {temporary: true}
surfaces:
  lip: {on: block, assembly: lubed, lubricants: [assembly-lube]}
joints:
  cover-joint: {between: [block, cover], seal: [liquid-gasket]}
fasteners:
  bolts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: [engine-oil], lock: safety-wire, stripe: true}
  nut: {holds: [cover], torque: 10 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
fits:
  play: {between: [block, shaft], limits: 0.004–0.008 in, using: [feeler-gauges], when: {installed: [shaft, caps], tight: [bolts]}}
marks:
  number: {matches: plate}
  plate: {}
checks:
  drag: {expect: turns by hand}
systems:
  oil: {joints: [cover-joint], closed-by: [cover, tap], with: [engine-oil], amount: 7 qt}
hold-points:
  closed: {asks: [bolts, play], by: shop lead}
`;

export const BUILD: readonly string[] = [
  'clean: lip',
  'lube: lip with assembly-lube',
  'install: shaft',
  'install: caps',
  'lube: bolts with engine-oil',
  'torque: bolts to 40 lbf·ft',
  'stripe: bolts',
  'lock: bolts with wire-032',
  'measure: play using feeler-gauges',
  'witness: closed by "shop lead"',
  'clean: cover-joint',
  'seal: cover-joint with liquid-gasket',
  'install: cover',
  'torque: nut to 10 lbf·ft',
  'install: tap',
  'cure: cover-joint for 24 h',
  'fill: oil with engine-oil to 7 qt',
  'record: number',
  'record: plate',
  'check: drag',
];

/** Edits of the specification and of the steps, and all that the check says then. */
export type Told = readonly [edits: readonly string[], told: readonly string[]];

/** `was => is`, once. */
function specified(changes: readonly string[]): string {
  return changes.reduce((text, change) => {
    const [was = '', is = ''] = change.split(' => ');
    if (!text.includes(was)) throw new Error(`the engine has no ${was}`);
    return text.replace(was, is);
  }, ENGINE);
}

/** `- tag` leaves the step out, `+ tag` puts one at the end, `tag => other` puts another in its place. */
function edited(edits: readonly string[]): string[] {
  const gone = new Set(edits.flatMap((edit) => (edit.startsWith('- ') ? [edit.slice(2)] : [])));
  const more = edits.flatMap((edit) => (edit.startsWith('+ ') ? [edit.slice(2)] : []));
  const others = new Map(
    edits
      .flatMap((edit) => (edit.includes(' => ') ? [edit.split(' => ', 2)] : []))
      .map(([was = '', is = '']) => [was, is]),
  );
  for (const was of [...gone, ...others.keys()])
    if (!BUILD.includes(was)) throw new Error(`the build has no ${was}`);
  return [...BUILD.filter((tag) => !gone.has(tag)).map((tag) => others.get(tag) ?? tag), ...more];
}

/** What the check says of the build after the edits, with the specification changed. */
export function toldOf(changes: readonly string[], edits: readonly string[]): string[] {
  return whole(specified(changes), edited(edits));
}
