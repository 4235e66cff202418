/** What the shop says of its tools and consumables, as demands: they ask nothing of an engine, but work is judged by them. */
import {si} from '../quantity/convert.js';
import {accuracyOf} from '../spec/accuracy.js';
import type {ItemOf} from '../spec/model.js';
import {amount, type Demand, each, word} from './demand.js';

/** Of a tool or gauge. */
export function ofTool(item: ItemOf<'tool'>): Demand[] {
  const {calibrated, due} = item;
  return [
    ...amount('range', item.range),
    ...amount('resolution', item.resolution, {stricter: 'less', asks: true}),
    ...ofAccuracy(item),
    ...(calibrated === undefined ? [] : [word('calibrated', calibrated.value, calibrated.where)]),
    ...(due === undefined ? [] : [{...word('due', due.value, due.where), asks: true}]),
    ...(item.serial === undefined ? [] : [word('serial', item.serial, item.where)]),
    ...(item.gauge ? [word('gauge', 'yes', item.where)] : []),
  ];
}

/** The more a gauge may be out, the weaker; of a class nobody can say which is more. */
function ofAccuracy(tool: ItemOf<'tool'>): Demand[] {
  const {accuracy} = tool;
  if (accuracy === undefined) return [];
  const demand = word('accuracy', accuracy.value, accuracy.where);
  const out = accuracyOf(tool);
  if (out === undefined) return [{...demand, asks: true}];
  const value = {type: 'word', word: accuracy.value, grade: -si(out), scale: out.unit.dimension} as const;
  return [{...demand, value, asks: true}];
}

/** Of what is used up. */
export function ofConsumable(item: ItemOf<'consumable'>): Demand[] {
  return [
    word('use', item.use, item.where),
    ...(item.lock === undefined ? [] : [word('kind of lock', item.lock, item.where)]),
    ...each('hazard', item.hazards),
    ...amount('cure', item.cure, {stricter: 'more', asks: true}),
    ...(item.k === undefined ? [] : [word('k', String(item.k.value), item.k.where)]),
    ...amount('range', item.range),
    ...amount('size', item.size),
  ];
}
