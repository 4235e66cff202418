/** Where a device keeps records: a slot for each sheet of a build, as JSON, in whatever storage it has. */
import type {Form} from '../build/form.js';
import type {SheetRecord} from '../readings/record.js';
import {isSheetRecord, LONGEST} from './shape.js';

/** What one slot holds. */
export interface Slot {
  readonly engineNumber?: string;
  readonly sheet: SheetRecord;
}

/** The part of the browser's own storage that is used. */
export type Storage = Pick<globalThis.Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

type Build = Pick<Form, 'engine' | 'fingerprint' | 'job'>;

/** Nothing kept yet; a slot; or something that can't be read and is left alone. */
export type Kept = {readonly state: 'none' | 'bad'} | {readonly state: 'kept'; readonly slot: Slot};

/** A slot of another revision of the sheet has another key, and is never found here. */
export function readSlot(storage: Storage, form: Build, procedure: string): Kept {
  const text = storage.getItem(slotKey(form, procedure));
  if (text === null) return {state: 'none'};
  const slot = slotOf(text);
  const fits = slot?.sheet.fingerprint === form.fingerprint && slot.sheet.procedure === procedure;
  return slot !== undefined && fits ? {state: 'kept', slot} : {state: 'bad'};
}

/** False where the storage refuses, for being full or forbidden. */
export function writeSlot(storage: Storage, form: Build, slot: Slot): boolean {
  try {
    storage.setItem(slotKey(form, slot.sheet.procedure), JSON.stringify(slot));
    return true;
  } catch {
    return false;
  }
}

/** Only this sheet’s: those of the other sheets of the build stay. */
export function clearSlot(storage: Storage, form: Build, procedure: string): void {
  storage.removeItem(slotKey(form, procedure));
}

/** Keeps what can't be read under another key, so that the slot is free and nothing is lost. */
export function setAside(storage: Storage, form: Build, procedure: string): void {
  const key = slotKey(form, procedure);
  try {
    storage.setItem(`${key} unreadable`, storage.getItem(key) ?? '');
    storage.removeItem(key);
  } catch {
    // Without room for both, what is there stays until a new record takes its place.
  }
}

/** The other sheets of the same build that this device holds, by their names. */
export function otherSlots(storage: Storage, form: Build, procedure: string): Slot[] {
  const names: string[] = [];
  for (let at = 0; at < storage.length; at++) {
    const name = procedureIn(storage.key(at) ?? '', form);
    if (name !== undefined && name !== procedure) names.push(name);
  }
  return names.sort().flatMap((name) => {
    const kept = readSlot(storage, form, name);
    return kept.state === 'kept' ? [kept.slot] : [];
  });
}

const OURS = 'witness-mark';

export function slotKey({engine, fingerprint, job}: Build, procedure: string): string {
  return JSON.stringify([OURS, engine, fingerprint, job ?? '', procedure]);
}

function procedureIn(key: string, {engine, fingerprint, job}: Build): string | undefined {
  const start = JSON.stringify([OURS, engine, fingerprint, job ?? '']).slice(0, -1);
  if (!key.startsWith(`${start},`)) return undefined;
  const parts = parsed(key);
  const name = Array.isArray(parts) && parts.length === 5 ? parts[4] : undefined;
  return typeof name === 'string' ? name : undefined;
}

function slotOf(text: string): Slot | undefined {
  const value = parsed(text);
  if (typeof value !== 'object' || value === null || !('sheet' in value)) return undefined;
  const {sheet} = value;
  if (!isSheetRecord(sheet)) return undefined;
  const number = 'engineNumber' in value ? value.engineNumber : undefined;
  return typeof number === 'string' && number.length <= LONGEST ? {engineNumber: number, sheet} : {sheet};
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
