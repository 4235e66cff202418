/** Wrong books in small, each with what the check must say of it: message, and line and column of its place. */
import type {Book} from '../../src/build/book.js';
import {book} from '../help/example.js';
import {ENGINEERING_CASES} from './cases-engineering.js';
import {PEOPLE_CASES} from './cases-people.js';
import {PROSE_CASES} from './cases-prose.js';
import {READING_CASES} from './cases-reading.js';
import {SPEC_CASES} from './cases-spec.js';
import {TOOL_CASES} from './cases-tools.js';
import {VALUE_CASES} from './cases-values.js';

export interface Case {
  readonly finding: string;
  /** What is particular to the case. */
  readonly title: string;
  readonly engine: string;
  readonly shop?: string;
  readonly procedure: string;
  /** `file:line:column message` of every finding of that name; the file is left out for the procedure. */
  readonly says: readonly string[];
  /** Names of the other findings that the mistake brings with it. */
  readonly also?: readonly string[];
}

export const CASES: readonly Case[] = [
  ...READING_CASES,
  ...SPEC_CASES,
  ...VALUE_CASES,
  ...PROSE_CASES,
  ...TOOL_CASES,
  ...PEOPLE_CASES,
  ...ENGINEERING_CASES,
];

export function caseBook({engine, shop, procedure}: Case): Book {
  return book({engine, ...(shop !== undefined && {shop}), procedures: {'procedure.md': procedure}});
}
