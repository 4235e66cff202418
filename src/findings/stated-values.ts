/** The values that a step's tags stand for: stated in the tag, or else specified for its item. */
import type {Step, Tag} from '../procedure/model.js';
import {amountOf, amountsOf, clauseOf} from '../procedure/values.js';
import {amountsAgree} from '../quantity/convert.js';
import type {Amount} from '../quantity/model.js';
import type {Fastener, Item, Located, Specification} from '../spec/model.js';
import {addAll} from '../text/add-all.js';
import type {Where} from '../text/source.js';

/** What a value is of, and so with which numbers of the prose it can be compared. */
export type ValueKind = 'torque' | 'angle' | 'limits' | 'time' | 'volume';

export interface StatedValue {
  readonly kind: ValueKind;
  readonly item: Item;
  readonly tag: Tag;
  readonly amount: Amount;
  /** For a torque: the passes that lead up to it. */
  readonly passes: readonly Amount[];
  /** Where the specification states it; undefined where the tag does. */
  readonly specified?: Where;
  /** What the specification asks for, where the tag states something. */
  readonly asked?: Amount;
}

export function valuesOf(step: Step, spec: Specification): StatedValue[] {
  const values: StatedValue[] = [];
  for (const tag of step.tags) {
    for (const {id} of tag.targets) {
      const item = spec.items.get(id);
      if (item !== undefined) addAll(values, ofTag(tag, item, spec));
    }
  }
  return values;
}

function ofTag(tag: Tag, item: Item, spec: Specification): StatedValue[] {
  switch (tag.verb) {
    case 'torque':
      return item.kind === 'fastener' ? [...torqueOf(tag, item), ...angleOf(tag, item)] : [];
    case 'measure':
    case 'check':
      return item.kind === 'fit' || item.kind === 'check'
        ? value('limits', tag, item, 'within', item.limits)
        : [];
    case 'cure':
      return curesOf(tag, item, spec);
    case 'fill':
      return item.kind === 'system' ? value('volume', tag, item, 'to', item.amount) : [];
    default:
      return [];
  }
}

function torqueOf(tag: Tag, item: Fastener): StatedValue[] {
  const turnsOnly = clauseOf(tag, 'to') === undefined && clauseOf(tag, 'turn') !== undefined;
  if (turnsOnly) return [];
  const [stated] = value('torque', tag, item, 'to', item.torque);
  if (stated === undefined) return [];
  const asked = item.torque?.value;
  const reached = typeof asked === 'object' && amountsAgree(stated.amount, asked);
  const said = amountsOf(tag, 'in');
  return [{...stated, passes: said.length > 0 ? said : reached ? (item.passes?.value ?? []) : []}];
}

function angleOf(tag: Tag, item: Fastener): StatedValue[] {
  // A tag that goes to a torque and states no angle stops there.
  if (clauseOf(tag, 'to') !== undefined && clauseOf(tag, 'turn') === undefined) return [];
  return value('angle', tag, item, 'turn', item.angle);
}

function curesOf(tag: Tag, item: Item, spec: Specification): StatedValue[] {
  const sealants =
    item.kind === 'joint' && typeof item.seal?.value === 'object' ? item.seal.value : [item.id];
  const cures = sealants.flatMap((id) => {
    const sealant = spec.items.get(id);
    return sealant?.kind === 'consumable' && sealant.cure ? [sealant.cure] : [];
  });
  const [cure, second] = cures;
  // Of two sealants, the joint is made up with either.
  if (clauseOf(tag, 'for') !== undefined) return value('time', tag, item, 'for', second ? undefined : cure);
  return cures.flatMap((one) => value('time', tag, item, 'for', one));
}

function value(
  kind: ValueKind,
  tag: Tag,
  item: Item,
  word: 'to' | 'turn' | 'within' | 'for',
  asked: Located<Amount | string> | undefined,
): StatedValue[] {
  if (clauseOf(tag, word) !== undefined) {
    const stated = amountOf(tag, word);
    if (stated === undefined) return [];
    const due = typeof asked?.value === 'object' ? {asked: asked.value} : {};
    return [{kind, item, tag, amount: stated, passes: [], ...due}];
  }
  if (asked === undefined || typeof asked.value === 'string') return [];
  return [{kind, item, tag, amount: asked.value, passes: [], specified: asked.where}];
}
