/**
 * Items under a new name of which a field was changed too: known again by the likeness of all their fields, of the
 * steps that deal with them and of their names, the closest first. A rename must not hide what was taken out with it.
 */
import type {Book} from '../build/book.js';
import type {Item} from '../spec/model.js';
import {demandsOf} from './demands.js';
import {stemOf} from './field-words.js';
import {dice, wordsOf} from './likeness.js';
import {letterPairs, withoutNames} from './names.js';
import {valueSays} from './values.js';

/** From old ids to new ones, those of `known` left out. */
export function likelyRenames(
  before: Pick<Book, 'spec' | 'procedures'>,
  now: Book,
  known: ReadonlyMap<string, string>,
): Map<string, string> {
  const taken = new Set(known.values());
  const gone = [...before.spec.items.values()].filter(({id}) => !now.spec.items.has(id) && !known.has(id));
  const come = [...now.spec.items.values()].filter(({id}) => !before.spec.items.has(id) && !taken.has(id));
  if (gone.length * come.length === 0 || gone.length * come.length > MOST_PAIRS) return new Map();
  const absent = new Set([...gone, ...come].map(({id}) => id));
  const [old, fresh] = [traitsOf(before, gone, absent), traitsOf(now, come, absent)];
  const pairs = old.flatMap((one) => fresh.map((other) => ({one, other, worth: worthOf(one, other)})));
  pairs.sort((a, b) => b.worth - a.worth);
  const found = new Map<string, string>();
  const used = new Set<string>();
  for (const {one, other, worth} of pairs) {
    if (worth < ALIKE || found.has(one.item.id) || used.has(other.item.id)) continue;
    found.set(one.item.id, other.item.id);
    used.add(other.item.id);
  }
  return found;
}

/** Where so much is called otherwise, whole books were exchanged, and no pair would be sure. */
const MOST_PAIRS = 100_000;

/** Items less alike than this are one that went and one that came. */
const ALIKE = 0.6;

/** What an item is known by. */
interface Traits {
  readonly item: Item;
  readonly fields: readonly string[];
  /** Verbs done to it and the words of the steps that do them. */
  readonly steps: readonly string[];
  readonly name: readonly string[];
}

function traitsOf(
  {procedures}: Pick<Book, 'procedures'>,
  items: readonly Item[],
  absent: ReadonlySet<string>,
): Traits[] {
  const steps = new Map<string, string[]>(items.map(({id}) => [id, []]));
  for (const {text, tags} of procedures.flatMap((procedure) => procedure.steps)) {
    for (const {verb, targets} of tags) {
      for (const {id, places} of targets)
        steps.get(id)?.push(`${verb}:`, ...places.map(({name}) => `[${name}]`), ...wordsOf(text));
    }
  }
  return items.map((item) => ({
    item,
    fields: [...item.at.map((place) => `at ${place}`), ...fieldsOf(item, absent)],
    steps: steps.get(item.id) ?? [],
    name: letterPairs(item.id),
  }));
}

/** Fields with their values, and once more without: a field whose value changed is still that field. */
function fieldsOf(item: Item, absent: ReadonlySet<string>): string[] {
  return demandsOf(item).flatMap((demand) => {
    if (demand.value.type === 'text') return wordsOf(valueSays(demand.value));
    const stem = stemOf(demand);
    const about = demand.about === undefined || absent.has(demand.about) ? '' : demand.about;
    return [stem, `${stem} ${about}=${valueSays(withoutNames(demand.value, absent))}`];
  });
}

function worthOf(one: Traits, other: Traits): number {
  if (one.item.kind !== other.item.kind) return 0;
  const [fields, name] = [dice(one.fields, other.fields), dice(one.name, other.name)];
  if (one.steps.length + other.steps.length === 0) return 0.7 * fields + 0.3 * name;
  return 0.45 * fields + 0.35 * dice(one.steps, other.steps) + 0.2 * name;
}
