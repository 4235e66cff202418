/** A gauge, or a gauging strip, that cannot tell whether a reading lies within its limits. */
import {type Action, whereIn} from '../build/program.js';
import {amountOf, clauseOf} from '../procedure/values.js';
import {amountsAgree, dimensionOf, limitsOf} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {accuracyOf} from '../spec/accuracy.js';
import type {Check, Fit, Specification, Specified, Tool} from '../spec/model.js';
import type {Where} from '../text/source.js';
import {gaugeCapability} from '../trade/gauge-capability.js';
import type {Context, FindingKind} from './model.js';
import {specified} from './phrase.js';
import {told} from './worked-figures.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  dial-gauge: {name: dial gauge, gauge: true, resolution: {value: 0.001 in, source: house}}
  tenths-gauge: {name: tenths indicator, gauge: true, resolution: {value: 0.0001 in, source: house}}
`;

const PLAY = `
parts:
  block: {given: true}
  crankshaft: {}
fits:
  end-play: {between: [block, crankshaft], limits: 0.004–0.007 in, using: [dial-gauge], when: {installed: [crankshaft]}}
`;

const STEPS = `
1. Set the crankshaft down. \`install: crankshaft\`
2. Read the end play at the nose. \`measure: end-play\`
`;

export const gaugeTooCoarse: FindingKind = {
  name: 'gauge-too-coarse',
  group: 'engineering',
  severity: 'warning',
  summary: 'A gauge is too coarse, or a gauging strip of another range, for the limits that it must judge',
  why: 'Where a quarter of the tolerance is lost in the gauge, good parts are thrown out and bad ones go in. Ten times finer is asked for, four times is the least, and only less than that is found. A strip that ends short of a limit cannot show it. Where the maker names the gauge, that outranks this rule: state the limits with a reason (`because:`).',
  source:
    '4:1, ANSI/NCSL Z540.3, 5.3 b, and MIL-STD-45662A, 5.2; 10:1, MIL-STD-120 and AIAG MSA, 4th ed. (all from memory)',
  example: {
    shop: SHOP,
    engine: PLAY,
    rightEngine: PLAY.replace('[dial-gauge]', '[tenths-gauge]'),
    wrong: STEPS,
    right: STEPS,
  },
  specification({spec, relations, report}) {
    for (const item of [...relations.fits, ...relations.checks]) {
      const limits = amountIn(item.limits);
      if (limits === undefined) continue;
      for (const {value, where} of item.using) judge({item, limits, gauge: value, where, spec}, report);
    }
  },
  before: {measure: ofStep, check: ofStep, lay: ofStep},
};

type Report = Context['report'];

interface Use {
  readonly item: Fit | Check;
  readonly limits: Amount;
  readonly gauge: string;
  readonly where: Where;
  readonly spec: Specification;
}

/** A gauge, or limits, that only the step names. */
function ofStep({item, tag, step}: Action<Fit | Check>, {book: {spec}, report}: Context): void {
  const asked = amountIn(item.limits);
  const limits = amountOf(tag, 'within') ?? asked;
  if (limits === undefined) return;
  const other = asked === undefined || !amountsAgree(limits, asked);
  for (const word of ['using', 'with'] as const) {
    const value = clauseOf(tag, word)?.value;
    if (value?.type !== 'ids') continue;
    for (const {id, span} of value.ids) {
      const judgedThere = !other && item.using.some((one) => one.value === id);
      if (!judgedThere) judge({item, limits, gauge: id, where: whereIn(step, span), spec}, report);
    }
  }
}

function amountIn(limits: Specified<Amount | string> | undefined): Amount | undefined {
  return typeof limits?.value === 'object' ? limits.value : undefined;
}

function judge(use: Use, report: Report): void {
  const {item, gauge, where, spec} = use;
  const tool = spec.items.get(gauge);
  if (tool === undefined || item.limits?.because !== undefined) return;
  const says =
    tool.kind === 'tool'
      ? coarseness(use, tool)
      : tool.kind === 'consumable'
        ? shortness(use, tool.range)
        : undefined;
  if (says === undefined) return;
  report({where, message: `${item.id}: ${says}`, item: item.id, related: [specified(item), specified(tool)]});
}

/** The smaller of the two ratios, where it is under 4. */
function coarseness({limits, gauge, spec}: Use, tool: Tool): string | undefined {
  const due = dimensionOf(limits);
  const fine = (q: Quantity | undefined) => (q?.unit.dimension === due && q.value > 0 ? q : undefined);
  const resolution = fine(single(tool.resolution?.value));
  const accuracy = fine(accuracyOf(tool, due));
  const worked = gaugeCapability(fromNought(limits), {resolution, accuracy});
  if (!worked.ok || worked.result.verdict !== 'too-coarse') return undefined;
  const {byResolution = Infinity, byAccuracy = Infinity} = worked.result;
  const [times, by] =
    accuracy !== undefined && byAccuracy < byResolution
      ? [byAccuracy, `tolerance / (2 × accuracy), accuracy ±${formatQuantity(accuracy)}`]
      : [byResolution, `tolerance / resolution, resolution ${resolution && formatQuantity(resolution)}`];
  return `${gauge} is ${ratio(times)}:1 to the limits ${told(limits, spec)} (${by}), and 4:1 is the least unless the maker names the gauge`;
}

/** What is only to be small, such as a taper or a run-out, lies between nought and its limit. */
function fromNought(limits: Amount): Amount {
  if (limits.form !== 'most' || limits.high.unit.offset !== 0) return limits;
  return {form: 'range', low: {...limits.high, value: 0}, high: limits.high};
}

function single(amount: Amount | undefined): Quantity | undefined {
  return amount?.form === 'single' ? amount.value : undefined;
}

/** Limits that the strip's own range does not cover; a hundredth of an end is lost in conversion. */
function shortness({limits, gauge, spec}: Use, range: Specified<Amount> | undefined): string | undefined {
  if (range === undefined || dimensionOf(range.value) !== dimensionOf(limits)) return undefined;
  const [due, reads] = [limitsOf(limits), limitsOf(range.value)];
  const covers = (end: number) =>
    !Number.isFinite(end) || (end >= reads.low * 0.99 && end <= reads.high * 1.01);
  if (covers(due.low) && covers(due.high)) return undefined;
  return `${gauge} reads ${told(range.value, spec)} and cannot show the limits ${told(limits, spec)}`;
}

function ratio(times: number): string {
  // Rounded down, so that 3.98 does not print as 4.
  return String(Math.floor(times * 10) / 10);
}
