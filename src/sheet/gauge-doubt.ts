/** How far the gauge of a reading may be out, so that a reading near a limit is told from one that is surely within. */
import {convertDifference} from '../quantity/convert.js';
import type {Quantity, Unit} from '../quantity/model.js';
import {accuracyOf} from '../spec/accuracy.js';
import type {Tool} from '../spec/model.js';
import {specifiedIds, statedNames} from './clauses.js';
import type {Context, Use} from './context.js';

/**
 * Plus or minus, in `unit`: the stated accuracy, or half of the smallest division where that is more. Of several
 * gauges that will do, the coarsest counts; undefined where nothing is known of any.
 */
export function doubtOf(use: Use, unit: Unit, context: Context): number | undefined {
  const stated = [...statedNames(use.tag, 'using'), ...statedNames(use.tag, 'with')].map(({id}) => id);
  const ids = stated.length > 0 ? stated : specifiedIds(use, 'using');
  const doubts = ids.flatMap((id) => {
    const item = context.spec.items.get(id);
    return item?.kind === 'tool' ? ofTool(item, unit) : [];
  });
  return doubts.length === 0 ? undefined : Math.max(...doubts);
}

function ofTool(tool: Tool, unit: Unit): number[] {
  const {resolution} = tool;
  const division = resolution?.value.form === 'single' ? resolution.value.value : undefined;
  const half = division === undefined ? undefined : {...division, value: division.value / 2};
  return [half, accuracyOf(tool, unit.dimension)].flatMap((part) => within(part, unit));
}

function within(part: Quantity | undefined, unit: Unit): number[] {
  if (part === undefined || part.unit.dimension !== unit.dimension || !(part.value > 0)) return [];
  return [inFigures(convertDifference(part, unit).value)];
}

/** Twelve figures drop the noise of conversion, which no gauge shows. */
export function inFigures(value: number): number {
  return Number(value.toPrecision(12));
}
