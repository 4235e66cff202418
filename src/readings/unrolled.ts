/**
 * The boxes of a sheet with those of later rounds: where a step sends the work back, everything between comes round
 * again, and each round has boxes of its own, so that nothing that was written is lost.
 */
import type {AcceptBox, Box, Form, HoldBox, ReadingBox} from '../build/form.js';
import type {BranchState} from '../procedure/verbs.js';
import type {Answer} from './answers.js';
import {numberIn} from './reading-number.js';
import {sideOf, type Verdict, verdictOf} from './verdict.js';

/** By the key of the box, that of its round. */
export type Answers = ReadonlyMap<string, Answer>;

/** From 1; a box of the first round names none. */
export function roundOf({round = 1}: Pick<Box, 'round'>): number {
  return round;
}

/** The key of a box in a round, from that of its first one. */
export function roundKey(key: string, round: number): string {
  return round === 1 ? key : `${key}@${round}`;
}

/** The key of the box in its first round. */
export function firstKey({key, round = 1}: Pick<Box, 'key' | 'round'>): string {
  return round === 1 ? key : key.slice(0, -`@${round}`.length);
}

/**
 * The form with a box for every round that is begun or answered, one more where a reading is out of its limits, and
 * for each such reading the box by which somebody may stand by it.
 */
export function unrolled(form: Form, answers: Answers): Form {
  const begun = roundsBegun(form, answers);
  const lists = form.boxes.map((box) => roundsFor(box, begun(box.key), answers));
  const keys = new Map(form.boxes.map(({key}, at) => [key, lists[at]?.map((one) => one.key) ?? []]));
  const all = (box: Box): Box => (box.kind === 'hold' ? withAll(box, keys) : box);
  return {
    ...form,
    boxes: lists.flatMap((boxes) => boxes.flatMap((box) => [all(box), ...acceptance(box, answers)])),
  };
}

/**
 * How many rounds of a box the ways back have begun. A record from before there were rounds has second readings
 * alone (`3:1:front:again`), and nothing else of it came round.
 */
export function roundsBegun({boxes}: Form, answers: Answers): (key: string) => number {
  const old = [...answers.values()].some(({history}) => history.some(({box}) => box.endsWith(':again')));
  const more = new Map<string, number>();
  for (const {keys, again} of old ? [] : loopsOf(boxes)) {
    let times = 0;
    while (keys.some((key) => isAnswered(roundKey(key, times + 1), answers))) times++;
    for (const one of times > 0 ? again : []) more.set(one, (more.get(one) ?? 0) + times);
  }
  return (key) => 1 + (more.get(key) ?? 0);
}

/** The ways back that bring the same boxes round share their rounds: any of them begins the next. */
function loopsOf(boxes: readonly Box[]) {
  const loops = new Map<string, {readonly keys: string[]; readonly again: readonly string[]}>();
  for (const box of boxes) {
    if (box.kind !== 'tick' || box.goesBack === undefined || roundOf(box) > 1) continue;
    const name = JSON.stringify([box.goesBack.boxes[0], box.goesBack.boxes.at(-1)]);
    const known = loops.get(name);
    if (known) known.keys.push(box.key);
    else loops.set(name, {keys: [box.key], again: box.goesBack.boxes});
  }
  return [...loops.values()];
}

/** What stands of a reading; undefined where there is none, or no limits. */
export function verdictAt(box: ReadingBox, answers: Answers): Verdict | undefined {
  const number = numberIn(answers.get(box.key)?.now?.value ?? '', box);
  return number === undefined ? undefined : verdictOf(number, box);
}

/** Whether the reading is out, on the side that a branch speaks of. */
export function isOutAs(is: BranchState, box: ReadingBox, answers: Answers): boolean {
  const number = numberIn(answers.get(box.key)?.now?.value ?? '', box);
  const side = number === undefined ? undefined : sideOf(number, box);
  return side !== undefined && (is === 'out' || is === side);
}

/** Whether somebody stands by what the reading says now. */
export function acceptedBy(box: ReadingBox, answers: Answers): Answer['now'] {
  const [read, accepted] = [box.key, acceptKey(box.key)].map((key) => answers.get(key)?.now);
  return read && accepted && accepted.index > read.index ? accepted : undefined;
}

export function isAnswered(key: string, answers: Answers): boolean {
  return answers.get(key)?.now !== undefined;
}

function acceptKey(reading: string): string {
  return `${reading}:accepted`;
}

function roundsFor(box: Box, begun: number, answers: Answers): Box[] {
  const rounds: Box[] = [box];
  for (let round = 2; ; round++) {
    const before = rounds.at(-1);
    const next = {...box, key: roundKey(box.key, round), round};
    const again = before?.kind === 'reading' && verdictAt(before, answers) === 'out';
    if (round > begun && !answers.has(next.key) && !again) return rounds;
    rounds.push(inRound(next, round));
  }
}

/** What a box names of its own round is of that round too. */
function inRound(box: Box, round: number): Box {
  if (box.kind !== 'time' || box.since === undefined) return box;
  return {...box, since: roundKey(box.since, round)};
}

function withAll(hold: HoldBox, keys: ReadonlyMap<string, readonly string[]>): HoldBox {
  return {...hold, not: hold.not.flatMap((key) => keys.get(key) ?? [key])};
}

function acceptance(box: Box, answers: Answers): AcceptBox[] {
  if (box.kind !== 'reading') return [];
  const key = acceptKey(box.key);
  if (verdictAt(box, answers) !== 'out' && !answers.has(key)) return [];
  const {step, label, onlyIf, round} = box;
  return [{kind: 'accept', key, step, label, onlyIf, ...(round !== undefined && {round}), reading: box.key}];
}
