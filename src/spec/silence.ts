/** No silence: what an item must speak of, for what it never asks for nobody can miss. */
import type {Problem} from '../text/problem.js';
import type {ItemKind} from './model.js';
import {type Field, type RawItem, statedOf} from './raw.js';
import {textOf} from './tree.js';

/** Fields that an item of the kind must have, its own or practice's, with what can be written there. */
const MUST_SAY: Readonly<Partial<Record<ItemKind, Readonly<Record<string, string>>>>> = {
  fastener: {
    torque: 'torque: 85 lbf·ft, snug, unknown, or none with a reason',
    threads: 'threads: dry, unknown, or [a consumable]',
    lock: 'lock: safety-wire or another kind, unknown, or none with a reason',
  },
  surface: {assembly: 'assembly: clean, dry, lubed or unknown'},
  joint: {seal: 'seal: [a consumable], unknown, or none with a reason'},
  // Its `by` is not asked for: without a word a fit is read by a gauge, which is nothing to be wrong about.
  fit: {
    limits: 'limits: 0.0015–0.0035 in, or unknown',
    when: 'when: {installed: [parts], tight: [fasteners]}',
  },
};

/** Where `none` takes a reason. */
const NONE_NEEDS_REASON: readonly string[] = ['torque', 'lock', 'seal'];

/** What the item, practice added, leaves unsaid. `unknown` is found where values are read. */
export function silences(raw: RawItem): Problem[] {
  if (!raw.readable) return [];
  const problems = checkOfNothing(raw);
  const must = MUST_SAY[raw.kind] ?? {};
  for (const key in must) if (!raw.fields.has(key)) problems.push(unspoken(raw, key, must[key] ?? ''));
  for (const key of NONE_NEEDS_REASON) {
    const field = raw.fields.get(key);
    if (field) problems.push(...unreasoned(raw, field));
  }
  return problems;
}

function unspoken(raw: RawItem, key: string, write: string): Problem {
  const says =
    key === 'when' ? `${raw.id} does not say when it is measured` : `${raw.id} does not say its ${key}`;
  return {name: 'spec-silent', where: raw.where, says, hint: `write ${write}`, item: raw.id};
}

/** A check gives a number or a state; one that expects neither cannot fail. */
function checkOfNothing({kind, id, where, fields}: RawItem): Problem[] {
  if (kind !== 'check' || fields.has('limits') || fields.has('expect')) return [];
  const hint = 'write limits: with a unit, or expect: in words';
  return [{name: 'spec-silent', where, says: `${id} does not say what is expected`, hint, item: id}];
}

function unreasoned(raw: RawItem, field: Field): Problem[] {
  const stated = statedOf(field.value);
  if (stated === undefined || textOf(stated.value) !== 'none' || textOf(stated.because)) return [];
  return [
    {
      name: 'spec-silent',
      where: stated.value.where,
      says: `${field.key} of ${raw.id} is none without a reason`,
      hint: `write ${field.key}: {value: none, because: …}`,
      item: raw.id,
    },
  ];
}
