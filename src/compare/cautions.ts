/** Cautions gone, come, softened or worded anew: by the hazard words that they warn of, procedure by procedure. */
import type {Remark} from '../build/found.js';
import {baseName} from '../build/tell.js';
import type {Block, Caution, Procedure, Signal} from '../procedure/model.js';
import {type Farther, fartherIn, type PlacedCaution} from './caution-places.js';
import type {Judge} from './judge.js';
import {type Features, wordsOf} from './likeness.js';
import {matchTexts} from './match-texts.js';
import type {Effect, Piece} from './model.js';
import {firstWords, sentencesIn, wordedPiece} from './words.js';

/** Cautions are matched over the whole book, in order first, so that one that moved with its steps is not missed. */
export const cautionChanges: Judge = (sides) => {
  const {before, now} = sides;
  const [old, fresh] = [before, now].map(({book}) => book.procedures.flatMap(cautionsOf));
  if (old === undefined || fresh === undefined) return [];
  const pairs = matchTexts(old.map(features), fresh.map(features));
  const fellow = new Map(pairs);
  const taken = new Set(fellow.values());
  const gone = old.filter((_, index) => !fellow.has(index));
  const come = fresh.filter((_, index) => !taken.has(index));
  const kept = pairs.flatMap(([a, b]) => {
    const [one, other] = [old[a], fresh[b]];
    return one === undefined || other === undefined ? [] : [[one, other] as const];
  });
  const elsewhere = sentencesIn(now);
  const farther = fartherIn(sides);
  return [
    ...kept.flatMap(([a, b]) => [...keptPieces(a, b, elsewhere), ...placePiece(a, b, farther)]),
    ...wordPieces(gone, come, kept),
  ];
};

type Placed = PlacedCaution;

function cautionsOf(procedure: Procedure): Placed[] {
  const inBlocks = (blocks: readonly Block[]) =>
    blocks.flatMap((block) => (block.type === 'caution' ? [block.caution] : []));
  const all = new Set([
    ...procedure.steps.flatMap(({cautions, more}) => [...cautions, ...inBlocks(more)]),
    ...procedure.sections.flatMap(({content}) => inBlocks(content)),
  ]);
  return [...all].sort((a, b) => a.span.start - b.span.start).map((caution) => ({procedure, caution}));
}

function features({caution, procedure}: Placed): Features {
  const deeds = caution.hazards.map(({word}) => `hazard ${word}`);
  const words = wordsOf(caution.text);
  // Shops say the same before every use of a solvent: which procedure it stands in tells them apart.
  return {deeds, words, key: `${baseName(procedure.source.file)}\n${deeds.join()}\n${words.join(' ')}`};
}

/** The signal words of ANSI Z535.6 by the harm that they tell of, the least last. */
const LOUDNESS: Readonly<Record<Signal, number>> = {danger: 3, warning: 2, caution: 1, notice: 0};

function keptPieces(before: Placed, now: Placed, elsewhere: (sentence: string) => boolean): Piece[] {
  const [was, is] = [before.caution.signal, now.caution.signal];
  const subject = subjectOf(words(now.caution));
  const at = {before: [remark(before)], now: [remark(now)]};
  const signal: Piece[] =
    was === is
      ? []
      : [
          {
            effect: LOUDNESS[is] < LOUDNESS[was] ? 'weakened' : 'strengthened',
            subject,
            aspect: 'signal',
            says: `signal word ${was}, now ${is}`,
            ...at,
          },
        ];
  const wording = (placed: Placed) => ({text: placed.caution.text, remark: remark(placed)});
  const text =
    before.caution.text === now.caution.text
      ? []
      : [
          wordedPiece(
            {
              subject: `${subject} in ${baseName(now.procedure.source.file)}`,
              how: `${firstWords(before.caution.text)} worded anew`,
              before: wording(before),
              now: wording(now),
            },
            elsewhere,
          ),
        ];
  return [...signal, ...text];
}

function placePiece(before: Placed, now: Placed, farther: Farther): Piece[] {
  const far = farther(before, now);
  if (far === undefined) return [];
  const {effect, says} = far;
  const subject = subjectOf(words(now.caution));
  return [{effect, subject, aspect: 'place', says, before: [remark(before)], now: [remark(now)]}];
}

/** Hazard words lost and won, those that only changed their caution within a procedure set off against each other. */
function wordPieces(
  gone: readonly Placed[],
  come: readonly Placed[],
  kept: readonly (readonly [Placed, Placed])[],
): Piece[] {
  const lost = [
    ...gone.flatMap(wordsIn),
    ...kept.flatMap(([a, b]) => wordsIn(a).filter(({word}) => !words(b.caution).includes(word))),
  ];
  const won = [
    ...come.flatMap(wordsIn),
    ...kept.flatMap(([a, b]) => wordsIn(b).filter(({word}) => !words(a.caution).includes(word))),
  ];
  const pieces: Piece[] = [];
  for (const one of lost) {
    const index = won.findIndex(({word, placed}) => word === one.word && sameFile(placed, one.placed));
    if (index === -1)
      pieces.push(wordPiece('weakened', one.word, 'no longer warned of', {before: [remark(one.placed)]}));
    else {
      const [other] = won.splice(index, 1);
      if (other)
        pieces.push(
          wordPiece('reworded', one.word, 'warned of in another caution', {
            before: [remark(one.placed)],
            now: [remark(other.placed)],
          }),
        );
    }
  }
  return [
    ...pieces,
    ...won.map(({word, placed}) =>
      wordPiece('strengthened', word, 'warned of anew', {now: [remark(placed)]}),
    ),
  ];
}

/** A caution without hazard words counts as one of its own. */
function wordsIn(placed: Placed): {readonly word: string; readonly placed: Placed}[] {
  const own = words(placed.caution);
  return (own.length === 0 ? [''] : own).map((word) => ({word, placed}));
}

function words({hazards}: Caution): string[] {
  return hazards.map(({word}) => word);
}

function wordPiece(
  effect: Effect,
  word: string,
  says: string,
  {before = [], now = []}: {readonly before?: readonly Remark[]; readonly now?: readonly Remark[]},
): Piece {
  return {effect, subject: subjectOf(word === '' ? [] : [word]), aspect: 'caution', says, before, now};
}

function subjectOf(hazards: readonly string[]): string {
  return hazards.length === 0 ? 'caution' : `caution on ${hazards.join(' and ')}`;
}

function sameFile(a: Placed, b: Placed): boolean {
  return baseName(a.procedure.source.file) === baseName(b.procedure.source.file);
}

function remark({procedure, caution}: Placed): Remark {
  const {file} = procedure.source;
  return {where: {file, span: caution.span}, says: `${caution.signal} in ${baseName(file)}: ${caution.text}`};
}
