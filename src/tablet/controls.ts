/** Turns the boxes, blanks and lines of the printed page into controls, each with a name of its own. */
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type {Box, Form} from '../build/form.js';
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import {make} from './dom.js';
import {LONGEST} from './shape.js';

/** A box of the form and everything on the page that shows how it stands. */
export interface Shown {
  readonly box: Box;
  readonly control: HTMLButtonElement | HTMLInputElement;
  /** What it is called as long as it has no answer. */
  readonly name: string;
  /** Says what a reading or number is worth; readings and lines alone have one. */
  readonly verdict?: HTMLElement;
  /** Where initials and time are repeated, by what each of them repeats. */
  readonly stamps: readonly {readonly element: Element; readonly says: 'by' | 'at' | 'both'}[];
}

/** By the key of the box, in the order of the page. */
export function makeControls(form: Form, words: TabletWords): ReadonlyMap<string, Shown> {
  const places = elementsBy('data-box');
  const stamps = {by: elementsBy('data-by'), at: elementsBy('data-at'), both: elementsBy('data-stamp')};
  const shown = new Map<string, Shown>();
  for (const box of form.boxes) {
    const place = places.get(box.key)?.[0];
    if (place === undefined) continue;
    const says = (['by', 'at', 'both'] as const).flatMap((kind) =>
      (stamps[kind].get(box.key) ?? []).map((element) => ({element, says: kind})),
    );
    const row = place.closest('tr');
    shown.set(box.key, {
      box,
      name: nameOf(box, words),
      ...controlFor(box, place, words, shown.size),
      stamps: says,
    });
    if (box.kind === 'tick' && box.goesBack !== undefined)
      row?.querySelector('.what')?.append(backButton(box.key, box.goesBack.to, words));
  }
  return shown;
}

/** Does the same as the box of its step. */
function backButton(key: string, to: string, words: TabletWords): HTMLElement {
  const button = make('button', {type: 'button', 'data-back': key}, [fill(words.backGo, {step: to})]);
  return make('div', {class: 't-fold'}, [button]);
}

/** The box of a control, or of something inside one. */
export function keyOf(target: EventTarget | null): string | undefined {
  const control = target instanceof Element ? target.closest('button[data-box], input[data-box]') : null;
  return control?.getAttribute('data-box') ?? undefined;
}

function elementsBy(attribute: string): ReadonlyMap<string, readonly Element[]> {
  const found = new Map<string, Element[]>();
  for (const element of document.querySelectorAll(`[${attribute}]`)) {
    const key = element.getAttribute(attribute) ?? '';
    found.set(key, [...(found.get(key) ?? []), element]);
  }
  return found;
}

function controlFor(
  box: Box,
  place: Element,
  words: TabletWords,
  number: number,
): Pick<Shown, 'control' | 'verdict'> {
  const className = place.getAttribute('class') ?? '';
  if (box.kind === 'reading' || box.kind === 'line' || box.kind === 'time')
    return inputFor(box, place, className, number, words);
  const signs = box.kind === 'hold' || className.includes('line');
  const control = make(
    'button',
    {
      type: 'button',
      class: signs ? 'sign' : className,
      'data-box': box.key,
      'aria-label': signs ? undefined : nameOf(box, words),
      ...(signs ? {} : {role: 'checkbox', 'aria-checked': 'false'}),
    },
    [place.textContent ?? ''],
  );
  place.replaceWith(control);
  return {control};
}

function inputFor(
  {kind, key, label, ...box}: Box,
  place: Element,
  className: string,
  number: number,
  words: TabletWords,
): Pick<Shown, 'control' | 'verdict'> {
  const id = `verdict-${number}`;
  const unit = 'unit' in box && box.unit !== '' ? `, ${box.unit}` : '';
  const control = make('input', {
    type: 'text',
    class: className,
    'data-box': key,
    'aria-label': label + unit,
    'aria-describedby': id,
    autocomplete: 'off',
    spellcheck: 'false',
    inputmode: kind === 'reading' ? 'decimal' : undefined,
    maxlength: String(LONGEST),
  });
  const verdict = make('span', {class: 'verdict', id});
  const beside = place.nextElementSibling;
  const field = make('span', {class: 'field'}, [control]);
  place.replaceWith(make('span', {class: 'read'}, [field, verdict, make('span', {class: 'rounds'})]));
  // The unit stays beside what is written, and the verdict has the width below both.
  if (beside?.matches('.unit')) field.append(beside);
  if (kind === 'time') field.append(make('button', {type: 'button', 'data-now': key}, [words.now]));
  return {control, verdict};
}

/** The box of a whole step is called by its number: what is to be done stands beside it. */
function nameOf({key, step, label}: Box, words: TabletWords): string {
  return key === `${step}:done` ? fill(words.stepDone, {step}) : label;
}
