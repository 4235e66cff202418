/** Shows on the page how a box stands: ticked or not, what was read, what that is worth, who did it and when. */
/// <reference lib="dom" />
import type {Box} from '../build/form.js';
import type {Said} from '../readings/answers.js';
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import type {Shown} from './controls.js';
import {make, shape} from './dom.js';
import {judged, typedReading} from './judge.js';

export function paint(shown: Shown, now: Said | undefined, words: TabletWords): void {
  const {box, control, stamps} = shown;
  if (control instanceof HTMLInputElement) {
    // What is being typed is not taken away from under the hand.
    if (document.activeElement !== control) control.value = now?.value ?? '';
    paintVerdict(shown, now?.value ?? '', words);
  } else if (control.className.startsWith('sign')) paintSignature(box, control, now, words);
  else control.setAttribute('aria-checked', String(now !== undefined));
  for (const {element, says} of stamps) paintStamp(element, says, now);
}

/** What a text is worth in its box, whether it is written down already or still being typed. */
export function paintVerdict({box, control, verdict}: Shown, text: string, words: TabletWords): void {
  if (verdict === undefined) return;
  const says = verdictOn(box, text, words);
  control.toggleAttribute('aria-invalid', says?.state === 'refused');
  verdict.className = `verdict ${says?.state ?? ''}`.trim();
  verdict.replaceChildren(...(says === undefined ? [] : [...shapeOf(says.state), says.text]));
}

interface Verdict {
  readonly state: 'in' | 'near' | 'out' | 'refused';
  readonly text: string;
}

/** In words; undefined where there is nothing to say. */
export function verdictOn(box: Box, text: string, words: TabletWords): Verdict | undefined {
  if (box.kind === 'line') return verdictOnLine(box.expected, text, words);
  if (box.kind !== 'reading') return undefined;
  const typed = typedReading(text, box.unit);
  if (!typed.ok) return {state: 'refused', text: typed.why === 'comma' ? words.comma : words.noNumber};
  const says = judged(typed.value, box);
  if (says === undefined || says.verdict === 'unjudged') return undefined;
  if (says.verdict === 'in') return {state: 'in', text: words.within};
  if (says.verdict === 'out') return {state: 'out', text: words.outOf};
  const near = fill(words.nearDoubt, {doubt: box.doubt ?? 0, unit: box.unit});
  return {state: 'near', text: says.why === 'doubt' ? near : words.nearTenth};
}

/** Stamped numbers are compared without blanks and case. */
function verdictOnLine(expected: string | undefined, text: string, words: TabletWords): Verdict | undefined {
  if (expected === undefined || text.trim() === '') return undefined;
  const plain = (number: string) => number.normalize('NFKC').replace(/\s/g, '').toUpperCase();
  return plain(text) === plain(expected)
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
