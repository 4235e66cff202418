/** The record of a tablet without a browser: any sequence of entries, out and in again, apart and together. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import type {Form} from '../../src/build/form.js';
import {type BuildRecord, RECORD, type SheetRecord} from '../../src/readings/record.js';
import {brokenAt, withEntry} from '../../src/readings/seal.js';
import {formOf} from '../../src/sheet/form.js';
import {recordFile, recordText} from '../../src/tablet/exchange.js';
import {merged} from '../../src/tablet/merge.js';
import {Session} from '../../src/tablet/session.js';
import {isRecord} from '../../src/tablet/shape.js';
import type {Storage} from '../../src/tablet/store.js';
import {firstSheet} from '../help/sheet.js';
import {trialBook} from '../sheet/trial.js';
import {memory} from './memory.js';

const form: Form = formOf(firstSheet(trialBook, {job: '1047'}));

/** A clock that goes on by a second each time that it is asked. */
function clock(start = Date.UTC(2026, 2, 1)): () => Date {
  let at = start;
  return () => {
    at += 1000;
    return new Date(at);
  };
}

function session(storage: Storage | undefined = memory(), start?: number): Session {
  return new Session(form, storage, clock(start));
}

/** What a person may do: any box, any text, any initials. */
const step = fc.record({
  box: fc.constantFrom(...form.boxes),
  value: fc.oneof(
    fc.constantFrom('', 'done', '0.0025', '0.0036', '2,5'),
    fc.string({maxLength: 30, unit: 'binary'}),
  ),
  by: fc.oneof(fc.constantFrom('JM', 'KO', 'RT'), fc.string({minLength: 1, maxLength: 40})),
});
const steps = fc.array(step, {maxLength: 40});

function worked(
  made: readonly {readonly box: Form['boxes'][number]; readonly value: string; readonly by: string}[],
  one = session(),
) {
  for (const {box, value, by} of made) one.add(box, value, by);
  return one;
}

function recordIn(text: string): BuildRecord {
  return RECORD.parse(JSON.parse(text));
}

describe('any sequence of entries', () => {
  test('goes out and comes in the same, in shape and sealed', () => {
    fc.assert(
      fc.property(steps, (made) => {
        const {text} = worked(made).exported();
        expect(recordIn(text).sheets.map(brokenAt)).toEqual([undefined]);
        const other = session();
        expect(other.import(text)).toMatchObject({ok: true, apart: false});
        expect(other.exported().text).toBe(text);
        expect([...other.answers]).toEqual([...worked(made).answers]);
      }),
    );
  });

  test('is there again from the storage', () => {
    fc.assert(
      fc.property(steps, (made) => {
        const storage = memory();
        const {text} = worked(made, session(storage)).exported();
        expect(session(storage).exported().text).toBe(text);
      }),
    );
  });

  test('of which one is changed is found, and not taken in', () => {
    const part = fc.constantFrom('at', 'by', 'box', 'value', 'seal');
    fc.assert(
      fc.property(fc.array(step, {minLength: 1, maxLength: 20}), fc.nat(), part, (made, which, name) => {
        const record = recordIn(worked(made).exported().text);
        const [sheet] = record.sheets;
        const entry = sheet?.entries[which % (sheet.entries.length || 1)];
        fc.pre(entry !== undefined);
        if (entry === undefined) return;
        const other = {
          at: '2026-04-01T00:00:00.000Z',
          by: 'XX',
          box: '1:done',
          value: 'other',
          seal: '0'.repeat(64),
        }[name];
        fc.pre(entry[name] !== other);
        entry[name] = other;
        expect(session().import(recordText(record))).toMatchObject({
          ok: false,
          why: 'broken',
          entry: (which % (sheet?.entries.length ?? 1)) + 1,
        });
      }),
    );
  });

  test('or any text at all, as a file, does no harm', () => {
    const {text} = worked([{box: form.boxes[0] ?? fail(), value: 'done', by: 'JM'}]).exported();
    fc.assert(
      fc.property(
        fc.nat({max: text.length}),
        fc.nat({max: 20}),
        fc.string({maxLength: 10, unit: 'binary'}),
        (at, count, put) => {
          const changed = text.slice(0, at) + put + text.slice(at + count);
          const one = session();
          const done = one.import(changed);
          const harmless = done.ok
            ? recordIn(one.exported().text).sheets.every((sheet) => brokenAt(sheet) === undefined)
            : one.length === 0;
          expect(harmless).toBe(true);
        },
      ),
    );
  });
});

