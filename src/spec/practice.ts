/** What holds for every item of a kind, and of a type: fills in what an item leaves out, and asks why it departs. */
import {amountsAgree} from '../quantity/convert.js';
import {readAmount} from '../quantity/parse.js';
import type {Problem} from '../text/problem.js';
import {defined} from './defined.js';
import {scalarsOf} from './fields.js';
import type {BookFile} from './file.js';
import {type Field, type RawItem, statedOf} from './raw.js';
import type {SourceReference} from './references.js';
import {PRACTICE_FIELDS} from './shapes/practice-fields.js';
import {entryOf, type Node, textOf} from './tree.js';

/** By kind and type (or '' for all types), what practice states; the first to state a field counts. */
export type Practice = ReadonlyMap<string, ReadonlyMap<string, Field>>;

/** The practice of a shop. */
export function practiceOf(shop: BookFile, sources: SourceReference[]): Practice {
  const list = entryOf(shop.tree, 'practice')?.value;
  const stated = new Map<string, Map<string, Field>>();
  for (const node of list?.type === 'list' ? list.items : []) {
    const every = textOf(entryOf(node, 'every')?.value);
    if (every === undefined) continue;
    const slot = slotOf(every, textOf(entryOf(node, 'type')?.value));
    const fields = stated.get(slot) ?? new Map<string, Field>();
    stated.set(slot, fields);
    for (const field of fieldsIn(node, every, shop, sources)) {
      if (!fields.has(field.key)) fields.set(field.key, field);
    }
  }
  return stated;
}

/** No kind and no type holds a line end. */
function slotOf(kind: string, type: string | undefined): string {
  return `${kind}\n${type ?? ''}`;
}

function fieldsIn(node: Node, every: string, shop: BookFile, sources: SourceReference[]): Field[] {
  const is = entryOf(node, 'is')?.value;
  const named = entryOf(node, 'source')?.value;
  const source = textOf(named);
  if (named && source !== undefined) sources.push({id: source, where: named.where});
  const origin = {practice: defined({source}), ...defined({fileSource: shop.fileSource})};
  const known = fieldsOf(every);
  const entries = is?.type === 'map' ? is.entries : [];
  return entries.filter(({key}) => Object.hasOwn(known, key)).map((entry) => ({...entry, ...origin}));
}

function fieldsOf(kind: string): object {
  return Object.entries(PRACTICE_FIELDS).find(([one]) => one === kind)?.[1] ?? {};
}

/** The item with what practice adds to it. A field that the item states otherwise must say why. */
export function withPractice(raw: RawItem, practice: Practice, problems: Problem[]): RawItem {
  const stated = practiceFor(raw, practice);
  if (stated === undefined) return raw;
  const fields = new Map<string, Field>(raw.fields);
  const departed = new Set<string>();
  for (const [key, field] of stated) {
    const own = raw.fields.get(key);
    if (own === undefined) fields.set(key, field);
    else if (!saysSame(own.value, field.value)) {
      departed.add(key);
      if (!isExplained(own.value)) problems.push(departure(raw, own, field));
    }
  }
  for (const key of pointless(raw, fields, departed)) if (!raw.fields.has(key)) fields.delete(key);
  return {...raw, fields};
}

/**
 * The fields that practice states for the item, whether or not the item does: those of its type go before. Undefined
 * where it states none.
 */
function practiceFor(raw: RawItem, practice: Practice): ReadonlyMap<string, Field> | undefined {
  const type = textOf(raw.fields.get('type')?.value);
  const ofAll = practice.get(slotOf(raw.kind, undefined));
  const ofType = type === undefined ? undefined : practice.get(slotOf(raw.kind, type));
  return ofAll && ofType ? new Map([...ofAll, ...ofType]) : (ofType ?? ofAll);
}

/**
 * Fields of practice that mean nothing once the item states another field in its own way: passes to a torque that it
 * does not have, a lubricant for what is dry. Left in, they would contradict what the item says on purpose.
 */
function pointless(
  raw: RawItem,
  fields: ReadonlyMap<string, Field>,
  departed: ReadonlySet<string>,
): readonly string[] {
  if (raw.kind === 'fastener' && departed.has('torque')) return ['passes', 'angle'];
  if (raw.kind === 'fit' && departed.has('by')) return ['using'];
  const assembly = raw.kind === 'surface' ? fields.get('assembly') : undefined;
  const state = assembly && textOf(statedOf(assembly.value)?.value);
  return state === undefined || state === 'lubed' ? [] : ['lubricants'];
}

/** `unknown` departs from nothing, and `none` is asked for its reason whatever practice says. */
function isExplained(value: Node): boolean {
  const stated = statedOf(value);
  // Without a value in it, the form of the field is a problem already.
  if (stated === undefined || stated.value.type === 'empty') return true;
  const said = textOf(stated.value);
  return said === 'unknown' || said === 'none' || textOf(stated.because) !== undefined;
}

function saysSame(one: Node, other: Node): boolean {
  const [a, b] = [statedOf(one)?.value, statedOf(other)?.value];
  const [names, otherNames] = [namesIn(a), namesIn(b)];
  if (names.length !== otherNames.length) return false;
  if (names.every((name, index) => name === otherNames[index])) return true;
  return names.every((name, index) => sameAmount(name, otherNames[index] ?? ''));
}

/** The scalars of a list in one order, for the order of alternatives says nothing. */
function namesIn(node: Node | undefined): string[] {
  return node === undefined
    ? []
    : scalarsOf(node)
        .map((scalar) => scalar.text)
        .sort();
}

function sameAmount(one: string, other: string): boolean {
  if (one === other) return true;
  const [a, b] = [readAmount(one), readAmount(other)];
  return a.ok && b.ok && amountsAgree(a.amount, b.amount);
}

function departure(raw: RawItem, own: Field, practice: Field): Problem {
  return {
    name: 'spec-contradiction',
    where: (statedOf(own.value)?.value ?? own.value).where,
    says: `${own.key} of ${raw.id} departs from practice without saying why`,
    hint: `write ${own.key}: {value: …, because: …}`,
    item: raw.id,
    related: [{where: practice.value.where, says: 'practice says otherwise here'}],
  };
}
