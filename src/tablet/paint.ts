/** Shows on the page how a box stands: ticked or not, what was read, what that is worth, who did it and when. */
/// <reference lib="dom" />
import type {Box, TimeBox} from '../build/form.js';
import type {Said} from '../readings/answers.js';
import {clockTime, durationText} from '../readings/clock-time.js';
import {stamped} from '../readings/stamped.js';
import {roundOf} from '../readings/unrolled.js';
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import type {Shown} from './controls.js';
import {make, shape} from './dom.js';
import {judged, meant, type Typed, typedReading, typedTime} from './judge.js';
import {paintColumns, type ReadRound} from './paper-rounds.js';
import type {Session} from './session.js';

/** How a box stands in the round that the work has come to, with the rounds before it. */
export interface Painted {
  readonly box: Box;
  readonly now: Said | undefined;
  readonly before: readonly {readonly round: number; readonly said: Said}[];
  /** What else was said that the box is judged by: when that began which it ends. */
  readonly since?: Said | undefined;
}

export function paintedOf(session: Session, first: Box): Painted {
  const box = session.now(first);
  const {answers, standing} = session;
  const rounds = standing.rounds.get(first.key) ?? [];
  return {
    box,
    now: answers.get(box.key)?.now,
    before: rounds.flatMap((one) => {
      const said = roundOf(one) < roundOf(box) ? answers.get(one.key)?.now : undefined;
      return said === undefined ? [] : [{round: roundOf(one), said}];
    }),
    since: box.kind === 'time' ? answers.get(box.since ?? '')?.now : undefined,
  };
}

/** The same for the same look, so that nothing is drawn anew for a change elsewhere. */
export function stateOf({box, now, before, since}: Painted): string {
  return JSON.stringify([box.key, now?.index, since?.index, before.map(({said}) => said.index)]);
}

/** Touches only what says something else now: a control with the focus stays as it is. */
export function paint(shown: Shown, painted: Painted, words: TabletWords): void {
  const {control, stamps} = shown;
  const {box, now, before} = painted;
  if (control instanceof HTMLInputElement) {
    // What is being typed is not taken away from under the hand.
    if (document.activeElement !== control) control.value = now?.value ?? '';
    paintVerdict(shown, painted, now?.value ?? '', words);
    const rounds = control.closest('.read')?.querySelector('.rounds');
    rounds?.replaceChildren(...before.map(({round, said}) => roundNode(round, `${said.value} (${said.by})`)));
    if (box.kind === 'reading') paintColumns(control, roundsRead(painted, words), roundOf(box));
  } else if (control.className.startsWith('sign')) paintSignature(box, control, now, words);
  else {
    control.setAttribute('aria-checked', String(now !== undefined));
    if (stamps.length === 0) paintEarlier(shown, painted, words);
  }
  for (const {element, says} of stamps) {
    paintStamp(element, says, now);
    if (says === 'both') paintRounds(element, painted, words);
  }
}

/** What was read in each round, with what it is worth. */
function roundsRead({box, now, before}: Painted, words: TabletWords): ReadRound[] {
  const all = now === undefined ? before : [...before, {round: roundOf(box), said: now}];
  return all.map(({round, said: {value, by}}) => {
    const says = verdictOn({box}, value, words);
    return {
      round,
      value,
      note: [...(says === undefined ? [] : [says.text]), `(${by})`].join(' '),
      isOut: says?.state === 'out',
    };
  });
}

/** A small box has no room for who did the rounds before: the last of them stands in its corner, and in its name. */
function paintEarlier({control, name}: Shown, {box, before}: Painted, words: TabletWords): void {
  const last = before.at(-1);
  if (last === undefined) control.removeAttribute('data-before');
  else control.setAttribute('data-before', `${last.round}✓`);
  const rounds = before.map(({round, said}) => `${round}: ${said.by}`);
  const now = roundOf(box) === 1 ? [] : [fill(words.round, {number: roundOf(box)})];
  control.setAttribute('aria-label', [name, ...rounds, ...now].join(', '));
}

/** Who did the rounds before, and which one it is. */
function paintRounds(element: Element, {box, before}: Painted, words: TabletWords): void {
  if (roundOf(box) === 1) return;
  element.prepend(
    ...before.map(({round, said}) => roundNode(round, said.by)),
    make('span', {class: 'stamp-round'}, [fill(words.round, {number: roundOf(box)})]),
  );
}

function roundNode(round: number, text: string): HTMLElement {
  return make('span', {class: 'stamp-time'}, [`${round}: ${text}`]);
}

