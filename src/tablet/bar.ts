/** The bar at the head of the page: who works, how far the sheet is, and the ways in and out for its record. */
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import type {Shown} from './controls.js';
import {make} from './dom.js';
import {type Progress, progressOf} from './progress.js';
import type {Session} from './session.js';

export interface Bar {
  /** What people may ask of the bar. */
  readonly buttons: Readonly<Record<'who' | 'next' | 'export' | 'import' | 'fresh', HTMLButtonElement>>;
  readonly file: HTMLInputElement;
  /** Shows whose initials are written, and how far the sheet and its sections are. */
  paint(who: string | undefined): void;
  /** Says something once, to eyes and to a screen reader. */
  say(text: string): void;
  /** Something that stays until it is over; empty when it is. */
  alarm(text: string): void;
}

/** Puts the bar above the sheet. */
export function makeBar(session: Session, shown: ReadonlyMap<string, Shown>, words: TabletWords): Bar {
  const button = (text: string) => make('button', {type: 'button'}, [text]);
  const buttons = {
    who: button(words.change),
    next: button(words.next),
    export: button(words.export),
    import: button(words.import),
    fresh: button(words.fresh),
  };
  // What nobody does twice a day is out of the way of a hasty thumb.
  const more = make('details', {class: 't-more'}, [
    make('summary', {}, [words.more]),
    make('div', {}, [buttons.import, buttons.fresh]),
  ]);
  const who = make('span', {class: 't-who'});
  const whole = meter();
  const says = make('p', {class: 't-says', role: 'status'});
  const alarm = make('p', {class: 't-alarm', role: 'alert'});
  const file = make('input', {type: 'file', accept: '.json,application/json', hidden: ''});
  const bar = make('section', {class: 't-bar', 'aria-label': words.bar}, [
    make('div', {}, [who, buttons.who, whole.element, buttons.next, buttons.export, more, file]),
    alarm,
    says,
  ]);
  document.body.prepend(bar);
  clearOfBar(bar);
  const sections = makeSections(shown);
  return {
    buttons,
    file,
    paint(name) {
      who.textContent = name === undefined ? words.nobody : fill(words.working, {name});
      whole.show(progressOf(session.standing.form.boxes, session.answers, session.standing.due), words);
      const {rounds, due} = session.standing;
      for (const {boxes, show} of sections) {
        const all = boxes.flatMap(({key}) => rounds.get(key) ?? []);
        show(progressOf(all, session.answers, due), words);
      }
    },
    say(text) {
      says.textContent = text;
    },
    alarm(text) {
      if (alarm.textContent !== text) alarm.textContent = text;
    },
  };
}

/** Keeps what has the focus from lying under the bar (WCAG 2.2, 2.4.11), however high that is. */
function clearOfBar(bar: HTMLElement): void {
  new ResizeObserver(() => {
    document.documentElement.style.scrollPaddingTop = `${bar.offsetHeight + 12}px`;
  }).observe(bar);
}

/** A meter below the heading of each section, and the boxes that it counts. */
function makeSections(shown: ReadonlyMap<string, Shown>) {
  const boxes = new Map<Element, Shown['box'][]>();
  for (const {box, control} of shown.values()) {
    const section = control.closest('[data-section]');
    if (section !== null) boxes.set(section, [...(boxes.get(section) ?? []), box]);
  }
  return [...boxes].map(([section, inside]) => {
    const {element, show} = meter();
    const heading = section.querySelector('h1, h2, h3, h4, h5, h6');
    (heading?.parentElement?.matches('.closing-head') ? heading.parentElement : heading)?.after(element);
    return {boxes: inside, show};
  });
}

function meter() {
  const bar = make('progress', {'aria-hidden': 'true'});
  const text = make('span');
  const element = make('span', {class: 't-progress'}, [bar, text]);
  return {
    element,
    show({done, of}: Progress, words: TabletWords) {
      bar.max = Math.max(1, of);
      bar.value = of === 0 ? 1 : done;
      text.textContent = fill(words.progress, {done, of});
    },
  };
}
