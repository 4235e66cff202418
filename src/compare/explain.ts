/** Hangs each finding that the steps brought on the change that explains it; one that no change explains is a change of its own. */
import type {Remark} from '../build/found.js';
import type {Finding} from '../findings/model.js';
import type {Sides} from './judge.js';
import type {Piece} from './model.js';
import {tagRemark} from './remarks.js';
import {idNow} from './renames.js';

/** All the pieces, those that explain a finding weakened by it (but see `isOverdone`), and one more for each finding that none explains. */
export function withFindings(pieces: readonly Piece[], found: readonly Finding[], sides: Sides): Piece[] {
  const result = [...pieces];
  for (const finding of found) {
    const overdone = result.findIndex((piece) => isOverdone(piece, finding));
    const index = overdone === -1 ? explaining(result, finding) : overdone;
    const piece = result[index];
    if (piece === undefined) result.push(ownPiece(finding, sides));
    else if (overdone !== -1) result[index] = {...piece, brings: [...(piece.brings ?? []), finding]};
    else bring(result, piece, finding);
  }
  return result;
}

/** A clause that asks for more than before, and so for more than is specified: at odds with the paper, no harm to the engine. */
function isOverdone(piece: Piece, finding: Finding): boolean {
  return (
    finding.name === 'value-disagrees' &&
    piece.effect === 'strengthened' &&
    isAbout(piece, finding) &&
    piece.now.some(({where}) => where.file === finding.where.file && overlap(where, finding.where))
  );
}

/** To the change at every place that the finding is about: they are told together. */
function bring(pieces: Piece[], {item, subject, aspect, says}: Piece, finding: Finding): void {
  for (const [index, piece] of pieces.entries()) {
    const same = piece.subject === subject && piece.aspect === aspect && piece.says === says;
    if (same && (item === undefined || isAbout(piece, finding)))
      pieces[index] = {...piece, effect: 'weakened', brings: [...(piece.brings ?? []), finding]};
  }
}

function isAbout(piece: Piece, {item, place}: Finding): boolean {
  const everywhere = place === undefined || piece.place === undefined || piece.place === '';
  return piece.item === item && (everywhere || place.split(', ').includes(piece.place));
}

/** What the finding is the loss of, then what points at the very tag, then a weakening of the same item, then a change of the steps that deal with it. */
function explaining(pieces: readonly Piece[], finding: Finding): number {
  const {name, item, where} = finding;
  if (name.startsWith('caution-')) return pieces.findIndex((piece) => warnedOf(piece, finding));
  const of = (piece: Piece) => item !== undefined && isAbout(piece, finding);
  const atTag = (piece: Piece) =>
    piece.now.some((one) => one.where.file === where.file && overlap(one.where, where));
  const grave = ({effect, place: at}: Piece) =>
    effect === 'weakened' || (effect === 'changed' && at !== undefined);
  const tests: readonly ((piece: Piece) => boolean)[] = [
    (piece) => grave(piece) && (LOSS[name]?.includes(piece.aspect) ?? false),
    (piece) => grave(piece) && atTag(piece),
    ({effect}) => effect === 'weakened',
    grave,
  ];
  for (const test of tests) {
    const index = pieces.findIndex((piece) => of(piece) && test(piece));
    if (index !== -1) return index;
  }
  return -1;
}

/** A hazard is told by its word, whatever brings it. */
function warnedOf({aspect, effect, subject}: Piece, {message}: Finding): boolean {
  const word = subject.split(' ').at(-1) ?? '';
  return aspect === 'caution' && effect === 'weakened' && message.includes(` ${word}`);
}

/** The aspects whose loss a finding of this name tells of. */
const LOSS: Readonly<Record<string, readonly string[]>> = {
  'clean-first': ['clean'],
  'install-order': ['install', 'torque'],
  'witnessed-early': ['witness'],
  'measured-slack': ['measure'],
  'lube-first': ['lube'],
  'thread-condition': ['lube', 'threads', 'lubricant'],
  'inspect-first': ['inspect'],
  'single-use-reused': ['renew'],
  'alter-first': ['alter'],
  'cure-short': ['cure'],
  'passes-not-rising': ['passes'],
  'lock-wrong-kind': ['lock'],
  'lock-before-torque': ['lock'],
  'left-out': ['install'],
  'left-in': ['remove'],
  'turned-blocked': ['remove'],
  'left-slack': ['torque', 'angle'],
  'left-unlocked': ['lock'],
  'left-unstriped': ['stripe'],
  'left-unmeasured': ['measure'],
  'left-unsealed': ['seal', 'cure'],
  'left-unwitnessed': ['witness'],
  'left-unrecorded': ['record'],
  'left-unchecked': ['check'],
  'left-unfilled': ['fill'],
  'fluids-mixed': ['drain'],
};

function overlap({span: a}: Finding['where'], {span: b}: Finding['where']): boolean {
  return a.start < b.end && b.start < a.end;
}

function ownPiece(finding: Finding, sides: Sides): Piece {
  const {name, item, place, message, where, story} = finding;
  const own =
    item !== undefined && message.startsWith(item)
      ? message
          .slice(item.length)
          .replace(/^(?:\[[^\]]*\])?:?/, '')
          .trim()
      : message;
  return {
    effect: 'weakened',
    subject: item ?? 'procedure',
    ...(item !== undefined && {item}),
    ...(place !== undefined && {place}),
    aspect: name,
    says: own,
    before: stepsBefore(finding, sides),
    now: [{where, says: message}, ...story],
    brings: [finding],
  };
}

/** The steps that did on the old side what is now missing or comes too late. */
function stepsBefore({name, item}: Finding, {before, renames}: Sides): Remark[] {
  const verbs = LOSS[name] ?? [];
  return before.deeds
    .filter((deed) => idNow(renames, deed.item) === item && verbs.includes(deed.verb))
    .map((deed) => tagRemark(deed));
}
