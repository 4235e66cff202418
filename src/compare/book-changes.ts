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
      piece('weakened', `bar on ${key}`, 'bar', 'lifted', [bar.where, `because ${bar.because}`], undefined),
    ),
    ...come.map(([key, bar]) =>
      piece('strengthened', `bar on ${key}`, 'bar', 'set', undefined, [bar.where, `because ${bar.because}`]),
    ),
    ...kept.map(({key, bar, other}) =>
      piece(
        'reworded',
        `bar on ${key}`,
        'bar',
        'its reason is worded anew',
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
        effect,
        `severity of ${name}`,
        'severity',
        `${was}, now ${is}`,
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
        piece('weakened', `source ${id}`, 'source', 'no longer listed', [where, title], undefined),
      ),
    ...come
      .filter(({id}) => !same.has(id))
      .map(({id, title, where}) =>
        piece('strengthened', `source ${id}`, 'source', 'listed', undefined, [where, title]),
      ),
    ...reworded.map(({one, other}) =>
      piece(
        'reworded',
        `source ${one.id}`,
        'source',
        'its title is worded anew',
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
      .map((one) => piece('changed', named(one), 'build', 'no longer in the build', head(one), undefined)),
    ...now.book.procedures
      .filter((one) => !taken.has(one))
      .map((one) => piece('changed', named(one), 'build', 'new in the build', undefined, head(one))),
    ...kept.flatMap(([old, fresh]) => [
      ...(baseName(old.source.file) === baseName(fresh.source.file)
        ? []
        : [
            piece(
              'reworded',
              named(fresh),
              'file',
              `called ${baseName(old.source.file)} before`,
              head(old),
              head(fresh),
            ),
          ]),
      ...frontChanges(old, fresh).map(([field, was, is]) =>
        piece(
          field === 'approved' ? 'changed' : 'reworded',
          named(fresh),
          field,
          `${field} ${was ?? 'none'}, now ${is ?? 'none'}`,
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
  const fields: [string, string, string, Effect][] = [
    ['engine id', old.engine.id, fresh.engine.id, 'changed'],
    ['engine name', old.engine.name, fresh.engine.name, 'reworded'],
    ['engine note', old.engine.note ?? 'none', fresh.engine.note ?? 'none', 'reworded'],
    ['shop name', old.shop.name, fresh.shop.name, 'reworded'],
    ['paper', old.shop.paper, fresh.shop.paper, 'reworded'],
    ['language of the sheets', old.shop.language, fresh.shop.language, 'reworded'],
    ['units printed first', old.shop.units, fresh.shop.units, 'reworded'],
    ['options', [...old.options.keys()].join(', '), [...fresh.options.keys()].join(', '), 'changed'],
  ];
  return fields.flatMap(([field, was, is, effect]) =>
    was === is
      ? []
      : [
          piece(
            effect,
            field,
            field,
            `${was}, now ${is}`,
            [old.engine.where, field],
            [fresh.engine.where, field],
          ),
        ],
  );
}

function piece(
  effect: Effect,
  subject: string,
  aspect: string,
  says: string,
  before: readonly [Where, string] | undefined,
  now: readonly [Where, string] | undefined,
): Piece {
  const at = (one: readonly [Where, string] | undefined) =>
    one === undefined ? [] : [{where: one[0], says: one[1]}];
  return {effect, subject, aspect, says, before: at(before), now: at(now)};
}
