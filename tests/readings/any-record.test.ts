/** Any sequence of entries: judging never throws, its sums hold, and whatever is changed afterwards shows. */
import fc from 'fast-check';
import {expect, test} from 'vitest';
import {judgeBuild} from '../../src/readings/judge.js';
import {readRecord} from '../../src/readings/read.js';
import type {BuildRecord, Entry, SheetRecord} from '../../src/readings/record.js';
import type {BuildReport} from '../../src/readings/report.js';
import {readingsShape} from '../../src/readings/report.js';
import {withEntry} from '../../src/readings/seal.js';
import {spreadOf} from '../../src/readings/spread.js';
import {progressOf} from '../../src/tablet/progress.js';
import {standingAfter} from '../../src/tablet/standing.js';
import {buildOf, judged, SMALL} from './small.js';

const KEYS = SMALL.sheets.flatMap(({form}) =>
  form.boxes.flatMap(({key, kind}) => [
    key,
    `${key}@2`,
    ...(kind === 'reading' ? [`${key}@3`, `${key}:accepted`, `${key}:again`] : []),
  ]),
);

const entry: fc.Arbitrary<Omit<Entry, 'seal'>> = fc.record({
  at: fc
    .date({min: new Date('2020-01-01'), max: new Date('2030-01-01'), noInvalidDate: true})
    .map((date) => date.toISOString()),
  by: fc.oneof(fc.constantFrom('AB', 'CD', 'a.b.', '‮'), fc.string({minLength: 1, maxLength: 40})),
  box: fc.oneof(
    {weight: 9, arbitrary: fc.constantFrom(...KEYS)},
    {weight: 1, arbitrary: fc.string({minLength: 1})},
  ),
  value: fc.oneof(
    fc.constantFrom('done', '', '0.0025', '0.0041', '2.4995', '=1+1', '1e400', '−'),
    fc.string({maxLength: 30}),
    fc.double({noNaN: true}).map(String),
  ),
});

const entries = fc.array(entry, {maxLength: 60});

function recordOf(...lists: readonly (readonly Omit<Entry, 'seal'>[])[]): BuildRecord {
  const sheets = SMALL.sheets.map(({form: {procedure, title, revision, fingerprint}}, index): SheetRecord => {
    const none = {procedure, title, revision, fingerprint, entries: []};
    return (lists[index] ?? []).reduce<SheetRecord>(withEntry, none);
  });
  return {record: 1, engine: 'example', engineNumber: 'X-1', sheets};
}

function holds(report: BuildReport): void {
  expect(readingsShape.safeParse({builds: [report], spread: spreadOf([report, report])}).success).toBe(true);
  for (const {asked, answered, state} of report.sheets) {
    expect(answered).toBeLessThanOrEqual(asked);
    expect(state).toBe('judged');
  }
  const named = (name: string) => report.remarks.filter((remark) => remark.name === name).length;
  expect(named('out') + named('accepted')).toBe(report.readings.filter(({state}) => state === 'out').length);
  expect(named('near')).toBe(report.readings.filter(({state}) => state === 'near').length);
  expect(named('seal-broken')).toBe(0);
  // Every sheet is complete, or some step of it is said to be unanswered.
  for (const {procedure, asked, answered} of report.sheets) {
    const open = report.remarks.some(
      ({name, sheet}) => (name === 'missing' || name === 'still-open') && sheet === procedure,
    );
    expect(open).toBe(answered < asked);
  }
}

test('judging never throws, and its sums hold', () => {
  fc.assert(
    fc.property(entries, entries, (one, other) => {
      holds(judged(recordOf(one, other)));
    }),
  );
});

test('the tablet counts the boxes that wait for an answer as the report does', () => {
  const [sheet] = SMALL.sheets;
  if (sheet === undefined) throw new Error('no sheet');
  const {form} = sheet;
  fc.assert(
    fc.property(entries, (list) => {
      const record = recordOf(list);
      const now = standingAfter(record.sheets[0]?.entries ?? [], form);
      const {done, of} = progressOf(now.form.boxes, now.answers, now.due);
      expect(judged(record).sheets[0]).toMatchObject({answered: done, asked: of});
    }),
  );
});

