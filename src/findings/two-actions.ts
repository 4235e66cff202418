/** A step does several things that have nothing to do with each other. */
import {type Action, type Node, whereIn} from '../build/program.js';
import type {Verb} from '../procedure/verbs.js';
import type {Item, Specification} from '../spec/model.js';
import type {FindingKind, SpecificationContext} from './model.js';

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
  const [one] = work;
  if (work.some(({tag}) => tag !== one?.tag)) report(node, apart(work, context.spec), context);
  for (const below of node.below) judge(below, context);
}

function report(node: Node, groups: readonly Action[][], context: SpecificationContext): void {
  const [first, second] = groups;
  if (first !== undefined && second !== undefined) {
    const [action] = second;
    const names = groups.map(([one]) => (one ? `${one.verb} ${one.item.id}` : ''));
    if (action !== undefined) {
      context.report({
        where: whereIn(node.step, action.tag.span),
        message: `${action.item.id}: step ${node.step.step.number} does several things that have nothing to do with each other (${names.join(', ')}); make each a step`,
        item: action.item.id,
        step: node.step,
      });
    }
  }
}

/** Actions in groups of which no two have an item in common. The targets of one tag are one action. */
function apart(actions: readonly Action[], spec: Specification): Action[][] {
  const groups: {actions: Action[]; touched: Set<string>}[] = [];
  for (const action of actions) {
    const touched = around(action.item, spec);
    const near = groups.filter(
      (group) =>
        group.actions.some(({tag}) => tag === action.tag) || [...touched].some((id) => group.touched.has(id)),
    );
    const merged = {
      actions: [...near.flatMap((group) => group.actions), action],
      touched: new Set([...near.flatMap((group) => [...group.touched]), ...touched]),
    };
    groups.splice(0, groups.length, ...groups.filter((group) => !near.includes(group)), merged);
  }
  return groups.map((group) => group.actions);
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
