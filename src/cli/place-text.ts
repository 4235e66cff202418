/** A place of a file as reports for people name it. */
import {printable} from '../text/printable.js';

/** `engine.yaml:3:5`, which editors and terminals take for a link; line and column count from 1. */
export function placeText(place: {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}): string {
  return `${printable(place.file)}:${place.line}:${place.column}`;
}
