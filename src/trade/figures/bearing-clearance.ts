/** Figure: clearance of plain bearings, place by place. */
import type {Quantity} from '../../quantity/model.js';
import {
  type BearingClearance,
  type BearingPlace,
  bearingClearance,
  type PlaceClearance,
} from '../bearing-clearance.js';
import {figure} from '../figure.js';
import {amount, list, optional, type Read, readList, repeated, text} from '../figure-options.js';
import type {Diameters} from '../roundness.js';
import {mapped, type Named, type Refused, refused} from '../worked.js';

export const bearingClearanceFigure = figure({
  name: 'bearing-clearance',
  says: 'clearance of plain bearings from journal, bore and shell readings, with taper and out-of-round',
  options: {
    journal: repeated(
      readings('diameters of a journal by place', 'front: 2.4992, 2.4991; 2.4990, 2.4990 in'),
    ),
    bore: repeated(
      readings(
        'diameters of a bearing as fitted, or of the bare housing with --walls',
        'front: 2.5013, 2.5014 in',
      ),
    ),
    walls: optional(
      list('length', 'walls of the upper and lower shell, the same at all places', '0.0767, 0.0765 in'),
    ),
    limits: optional(amount('length', 'limits of the clearance', '0.0015–0.0030 in')),
  },
  shows: ['limits'],
  work: ({journal, bore, walls, limits}) => {
    const places = placesOf(journal, bore, walls);
    return 'ok' in places ? places : mapped(bearingClearance(places, limits), tell);
  },
});

interface Placed {
  readonly place: string;
  readonly diameters: Diameters;
}

/** A place and a colon, then rows along the length apart by semicolons, in each the directions apart by commas. */
function readings(says: string, example: string) {
  return text('PLACE: readings apart by commas, rows along it by semicolons', says, example, readPlaced);
}

function readPlaced(given: string): Read<Placed> {
  const colon = given.indexOf(':');
  const rows = given.slice(colon + 1).split(';');
  // The unit may stand at the end of the last row only.
  const last = given.slice(Math.max(given.lastIndexOf(','), given.lastIndexOf(';')) + 1);
  const unit = last.slice(Math.max(last.search(/[^\d.:\s]/), 0));
  const diameters: (readonly Quantity[])[] = [];
  for (const row of rows) {
    const read = readList(/[A-Za-zµ"]/.test(row) ? row : `${row} ${unit}`, 'length');
    if (!read.ok) return read;
    diameters.push(read.value);
  }
  return {ok: true, value: {place: given.slice(0, Math.max(colon, 0)).trim(), diameters}};
}

function placesOf(
  journals: readonly Placed[],
  bores: readonly Placed[],
  walls: readonly Quantity[] | undefined,
): readonly BearingPlace[] | Refused {
  const places: BearingPlace[] = [];
  for (const {place, diameters} of journals) {
    const bore = bores.find((one) => one.place === place);
    if (bore === undefined)
      return refused(
        `no bore was read at ${place || 'the bearing'}`,
        'give --journal and --bore for the same places',
      );
    places.push({place, journal: diameters, bore: bore.diameters, ...(walls ? {walls} : {})});
  }
  const alone = bores.find(({place}) => !journals.some((one) => one.place === place));
  if (alone)
    return refused(
      `no journal was read at ${alone.place || 'the bearing'}`,
      'give --journal and --bore for the same places',
    );
  return places;
}

function tell({places, worst, spread}: BearingClearance): readonly Named[] {
  return [
    ...places.flatMap(tellPlace),
    ...(places.length > 1 ? [{name: 'worst place', value: worst}] : []),
    ...(spread ? [{name: 'largest step between neighbours (0.001 in at most)', value: spread}] : []),
  ];
}

const VERDICT = {
  in: 'within limits',
  tight: 'TOO TIGHT',
  loose: 'TOO LOOSE',
  both: 'too tight and too loose',
} as const;

function tellPlace({
  place,
  least,
  most,
  journal,
  bore,
  eccentricity,
  verdict,
}: PlaceClearance): readonly Named[] {
  const at = (name: string) => (place ? `${place}, ${name}` : name);
  const parts: [string, Quantity | undefined][] = [
    ['journal taper', journal.taper],
    ['journal out-of-round', journal.outOfRound],
    ['bore taper', bore.taper],
    ['bore out-of-round', bore.outOfRound],
    ['eccentricity', eccentricity],
  ];
  return [
    {name: at('clearance'), value: {form: 'range', low: least, high: most}},
    ...(verdict ? [{name: at('verdict'), value: VERDICT[verdict]}] : []),
    ...parts.flatMap(([name, value]) => (value ? [{name: at(name), value}] : [])),
  ];
}
