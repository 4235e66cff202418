/** Changes of what stands around items and steps: bars, severities, procedures, their front matter, the shop. */
import {baseName} from '../build/tell.js';
import {FINDINGS} from '../findings/registry.js';
import type {Front, Procedure} from '../procedure/model.js';
import type {Bar, Severity, Specification} from '../spec/model.js';
import type {Where} from '../text/source.js';
import type {Judge, Sides} from './judge.js';
import type {Effect, Piece} from './model.js';
import {idNow} from './renames.js';

export const bookChanges: Judge = (sides) => [
  ...barChanges(sides),
  ...severityChanges(sides),
  ...sourceChanges(sides),
  ...procedureChanges(sides),
  ...headChanges(sides),
];

function barChanges({before, now, renames}: Sides): Piece[] {
  const old = barsByPair(before.book.spec, (id) => idNow(renames, id));
  const fresh = barsByPair(now.book.spec, (id) => id);
  const gone = [...old].filter(([key]) => !fresh.has(key));
  const come = [...fresh].filter(([key]) => !old.has(key));
  const kept = [...old].flatMap(([key, bar]) => {
    const other = fresh.get(key);
    return other === undefined || other.because === bar.because ? [] : [{key, bar, other}];
  });
  return [
    ...gone.map(([key, bar]) =>
      piece(
        {effect: 'weakened', subject: `bar on ${key}`, aspect: 'bar', says: 'lifted'},
        [bar.where, `because ${bar.because}`],
        undefined,
      ),
    ),
    ...come.map(([key, bar]) =>
      piece({effect: 'strengthened', subject: `bar on ${key}`, aspect: 'bar', says: 'set'}, undefined, [
        bar.where,
        `because ${bar.because}`,
      ]),
    ),
    ...kept.map(({key, bar, other}) =>
      piece(
        {effect: 'reworded', subject: `bar on ${key}`, aspect: 'bar', says: 'its reason is worded anew'},
        [bar.where, bar.because],
        [other.where, other.because],
      ),
    ),
  ];
}

/** One entry for each thing barred and each item that it is barred from. */
function barsByPair({bars}: Specification, rename: (id: string) => string): Map<string, Bar> {
  return new Map(
    bars.flatMap((bar) =>
      bar.what.flatMap((what) => {
        const on = bar.on.length === 0 ? ['the whole engine'] : bar.on.map(({value}) => rename(value));
        return on.map((item): [string, Bar] => [`${rename(what.value)} for ${item}`, bar]);
      }),
    ),
  );
}

const WEIGHT: Readonly<Record<Severity, number>> = {error: 3, warning: 2, information: 1, off: 0};

function severityChanges({before, now}: Sides): Piece[] {
  return FINDINGS.flatMap(({name, severity}) => {
    const [old, fresh] = [before.book.spec.shop.severity.get(name), now.book.spec.shop.severity.get(name)];
    const [was, is] = [old?.value ?? severity, fresh?.value ?? severity];
    if (was === is) return [];
    const effect = WEIGHT[is] < WEIGHT[was] ? 'weakened' : 'strengthened';
    const [a, b] = [old?.where ?? before.book.spec.shop.where, fresh?.where ?? now.book.spec.shop.where];
    return [
      piece(
        {effect, subject: `severity of ${name}`, aspect: 'severity', says: `${was}, now ${is}`},
        [a, 'severity in the shop'],
        [b, 'severity in the shop'],
      ),
    ];
  });
}

/** A source by its title: under another id it is the same one. */
function sourceChanges({before, now}: Sides): Piece[] {
  const byTitle = ({book}: Sides['now']) =>
    new Map([...book.spec.sources.values()].map((source) => [source.title, source]));
  const [old, fresh] = [byTitle(before), byTitle(now)];
  const gone = [...old.values()].filter(({title}) => !fresh.has(title));
  const come = [...fresh.values()].filter(({title}) => !old.has(title));
  // One that goes by another title under its old id is worded anew.
  const reworded = gone.flatMap((one) => {
    const other = come.find(({id}) => id === one.id);
    return other === undefined ? [] : [{one, other}];
  });
  const same = new Set(reworded.map(({one}) => one.id));
  return [
    ...gone
      .filter(({id}) => !same.has(id))
      .map(({id, title, where}) =>
        piece(
          {effect: 'weakened', subject: `source ${id}`, aspect: 'source', says: 'no longer listed'},
          [where, title],
          undefined,
        ),
      ),
    ...come
      .filter(({id}) => !same.has(id))
      .map(({id, title, where}) =>
        piece(
          {effect: 'strengthened', subject: `source ${id}`, aspect: 'source', says: 'listed'},
          undefined,
          [where, title],
        ),
      ),
    ...reworded.map(({one, other}) =>
      piece(
        {effect: 'reworded', subject: `source ${one.id}`, aspect: 'source', says: 'its title is worded anew'},
        [one.where, one.title],
        [other.where, other.title],
      ),
    ),
  ];
}

