/** One sheet being worked on: its record, kept on the device with every entry, and how its boxes stand. */
import type {Box, Form} from '../build/form.js';
import type {SheetRecord} from '../readings/record.js';
import {brokenAt, withEntry} from '../readings/seal.js';
import {type Answers, roundOf} from '../readings/unrolled.js';
import {recordFile, recordOf, recordText, takenIn, type Unfit} from './exchange.js';
import {type Refusal, refusal} from './hands.js';
import {merged} from './merge.js';
import {type Standing, shownRound, standingAfter} from './standing.js';
import {
  clearSlot,
  otherSlots,
  readSlot,
  type Slot,
  type Storage,
  setAside,
  slotKey,
  writeSlot,
} from './store.js';

/** What keeps the device from keeping the record. */
export type Trouble = 'no-storage' | 'storage-full' | 'storage-bad';

export type Added = {readonly ok: true} | {readonly ok: false; readonly refusal: Refusal};

export type Imported =
  | {readonly ok: true; readonly taken: number; readonly known: number; readonly apart: boolean}
  | ({readonly ok: false} & Unfit);

/** Lives as long as the page. Every entry goes to the device before the page shows it, where the device keeps anything. */
export class Session {
  readonly form: Form;
  readonly #storage: Storage | undefined;
  readonly #now: () => Date;
  #slot: Slot;
  #trouble: Trouble | undefined;
  #standing: Standing | undefined;
  /** Rounds of single readings that people asked for, by the keys of the first. */
  #asked = new Map<string, number>();

  /** `now` gives the time of an entry. Without a storage nothing outlives the page. */
  constructor(form: Form, storage: Storage | undefined, now: () => Date) {
    this.form = form;
    this.#storage = storage;
    this.#now = now;
    this.#slot = this.#empty();
    this.#trouble = storage === undefined ? 'no-storage' : undefined;
    this.reload();
  }

  /** Reads again what the device holds: another window may have gone on with it. */
  reload(): void {
    if (this.#storage === undefined) return;
    const kept = readSlot(this.#storage, this.form, this.form.procedure);
    const slot = kept.state === 'kept' ? kept.slot : this.#empty();
    // What found no room on the device is on this page alone.
    const unkept = this.#trouble === 'storage-full';
    this.#set(unkept ? {...slot, sheet: merged(this.#slot.sheet, slot.sheet).sheet} : slot);
    if (kept.state !== 'bad') return;
    this.#trouble = 'storage-bad';
    setAside(this.#storage, this.form, this.form.procedure);
  }

  get trouble(): Trouble | undefined {
    return this.#trouble;
  }

  /** How everything stands now. */
  get standing(): Standing {
    this.#standing ??= standingAfter(this.#slot.sheet.entries, this.form);
    return this.#standing;
  }

  get answers(): Answers {
    return this.standing.answers;
  }

  /** The box in the round that the work has come to. */
  now(box: Box): Box {
    return shownRound(this.standing, box, this.#asked.get(box.key) ?? 1);
  }

  /** Makes room for one more reading, for as long as the page stands. */
  readAgain(box: Box): void {
    this.#asked.set(box.key, roundOf(this.now(box)) + 1);
  }

  /** How many entries the record has. */
  get length(): number {
    return this.#slot.sheet.entries.length;
  }

  /** Number of the first entry, from 1, whose seal does not hold. */
  get broken(): number | undefined {
    const at = brokenAt(this.#slot.sheet);
    return at === undefined ? undefined : at + 1;
  }

  /** The key under which the device keeps this sheet. */
  get key(): string {
    return slotKey(this.form, this.form.procedure);
  }

  get engineNumber(): string | undefined {
    return this.form.engineNumber ?? this.#slot.engineNumber;
  }

  nameEngine(number: string): void {
    const {sheet} = this.#slot;
    this.#keep(number === '' ? {sheet} : {engineNumber: number, sheet});
  }

  /** Answers a box; an empty value takes the answer back, which the same rules allow to anybody. */
  add(box: Box, value: string, by: string): Added {
    const refused = value === '' ? undefined : refusal(this.standing.form, this.answers, box, by);
    if (refused !== undefined) return {ok: false, refusal: refused};
    const entry = {at: this.#now().toISOString(), by, box: box.key, value};
    this.#keep({...this.#slot, sheet: withEntry(this.#slot.sheet, entry)});
    return {ok: true};
  }

  /** Begins a new record in the place of this one. */
  clear(): void {
    if (this.#storage !== undefined) clearSlot(this.#storage, this.form, this.form.procedure);
    this.#set(this.#empty());
  }

  /** The record as a file, with the other sheets of this build that the device holds. */
  exported(): {readonly file: string; readonly text: string} {
    const others =
      this.#storage === undefined ? [] : otherSlots(this.#storage, this.form, this.form.procedure);
    const {engineNumber} = this;
    const sheets = [this.#slot.sheet, ...others.map(({sheet}) => sheet)];
    const held = {sheets: sheets.sort((one, other) => (one.procedure < other.procedure ? -1 : 1))};
    const record = recordOf(this.form, engineNumber === undefined ? held : {...held, engineNumber});
    return {file: recordFile(this.form, engineNumber), text: recordText(record)};
  }

  /** Takes in a record that was exported here or elsewhere; of other sheets of this build too. */
  import(text: string): Imported {
    const taken = takenIn(text, this.form, this.engineNumber);
    if (!taken.ok) return taken;
    const {record} = taken;
    const sum = {ok: true, taken: 0, known: 0, apart: false};
    for (const sheet of record.sheets) {
      const one = this.#merge(sheet, record.engineNumber);
      sum.taken += one.taken;
      sum.known += sheet.entries.length - one.taken;
      sum.apart ||= one.apart;
    }
    return {...sum, ok: true};
  }

  #merge(sheet: SheetRecord, number: string | undefined): {readonly taken: number; readonly apart: boolean} {
    const own = sheet.procedure === this.form.procedure;
    const kept = own ? undefined : this.#keptOther(sheet.procedure);
    const slot = own ? this.#slot : (kept ?? {sheet: {...sheet, entries: []}});
    const both = merged(slot.sheet, sheet);
    const engineNumber = slot.engineNumber ?? number;
    const next = {...(engineNumber === undefined ? {} : {engineNumber}), sheet: both.sheet};
    if (own) this.#keep(next);
    else if (this.#storage && !writeSlot(this.#storage, this.form, next)) this.#trouble = 'storage-full';
    return both;
  }

  #keptOther(procedure: string): Slot | undefined {
    const kept = this.#storage && readSlot(this.#storage, this.form, procedure);
    return kept?.state === 'kept' ? kept.slot : undefined;
  }

  #keep(slot: Slot): void {
    this.#set(slot);
    if (this.#storage === undefined) return;
    if (!writeSlot(this.#storage, this.form, slot)) this.#trouble = 'storage-full';
    else if (this.#trouble === 'storage-full') this.#trouble = undefined;
  }

  #set(slot: Slot): void {
    this.#slot = slot;
    this.#standing = undefined;
  }

  #empty(): Slot {
    const {procedure, title, revision, fingerprint} = this.form;
    return {sheet: {procedure, title, revision, fingerprint, entries: []}};
  }
}
