/** Runs of safety wire: how tight it is twisted, how many fasteners one wire joins, and how much to cut. */
import {convert} from '../quantity/convert.js';
import {formatQuantity} from '../quantity/format.js';
import type {Quantity} from '../quantity/model.js';
import {unit} from '../quantity/units.js';
import {figures} from './result.js';
import type {Twist} from './safety-wire.js';
import {
  FINE_WIRE,
  LONGEST_SPAN,
  LONGEST_WIRE,
  PIGTAIL,
  SINGLE_SPACING,
  TWISTS,
  TWISTS_SOURCE,
  WIDE_RUN,
  WIDE_SPACING,
} from './wire-rules.js';
import {notOf, refused, type Worked} from './worked.js';

export interface Twists {
  /** Twists an inch. */
  readonly low: number;
  readonly high: number;
}

/** How tight to twist a wire of 0.020 to 0.060 in. The source is second-hand: check it before relying on it. */
export function twistsFor(wire: Quantity): Worked<Twists> {
  const refusal = notOf('length', {'the wire': wire});
  if (refusal) return refusal;
  const size = inches(wire);
  const row = TWISTS.find(({upTo}) => size <= upTo + 1e-9);
  if (row === undefined || size < FINE_WIRE - 1e-9)
    return refused(
      `no twist is published for ${formatQuantity(wire)} wire`,
      'the table goes from 0.020 to 0.060 in',
    );
  return {
    ok: true,
    result: {low: row.low, high: row.high},
    formula: 'by the diameter of the wire',
    inputs: [{name: 'wire', value: wire}],
    source: TWISTS_SOURCE,
    advisory: 'Second-hand table: check it against your copy of NASM33540.',
  };
}

export interface Run {
  /** Fasteners that one wire may join. */
  readonly most: number;
  /** Runs of wire that the count takes. */
  readonly runs: number;
}

/**
 * How many fasteners one wire may join: three where they are 4 to 6 in apart, as many as 24 in of wire does where they are closer, none
 * together beyond 6 in. Single wire only to 2 in apart. Source: TM 10-3930-659-34 2-22, TM 5-5420-202-20-4, TM 1-1500-204-23-6 p. 2-79.
 */
export function wireRun(inputs: {
  readonly count: number;
  readonly spacing: Quantity;
  readonly wire: Quantity;
  readonly head?: Quantity;
  readonly twist?: Twist;
}): Worked<Run> {
  const {count, spacing, wire, head, twist = 'double'} = inputs;
  const refusal = notOf('length', {'the spacing': spacing, 'the wire': wire, 'the head': head});
  if (refusal) return refusal;
  if (!(Number.isInteger(count) && count >= 2 && count <= 1000))
    return refused(`${count} fasteners make no run`, 'give 2 or more');
  const apart = inches(spacing);
  if (apart > LONGEST_SPAN + 1e-9)
    return refused(
      `fasteners ${formatQuantity(spacing)} apart are not wired together`,
      `wire each to a tie point no more than ${LONGEST_SPAN} in away`,
    );
  if (twist === 'single' && apart > SINGLE_SPACING + 1e-9)
    return refused(`single wire is for fasteners to ${SINGLE_SPACING} in apart`, 'twist the wire double');
  const most = apart >= WIDE_SPACING - 1e-9 ? WIDE_RUN : mostWithin(spacing, wire, head, twist);
  if (most < 2)
    return refused(`${LONGEST_WIRE} in of wire does not join two of them`, 'wire each to a tie point');
  return {
    ok: true,
    result: {most, runs: Math.ceil(count / most)},
    formula: `${WIDE_SPACING} to ${LONGEST_SPAN} in apart: ${WIDE_RUN} in a run; closer: what ${LONGEST_WIRE} in of wire does`,
    inputs: [
      {name: 'fasteners', value: String(count)},
      {name: 'spacing', value: spacing},
      {name: 'wire', value: wire},
      {name: 'heads', value: head ?? 'not counted'},
      {name: 'twist', value: twist},
    ],
    source: 'TM 10-3930-659-34 section 2-22; TM 5-5420-202-20-4; TM 1-1500-204-23-6 p. 2-79',
  };
}

function mostWithin(spacing: Quantity, wire: Quantity, head: Quantity | undefined, twist: Twist): number {
  let most = 1;
  while (
    most < 1000 &&
    cutInches(
      Array.from({length: most}, () => inches(spacing)),
      wire,
      head,
      twist,
    ) <= LONGEST_WIRE
  )
    most++;
  return most;
}

/**
 * Wire to cut for a run: 2·(Σ spans + n·π·D/2 + pigtail), lengthened for double twist by √(1 + (π·d·t)²), t the middle of the twists an
 * inch. Single wire: once round. Geometry; the pliers' hold comes on top.
 */
export function wireLength(inputs: {
  /** Hole to hole, one fewer than the fasteners. */
  readonly spans: readonly Quantity[];
  readonly wire: Quantity;
  /** Diameter of the heads that the wire goes round; none where nothing is said. */
  readonly head?: Quantity;
  readonly twist?: Twist;
}): Worked<Quantity> {
  const {spans, wire, head, twist = 'double'} = inputs;
  const named = Object.fromEntries(spans.map((span, index) => [`span ${index + 1}`, span]));
  const refusal = notOf('length', {...named, 'the wire': wire, 'the head': head});
  if (refusal) return refusal;
  if (spans.length === 0) return refused('the run has no span', 'give the distance from hole to hole');
  const long = spans.find((span) => inches(span) > LONGEST_SPAN + 1e-9);
  if (long)
    return refused(`a span of ${formatQuantity(long)} is too long`, `${LONGEST_SPAN} in is the longest`);
  const cut = cutInches(spans.map(inches), wire, head, twist);
  const metric = wire.unit.system === 'metric';
  const advisory = `Add what the pliers hold.${cut > LONGEST_WIRE ? ` More than ${LONGEST_WIRE} in: split the run.` : ''}`;
  return {
    ok: true,
    result: metric ? figures(cut * 25.4, 'mm', 2) : figures(cut, 'in', 2),
    formula: twist === 'double' ? '2·(Σs + n·π·D/2 + pigtail)·√(1 + (π·d·t)²)' : 'Σs + n·π·D/2 + 2·pigtail',
    inputs: [
      {name: 'spans', value: spans.map(formatQuantity).join(', ')},
      {name: 'wire', value: wire},
      {name: 'heads', value: head ?? 'not counted'},
      {name: 'pigtail', value: `${PIGTAIL} in`},
      {name: 'twist', value: twist},
    ],
    source: 'geometry; pigtail AC 43.13-1B 7-125; twists as for the wire',
    advisory,
  };
}

function cutInches(
  spans: readonly number[],
  wire: Quantity,
  head: Quantity | undefined,
  twist: Twist,
): number {
  const round = head ? ((spans.length + 1) * Math.PI * inches(head)) / 2 : 0;
  const path = spans.reduce((sum, span) => sum + span, 0) + round;
  if (twist === 'single') return path + 2 * PIGTAIL;
  const twists = twistsFor(wire);
  const turns = twists.ok ? (twists.result.low + twists.result.high) / 2 : 7;
  return 2 * (path + PIGTAIL) * Math.hypot(1, Math.PI * inches(wire) * turns);
}

function inches(length: Quantity): number {
  return convert(length, unit('in')).value;
}
