/** A hold point that nobody signs. */
import type {Fact} from '../build/facts.js';
import {placesOf} from '../spec/items.js';
import type {HoldPoint, Item} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {isDone} from './done.js';
import {reportUndone} from './left-undone.js';
import {stepAfter} from './missing-place.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context, FindingKind} from './model.js';

export const leftUnwitnessed: FindingKind = {
  name: 'left-unwitnessed',
  group: 'left undone',
  severity: 'error',
  summary: 'A hold point ends the build without its second signature',
  why: 'The second pair of eyes is asked for where a mistake can no longer be seen afterwards.',
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
1. Set the caps in place. \`install: main-caps\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Have the shop lead look and sign. \`witness: bottom-end-closed by "shop lead"\`
`,
  },
  end(context) {
    for (const point of context.relations.holdPoints) {
      reportUndone(
        point,
        {
          fact: 'witnessed',
          never: '[is|are] never witnessed',
          again: '[is|are] witnessed too early',
          asked: `${point.id} asks for a second signature`,
          fix: () => fixOf(point, context),
        },
        context,
      );
    }
  },
};

/** As soon as all that it asks for is done. */
function fixOf(point: HoldPoint, context: Context): Fix | undefined {
  const asked = point.asks.map(({value}) => context.book.spec.items.get(value));
  const needs = () => asked.flatMap((item) => (item === undefined ? NOT_YET : doneBy(item, context)));
  const step = stepAfter({item: point, kind: 'witnessed', places: ['']}, needs, context);
  const by =
    point.by === undefined ? '' : ` by ${/^[a-z0-9-]+$/.test(point.by) ? point.by : `"${point.by}"`}`;
  const missing = {says: `Have the ${point.name} looked at and signed.`, tag: `witness: ${point.id}${by}`};
  return step && stepBehind(step, missing, titleOf('witness', point));
}

const NOT_YET: readonly Fact[] = [{holds: false}];

/** The facts that make an item done, where it is. */
function doneBy(item: Item, {state}: Context): readonly Fact[] {
  return placesOf(item).flatMap((place) =>
    isDone(item, place, state)
      ? DOING.map((kind) => state.get(kind, item.id, place)).filter(({holds}) => holds)
      : NOT_YET,
  );
}

const DOING = [
  'installed',
  'clean',
  'lubed',
  'sealed',
  'cured',
  'tight',
  'locked',
  'striped',
  'measured',
  'recorded',
  'checked',
  'witnessed',
  'filled',
] as const;
