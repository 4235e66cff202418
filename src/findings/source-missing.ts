/** A specified value for which no source is named. */

import {type Action, whereIn} from '../build/program.js';
import type {State} from '../build/state.js';
import {clauseOf} from '../procedure/values.js';
import type {Check, Fit, Joint} from '../spec/model.js';
import {cureOf} from './curing.js';
import type {Context, FindingKind} from './model.js';
import {about, itemAt, specified} from './phrase.js';

export const sourceMissing: FindingKind = {
  name: 'source-missing',
  group: 'reading',
  severity: 'warning',
  summary: 'A specified value without a source',
  why: 'An unsourced number is how errors are handed down: nobody can check it against the paper that it came from.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  sump: {closes: [sump-joint]}
joints:
  sump-joint: {between: [block, sump], seal: [liquid-gasket]}
`,
    shop: `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  liquid-gasket: {use: sealant, cure: 24 h}
`,
    rightShop: `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  liquid-gasket: {use: sealant, cure: {value: 24 h, source: house}}
`,
    wrong: `
1. Wipe both faces. \`clean: sump-joint\`
2. Run a bead. \`seal: sump-joint with liquid-gasket\`
3. Set the sump down. \`install: sump\`
4. Leave the joint alone. \`cure: sump-joint for 24 h\`
`,
    right: `
1. Wipe both faces. \`clean: sump-joint\`
2. Run a bead. \`seal: sump-joint with liquid-gasket\`
3. Set the sump down. \`install: sump\`
4. Leave the joint alone. \`cure: sump-joint for 24 h\`
`,
  },
  fromReading: true,
  before: {measure: stated, check: stated, cure: curedFor},
};

/** Limits that only the procedure knows: the specification, where a source would stand, has none. */
function stated(action: Action<Fit | Check>, {report}: Context): void {
  const {item, places, step} = action;
  const clause = clauseOf(action.tag, 'within');
  if (clause === undefined || item.limits !== undefined) return;
  report({
    where: whereIn(step, clause.valueSpan),
    message: `the limits of ${item.id} stand only in this step, without a source; specify them in engine.yaml`,
    ...about(item, places),
    related: [specified(item)],
  });
}

function curedFor(action: Action, {state, relations, report}: Context): void {
  const {item, places, step} = action;
  const clause = clauseOf(action.tag, 'for');
  if (item.kind !== 'joint' || clause === undefined) return;
  const bare = places.filter(
    (place) => sealedAsAsked(item, place, state) && cureOf(item, place, state, relations) === undefined,
  );
  if (bare.length === 0) return;
  report({
    where: whereIn(step, clause.valueSpan),
    message: `the cure of ${itemAt(item, bare)} stands only in this step, without a source; specify it for the sealant in shop.yaml`,
    ...about(item, bare),
    related: [specified(item)],
  });
}

/** The time of a sealant that does not belong there is no matter of sources. */
function sealedAsAsked(joint: Joint, place: string, state: State): boolean {
  const {holds, detail} = state.get('sealed', joint.id, place);
  const asked = joint.seal?.value;
  if (!holds || typeof asked !== 'object') return false;
  return detail?.ids?.every((id) => asked.includes(id)) ?? true;
}