function fail(): never {
  throw new Error('the form has no box');
}

describe('two records of one sheet', () => {
  const pair = fc.tuple(steps, steps, steps).map(([shared, one, other]): [SheetRecord, SheetRecord] => {
    const base = worked(shared).exported().text;
    const go = (made: typeof one, start: number) => {
      const each = session(memory(), start);
      each.import(base);
      const [sheet] = recordIn(worked(made, each).exported().text).sheets;
      return sheet ?? fail();
    };
    // The second clock runs between the seconds of the first, so that their entries mix.
    return [go(one, Date.UTC(2026, 3, 1)), go(other, Date.UTC(2026, 3, 1) + 500)];
  });

  const texts = ({entries}: SheetRecord) => entries.map(({seal, ...entry}) => JSON.stringify(entry));

  test('become the same one from either side, with everything of both, sealed', () => {
    fc.assert(
      fc.property(pair, ([one, other]) => {
        const both = merged(one, other);
        expect(brokenAt(both.sheet)).toBeUndefined();
        expect(texts(both.sheet)).toEqual(texts(merged(other, one).sheet));
        expect(new Set(texts(both.sheet))).toEqual(new Set([...texts(one), ...texts(other)]));
        expect(both.sheet.entries).toHaveLength(one.entries.length + both.taken);
      }),
    );
  });

  test('are one already when they are put together again', () => {
    fc.assert(
      fc.property(pair, ([one, other]) => {
        const both = merged(one, other).sheet;
        expect(merged(both, other).sheet).toEqual(both);
        expect(texts(merged(other, both).sheet)).toEqual(texts(both));
        expect(merged(both, both)).toEqual({sheet: both, taken: 0, apart: false});
      }),
    );
  });

  test('of which one goes on from the other keep their seals', () => {
    const [base] = recordIn(worked([]).exported().text).sheets;
    const one = withEntry(base ?? fail(), {
      at: '2026-03-01T00:00:00Z',
      by: 'JM',
      box: '1:done',
      value: 'done',
    });
    const two = withEntry(one, {at: '2026-03-01T00:00:01Z', by: 'JM', box: '2:done', value: 'done'});
    expect(merged(one, two)).toEqual({sheet: two, taken: 1, apart: false});
    expect(merged(two, one)).toEqual({sheet: two, taken: 0, apart: false});
  });
});

/** Every place of a record, and some that it has not. */
const PLACES = [
  ['record'],
  ['engine'],
  ['job'],
  ['engineNumber'],
  ['sheets'],
  ['more'],
  ['__proto__'],
  ...['procedure', 'title', 'revision', 'fingerprint', 'entries', 'more'].map((key) => ['sheets', 0, key]),
  ...['at', 'by', 'box', 'value', 'seal', 'more'].map((key) => ['sheets', 0, 'entries', 0, key]),
  ['sheets', 0],
  ['sheets', 0, 'entries', 0],
];

/** What may be put there; undefined takes the place out. */
const VALUES: readonly unknown[] = [
  ...[undefined, null, true, 0, 1, 2, '', ' ', 'x', [], {}, [{}], [[]]],
  ...[40, 41, 2000, 2001].map((length) => 'x'.repeat(length)),
  ...['a', 'A', '0', 'g'].map((digit) => digit.repeat(64)),
  'a'.repeat(63),
  '2026-02-29T00:00:00Z',
  '2024-02-29T00:00:00Z',
  '2026-13-01T00:00:00Z',
  '2026-04-31T00:00:00Z',
  '2026-03-01T24:00:00Z',
  '2026-03-01T09:30Z',
  '2026-03-01T09:30:60Z',
  '2026-03-01T09:30:00.123456Z',
  '2026-03-01T09:30:00.Z',
  '2026-03-01T09:30:00+01:00',
  '2026-03-01T09:30:00',
  '2026-03-01',
  '2026-03-01t09:30:00z',
  ' 2026-03-01T09:30:00Z',
  '0000-01-01T00:00:00Z',
  '1900-02-29T00:00:00Z',
  '2000-02-29T00:00:00Z',
];

