/** A torque that lies outside the range in which the wrench for it works. */
import {type StepRef, whereIn} from '../build/program.js';
import type {Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import {amountsAgree, dimensionOf, highOf, limitsOf, lowOf} from '../quantity/convert.js';
import type {Amount} from '../quantity/model.js';
import type {Fastener, Located, Specification, Tool} from '../spec/model.js';
import {misrangedWrench} from '../spec/wrenches.js';
import type {Fix} from '../text/edit.js';
import type {Span} from '../text/source.js';
import {workingRange} from '../trade/wrench.js';
import {barOn} from './bars.js';
import type {FindingKind, SpecificationContext} from './model.js';
import {listed, specified} from './phrase.js';
import type {StatedValue} from './stated-values.js';
import {told} from './worked-figures.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  torque-wrench-half: {range: {value: 30–150 lbf·ft, source: house}}
  torque-wrench-small: {range: {value: 5–35 lbf·ft, source: house}}
`;

export const wrenchOutOfRange: FindingKind = {
  name: 'wrench-out-of-range',
  group: 'engineering',
  severity: 'error',
  summary: 'A torque, or a pass of it, lies outside the working range of its wrench',
  why: 'Below its lowest mark a torque wrench says nothing and clicks late or not at all; above its highest it bends. A wrench that states no lowest value works from a fifth of its highest.',
  source:
    'ISO 6789-1:2017 and ISO 6789:2003: a tool is tested, and to be used, from its lowest marked value, or 20 % of its maximum',
  example: {
    shop: SHOP,
    engine: `
parts:
  block: {given: true}
  pickup: {}
fasteners:
  pickup-bolts: {holds: [pickup], torque: 18 lbf·ft, threads: dry, lock: {value: none, because: the sump keeps them in}}
`,
    wrong: `
1. Offer the pickup up. \`install: pickup\`
2. Torque both bolts. \`torque: pickup-bolts to 18 lbf·ft using torque-wrench-half\`
`,
    right: `
1. Offer the pickup up. \`install: pickup\`
2. Torque both bolts. \`torque: pickup-bolts to 18 lbf·ft using torque-wrench-small\`
`,
  },
  specification({spec, relations, report}) {
    const wrenches = wrenchesOf(relations.tools);
    // What a wrench reaches whose range has another unit, nobody knows: it is told at the wrench.
    if (wrenches.length === 0 || relations.tools.some(misrangedWrench)) return;
    for (const fastener of relations.fasteners) {
      for (const {value, where} of torquesOf(fastener)) {
        if (wrenches.some((wrench) => reaches(wrench, value))) continue;
        const message = `${fastener.id}: ${told(value, spec)} is outside the working range of every torque wrench of the shop; ${nearestTo(value, wrenches, spec)}`;
        report({where, message, item: fastener.id});
      }
    }
  },
  part({steps}, context) {
    const wrenches = wrenchesOf(context.relations.tools);
    for (const step of steps) {
      for (const value of context.worked.values(step)) {
        if (dimensionOf(value.amount) === 'torque') ofStep(step, value, wrenches, context);
      }
    }
  },
};

interface Wrench {
  readonly tool: Tool;
  /** From … to, as it works. */
  readonly range: Amount & {readonly form: 'range'};
}

function wrenchesOf(tools: readonly Tool[]): Wrench[] {
  return tools.flatMap((tool) => {
    const works = tool.range && workingRange(tool.range.value);
    return works?.ok ? [{tool, range: {form: 'range', low: works.low, high: works.high}}] : [];
  });
}

/** The torque, and the passes that lead up to it, each with its place. */
function torquesOf({torque, passes}: Fastener): Located<Amount>[] {
  if (typeof torque?.value !== 'object') return [];
  const final = {value: torque.value, where: torque.where};
  if (passes === undefined) return [final];
  const below = passes.value.filter((pass) => !amountsAgree(pass, final.value));
  return [final, ...below.map((value) => ({value, where: passes.where}))];
}

