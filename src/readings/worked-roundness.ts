/** Taper and out-of-round worked out from single sizes, where the specification says of which fits they are. */
import {itemsOfKind} from '../spec/items.js';
import type {Fit, Specification} from '../spec/model.js';
import {fill} from '../text/fill.js';
import {formOf} from '../trade/roundness.js';
import type {ReadingLine} from './report.js';
import type {ReportWords} from './words.js';
import {type Found, foundAt, sizesOf, sizesText} from './worked-line.js';

/** From the last readings of the whole build; nothing at a place where one of the sizes was not read. */
export function roundnessOf(lines: readonly ReadingLine[], spec: Specification, words: ReportWords): Found[] {
  return itemsOfKind(spec, 'fit').flatMap((fit) =>
    (fit.at.length === 0 ? [''] : fit.at).flatMap((place) => atPlace(fit, place, lines, words)),
  );
}

function atPlace(
  {id, taperOf, outOfRoundOf}: Fit,
  place: string,
  lines: readonly ReadingLine[],
  words: ReportWords,
): Found[] {
  const of = [...taperOf, ...outOfRoundOf];
  const last = (item: string) =>
    lines.findLast((line) => line.item === item && line.place === place && line.rounds.length > 0);
  const read = lines.findLast((line) => line.item === id && line.place === place);
  const sources = of.flatMap(({value}) => last(value) ?? []);
  const sizes = sizesOf(sources);
  if (read === undefined || of.length === 0 || sizes.length < of.length) return [];
  // Places along it are rows, directions across it columns.
  const form = formOf(taperOf.length > 0 ? sizes.map((size) => [size]) : [sizes], read.name);
  if ('ok' in form) return [];
  const difference = form.taper ?? form.outOfRound;
  if (difference === undefined) return [];
  const from = fill(words.differenceOf, {sizes: sizesText(sources)});
  return foundAt(read, {least: difference, most: difference, from}, words);
}
