/** Two ways through the build come together: what of a fact may be counted on, whichever of them was taken. */
import type {Detail, Fact, FactKind} from './facts.js';
import type {Found} from './found.js';

/** The weaker of a fact on two ways, with the faults of both: what holds afterwards is what holds on both. */
export function meetFacts(here: Fact, there: Fact): Fact {
  if (!here.holds) return here;
  if (!there.holds) return there;
  const faults = union(here.faults, there.faults);
  const weaker = here.detail?.final === true && there.detail?.final !== true ? there : here;
  const detail = ADDS_UP.has(here.kind) ? meetDetails(here.detail, there.detail) : weaker.detail;
  const same = faults === here.faults && weaker === here && detail === here.detail;
  return same ? here : {...weaker, ...(detail && {detail}), ...(faults && {faults})};
}

/** Facts to which one action adds to what others did: only what was done on both ways is done. */
const ADDS_UP: ReadonlySet<FactKind | undefined> = new Set(['locked', 'altered'] as const);

function meetDetails(here: Detail | undefined, there: Detail | undefined): Detail | undefined {
  const ids = here?.ids?.filter((id) => there?.ids?.includes(id)) ?? [];
  const lacks = [...new Set([...(here?.lacks ?? []), ...(there?.lacks ?? [])])];
  if (ids.length === (here?.ids ?? []).length && lacks.length === (here?.lacks ?? []).length) return here;
  return {ids, ...(lacks.length > 0 && {lacks})};
}

function union(here: readonly Found[] | undefined, there: readonly Found[] | undefined) {
  const added = there?.filter((found) => !here?.includes(found)) ?? [];
  return added.length === 0 ? here : [...(here ?? []), ...added];
}

/** Whether two states of a fact are one to all who look at it: holding, final, faulty and lacking alike. */
export function sameStanding(a: Fact, b: Fact): boolean {
  const sameDetail = !ADDS_UP.has(a.kind) || a.detail === b.detail;
  return a.holds === b.holds && a.detail?.final === b.detail?.final && a.faults === b.faults && sameDetail;
}