function procedureChanges({before, now, steps}: Sides): Piece[] {
  const kept = [...steps.procedures];
  const taken = new Set(kept.map(([, fresh]) => fresh));
  const head = ({source, front}: Procedure): [Where, string] => [
    {file: source.file, span: front.span},
    front.title,
  ];
  return [
    ...before.book.procedures
      .filter((one) => !steps.procedures.has(one))
      .map((one) =>
        piece(
          {effect: 'changed', subject: named(one), aspect: 'build', says: 'no longer in the build'},
          head(one),
          undefined,
        ),
      ),
    ...now.book.procedures
      .filter((one) => !taken.has(one))
      .map((one) =>
        piece(
          {effect: 'changed', subject: named(one), aspect: 'build', says: 'new in the build'},
          undefined,
          head(one),
        ),
      ),
    ...kept.flatMap(([old, fresh]) => [
      ...(baseName(old.source.file) === baseName(fresh.source.file)
        ? []
        : [
            piece(
              {
                effect: 'reworded',
                subject: named(fresh),
                aspect: 'file',
                says: `called ${baseName(old.source.file)} before`,
              },
              head(old),
              head(fresh),
            ),
          ]),
      ...frontChanges(old, fresh).map(([field, was, is]) =>
        piece(
          {
            effect: field === 'approved' ? 'changed' : 'reworded',
            subject: named(fresh),
            aspect: field,
            says: `${field} ${was ?? 'none'}, now ${is ?? 'none'}`,
          },
          head(old),
          head(fresh),
        ),
      ),
    ]),
  ];
}

function named({source}: Procedure): string {
  return `procedure ${baseName(source.file)}`;
}

type FrontChange = [field: keyof Front, was: string | undefined, is: string | undefined];

function frontChanges({front: old}: Procedure, {front: fresh}: Procedure): FrontChange[] {
  const fields = ['title', 'revision', 'date', 'author', 'approved'] as const;
  return fields.flatMap((field): FrontChange[] =>
    old[field] === fresh[field] ? [] : [[field, old[field], fresh[field]]],
  );
}

/** Names of shop and engine are words; which system is printed first, and on what, is a change of the sheet. */
function headChanges({before, now}: Sides): Piece[] {
  const [old, fresh] = [before.book.spec, now.book.spec];
  const fields: [field: string, of: 'engine' | 'shop', was: string, is: string, effect: Effect][] = [
    ['engine id', 'engine', old.engine.id, fresh.engine.id, 'changed'],
    ['engine name', 'engine', old.engine.name, fresh.engine.name, 'reworded'],
    ['engine note', 'engine', old.engine.note ?? 'none', fresh.engine.note ?? 'none', 'reworded'],
    ['shop name', 'shop', old.shop.name, fresh.shop.name, 'reworded'],
    ['paper', 'shop', old.shop.paper, fresh.shop.paper, 'reworded'],
    ['language of the sheets', 'shop', old.shop.language, fresh.shop.language, 'reworded'],
    ['units printed first', 'shop', old.shop.units, fresh.shop.units, 'reworded'],
    [
      'options',
      'engine',
      [...old.options.keys()].join(', '),
      [...fresh.options.keys()].join(', '),
      'changed',
    ],
  ];
  return fields
    .filter(([, , was, is]) => was !== is)
    .map(([field, of, was, is, effect]) =>
      piece(
        {effect, subject: field, aspect: field, says: `${was}, now ${is}`},
        [old[of].where, field],
        [fresh[of].where, field],
      ),
    );
}

function piece(
  told: Pick<Piece, 'effect' | 'subject' | 'aspect' | 'says'>,
  before: readonly [Where, string] | undefined,
  now: readonly [Where, string] | undefined,
): Piece {
  const at = (one: readonly [Where, string] | undefined) =>
    one === undefined ? [] : [{where: one[0], says: one[1]}];
  return {...told, before: at(before), now: at(now)};
}
