/** The before-you-start lists: what the steps of a procedure call for, with the steps that need it. */
import type {Procedure} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import type {Consumable, Item, Tool} from '../spec/model.js';
import {type Named, specifiedIds, statedNames} from './clauses.js';
import {type Context, fullName, type Naming, type PlacedStep, spaced, type Use, usesOf} from './context.js';
import type {Before, ConsumableLine, ToolLine} from './model.js';
import {partLists} from './part-lists.js';
import {placeNames} from './place-names.js';
import {printed, printedReach} from './value.js';

/** What the apprentice lays out before the first step of this procedure. */
export function beforeOf(procedure: Procedure, context: Context): Before {
  const steps = procedure.steps.map((step) => ({step, at: step.number}));
  return {...neededFor(steps, context), places: placeNames(procedure, context)};
}

/** What is laid out for any number of steps. */
export type Needed = Omit<Before, 'places'>;

/** What these steps call for, of one procedure or of a whole book. */
export function neededFor(steps: readonly PlacedStep[], naming: Naming): Needed {
  const needs = [...needsOf(steps, naming).values()];
  return {
    tools: needs.filter((need) => need.tool).map((need) => toolLine(need, naming)),
    consumables: needs.filter((need) => !need.tool).map((need) => consumableLine(need, naming)),
    ...partLists(steps, naming),
  };
}

/** Things of which any one will do. */
export interface Called {
  readonly ids: readonly string[];
  readonly names: readonly string[];
  readonly items: readonly Item[];
  readonly tool: boolean;
}

interface Need extends Called {
  readonly steps: string[];
}

/** The same things called for are one need. */
export function needKey({names}: Pick<Called, 'names'>): string {
  return names.join('\n');
}

function needsOf(steps: readonly PlacedStep[], naming: Naming): Map<string, Need> {
  const needs = new Map<string, Need>();
  const seen = new Map<string, Set<string>>();
  for (const {step, at} of steps) {
    for (const use of usesOf(step, naming)) {
      for (const called of calledFor(use, naming)) {
        const key = needKey(called);
        const known = needs.get(key) ?? {...called, steps: []};
        const places = seen.get(key) ?? new Set();
        needs.set(key, known);
        seen.set(key, places);
        if (!places.has(at)) known.steps.push(at);
        places.add(at);
      }
    }
  }
  return needs;
}

/** What one target of a tag calls for: tools, materials, and what its alterations take. */
export function calledFor(use: Use, context: Naming): Called[] {
  const using = groupsOf(use, 'using').map((group) => needOf(group, 'tool', context));
  const materials = groupsOf(use, 'with').map((group) => needOf(group, 'consumable', context));
  const alterations = [...statedNames(use.tag, 'by').map(({id}) => id), ...specifiedIds(use, 'by')];
  const forAltering = alterations.flatMap((id) => alterationTools(id, context));
  return [...using, ...materials, ...forAltering].filter((need) => need.items.every(listed));
}

/** Each id that the tag states is needed, and each lock; of others that the specification offers, one is. */
function groupsOf(use: Use, word: 'with' | 'using'): Named[][] {
  if (clauseOf(use.tag, word) !== undefined) return statedNames(use.tag, word).map((named) => [named]);
  const specified = specifiedIds(use, word);
  const named = specified.map((id) => ({id, rest: ''}));
  if (use.tag.verb === 'lock') return named.map((one) => [one]);
  return named.length === 0 ? [] : [named];
}

function needOf(group: readonly Named[], kind: 'tool' | 'consumable', context: Naming): Called {
  const items = group.flatMap(({id}) => context.spec.items.get(id) ?? []);
  const first = items[0];
  return {
    ids: group.map(({id}) => id),
    names: group.map((named) => fullName(named, context)),
    items,
    tool: first === undefined ? kind === 'tool' : first.kind === 'tool',
  };
}

function alterationTools(id: string, context: Naming): Called[] {
  const item = context.spec.items.get(id);
  if (item?.kind !== 'alteration') return [];
  return item.using.map(({value}) => needOf([{id: value, rest: ''}], 'tool', context));
}

/** Parts have lists of their own. */
function listed(item: Item): boolean {
  return item.kind === 'tool' || item.kind === 'consumable';
}

function toolLine(need: Need, context: Naming): ToolLine {
  const tools = need.items.filter((item): item is Tool => item.kind === 'tool');
  const only = tools.length === 1 ? tools[0] : undefined;
  const due = tools.flatMap((tool) => tool.due?.value ?? []).sort()[0];
  return {
    names: need.names,
    ...(only?.serial === undefined ? {} : {serial: only.serial}),
    ...(only?.range === undefined ? {} : {range: printedReach(only.range.value, context)}),
    ...(due === undefined ? {} : {due}),
    steps: need.steps,
  };
}

function consumableLine(need: Need, context: Naming): ConsumableLine {
  const items = need.items.filter((item): item is Consumable => item.kind === 'consumable');
  const hazards = new Set(items.flatMap((item) => item.hazards.map(({value}) => spaced(value))));
  const cure = items.length === 1 ? items[0]?.cure : undefined;
  return {
    names: need.names,
    hazards: [...hazards],
    ...(cure === undefined ? {} : {cure: printed(cure.value, context)}),
    steps: need.steps,
  };
}
