/** A value in a unit of another kind than is due. */
import {whereIn} from '../build/program.js';
import type {Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import {dimensionOf} from '../quantity/convert.js';
import type {Specification, Tool} from '../spec/model.js';
import {isMisranged, misranged, misrangedWrench} from '../spec/wrenches.js';
import type {Where} from '../text/source.js';
import type {FindingKind} from './model.js';

export const unitWrongKind: FindingKind = {
  name: 'unit-wrong-kind',
  group: 'reading',
  severity: 'error',
  summary: 'A value in a unit of another kind',
  why: 'A pound is no torque: whether foot-pounds or inch-pounds were meant makes a factor of twelve.',
  source: 'NIST SP 811 (2008), appendix B.8: factors for pound-force foot and pound-force inch',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lb\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  fromReading: true,
  /** A tool that tightens to a torque must have a range of torques, whatever it is called. */
  book({spec, program, report}) {
    const reads = new Set<Tool>();
    const tightens = new Map<Tool, Where>();
    for (const {steps} of program.parts) {
      for (const ref of steps) {
        for (const tag of ref.step.tags) {
          const tools = toolsOf(tag, spec);
          if (tag.verb !== 'torque') for (const tool of tools) reads.add(tool);
          else if (tools.every((tool) => isMisranged(tool) || tool.range === undefined)) {
            for (const tool of tools) if (!tightens.has(tool)) tightens.set(tool, whereIn(ref, tag.span));
          }
        }
      }
    }
    for (const [tool, where] of tightens) {
      // An angle is turned on after the torque; a gauge that reads a length elsewhere may read the stretch of a bolt.
      if (!isMisranged(tool) || misrangedWrench(tool) || reads.has(tool)) continue;
      if (dimensionOf(tool.range.value) === 'angle') continue;
      const {says, hint, ...found} = misranged(tool);
      report({
        ...found,
        message: `${says}; ${hint}`,
        related: [{where, says: 'it tightens to a torque here'}],
      });
    }
  },
};

function toolsOf(tag: Tag, spec: Specification): Tool[] {
  const value = clauseOf(tag, 'using')?.value;
  return (value?.type === 'ids' ? value.ids : []).flatMap(({id}) => {
    const item = spec.items.get(id);
    return item?.kind === 'tool' ? [item] : [];
  });
}
