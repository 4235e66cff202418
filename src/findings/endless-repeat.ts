/** A repeat with no way out. */
import {flowOf} from '../build/flow.js';
import {type Node, whereIn} from '../build/program.js';
import {LOOP_ENGINE, LOOP_RIGHT} from './loop-example.js';
import type {FindingKind} from './model.js';

export const endlessRepeat: FindingKind = {
  name: 'endless-repeat',
  group: 'order',
  severity: 'error',
  summary: 'A repeat has no way out, or names a step that does not stand before it',
  why: 'Followed to the letter, the sheet never ends; followed otherwise, the apprentice decides where it does.',
  source: 'common practice, no source',
  example: {
    engine: LOOP_ENGINE,
    wrong: `
1. Lower the crankshaft in. \`install: crankshaft\`
2. Read the end play. \`measure: end-play using feeler-gauges\` \`step: reading\`
3. Read it again. \`repeat: reading\`
`,
    right: LOOP_RIGHT,
  },
  book({program, report}) {
    const {endless, inside, ahead} = flowOf(program);
    const tell = (node: Node, says: string) => {
      if (node.repeat === undefined) return;
      const {id, tag} = node.repeat;
      report({where: whereIn(node.step, tag.span), message: `\`repeat: ${id}\` ${says}`, step: node.step});
    };
    for (const node of endless) tell(node, 'has no way out: put it under a step with `if:`');
    for (const node of inside)
      tell(node, 'has no way out: go back to a step before the `if:`, so that it is asked again');
    for (const node of ahead) tell(node, 'names a step that does not stand before it');
  },
};
