/** Prose outside steps (introductions, notes, headings) that is worded anew, gone or new: nothing checks it, people read it. */
import type {Remark} from '../build/found.js';
import {baseName} from '../build/tell.js';
import type {Judge} from './judge.js';
import {type Features, wordsOf} from './likeness.js';
import {matchTexts} from './match-texts.js';
import type {Piece} from './model.js';
import {type Passage, passagesOf} from './prose.js';
import {firstWords, sentencesIn, type Wording, wordedPiece} from './words.js';

/** Matched over the whole book, in order first, so that a passage that went to another procedure is not called new. */
export const passageChanges: Judge = ({before, now}) => {
  const [old, fresh] = [before, now].map(({book}) => book.procedures.flatMap(passagesOf));
  if (old === undefined || fresh === undefined) return [];
  const pairs = matchTexts(old.map(features), fresh.map(features));
  const [usedOld, usedFresh] = [new Set(pairs.map(([a]) => a)), new Set(pairs.map(([, b]) => b))];
  const elsewhere = sentencesIn(now);
  const said = sentencesIn(before);
  return [
    ...pairs.flatMap(([a, b]) => changed(old[a], fresh[b], elsewhere)),
    ...old.flatMap((one, index) =>
      usedOld.has(index) ? [] : [wordedPiece(wording(one, 'dropped', one, undefined), elsewhere)],
    ),
    ...fresh.flatMap((one, index) =>
      usedFresh.has(index) ? [] : [wordedPiece(wording(one, 'new', undefined, one), said)],
    ),
  ];
};

function changed(
  before: Passage | undefined,
  now: Passage | undefined,
  elsewhere: (sentence: string) => boolean,
): Piece[] {
  if (before === undefined || now === undefined || before.text === now.text) return [];
  return [wordedPiece(wording(before, 'worded anew', before, now), elsewhere)];
}

/** Told by its first words, so that two passages of one procedure are two changes. */
function wording(told: Passage, how: string, before: Passage | undefined, now: Passage | undefined) {
  const file = baseName((now ?? told).procedure.source.file);
  const what = told.isTitle ? 'heading of' : 'text of';
  return {
    subject: `${what} ${file}`,
    how: `${firstWords(told.text)} ${how}`,
    before: before && said(before),
    now: now && said(now),
  };
}

function said(passage: Passage): Wording {
  return {text: passage.text, remark: remark(passage)};
}

function remark({procedure, under, isTitle, text, span}: Passage): Remark {
  const {file} = procedure.source;
  const place = under === '' || isTitle ? baseName(file) : `${baseName(file)}, under ${under}`;
  return {where: {file, span}, says: `${place}: ${text}`};
}

/** A heading is like a heading only. */
function features({text, isTitle, procedure}: Passage): Features {
  const words = isTitle ? ['#', ...wordsOf(text)] : wordsOf(text);
  return {deeds: [], words, key: `${baseName(procedure.source.file)}\n${words.join(' ')}`};
}
