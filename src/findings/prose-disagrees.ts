/** A number, a side of the limits or a way to turn in a step's prose is not the one that its tag stands for. */
import {type StepRef, whereIn} from '../build/program.js';
import {amountsAgree, unitOf} from '../quantity/convert.js';
import {formatAmount, formatBoth, formatQuantity} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import type {Specification} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {withoutEnd} from '../text/runs.js';
import type {FindingKind, SpecificationContext} from './model.js';
import {type Disagreement, disagreements} from './prose-agreement.js';
import {handDisagreements} from './prose-hand.js';
import type {Mention} from './prose-numbers.js';
import {passDisagreements} from './prose-passes.js';
import {sideDisagreements} from './prose-sides.js';
import type {StatedValue} from './stated-values.js';
import {inFile, type Prose} from './step-prose.js';

export const proseDisagrees: FindingKind = {
  name: 'prose-disagrees',
  group: 'reading',
  severity: 'error',
  summary: 'A number, a side of the limits or a way to turn in the prose of a step is not the one of its tag',
  why: 'The apprentice reads the prose and the sheet prints the tag: with two numbers in one step, one of them gets used. “Too tight” over a tag that says `is over` sends the apprentice the wrong way, and so does “clockwise” for a left-hand thread (`thread: M20x1.5 LH`).',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up to 80 lbf·ft. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Bring the bolts up to 85 lbf·ft. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  part({steps}, context) {
    for (const step of steps) judge(step, context);
  },
};

function judge(step: StepRef, context: SpecificationContext): void {
  judgeNumbers(step, context);
  judgeWords(step, context);
}

function judgeWords(step: StepRef, {spec, worked, report}: SpecificationContext): void {
  const prose = worked.prose(step);
  const found = [...sideDisagreements(step, prose.text, spec), ...handDisagreements(step, prose.text, spec)];
  for (const {span, item, tagSpan, says} of found) {
    const related = [{where: whereIn(step, tagSpan), says: 'the tag'}];
    report({where: whereIn(step, inFile(prose, span)), message: says, item: item.id, related});
  }
}

function judgeNumbers(step: StepRef, {spec, worked, report}: SpecificationContext): void {
  const values = worked.values(step);
  if (values.length === 0) return;
  const prose = worked.prose(step);
  // German prose has its decimals behind a comma; a point in its place leaves every offset as it is.
  const isGerman = spec.shop.language === 'de';
  const text = isGerman ? withPoints(prose.text) : prose.text;
  for (const found of disagreements(worked.numbers(text), values)) {
    const {mention, value} = found;
    const where = whereIn(step, inFile(prose, mention.span));
    const fix = fixOf(found, where.file, prose);
    const written = isGerman && fix ? withCommas(fix) : fix;
    report({
      where,
      message: messageOf(found, spec),
      item: value.item.id,
      related: relatedOf(value, step),
      ...(written && {fix: written}),
    });
  }
  for (const {span, value, says} of passDisagreements(text, values)) {
    const where = whereIn(step, inFile(prose, span));
    report({where, message: says, item: value.item.id, related: relatedOf(value, step)});
  }
}

function relatedOf({item, tag, specified}: StatedValue, step: StepRef) {
  return [
    {where: whereIn(step, tag.span), says: 'the tag'},
    ...(specified ? [{where: specified, says: `${item.id} is specified here`}] : []),
  ];
}

/** A number with one comma in it, and nothing of a number beside it: no list, no thousands of another language. */
function withPoints(text: string): string {
  return text.replace(/(?<![\d.,])(\d+),(\d+)(?![\d,]|\.\d)/g, '$1.$2');
}

function withCommas({title, file, edits}: Fix): Fix {
  const comma = (text: string) => text.replace(/(\d)\.(\d)/g, '$1,$2');
  return {title: comma(title), file, edits: edits.map(({span, text}) => ({span, text: comma(text)}))};
}

function messageOf({mention, value}: Disagreement, {shop}: Specification): string {
  const {item, amount, specified} = value;
  const by = specified ? 'the specification' : 'the tag';
  const due = formatBoth(amount, shop.units);
  const passes = value.passes.length > 0 ? ` in passes of ${value.passes.map(formatAmount).join(', ')}` : '';
  return `${item.id}: the prose says ${formatBoth(mention.amount, shop.units)}, ${by} ${due}${passes}`;
}

/** The value of the tag in place of the number, where the one can stand for the other. */
function fixOf({mention, value}: Disagreement, file: string, prose: Prose): Fix | undefined {
  if (mention.borrowed || value.passes.length > 0 || mention.amount.form !== value.amount.form)
    return undefined;
  // The slip is the tag's, and value-disagrees says so.
  if (value.asked && amountsAgree(mention.amount, value.asked)) return undefined;
  const text = written(value.amount, mention);
  return {title: `Write ${text}`, file, edits: [{span: inFile(prose, mention.span), text}]};
}

function written(amount: Amount, {worded}: Mention): string {
  if (amount.form !== 'range' || !worded || unitOf(amount).symbol !== amount.low.unit.symbol)
    return formatAmount(amount);
  const low = withoutEnd(formatQuantity(amount.low), /\D/);
  return `${low} and ${formatQuantity(amount.high)}`;
}
