/** A comparison as lines for people and editors: what was weakened first, each with what is asked and the steps of both sides. */
import {counted} from '../text/counted.js';
import {printable} from '../text/printable.js';
import type {BookJson, ChangeJson} from './compare-report.js';
import type {CompareJson} from './compare-shape.js';
import {sidesAndSums, sideText} from './compare-sides.js';
import {placeText} from './place-text.js';

export function compareText(json: CompareJson): string {
  const lines = [
    ...json.unseen.map(unseenText),
    ...json.books.flatMap((book) => bookLines(book, json)),
    sums(json.summary),
  ];
  return lines.map((line) => `${line}\n`).join('');
}

function bookLines(book: BookJson, json: CompareJson): string[] {
  const {engine, changes, brought, settled} = book;
  const sides = `${sideText(json.before)} and ${sideText(json.now)}: the same`;
  return [
    `${printable(engine)}, ${changes.length === 0 ? sides : sidesAndSums(book, json)}`,
    ...changes.flatMap(changeLines),
    ...brought.map(
      (one) => `${placeText(one)}: brings ${one.severity}: ${printable(one.message)}  [${one.name}]`,
    ),
    ...settled.map(
      (one) => `${placeText(one)}: settles ${one.severity}: ${printable(one.message)}  [${one.name}]`,
    ),
  ];
}

/** `before: engine.yaml:3: it is not YAML, …` */
export function unseenText({side, message, file, line}: CompareJson['unseen'][number]): string {
  const place = file === null ? '' : `${printable(file)}:${line}: `;
  return `${side === 'before' ? 'old side' : 'new side'}: ${place}${printable(message)}`;
}

function changeLines(change: ChangeJson): string[] {
  const {effect, message, aspect, before, now} = change;
  const place = now.at[0] ?? before.at[0];
  const first = `${place === undefined ? '' : `${placeText(place)}: `}${effect}: ${printable(message)}  [${printable(aspect)}]`;
  if (!hasWords(change)) return [first];
  return [
    first,
    ...(before.required === null && now.required === null
      ? []
      : [`    required ${printable(requiredText(change))}`]),
    ...before.at.map((one) => `    before: ${placeText(one)}: ${printable(one.message)}`),
    ...now.at.map((one) => `    now: ${placeText(one)}: ${printable(one.message)}`),
    ...(before.at.length > 0 && now.at.length === 0 ? ['    now: nothing'] : []),
    ...change.brings.map((one) => `    brings ${one.name}: ${printable(one.message)}`),
  ];
}

/** Of a step that only moved, or whose tags are written otherwise, both sides would say the same. */
export function hasWords({effect, aspect}: ChangeJson): boolean {
  return effect !== 'reworded' || (aspect !== 'step' && aspect !== 'moved');
}

/** `before: safety-wire; now: nothing`. */
export function requiredText({before, now}: ChangeJson): string {
  if (before.required === now.required) return `before and now: ${before.required ?? 'nothing'}`;
  return `before: ${before.required ?? 'nothing'}; now: ${now.required ?? 'nothing'}`;
}

export function sums(summary: CompareJson['summary']): string {
  const {weakened, strengthened, changed, reworded, brought, settled} = summary;
  const found = `${counted(brought, 'finding')} brought, ${settled} settled`;
  return `${weakened} weakened, ${strengthened} strengthened, ${changed} changed, ${reworded} reworded; ${found}`;
}
