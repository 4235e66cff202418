/** A step does several things that have nothing to do with each other. */
import {type Action, type Node, whereIn} from '../build/program.js';
import type {Tag} from '../procedure/model.js';
import type {Verb} from '../procedure/verbs.js';
import type {Item, Specification} from '../spec/model.js';
import type {FindingKind, SpecificationContext} from './model.js';
import {inBuildOrder} from './phrase.js';

export const twoActions: FindingKind = {
  name: 'two-actions',
  group: 'people',
  severity: 'information',
  summary: 'A step does several things that have nothing to do with each other',
  why: 'One box, one tick: where two things stand in one step, the second is ticked with the first and left out.',
  source: 'MIL-STD-2106A(SH), appendix B: one step per complete action or observation',
  example: {
    engine: `
parts:
  block: {given: true}
  camshaft: {}
  sump: {}
`,
    wrong: `
1. Slide the camshaft in, and set the sump down. \`install: camshaft\` \`install: sump\`
`,
    right: `
1. Slide the camshaft in. \`install: camshaft\`
2. Set the sump down. \`install: sump\`
`,
  },
  part({nodes}, context) {
    for (const node of nodes) judge(node, context);
  },
};

/** What is said, read or signed of other work in the step, and what readies a part for it. */
const GO_ALONG: ReadonlySet<Verb> = new Set([
  'record',
  'witness',
  'check',
  'cure',
  'turn',
  'inspect',
  'renew',
  'measure',
  'lay',
]);

function judge(node: Node, context: SpecificationContext): void {
  const work = node.actions.filter(({verb}) => !GO_ALONG.has(verb));
  report(node, apart(work, context.spec), context);
  for (const below of node.below) judge(below, context);
}

function report({step}: Node, things: readonly Action[], context: SpecificationContext): void {
  const [, second] = things;
  if (second === undefined) return;
  const names = things.map(({verb, item}) => `${verb} ${item.id}`);
  context.report({
    where: whereIn(step, second.tag.span),
    message: `${second.item.id}: step ${step.step.number} does several things that have nothing to do with each other (${names.join(', ')}); make each a step`,
    item: second.item.id,
    step,
  });
}

/**
 * The first of each group of actions, of which no two groups have an item in common. The targets of one tag are one
 * action.
 */
function apart(actions: readonly Action[], spec: Specification): Action[] {
  // Of its tags only the last can have more targets to come.
  let groups: {first: Action; tag: Tag; touched: Set<string>}[] = [];
  for (const action of actions) {
    const touched = around(action.item, spec);
    const near = groups.filter(
      (group) => group.tag === action.tag || [...touched].some((id) => group.touched.has(id)),
    );
    const merged = {
      first: near[0]?.first ?? action,
      tag: action.tag,
      touched: new Set([...near.flatMap((group) => [...group.touched]), ...touched]),
    };
    const others = groups.filter((group) => !near.includes(group));
    groups = [...others, merged].toSorted((one, other) => inBuildOrder(one.first, other.first));
  }
  return groups.map(({first}) => first);
}

/** The item and what the specification ties to it; what is there from the start ties nothing together. */
function around(item: Item, spec: Specification): Set<string> {
  const ids = [item.id, ...tied(item)];
  return new Set(ids.filter((id) => !isGiven(spec.items.get(id))));
}

function isGiven(item: Item | undefined): boolean {
  return item?.kind === 'part' && item.given;
}

function tied(item: Item): readonly string[] {
  const values = (list: readonly {readonly value: string}[]) => list.map(({value}) => value);
  switch (item.kind) {
    case 'part':
      return values([...item.closes, ...(item.seatsIn ? [item.seatsIn] : [])]);
    case 'surface':
      return item.on ? [item.on.value] : [];
    case 'joint':
      return values(item.between);
    case 'fastener':
      return values(item.holds);
    case 'system':
      return values([...item.joints, ...item.closedBy]);
    default:
      return [];
  }
}
