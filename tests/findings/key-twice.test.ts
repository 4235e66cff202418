/** A name that was retyped as its neighbour's: one slip, told where it was made, with the name that is wanted there. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {applyEdits} from '../../src/text/edit.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  flywheel: {closes: [taper]}
surfaces:
  taper: {on: block, assembly: dry}
fits:
  gap: {between: [flywheel, block], limits: 0.25–0.35 mm, when: {installed: [flywheel], tight: [flywheel-nut]}}
fasteners:
  case-bolts: {holds: [flywheel], torque: 22 N·m, threads: dry, lock: {value: none, because: dowels}}
  flywheel-nut: {holds: [flywheel], torque: 80 N·m, threads: dry, lock: {value: none, because: the taper holds}}
barred:
  - {what: [engine-oil], on: [flywheel-nut], because: it must grip}
`;
const STEPS = `
1. Wipe the taper. \`clean: taper with solvent\`
2. Set the flywheel on. \`install: flywheel\`
3. Tighten the bolts to 22 N·m. \`torque: case-bolts to 22 N·m\`
4. Tighten the nut to 80 N·m. \`torque: flywheel-nut to 80 N·m\`
5. Read the gap. \`measure: gap using feeler-gauges\`
`;

const of = (engine: string, steps: string) => {
  const from = book({engine, procedures: {'procedure.md': steps}});
  return {from, found: check(from).findings};
};
const told = (engine: string, steps = STEPS) =>
  of(engine, steps).found.map(({name, message, fix}) => `${name}: ${message}${fix ? ` (${fix.title})` : ''}`);

describe('a key that stands twice', () => {
  it('is the one thing told, with the name that is wanted there, and its fix mends the book', () => {
    const slip = ENGINE.replace('  flywheel-nut: {', '  case-bolts: {');
    const {from, found} = of(slip, STEPS);
    expect(of(ENGINE, STEPS).found).toEqual([]);
    expect(told(slip)).toEqual([
      'spec-form: the key case-bolts stands here a second time; did you mean flywheel-nut here? (Write flywheel-nut here)',
    ]);
    const {file = '', edits = []} = found[0]?.fix ?? {};
    const text = from.spec.files.get(file)?.text ?? '';
    expect(applyEdits(text, edits)).toContain(ENGINE.trim());
  });

  it.each([
    [
      'a name that nothing wants is not made up',
      ENGINE.replaceAll('flywheel-nut', 'case-bolts'),
      STEPS.replaceAll('flywheel-nut', 'case-bolts'),
      'spec-form: the key case-bolts stands here a second time; keep one of the two',
    ],
    [
      'of two names that lead nowhere neither is offered',
      ENGINE.replace('  flywheel-nut: {', '  case-bolts: {'),
      STEPS.replace('flywheel-nut', 'flywheel-nuts'),
      'spec-form: the key case-bolts stands here a second time; keep one of the two',
    ],
  ])('%s', (_, engine, steps, message) => {
    expect(told(engine, steps)).toContain(message);
    expect(told(engine, steps).filter((one) => one.startsWith('unknown-item'))).toEqual([]);
  });

  it('says nothing of a name of a kind that its section does not hold', () => {
    const slip = ENGINE.replace('  flywheel-nut: {', '  case-bolts: {').replace(
      'closes: [taper]',
      'closes: [tapre]',
    );
    expect(told(slip)).toContain('unknown-item: nothing is called tapre; did you mean taper? (Write taper)');
  });
});
