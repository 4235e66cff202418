/** Two ways through the build come together: what of a fact may be counted on, whichever of them was taken. */
import type {Fact, FactKind} from './facts.js';
import type {Found} from './found.js';

/**
 * The weaker of a fact on two ways, with the faults of both: what holds afterwards is what holds on both. Where the
 * other way takes nothing from it, it is the same object as before.
 */
export function meetFacts(here: Fact, there: Fact): Fact {
  if (!here.holds) return here;
  if (!there.holds) return there;
  const weaker = ADDS_UP.has(here.kind) ? doneOnBoth(here, there) : lessTight(here, there);
  const faults = union(here.faults, there.faults);
  return weaker === here && faults === here.faults ? here : {...weaker, ...(faults && {faults})};
}

function lessTight(here: Fact, there: Fact): Fact {
  return here.detail?.final === true && there.detail?.final !== true ? there : here;
}

/** Facts to which one action adds to what others did: only what was done on both ways is done. */
const ADDS_UP: ReadonlySet<FactKind | undefined> = new Set(['locked', 'altered'] as const);

function doneOnBoth(here: Fact, there: Fact): Fact {
  const {ids: done = [], lacks: lacking = []} = here.detail ?? {};
  const ids = done.filter((id) => there.detail?.ids?.includes(id));
  const lacks = [...new Set([...lacking, ...(there.detail?.lacks ?? [])])];
  if (ids.length === done.length && lacks.length === lacking.length) return here;
  return {...here, detail: lacks.length > 0 ? {ids, lacks} : {ids}};
}

function union(here: readonly Found[] | undefined, there: readonly Found[] | undefined) {
  const added = there?.filter((found) => !here?.includes(found)) ?? [];
  return added.length === 0 ? here : [...(here ?? []), ...added];
}