/** What a text is worth in its box, whether it is written down already or still being typed. */
export function paintVerdict(
  {control, verdict}: Shown,
  painted: Painted,
  text: string,
  words: TabletWords,
): void {
  if (verdict === undefined) return;
  const says = verdictOn(painted, text, words);
  control.toggleAttribute('aria-invalid', says?.state === 'refused');
  verdict.className = `verdict ${says?.state ?? ''}`.trim();
  verdict.replaceChildren(...(says === undefined ? [] : [...shapeOf(says.state), says.text]));
}

interface Verdict {
  readonly state: 'in' | 'near' | 'out' | 'refused';
  readonly text: string;
}

type Refused = Extract<Typed, {readonly ok: false}>;

/** In words; undefined where there is nothing to say. */
export function verdictOn(
  {box, since}: Pick<Painted, 'box' | 'since'>,
  text: string,
  words: TabletWords,
): Verdict | undefined {
  if (box.kind === 'line') return verdictOnLine(box.expected, text, words);
  if (box.kind === 'time') return verdictOnTime(box, since, text, words);
  if (box.kind !== 'reading') return undefined;
  const typed = typedReading(text, box);
  if (!typed.ok) return {state: 'refused', text: refusedText(typed.why, box.unit, words)};
  const says = judged(typed.value, box);
  if (says === undefined || says.verdict === 'unjudged') return undefined;
  if (says.verdict === 'in') return {state: 'in', text: words.within};
  if (says.verdict === 'out') {
    const likely = meant(typed.value, box);
    const hint = likely === undefined ? '' : ` ${fill(words.meant, {value: `${likely} ${box.unit}`.trim()})}`;
    return {state: 'out', text: (says.side === 'over' ? words.outOver : words.outBelow) + hint};
  }
  const near = fill(words.nearDoubt, {doubt: box.doubt ?? 0, unit: box.unit});
  return {state: 'near', text: says.why === 'doubt' ? near : words.nearTenth};
}

function refusedText(why: Refused['why'], unit: string, words: TabletWords): string {
  if (why === 'comma') return words.comma;
  if (why === 'nought') return words.belowNought;
  const example = EXAMPLES[unit] ?? '2.5';
  return fill(words.noNumber, {unit: unit === '' ? '' : ` (${unit})`, example});
}

/** How a reading looks in its unit. */
const EXAMPLES: Readonly<Record<string, string>> = {in: '0.0025', mm: '0.06'};

/** What is left too short a time is said; nobody can see it from the joint. */
function verdictOnTime(
  {minutes}: TimeBox,
  since: Said | undefined,
  text: string,
  words: TabletWords,
): Verdict | undefined {
  const typed = typedTime(text, localTime(new Date().toISOString()).slice(0, 10));
  if (!typed.ok) return {state: 'refused', text: words.noTime};
  const [from, to] = [since?.value ?? '', typed.value].map((value) => clockTime(value, ''));
  if (from === undefined || to === undefined) return undefined;
  if (to < from) return {state: 'out', text: words.endsBefore};
  const left = {left: durationText(to - from), least: durationText(minutes ?? 0)};
  if (minutes === undefined || to - from >= minutes) return {state: 'in', text: fill(words.leftFor, left)};
  return {state: 'out', text: fill(words.tooShort, left)};
}

/** Stamped numbers are compared without blanks and case. */
function verdictOnLine(expected: string | undefined, text: string, words: TabletWords): Verdict | undefined {
  if (expected === undefined || text.trim() === '') return undefined;
  return stamped(text) === stamped(expected)
    ? {state: 'in', text: words.asOnJob}
    : {state: 'out', text: fill(words.notAsOnJob, {expected})};
}

function shapeOf(state: Verdict['state']): SVGElement[] {
  return [shape(state === 'refused' ? 'out' : state)];
}

function paintSignature(box: Box, control: HTMLElement, now: Said | undefined, words: TabletWords): void {
  control.className = now === undefined ? 'sign unsigned' : 'sign';
  control.textContent = now?.by ?? words.sign;
  const name = box.label;
  control.setAttribute(
    'aria-label',
    now === undefined
      ? `${words.sign}: ${name}`
      : fill(words.signedBy, {name, by: now.by, at: localTime(now.at)}),
  );
}

function paintStamp(element: Element, says: 'by' | 'at' | 'both', now: Said | undefined): void {
  element.replaceChildren(...(now === undefined ? [] : stampNodes(says, now.by, localTime(now.at))));
}

function stampNodes(says: 'by' | 'at' | 'both', by: string, time: string): (string | Node)[] {
  if (says === 'by') return [by];
  if (says === 'at') return [time];
  return [make('span', {class: 'stamp'}, [by]), make('span', {class: 'stamp-time'}, [time])];
}

/** `2026-03-01 09:30` by the clock on the wall. */
export function localTime(iso: string): string {
  const at = new Date(iso);
  const two = (number: number) => String(number).padStart(2, '0');
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `${day} ${two(at.getHours())}:${two(at.getMinutes())}`;
}
