/** The parts that some steps fit, and those of them that are new every time. */
import type {Fastener, Part} from '../spec/model.js';
import {type Naming, type PlacedStep, spaced, type Use, usesOf} from './context.js';
import {fittedAs} from './job-facts.js';
import type {Before, PartLine} from './model.js';

/** Apart, because those that are new every time have to be ordered before the engine is opened. */
export function partLists(steps: readonly PlacedStep[], context: Naming): Pick<Before, 'parts' | 'newParts'> {
  const found = new Map<string, Found>();
  for (const {step, at} of steps) {
    for (const use of usesOf(step, context)) note(use, at, found);
  }
  const all = [...found.values()];
  return {
    parts: all.filter((one) => !one.fresh).map((one) => partLine(one, context)),
    newParts: all.filter((one) => one.fresh).map((one) => partLine(one, context)),
  };
}

interface Found {
  readonly item: Part | Fastener;
  fresh: boolean;
  /** Every place of the item, once a tag speaks for all of them. */
  readonly places: Set<string>;
  readonly steps: Set<string>;
}

function note(use: Use, step: string, found: Map<string, Found>): void {
  const {item, tag} = use;
  const fitted = item?.kind === 'part' && !item.given && (tag.verb === 'install' || tag.verb === 'renew');
  const fastened =
    item?.kind === 'fastener' && (tag.verb === 'renew' || (item.singleUse && tag.verb === 'torque'));
  if (!fitted && !fastened) return;
  const known = found.get(item.id) ?? {item, fresh: item.singleUse, places: new Set(), steps: new Set()};
  found.set(item.id, known);
  if (tag.verb === 'renew') known.fresh = true;
  for (const place of placesOrAll(use)) known.places.add(place);
  known.steps.add(step);
}

/** The places that a use speaks for; '' for an item that has none. */
export function placesOrAll(use: Use): readonly string[] {
  const named = use.target.places.map((place) => place.name);
  if (named.length > 0) return named;
  const at = use.item?.at ?? [];
  return at.length > 0 ? at : [''];
}

function partLine({item, places, steps}: Found, {job, words}: Naming): PartLine {
  const whole = item.kind === 'fastener' ? item.count : item.quantity;
  const fitted = job && item.kind === 'part' ? fittedAs(item, job, words) : undefined;
  const temporary = item.kind === 'part' && item.temporary ? words.temporary.toLowerCase() : undefined;
  const said = [fitted, temporary].filter((one) => one !== undefined);
  return {
    name: said.length === 0 ? item.name : `${item.name} (${said.join('; ')})`,
    quantity: quantityFor(whole, places.size, item.at.length),
    hazards: item.kind === 'part' ? item.hazards.map(({value}) => spaced(value)) : [],
    steps: [...steps],
  };
}

/** The share of the whole set that goes to these places; a set given as 1 in several places is one a place. */
export function quantityFor(whole: number, places: number, at: number): number {
  if (at === 0) return whole;
  return whole === 1 ? places : Math.ceil((whole * places) / at);
}
