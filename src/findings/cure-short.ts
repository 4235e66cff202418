/** A sealant is left to cure for less than its time. */
import {whereIn} from '../build/program.js';
import {meetingPlaces} from '../build/relations.js';
import {clauseOf} from '../procedure/values.js';
import {limitsOf} from '../quantity/convert.js';
import {formatAmount} from '../quantity/format.js';
import type {Joint} from '../spec/model.js';
import {cureOf} from './curing.js';
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, specified} from './phrase.js';

export const cureShort: FindingKind = {
  name: 'cure-short',
  group: 'order',
  severity: 'error',
  summary: 'A sealant is left to cure for less than its time',
  why: 'A skin on the bead looks cured; what is under it runs when it is loaded.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
joints:
  plug-seat-joint: {between: [block], seal: [liquid-gasket]}
`,
    wrong: `
1. Wipe the seat dry. \`clean: plug-seat-joint\`
2. Run a thin bead round the seat. \`seal: plug-seat-joint with liquid-gasket\`
3. Leave the bead to cure. \`cure: plug-seat-joint for 2 h\`
`,
    right: `
1. Wipe the seat dry. \`clean: plug-seat-joint\`
2. Run a thin bead round the seat. \`seal: plug-seat-joint with liquid-gasket\`
3. Leave the bead to cure. \`cure: plug-seat-joint for 24 h\`
`,
  },
  before: {
    cure(action, {state, relations, report}) {
      const clause = clauseOf(action.tag, 'for');
      if (clause?.value.type !== 'amount') return;
      const stated = clause.value.amount;
      for (const joint of jointsOf(action.item, relations.joints)) {
        const short = meetingPlaces(action.item, action.places, joint).flatMap((place) => {
          const needs = cureOf(joint, place, state, relations);
          if (needs === undefined || !isCured(action.item, needs.sealant)) return [];
          // A time stated as "24–48 h" is judged by its least.
          return limitsOf(stated).low < limitsOf(needs.cure).low ? [{place, ...needs}] : [];
        });
        const [first] = short;
        if (first === undefined) continue;
        const {sealant} = first;
        const places = short.filter((one) => one.sealant === sealant).map(({place}) => place);
        const asked = formatAmount(first.cure);
        report({
          where: whereIn(action.step, clause.valueSpan),
          message: `${itemAt(joint, places)} ${inNumber(joint, '[is|are] left')} to cure for ${formatAmount(stated)}, and ${sealant.id} needs ${asked}`,
          ...about(joint, places),
          related: [specified(sealant)],
          fix: {
            title: `Leave it ${asked}`,
            file: action.step.procedure.source.file,
            edits: [{span: clause.valueSpan, text: asked}],
          },
        });
      }
    },
  },
};

/** A cure of a consumable is one of every joint that was made up with it. */
function isCured(
  item: {readonly kind: string; readonly id: string},
  sealant: {readonly id: string},
): boolean {
  return item.kind !== 'consumable' || item.id === sealant.id;
}

function jointsOf(
  item: {readonly kind: string; readonly id: string},
  joints: readonly Joint[],
): readonly Joint[] {
  return item.kind === 'joint' ? joints.filter(({id}) => id === item.id) : joints;
}
