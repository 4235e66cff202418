/** A joint that ends the build without its seal, or whose sealant was never left to cure. */

import {placesOf} from '../spec/items.js';
import type {Joint} from '../spec/model.js';
import {curing} from './curing.js';
import {reportOpen, reportUndone} from './left-undone.js';
import {sealFix} from './missing-seal.js';
import type {Context, FindingKind} from './model.js';
import {inNumber} from './phrase.js';

export const leftUnsealed: FindingKind = {
  name: 'left-unsealed',
  group: 'left undone',
  severity: 'error',
  summary: 'A joint ends the build without its seal, or with a seal that was never left to cure',
  why: 'A dry joint weeps oil into the bilge or water into the oil.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  sump: {closes: [sump-joint]}
joints:
  sump-joint: {between: [block, sump], seal: [paper-gasket]}
`,
    wrong: `
1. Lift the sump into place. \`install: sump\`
`,
    right: `
1. Wipe both faces. \`clean: sump-joint\`
2. Lay the gasket on the sump. \`seal: sump-joint with paper-gasket\`
3. Lift the sump into place. \`install: sump\`
`,
  },
  end(context) {
    for (const joint of context.relations.joints) {
      if (typeof joint.seal?.value !== 'object') continue;
      reportUndone(
        joint,
        {
          fact: 'sealed',
          never: '[is|are] never made up with [its|their] seal',
          again: '[ends|end] the build unsealed',
          asked: `${joint.id} ${inNumber(joint, '[is|are]')} specified with a seal`,
          fix: (places) => sealFix(joint, places, context),
        },
        context,
      );
      neverCured(joint, context);
    }
  },
};

/** Where the joint is under a system that gets filled, loaded-before-cure has said it. */
function neverCured(joint: Joint, context: Context): void {
  const {state, relations} = context;
  const filled = (relations.loadedBy.get(joint.id) ?? []).some((system) =>
    placesOf(system).some((place) => context.does('fill', system.id, place)),
  );
  if (filled) return;
  const open = placesOf(joint).filter((place) => curing(joint, place, state, relations) !== undefined);
  reportOpen(
    joint,
    open,
    {
      fact: 'cured',
      also: ['sealed'],
      never: '[is|are] sealed but never left to cure',
      again: '[ends|end] the build with [its|their] seal uncured',
      asked: `the sealant of ${joint.id} has a cure`,
    },
    context,
  );
}
