/** Records of builds that never were, made by a seeded generator: every reading in them is invented. */
import type {Box, Form} from '../../src/build/form.js';
import type {BuildRecord, SheetRecord} from '../../src/readings/record.js';
import {withEntry} from '../../src/readings/seal.js';
import {type Random, seeded} from './random.js';

export interface Sample {
  readonly seed: number;
  readonly job?: string;
  readonly engineNumber?: string;
  /** What is written into a box instead; undefined leaves it unanswered. */
  readonly answer?: (box: Box, usual: string) => string | undefined;
  /** Who writes it. */
  readonly by?: (box: Box, usual: string) => string;
}

/** One answer to every box that must be answered when nothing is out: fitted by AB, witnessed by CD. */
export function sampleRecord(forms: readonly Form[], sample: Sample): BuildRecord {
  const random = seeded(sample.seed);
  const clock = {now: Date.UTC(2026, 2, 2, 8)};
  const [first] = forms;
  return {
    record: 1,
    engine: first?.engine ?? 'none',
    ...(sample.job !== undefined && {job: sample.job}),
    ...(sample.engineNumber !== undefined && {engineNumber: sample.engineNumber}),
    sheets: forms.map((form) => sampleSheet(form, sample, {random, clock})),
  };
}

/** The same record with entries added to one of its sheets, sealed as they should be. */
export function withEntries(
  record: BuildRecord,
  procedure: string,
  entries: readonly Parameters<typeof withEntry>[1][],
): BuildRecord {
  const sheets = record.sheets.map((sheet) =>
    sheet.procedure === procedure ? entries.reduce(withEntry, sheet) : sheet,
  );
  return {...record, sheets};
}

interface Bench {
  readonly random: Random;
  readonly clock: {now: number};
}

function sampleSheet(form: Form, sample: Sample, {random, clock}: Bench): SheetRecord {
  const {procedure, title, revision, fingerprint} = form;
  let sheet: SheetRecord = {procedure, title, revision, fingerprint, entries: []};
  for (const box of inTime(form.boxes)) {
    const usual = usualAnswer(box, random);
    const value = sample.answer ? sample.answer(box, usual) : usual;
    clock.now += 60_000 + Math.round(random() * 120) * 1000;
    if (value === undefined || value === '') continue;
    const by = witnessed(box) ? 'CD' : 'AB';
    const at = new Date(clock.now).toISOString();
    sheet = withEntry(sheet, {at, by: sample.by?.(box, by) ?? by, box: box.key, value});
  }
  return sheet;
}

/** The box of a step stands before its readings, and is ticked after them. */
function inTime(boxes: readonly Box[]): readonly Box[] {
  const place = new Map<string, number>();
  boxes.forEach(({step}, index) => {
    if (step !== '') place.set(step, index);
  });
  const rank = (box: Box, index: number) =>
    box.kind === 'tick' && box.key === `${box.step}:done` ? (place.get(box.step) ?? index) + 0.5 : index;
  return boxes
    .map((box, index) => ({box, rank: rank(box, index)}))
    .sort((one, other) => one.rank - other.rank)
    .map(({box}) => box);
}

function witnessed({kind, key}: Box): boolean {
  return kind === 'hold' || key.includes(':hold:');
}

/** Empty for what is answered only in a branch, or when the step has come round again. */
function usualAnswer(box: Box, random: Random): string {
  const dice = random();
  if (box.onlyIf.length > 0) return '';
  if (box.kind === 'line') return box.expected ?? `INVENTED-${Math.floor(dice * 9000) + 1000}`;
  if (box.kind === 'time') return box.since === undefined ? '2026-03-02 08:00' : '2026-03-12 08:00';
  return box.kind === 'reading' ? middling(box, dice) : 'done';
}

/** Well inside the limits, with one figure more than they have. */
function middling(box: Extract<Box, {kind: 'reading'}>, dice: number): string {
  const most = box.most ?? (box.least ?? 1) * 1.5;
  const least = box.least ?? 0;
  const figures = Math.max(...[least, most].map((end) => String(end).split('.')[1]?.length ?? 0)) + 1;
  return (least + (most - least) * (0.35 + 0.3 * dice)).toFixed(figures);
}
