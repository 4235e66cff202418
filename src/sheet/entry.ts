/** What each tag adds to the row of its step: facts, and the boxes, blanks and lines that go with its verb. */
import type {Step, Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import type {Verb} from '../procedure/verbs.js';
import type {Amount} from '../quantity/model.js';
import {specifiedAmount} from './clauses.js';
import {type Context, nameOf, placesOfUse, spaced, subjectOf, type Use, usesOf} from './context.js';
import {placesDrawing} from './drawing.js';
import {factsOf} from './facts.js';
import type {Blanks, Entry} from './model.js';
import {tighteningBlanks} from './tightening.js';
import {printed, readingUnit} from './value.js';
import {wireDrawing} from './wire.js';

/** Verbs that speak of the step itself: they show in the row, not as entries of their own. */
const STEP_VERBS: ReadonlySet<Verb> = new Set(['witness', 'hazard', 'step', 'only', 'if', 'repeat', 'waive']);

/** Verbs for which a box a place is drawn where there are several: one forgotten place is easily missed. */
const TICKED_BY_PLACE: ReadonlySet<Verb> = new Set([
  'clean',
  'inspect',
  'lay',
  'lube',
  'seal',
  'alter',
  'renew',
  'install',
  'remove',
  'loosen',
  'lock',
  'check',
]);

/** The entries of a step, one a target, leaving out those that would only say again what the prose says. */
export function entriesOf(step: Step, context: Context): Entry[] {
  return usesOf(step, context)
    .filter((use) => !STEP_VERBS.has(use.tag.verb))
    .map((use) => withNote(entryOf(use, step, context), use, step, context))
    .filter((entry) => entry.facts.length > 0 || entry.blanks !== undefined || entry.drawing !== undefined);
}

function entryOf(use: Use, step: Step, context: Context): Entry {
  const {verb} = use.tag;
  const blanks = blanksOf(use, step, context);
  const showsPlaces = blanks?.type === 'ticks' || (blanks?.type === 'readings' && blanks.labels.length > 1);
  return {
    verb,
    title: context.words.verbs[verb],
    subject: showsPlaces ? nameOf(use.target.id, context) : subjectOf(use, context),
    // Limits stand at the blanks themselves.
    facts: factsOf(use, context, blanks?.type === 'readings' ? 'within' : undefined),
    ...(blanks === undefined ? {} : {blanks}),
    ...drawnWith(use, context),
  };
}

/** Runs of wire, and the places of gauging strips where there are several. */
function drawnWith(use: Use, context: Context): Pick<Entry, 'drawing'> {
  const wire = wireDrawing(use, context);
  if (wire !== undefined) return {drawing: wire};
  const places = placesOfUse(use);
  if (use.tag.verb !== 'lay' || places.length < 2) return {};
  return {drawing: placesDrawing('strips', places.map(spaced))};
}

/** What the shop has to say of an item, where the procedure first comes to it. */
function withNote(entry: Entry, {item, tag}: Use, step: Step, {words, firstSteps}: Context): Entry {
  const first = firstSteps.get(item?.id ?? '') === step.index && tagNaming(item?.id, step) === tag;
  if (item?.note === undefined || !first) return entry;
  return {...entry, facts: [...entry.facts, {label: words.note, text: item.note}]};
}

function tagNaming(id: string | undefined, step: Step): Tag | undefined {
  return step.tags.find(({targets}) => targets.some((target) => target.id === id));
}

function blanksOf(use: Use, step: Step, context: Context): Blanks | undefined {
  const {verb} = use.tag;
  if (verb === 'torque') return tighteningBlanks(use, context);
  if (verb === 'measure') return readings(use, step, context);
  if (verb === 'check' && limitsOf(use, context) !== undefined) return readings(use, step, context);
  if (verb === 'record') return {type: 'lines', labels: placeLabels(use)};
  if (verb === 'cure') return {type: 'lines', labels: [context.words.started, context.words.finished]};
  const places = placesOfUse(use);
  if (!TICKED_BY_PLACE.has(verb) || places.length < 2) return undefined;
  return {type: 'ticks', labels: places.map(spaced)};
}

function readings(use: Use, step: Step, context: Context): Blanks {
  const limits = limitsOf(use, context);
  const {words} = context;
  return {
    type: 'readings',
    unit: typeof limits === 'object' ? readingUnit(limits, context) : '',
    ...(limits === undefined
      ? {}
      : {limits: typeof limits === 'string' ? {text: words.unknown} : printed(limits, context)}),
    labels: placeLabels(use),
    again: context.looped.has(step.index),
  };
}

/** Limits as stated, else as specified; a word where the shop does not know them. */
function limitsOf(use: Use, context: Context): Amount | string | undefined {
  const stated = clauseOf(use.tag, 'within')?.value;
  return stated?.type === 'amount' ? stated.amount : specifiedAmount(use, 'within', context.spec);
}

function placeLabels(use: Use): readonly string[] {
  const places = placesOfUse(use);
  return places.length === 0 ? [''] : places.map(spaced);
}
