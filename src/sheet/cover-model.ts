/** The cover of a book as plain data, as `model.ts` has its sheets. */
import type {Paper} from '../spec/model.js';
import type {Fact, Hold, Waiver} from './model.js';
import type {Words} from './words.js';

/** The first page of a book: its procedures in build order and what is signed over the whole build. */
export interface Cover {
  readonly paper: Paper;
  readonly words: Words;
  readonly shop: string;
  readonly engine: string;
  readonly engineNote?: string;
  readonly job?: string;
  readonly engineNumber?: string;
  /** What is so on this engine and not on all of its kind. */
  readonly thisJob?: readonly Fact[];
  readonly fingerprint: string;
  readonly procedures: readonly CoverLine[];
  readonly holds: readonly CoverHold[];
  readonly waivers: readonly CoverWaiver[];
  readonly sources: readonly {readonly title: string; readonly date?: string; readonly note?: string}[];
}

export interface CoverLine {
  /** Place in the build order, from 1. */
  readonly number: number;
  readonly title: string;
  readonly revision: string;
  readonly date: string;
  /** Steps and sub-steps. */
  readonly steps: number;
  readonly holds: number;
  /** File name of its sheet without the ending. */
  readonly file: string;
}

/** A hold point with the place of its procedure in the build order, from 1. */
export interface CoverHold extends Hold {
  readonly procedure: number;
  readonly step: string;
}

/** A waiver with the place of its procedure in the build order, from 1. */
export interface CoverWaiver extends Waiver {
  readonly procedure: number;
}
