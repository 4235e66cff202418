/** Where somebody is typing. */

/** A text as it is typed, which may be newer than the book. */
export interface Typing {
  readonly file: string;
  readonly text: string;
  readonly offset: number;
}
