/** A hold point is signed before what it asks for is done. */
import {stepName} from '../build/tell.js';
import {placesOf} from '../spec/items.js';
import {isLate, verbFor} from './done.js';
import type {FindingKind} from './model.js';
import {agreeing, itemAt, specified, tagWhere} from './phrase.js';

export const witnessedEarly: FindingKind = {
  name: 'witnessed-early',
  group: 'order',
  severity: 'error',
  summary: 'A hold point is signed before what it asks for is done',
  why: 'A signature given for work still to come is worth nothing, and nobody looks a second time.',
  source: '10 CFR 50 Appendix B, criterion X: mandatory hold points (from memory)',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
hold-points:
  bottom-end-closed: {asks: [main-caps], by: shop lead}
`,
    wrong: `
1. Have the shop lead look and sign. \`witness: bottom-end-closed by "shop lead"\`
2. Set the caps in place. \`install: main-caps\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Have the shop lead look and sign. \`witness: bottom-end-closed by "shop lead"\`
`,
  },
  before: {
    witness(action, {book, state, does, report}) {
      const {item, step} = action;
      for (const {value, where} of item.asks) {
        const asked = book.spec.items.get(value);
        if (asked === undefined) continue;
        const open = placesOf(asked).filter((place) => isLate(asked, place, {state, does}));
        if (open.length === 0) continue;
        report({
          where: tagWhere(action),
          message: `${item.id} is signed at ${stepName(step, step)} before ${itemAt(asked, open)} ${agreeing(asked, 'is', 'are')} as it asks`,
          item: item.id,
          related: [{where, says: `${item.id} asks for ${value}`}, specified(asked)],
          lacks: {item: asked.id, verbs: [verbFor(asked)]},
        });
      }
    },
  },
};
