/** A system is filled while the sealant of one of its joints has not been left to cure. */
import {meetingPlaces} from '../build/relations.js';
import {formatAmount} from '../quantity/format.js';
import {curing} from './curing.js';
import type {FindingKind} from './model.js';
import {about, inNumber, itemAt, specified, storyOf, tagWhere} from './phrase.js';

export const loadedBeforeCure: FindingKind = {
  name: 'loaded-before-cure',
  group: 'order',
  severity: 'error',
  summary: 'A joint comes under load before its sealant has cured',
  why: 'Uncured epoxy on a pitted seat lets go as soon as coolant reaches it, and cannot be mended with the plug in.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
joints:
  plug-seat-joint: {between: [block], seal: [liquid-gasket]}
systems:
  cooling: {joints: [plug-seat-joint], closed-by: [], with: [coolant]}
`,
    wrong: `
1. Wipe the seat dry. \`clean: plug-seat-joint\`
2. Run a thin bead round the seat. \`seal: plug-seat-joint with liquid-gasket\`
3. Fill until coolant stands at the neck. \`fill: cooling with coolant\`
`,
    right: `
1. Wipe the seat dry. \`clean: plug-seat-joint\`
2. Run a thin bead round the seat. \`seal: plug-seat-joint with liquid-gasket\`
3. Leave the bead to cure. \`cure: plug-seat-joint for 24 h\`
4. Fill until coolant stands at the neck. \`fill: cooling with coolant\`
`,
  },
  before: {
    fill(action, {book, state, relations, report}) {
      const {item, places} = action;
      if (item.kind !== 'system') return;
      for (const {value} of item.joints) {
        const joint = book.spec.items.get(value);
        if (joint?.kind !== 'joint') continue;
        const wet = meetingPlaces(item, places, joint).flatMap((place) => {
          const needs = curing(joint, place, state, relations);
          return needs === undefined ? [] : [{place, ...needs}];
        });
        const first = wet[0];
        if (first === undefined) continue;
        const at = wet.map(({place}) => place);
        report({
          where: tagWhere(action),
          message: `${itemAt(joint, at)} ${inNumber(joint, '[is|are]')} not cured when ${item.id} ${inNumber(item, '[is|are]')} filled: ${first.sealant.id} needs ${formatAmount(first.cure)}`,
          ...about(joint, at),
          story: storyOf(at.map((place) => state.get('sealed', joint.id, place))),
          related: [specified(first.sealant), specified(joint)],
        });
      }
    },
  },
};
