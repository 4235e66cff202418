/** A material, or a way of locking, used where the specification bars it. */
import type {Action} from '../build/program.js';
import {whereIn} from '../build/program.js';
import {barOn} from './bars.js';
import type {Context, FindingKind} from './model.js';
import {about, inNumber, itemAt} from './phrase.js';

export const barredMaterial: FindingKind = {
  name: 'barred-material',
  group: 'materials and tools',
  severity: 'error',
  summary: 'A material is used where the specification bars it',
  why: 'What does no harm on one joint stops an oilway on the next: loose beads of sealant end in the oil pickup.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  rocker-cover: {closes: [rocker-cover-joint]}
joints:
  rocker-cover-joint: {between: [block, rocker-cover], seal: [paper-gasket]}
barred:
  - {what: [silicone-sealant], on: [rocker-cover-joint], because: loose beads find the oil pickup}
`,
    wrong: `
1. Wipe both faces. \`clean: rocker-cover-joint\`
2. Run a bead round the cover. \`seal: rocker-cover-joint with silicone-sealant\`
3. Set the cover down. \`install: rocker-cover\`
`,
    right: `
1. Wipe both faces. \`clean: rocker-cover-joint\`
2. Lay the gasket on the head. \`seal: rocker-cover-joint with paper-gasket\`
3. Set the cover down. \`install: rocker-cover\`
`,
  },
  before: {
    clean: judge,
    lube: judge,
    seal: judge,
    lock: judge,
    stripe: judge,
    fill: judge,
    install: judge,
    torque: judge,
  },
};

function judge({item, places, tag, step}: Action, {book, report}: Context): void {
  for (const clause of tag.clauses) {
    if (clause.word !== 'with' || clause.value.type !== 'ids') continue;
    for (const {id, span} of clause.value.ids) {
      const bar = barOn(book.spec, id, item);
      if (bar === undefined) continue;
      report({
        where: whereIn(step, span),
        message: `${itemAt(item, places)} ${inNumber(item, '[is|are] given')} ${id}, which is barred there: ${bar.because}`,
        ...about(item, places),
        related: [{where: bar.where, says: `${id} is barred here`}],
      });
    }
  }
}