test('the last answer to each box counts, and all others are its history', () => {
  fc.assert(
    fc.property(entries, (list) => {
      const {readings} = judged(recordOf(list));
      for (const {key, kind} of SMALL.sheets[0]?.form.boxes ?? []) {
        if (kind !== 'reading') continue;
        const said = list.filter(({box}) => box === key);
        const last = said.at(-1);
        const round = readings
          .flatMap(({rounds}) => rounds)
          .filter(({at, value}) => at === last?.at && value === last.value);
        if (last === undefined || last.value.trim() === '') continue;
        const before = said.slice(0, -1).filter(({value}) => value.trim() !== '');
        expect(round.map((each) => each.before.length)).toContain(before.length);
      }
    }),
  );
});

test('export and import give the same record', () => {
  fc.assert(
    fc.property(entries, fc.constantFrom(0, 2), (list, indent) => {
      const record = recordOf(list);
      expect(readRecord({text: JSON.stringify(record, null, indent)})).toEqual({ok: true, record});
    }),
  );
});

test('any entry changed, dropped or put elsewhere shows, at that entry or before', () => {
  const change = fc.constantFrom('value', 'by', 'at', 'box', 'drop', 'twice', 'swap');
  fc.assert(
    fc.property(fc.array(entry, {minLength: 3, maxLength: 20}), fc.nat(), change, (list, pick, how) => {
      const record = recordOf(list);
      const sheet = record.sheets[0];
      if (sheet === undefined) throw new Error('no sheet');
      const at = pick % (sheet.entries.length - 1);
      const altered = alter(sheet.entries, at, how);
      fc.pre(JSON.stringify(altered) !== JSON.stringify(sheet.entries));
      const report = judged({...record, sheets: [{...sheet, entries: altered}]});
      const broken = report.remarks.find(({name}) => name === 'seal-broken');
      expect(broken?.message).toContain(`the seal of entry ${how === 'twice' ? at + 2 : at + 1} (`);
      expect(report.sheets[0]?.seals).toBe('broken');
    }),
  );
});

function alter(list: readonly Entry[], at: number, how: string): Entry[] {
  const [one, next] = [list[at], list[at + 1]];
  if (one === undefined || next === undefined) throw new RangeError('no such entry');
  const [before, after] = [list.slice(0, at), list.slice(at + 2)];
  switch (how) {
    case 'drop':
      return [...before, next, ...after];
    case 'twice':
      return [...before, one, one, next, ...after];
    case 'swap':
      return [...before, next, one, ...after];
    case 'at':
      return [...before, {...one, at: '2019-12-31T23:59:59Z'}, next, ...after];
    case 'value':
      return [...before, {...one, value: `${one.value}1`}, next, ...after];
    case 'by':
      return [...before, {...one, by: `${one.by.slice(0, 39)}x`}, next, ...after];
    default:
      return [...before, {...one, box: `${one.box}x`}, next, ...after];
  }
}

test('earlier exports of the same sheet, in any order, add nothing', () => {
  fc.assert(
    fc.property(entries, fc.array(fc.nat(), {maxLength: 4}), (list, cuts) => {
      const whole = recordOf(list);
      const parts = cuts.map((cut) => recordOf(list.slice(0, cut % (list.length + 1))));
      const report = judgeBuild(buildOf(...parts, whole, ...parts), SMALL);
      expect({...report, files: []}).toEqual({...judged(whole), files: []});
    }),
  );
});

test('as few steps as can be are called out of order', () => {
  const steps = ['1', '2', '3', '4', '6', '7', '8'];
  fc.assert(
    fc.property(fc.shuffledSubarray(steps), (order) => {
      const record = recordOf(
        order.map((step) => ({at: '2026-03-02T08:00:00Z', by: 'AB', box: `${step}:done`, value: 'done'})),
      );
      const told = judged(record).remarks.find(({name}) => name === 'out-of-order')?.message ?? '';
      const more = Number(/ and (\d+) more$/.exec(told)?.[1] ?? 0);
      expect((told.match(/\(/g) ?? []).length + more).toBe(order.length - longest(order));
    }),
  );
});

/** Length of the longest run that only rises, by trying each step as the last one. */
function longest(order: readonly string[]): number {
  const lengths: number[] = [];
  order.forEach((step, index) => {
    const before = lengths.filter((_, other) => other < index && (order[other] ?? '') < step);
    lengths.push(1 + Math.max(0, ...before));
  });
  return Math.max(0, ...lengths);
}
