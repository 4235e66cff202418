/** The steps that are followed in one case only: folded away until a reading calls for them, or a person opens them. */
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type {Box} from '../build/form.js';
import {isAnswered} from '../readings/unrolled.js';
import type {TabletWords} from '../sheet/page-data.js';
import {make} from './dom.js';
import type {Session} from './session.js';

export interface Branches {
  /** Opens and folds by how things stand; true when a branch has come to be called for. */
  paint(): boolean;
  /** Opens the branches that a box stands in. */
  reveal(box: Box): void;
}

interface Part {
  readonly step: string;
  /** What stands in it, deeper branches and all; and what stands in no deeper one, its heading among it. */
  readonly boxes: readonly Box[];
  readonly own: readonly Box[];
  readonly button: HTMLButtonElement;
  called: boolean;
  /** What a person chose, until the readings call for something else. */
  chosen: boolean | undefined;
}

export function makeBranches(session: Session, words: TabletWords): Branches {
  const bodies = [...document.querySelectorAll('tbody[data-inside]')].filter(
    (one) => one instanceof HTMLElement,
  );
  const insideOf = (body: Element) => (body.getAttribute('data-inside') ?? '').split(' ');
  const parts = new Map<string, Part>();
  for (const head of document.querySelectorAll('tbody[data-branch]')) {
    const step = head.getAttribute('data-branch') ?? '';
    const keys = new Set(
      bodies.filter((body) => insideOf(body).includes(step)).flatMap((body) => keysIn(body)),
    );
    const boxes = session.form.boxes.filter(({key}) => keys.has(key));
    const depth = head.getAttribute('data-inside')?.split(' ').length ?? 0;
    const button = make('button', {type: 'button', 'data-fold': step});
    head.querySelector('td')?.append(make('div', {class: 't-fold'}, [button]));
    const own = session.form.boxes.filter(
      (box) => box.onlyIf.length === depth + 1 && (box.step === step || keys.has(box.key)),
    );
    parts.set(step, {step, boxes, own, button, called: false, chosen: undefined});
  }

  const isOpen = (part: Part) =>
    part.chosen ??
    (part.called || part.boxes.some((box) => isAnswered(session.now(box).key, session.answers)));

  const show = () => {
    for (const part of parts.values()) {
      const open = isOpen(part);
      part.button.textContent = open ? words.closeBranch : words.openBranch;
      part.button.setAttribute('aria-expanded', String(open));
    }
    const folded = new Set([...parts.values()].filter((part) => !isOpen(part)).map(({step}) => step));
    for (const body of bodies) body.hidden = insideOf(body).some((step) => folded.has(step));
  };

  document.addEventListener('click', ({target}) => {
    const button = target instanceof Element ? target.closest('button[data-fold]') : null;
    const part = parts.get(button?.getAttribute('data-fold') ?? '');
    if (part === undefined) return;
    part.chosen = !isOpen(part);
    show();
  });

  return {
    paint() {
      let fresh = false;
      for (const part of parts.values()) {
        const called = part.own.some((box) => session.standing.due(session.now(box)));
        if (called !== part.called) part.chosen = undefined;
        fresh ||= called && !part.called;
        part.called = called;
      }
      show();
      return fresh;
    },
    reveal({key}) {
      for (const part of parts.values()) {
        if (part.boxes.some((box) => box.key === key)) part.chosen = true;
      }
      show();
    },
  };
}

function keysIn(body: Element): string[] {
  return [...body.querySelectorAll('[data-box]')].map((element) => element.getAttribute('data-box') ?? '');
}
