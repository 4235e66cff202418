/** Makes every single fault in a clean book, runs the real check on each, and counts what was caught. */
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import type {Finding} from '../../src/findings/model.js';
import type {Job} from '../../src/spec/job.js';
import {broken, describeFault, type Fault} from './fault.js';
import {orderFaults} from './order-faults.js';
import {procedureFaults} from './procedure-faults.js';
import {specFaults} from './spec-faults.js';
import {toolFaults} from './tool-faults.js';

export interface Tally {
  readonly kind: string;
  made: number;
  caught: number;
  excused: number;
  findings: number;
  readonly misses: string[];
}

/** Why a fault of a clean book changes nothing, or undefined where it must be caught. */
export type Excuse = (book: Book, fault: Fault, described: string) => string | undefined;

export function faultsOf(book: Book): Fault[] {
  return [...procedureFaults(book), ...orderFaults(book), ...toolFaults(book), ...specFaults(book)];
}

/** With the jobs of a book, what the plain book keeps silent about may be found on one of them. */
export function tallies(
  book: Book,
  excuse: Excuse,
  faults: readonly Fault[] = faultsOf(book),
  jobs: readonly Job[] = [],
): Tally[] {
  const books = [book, ...jobs.map((job) => ({...book, job}))];
  const known = new Set(books.flatMap((one) => check(one).findings.map(keyOf)));
  const byKind = new Map<string, Tally>();
  for (const fault of faults) {
    const tally = byKind.get(fault.kind) ?? blank(fault.kind);
    byKind.set(fault.kind, tally);
    count(tally, books, fault, known, excuse);
  }
  return [...byKind.values()];
}

function count(
  tally: Tally,
  books: readonly Book[],
  fault: Fault,
  known: ReadonlySet<string>,
  excuse: Excuse,
): void {
  tally.made++;
  const said: Finding[] = [];
  for (const book of books) {
    const found = check(broken(book, fault)).findings.filter((finding) => !known.has(keyOf(finding)));
    tally.findings += found.length;
    if (found.some(({message}) => fault.names.some((name) => namesItem(message, name)))) {
      tally.caught++;
      return;
    }
    said.push(...found);
  }
  const [book] = books;
  const described = book === undefined ? fault.kind : describeFault(book, fault);
  const why = book && excuse(book, fault, described);
  if (why !== undefined) tally.excused++;
  else tally.misses.push(`${described}${said.length > 0 ? `; found only: ${said[0]?.message}` : ''}`);
}

/** A finding that the clean book has too, wherever a fault has moved it. */
function keyOf({name, message}: Finding): string {
  return `${name} ${message}`;
}

function namesItem(message: string, name: string): boolean {
  const at = message.indexOf(name);
  if (at === -1) return false;
  const around = `${message[at - 1] ?? ' '}${message[at + name.length] ?? ' '}`;
  return !/[a-z0-9-]/.test(around) || message.split(/[^a-z0-9-]+/).includes(name);
}

function blank(kind: string): Tally {
  return {kind, made: 0, caught: 0, excused: 0, findings: 0, misses: []};
}
