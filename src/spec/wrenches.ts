/** Torque wrenches whose range is of something else than torques: one slip at the tool, and not one at each torque. */
import {dimensionOf} from '../quantity/convert.js';
import {usualUnits, withArticle} from '../quantity/faults.js';
import type {Problem} from '../text/problem.js';
import type {Tool} from './model.js';

/** Whether the tool is a torque wrench, or screwdriver, by id or name, and its range no torque. */
export function misrangedWrench(tool: Tool): boolean {
  const isWrench = /torque[- ](?:wrench|screwdriver|driver)/i.test(`${tool.id} ${tool.name}`);
  return isWrench && isMisranged(tool);
}

export type MisrangedTool = Tool & {readonly range: NonNullable<Tool['range']>};

/** Whether the tool has a range, and not one of torques. */
export function isMisranged(tool: Tool): tool is MisrangedTool {
  return tool.range !== undefined && dimensionOf(tool.range.value) !== 'torque';
}

/** What is wrong with such a range. */
export function misranged({id, range}: MisrangedTool): Problem {
  const is = withArticle(dimensionOf(range.value));
  return {
    name: 'unit-wrong-kind',
    where: range.where,
    says: `the range of ${id} is ${is} where ${withArticle('torque')} is due, for it is a torque wrench`,
    hint: `write it in ${usualUnits('torque')}`,
    item: id,
  };
}
