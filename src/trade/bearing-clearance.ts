/** Clearance of plain bearings, place by place, from readings of journal, bore and shell; and the worst place. */
import {compare, highOf, lowOf, si} from '../quantity/convert.js';
import type {Amount, Quantity} from '../quantity/model.js';
import {lengthLike} from './result.js';
import {type Diameters, type Form, formOf} from './roundness.js';
import {type Named, notOf, type Refused, refused, type Worked} from './worked.js';

export interface BearingPlace {
  readonly place: string;
  readonly journal: Diameters;
  /** Of the bearing as fitted; of the bare housing where `walls` says what goes into it. */
  readonly bore: Diameters;
  /** Wall of the upper and the lower shell at the crown; of one, where both halves are taken to be alike. */
  readonly walls?: readonly Quantity[];
}

export interface PlaceClearance {
  readonly place: string;
  /** Smallest bore less largest journal. */
  readonly least: Quantity;
  /** Largest bore less smallest journal. */
  readonly most: Quantity;
  readonly journal: Form;
  readonly bore: Form;
  /** How far unlike walls move the bearing's middle from that of the housing. */
  readonly eccentricity?: Quantity;
  readonly verdict?: 'in' | 'tight' | 'loose' | 'both';
}

export interface BearingClearance {
  readonly places: readonly PlaceClearance[];
  readonly tightest: string;
  readonly loosest: string;
  /** With limits the place nearest to them or furthest outside; without, the tightest. */
  readonly worst: string;
  /** Largest step in mean clearance from one place to the next; undefined where there is one place. */
  readonly spread?: Quantity;
}

/**
 * Diametral clearance (lengths over 0; walls smaller than the bore). Exact but for the readings. Measure a split
 * shell 90° from its parting line, where some are relieved. Source: TM 5-3895-370-14&P, pp. 5-272 and 5-283 (smallest
 * bore less journal); TM 5-6115-593-34 (spread between neighbours, 0.001 in at most).
 */
export function bearingClearance(places: readonly BearingPlace[], limits?: Amount): Worked<BearingClearance> {
  const worked: PlaceClearance[] = [];
  for (const place of places) {
    const one = clearanceAt(place, limits);
    if ('ok' in one) return one;
    worked.push(one);
  }
  const [first] = worked;
  if (first === undefined)
    return refused('there is no reading', 'give the journal and the bore of one place at least');
  const tightest = pick(worked, (one, best) => compare(one.least, best.least) < 0);
  const spread = largestStep(worked);
  return {
    ok: true,
    result: {
      places: worked,
      tightest: tightest.place,
      loosest: pick(worked, (one, best) => compare(one.most, best.most) > 0).place,
      worst: limits
        ? pick(worked, (one, best) => margin(one, limits) < margin(best, limits)).place
        : tightest.place,
      ...(spread ? {spread} : {}),
    },
    formula:
      'least = smallest bore − walls − largest journal, most = largest bore − walls − smallest journal',
    inputs: [...places.flatMap(stated), ...(limits ? [{name: 'limits', value: limits}] : [])],
    source: 'TM 5-3895-370-14&P, pp. 5-272 and 5-283 (smallest bearing bore less journal)',
    advisory: 'Read a split shell 90° from its parting line: some are relieved there (TM 55-1905-220-14-4).',
  };
}

function clearanceAt(
  {place, journal, bore, walls = []}: BearingPlace,
  limits?: Amount,
): PlaceClearance | Refused {
  const [inner, outer] = [formOf(journal, named('journal', place)), formOf(bore, named('bore', place))];
  if ('ok' in inner) return inner;
  if ('ok' in outer) return outer;
  const [upper, lower = upper, ...more] = walls;
  const refusal = notOf('length', {'the upper wall': upper, 'the lower wall': lower});
  if (refusal) return refusal;
  if (more.length > 0)
    return refused('a bearing has two shells', 'give the wall of the upper and of the lower one');
  const taken = (upper ? si(upper) : 0) + (lower ? si(lower) : 0);
  const [least, most] = [si(outer.smallest) - taken, si(outer.largest) - taken];
  if (least <= 0)
    return refused(
      `the shells at ${place || 'the bearing'} fill the whole bore`,
      'check the walls and their unit',
    );
  const all: [Quantity, ...(Quantity | undefined)[]] = [outer.smallest, inner.smallest, upper, lower];
  const clearance = {
    least: lengthLike(least - si(inner.largest), all),
    most: lengthLike(most - si(inner.smallest), all),
  };
  return {
    place,
    ...clearance,
    journal: inner,
    bore: outer,
    ...(upper && lower ? {eccentricity: lengthLike(Math.abs(si(upper) - si(lower)) / 2, all)} : {}),
    ...(limits ? {verdict: verdictOf(clearance, limits)} : {}),
  };
}

type Span = Pick<PlaceClearance, 'least' | 'most'>;

function verdictOf({least, most}: Span, limits: Amount): 'in' | 'tight' | 'loose' | 'both' {
  const [low, high] = [lowOf(limits), highOf(limits)];
  const tight = low !== undefined && compare(least, low) < 0;
  const loose = high !== undefined && compare(most, high) > 0;
  if (tight && loose) return 'both';
  return tight ? 'tight' : loose ? 'loose' : 'in';
}

/** In metres: how far inside its nearer limit the place lies, negative outside. */
function margin({least, most}: Span, limits: Amount): number {
  const [low, high] = [lowOf(limits), highOf(limits)];
  return Math.min(low ? si(least) - si(low) : Infinity, high ? si(high) - si(most) : Infinity);
}

/** The one that no other beats; the first of equals. */
function pick(
  places: readonly PlaceClearance[],
  beats: (one: PlaceClearance, best: PlaceClearance) => boolean,
): PlaceClearance {
  return places.reduce((best, one) => (beats(one, best) ? one : best));
}

function largestStep(places: readonly PlaceClearance[]): Quantity | undefined {
  const means = places.map(({least, most}) => (si(least) + si(most)) / 2);
  const steps = means.slice(1).map((mean, index) => Math.abs(mean - (means[index] ?? mean)));
  const [first] = places;
  return first && steps.length > 0 ? lengthLike(Math.max(...steps), [first.least]) : undefined;
}

function named(what: string, place: string): string {
  return place ? `the ${what} at ${place}` : `the ${what}`;
}

function stated({place, journal, bore, walls = []}: BearingPlace): Named[] {
  const readings: [string, readonly Quantity[]][] = [
    ['journal', journal.flat()],
    ['bore', bore.flat()],
    ['wall', walls],
  ];
  return readings.flatMap(([what, list]) =>
    list.map((value) => ({name: place ? `${what} ${place}` : what, value})),
  );
}