/** The value with another in one place of it; undefined takes the place out. */
function withAt(whole: unknown, [first, ...rest]: readonly (string | number)[], value: unknown): unknown {
  if (first === undefined) return value;
  if (Array.isArray(whole)) return whole.map((one, at) => (at === first ? withAt(one, rest, value) : one));
  const object = typeof whole === 'object' && whole !== null ? whole : {};
  const inner = withAt(Object.entries(object).find(([key]) => key === first)?.[1], rest, value);
  const others = Object.entries(object).filter(([key]) => key !== first);
  return Object.fromEntries(inner === undefined ? others : [...others, [first, inner]]);
}

test('what the page takes for a record is what the schema takes for one', () => {
  const whole: unknown = JSON.parse(
    worked([{box: form.boxes[0] ?? fail(), value: 'done', by: 'JM'}]).exported().text,
  );
  const seen = {yes: 0, no: 0};
  for (const place of PLACES) {
    for (const value of VALUES) {
      const changed = withAt(whole, place, value);
      const fits = RECORD.safeParse(changed).success;
      seen[fits ? 'yes' : 'no']++;
      expect(isRecord(changed), `${place.join('.')} is ${JSON.stringify(value)}`).toBe(fits);
    }
  }
  expect(Math.min(seen.yes, seen.no)).toBeGreaterThan(100);
});

test('the sheets of one build on one device go out together', () => {
  const storage = memory();
  const other = {...form, procedure: '04-crankshaft'};
  const far = {...form, job: '1048', procedure: '04-crankshaft'};
  for (const each of [other, far])
    new Session(each, storage, clock()).add(form.boxes[0] ?? fail(), 'done', 'JM');
  const one = worked([{box: form.boxes[0] ?? fail(), value: 'done', by: 'KO'}], session(storage));
  const {sheets} = recordIn(one.exported().text);
  expect(sheets.map(({procedure: name, entries}) => [name, entries.map(({by}) => by)])).toEqual([
    ['03-camshaft', ['KO']],
    ['04-crankshaft', ['JM']],
  ]);
  // And come in together: each where its own page finds it.
  const empty = memory();
  expect(session(empty).import(one.exported().text)).toEqual({ok: true, taken: 2, known: 0, apart: false});
  expect(new Session(other, empty, clock()).length).toBe(1);
});

test('a storage that fills up is told of, and what is on the page stays', () => {
  const one = session(memory(2_000));
  for (let at = 0; at < 12; at++) one.add(form.boxes[at] ?? fail(), 'done', 'JM');
  expect([one.trouble, one.length]).toEqual(['storage-full', 12]);
  one.reload();
  expect([one.trouble, one.length]).toEqual(['storage-full', 12]);
  expect(new Session(form, undefined, clock()).trouble).toBe('no-storage');
});

test.each([
  [{job: '1047'}, '4711', '1047.record.json'],
  [{}, 'OM 4711/b', 'OM-4711-b.record.json'],
  [{}, '  ', '03-camshaft.record.json'],
  [{}, undefined, '03-camshaft.record.json'],
  [{job: '../../etc/passwd'}, undefined, 'etc-passwd.record.json'],
  [{job: '<img src=x>'}, undefined, 'img-src-x-.record.json'],
  [{job: 'Zeile Nr. ½ Ж'}, undefined, 'Zeile-Nr.-½-Ж.record.json'],
  [{job: '...'}, undefined, 'sheet.record.json'],
])('the file of %j and %s is %s', (numbers, engineNumber, expected) => {
  const {job, ...bare} = form;
  expect(recordFile({...bare, ...numbers}, engineNumber)).toBe(expected);
});