function ofStep(
  step: StepRef,
  value: StatedValue,
  all: readonly Wrench[],
  {spec, report}: SpecificationContext,
): void {
  const {tag, item, amount, passes} = value;
  const named = namedIn(tag, item.kind === 'check' ? item.using : [], all);
  const [first, second] = named;
  if (first === undefined) return;
  const amounts = [...passes.filter((pass) => !amountsAgree(pass, amount)), amount];
  const bad = amounts.filter((one) => !named.some(({wrench}) => reaches(wrench, one)));
  // What no wrench of the shop reaches is said once, in the specification.
  const asked = item.kind === 'fastener' ? torquesOf(item).map((one) => one.value) : [];
  const here = bad.filter(
    (one) => all.some((wrench) => reaches(wrench, one)) || !asked.some((due) => amountsAgree(due, one)),
  );
  if (here.length === 0) return;
  const better = all.filter(
    (wrench) =>
      amounts.every((one) => reaches(wrench, one)) && barOn(spec, wrench.tool.id, item) === undefined,
  );
  const fix = fixOf(step, second === undefined ? first.span : undefined, better);
  report({
    where: whereIn(step, first.span ?? tag.span),
    message: `${item.id}: ${here.map((one) => told(one, spec)).join(' and ')} ${here.length > 1 ? 'are' : 'is'} outside the working range of ${listed(named.map(({wrench}) => ranged(wrench, spec)))}${better[0] ? `; ${ranged(better[0], spec)}, reaches it` : ''}`,
    item: item.id,
    related: [specified(item), ...named.map(({wrench}) => specified(wrench.tool))],
    ...(fix && {fix}),
  });
}

/** Wrenches that the tag names, or else the item does. */
function namedIn(
  tag: Tag,
  using: readonly Located<string>[],
  all: readonly Wrench[],
): {readonly wrench: Wrench; readonly span?: Span}[] {
  const value = clauseOf(tag, 'using')?.value;
  const ids: readonly {id: string; span?: Span}[] =
    value?.type === 'ids' ? value.ids : using.map((one) => ({id: one.value}));
  return ids.flatMap(({id, span}) => {
    const wrench = all.find(({tool}) => tool.id === id);
    return wrench ? [{wrench, ...(span && {span})}] : [];
  });
}

/** Whether it can be set to some value that the amount allows. */
function reaches({range}: Wrench, amount: Amount): boolean {
  const [works, due] = [limitsOf(range), settingsOf(amount)];
  const slack = 1e-9 * works.high;
  return due.low <= works.high + slack && due.high >= works.low - slack;
}

function settingsOf(amount: Amount): {readonly low: number; readonly high: number} {
  if (amount.form === 'tolerance') return limitsOf({form: 'single', value: amount.nominal});
  // A largest or least value is read at that value.
  const end = amount.form === 'most' ? highOf(amount) : amount.form === 'least' ? lowOf(amount) : undefined;
  return limitsOf(end === undefined ? amount : {form: 'single', value: end});
}

function nearestTo(amount: Amount, wrenches: readonly Wrench[], spec: Specification): string {
  const {low, high} = settingsOf(amount);
  const away = ({range}: Wrench): number => {
    const works = limitsOf(range);
    return low > works.high ? low / works.high : works.low / high;
  };
  const nearest = wrenches.reduce((one, other) => (away(other) < away(one) ? other : one));
  return `the nearest is ${ranged(nearest, spec)}`;
}

function ranged({tool, range}: Wrench, spec: Specification): string {
  return `${tool.id}, ${told(range, spec)}`;
}

/** Another wrench in place of the one that alone is named, where the shop has just one that reaches everything. */
function fixOf(step: StepRef, span: Span | undefined, better: readonly Wrench[]): Fix | undefined {
  const [wrench, another] = better;
  if (span === undefined || wrench === undefined || another !== undefined) return undefined;
  const {id} = wrench.tool;
  return {title: `Use ${id}`, file: step.procedure.source.file, edits: [{span, text: id}]};
}
