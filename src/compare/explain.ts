/** Hangs each finding that the steps brought on the change that explains it; one that no change explains is a change of its own. */
import type {Finding} from '../findings/model.js';
import type {Piece} from './model.js';

export function withFindings(pieces: readonly Piece[], found: readonly Finding[]): Piece[] {
  const result = [...pieces];
  for (const finding of found) {
    const index = explaining(result, finding);
    const piece = result[index];
    if (piece === undefined) result.push(ownPiece(finding));
    else result[index] = {...piece, effect: 'weakened', brings: [...(piece.brings ?? []), finding]};
  }
  return result;
}

/** What the finding is the loss of, then what points at the very tag, then a weakening of the same item, then a change of the steps that deal with it. */
function explaining(pieces: readonly Piece[], finding: Finding): number {
  const {name, item, place, where} = finding;
  if (name.startsWith('caution-')) return pieces.findIndex((piece) => warnedOf(piece, finding));
  const of = (piece: Piece) =>
    item !== undefined &&
    piece.item === item &&
    (place === undefined || !piece.place || place.includes(piece.place));
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
  'left-slack': ['torque', 'angle'],
  'left-unlocked': ['lock'],
  'left-unmeasured': ['measure'],
  'left-unsealed': ['seal', 'cure'],
  'left-unwitnessed': ['witness'],
  'left-unrecorded': ['record'],
  'left-unchecked': ['check'],
  'left-unfilled': ['fill'],
};

function overlap({span: a}: Finding['where'], {span: b}: Finding['where']): boolean {
  return a.start < b.end && b.start < a.end;
}

function ownPiece(finding: Finding): Piece {
  const {name, item, place, message, where, story} = finding;
  const own =
    item !== undefined && message.startsWith(item)
      ? message
          .slice(item.length)
          .replace(/^\[[^\]]*\]/, '')
          .trim()
      : message;
  return {
    effect: 'weakened',
    subject: item ?? 'procedure',
    ...(item !== undefined && {item}),
    ...(place !== undefined && {place}),
    aspect: name,
    says: own,
    before: [],
    now: [{where, says: message}, ...story],
    brings: [finding],
  };
}
