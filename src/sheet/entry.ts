/** What each tag adds to the row of its step: facts, and the boxes, blanks and lines that go with its verb. */
import type {Step, Tag} from '../procedure/model.js';
import {clauseOf} from '../procedure/values.js';
import type {Verb} from '../procedure/verbs.js';
import {convert, decimalStep, highOf, lowOf} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {specifiedAmount} from './clauses.js';
import {type Context, nameOf, placesOfUse, spaced, subjectOf, type Use, usesOf} from './context.js';
import {placesDrawing} from './drawing.js';
import {factsOf} from './facts.js';
import {doubtOf, inFigures} from './gauge-doubt.js';
import {placeKeys} from './keys.js';
import type {Blanks, Entry, ReadingBlanks} from './model.js';
import {tighteningBlanks} from './tightening.js';
import {inWords, printed, readingUnit} from './value.js';
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
  'stripe',
  'check',
]);

/** The entries of a step, one a target, leaving out those that would only say again what the prose says. */
export function entriesOf(step: Step, context: Context): Entry[] {
  return usesOf(step, context)
    .map((use, at) => ({...use, number: at + 1}))
    .filter((use) => !STEP_VERBS.has(use.tag.verb))
    .map((use) => withNote(entryOf(use, step, context), use, step, context))
    .filter((entry) => entry.facts.length > 0 || entry.blanks !== undefined || entry.drawing !== undefined);
}

/** A use with its turn among those of its step, from 1, whether it is printed or not. */
export interface Turn extends Use {
  readonly number: number;
}

function entryOf(use: Turn, step: Step, context: Context): Entry {
  const {verb} = use.tag;
  const blanks = blanksOf(use, step, context);
  const showsPlaces = blanks?.type === 'ticks' || (blanks?.type === 'readings' && blanks.labels.length > 1);
  return {
    verb,
    title: context.words.verbs[verb],
    subject: showsPlaces ? nameOf(use.target.id, context) : subjectOf(use, context),
    facts: factsOf(use, context, elsewhere(blanks, step)),
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

/** Limits stand at the blanks themselves; the text of a step that a job adds is its alteration. */
function elsewhere(blanks: Blanks | undefined, {added}: Step): 'within' | 'by' | undefined {
  if (blanks?.type === 'readings') return 'within';
  return added === undefined ? undefined : 'by';
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

function blanksOf(use: Turn, step: Step, context: Context): Blanks | undefined {
  const {verb} = use.tag;
  if (verb === 'torque') return tighteningBlanks(use, step, context);
  if (verb === 'measure') return readings(use, step, context);
  if (verb === 'check' && limitsOf(use, context) !== undefined) return readings(use, step, context);
  if (verb === 'record') return marks(use, step, context);
  if (verb === 'cure') return cureTimes(use, step, context);
  const places = placesOfUse(use);
  if (!TICKED_BY_PLACE.has(verb) || places.length < 2) return undefined;
  return {type: 'ticks', labels: places.map(spaced), keys: placeKeys(step.number, use.number, places)};
}

function marks(use: Turn, step: Step, {job}: Context): Blanks {
  const places = placesOrOne(use);
  const expected = job?.marks.get(use.target.id)?.value;
  return {
    type: 'lines',
    item: use.target.id,
    labels: places.map(spaced),
    keys: placeKeys(step.number, use.number, places),
    ...(expected === undefined ? {} : {expected}),
  };
}

function cureTimes(use: Turn, step: Step, {words, spec}: Context): Blanks {
  const stated = clauseOf(use.tag, 'for')?.value;
  const time = stated?.type === 'amount' ? stated.amount : specifiedAmount(use, 'for', spec);
  const least = typeof time === 'object' ? (lowOf(time) ?? highOf(time)) : undefined;
  return {
    type: 'lines',
    item: use.target.id,
    labels: [words.started, words.finished],
    keys: placeKeys(step.number, use.number, ['started', 'finished']),
    times: least === undefined ? {} : {minutes: inFigures(convert(least, unit('min')).value)},
  };
}

function readings(use: Turn, step: Step, context: Context): Blanks {
  const limits = limitsOf(use, context);
  const {words} = context;
  const places = placesOrOne(use);
  return {
    type: 'readings',
    item: use.target.id,
    unit: typeof limits === 'object' ? inWords(readingUnit(limits, context).symbol, words) : '',
    ...(limits === undefined
      ? {}
      : {limits: typeof limits === 'string' ? {text: words.unknown} : printed(limits, context)}),
    ...(typeof limits === 'object' ? boundsOf(limits, use, context) : {}),
    labels: places.map(spaced),
    places,
    again: context.looped.has(step.index),
    keys: placeKeys(step.number, use.number, places),
  };
}

/** The keys of the readings that a use asks for; none where it asks for no reading. */
export function readingKeys(use: Turn, step: Step, context: Context): readonly string[] {
  const blanks = blanksOf(use, step, context);
  return blanks?.type === 'readings' ? blanks.keys : [];
}

type Bounds = Pick<ReadingBlanks, 'least' | 'most' | 'figures' | 'doubt' | 'fromNought'>;

/** A single value has no limits that a reading could be judged by. */
function boundsOf(limits: Amount, use: Use, context: Context): Bounds {
  const within = readingUnit(limits, context);
  const judged = limits.form !== 'single';
  const [low, high] = judged ? [lowOf(limits), highOf(limits)] : [];
  const doubt = doubtOf(use, within, context);
  const figures = figuresOf([low, high].filter((end) => end?.unit === within));
  return {
    ...(low === undefined ? {} : {least: inFigures(convert(low, within).value)}),
    ...(high === undefined ? {} : {most: inFigures(convert(high, within).value)}),
    ...(figures === undefined ? {} : {figures}),
    ...(doubt === undefined ? {} : {doubt}),
    ...(isFromNought(low, high) ? {fromNought: true} : {}),
  };
}

/** A length that is bounded above alone is a run-out, a taper or a gap; what may go below nought has two limits. */
function isFromNought(low: Quantity | undefined, high: Quantity | undefined): boolean {
  return low === undefined && high?.unit.dimension === 'length' && high.value >= 0;
}

/** A nought at the end of a limit says how finely it is meant, and is lost in a number. */
function figuresOf(ends: readonly (Quantity | undefined)[]): number | undefined {
  const known = ends.filter((end): end is Quantity => end !== undefined && end.step > 0);
  const stated = Math.min(...known.map(({step}) => step));
  const needed = Math.min(1, ...known.map(({value}) => decimalStep(value)));
  return stated < needed ? Math.round(-Math.log10(stated)) : undefined;
}

/** Limits as stated, else as specified; a word where the shop does not know them. */
export function limitsOf(use: Use, context: Context): Amount | string | undefined {
  const stated = clauseOf(use.tag, 'within')?.value;
  return stated?.type === 'amount' ? stated.amount : specifiedAmount(use, 'within', context.spec);
}

function placesOrOne(use: Use): readonly string[] {
  const places = placesOfUse(use);
  return places.length === 0 ? [''] : places;
}
