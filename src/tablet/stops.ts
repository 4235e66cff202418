/** What stands below readings that are out of their limits: stop, whom to show them, and the ways on. */
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type {Box, ReadingBox} from '../build/form.js';
import {acceptedBy, firstKey, isOutAs, roundOf} from '../readings/unrolled.js';
import type {TabletWords} from '../sheet/page-data.js';
import {fill} from '../sheet/words.js';
import type {Shown} from './controls.js';
import {make, shape} from './dom.js';
import {localTime} from './paint.js';
import type {Session} from './session.js';

export interface Stops {
  paint(): void;
}

/** One below the readings of each entry; its buttons say by `data-again` and `data-accept` which box they are for. */
export function makeStops(session: Session, shown: ReadonlyMap<string, Shown>, words: TabletWords): Stops {
  const entries = new Map<Element, {readonly boxes: Box[]; readonly stop: HTMLElement; said: string}>();
  for (const {box, control} of shown.values()) {
    const place = box.kind === 'reading' ? control.closest('.entry') : null;
    if (place === null) continue;
    const known = entries.get(place);
    if (known) known.boxes.push(box);
    else {
      const stop = make('div', {class: 'stop'});
      place.append(stop);
      entries.set(place, {boxes: [box], stop, said: ''});
    }
  }
  return {
    paint() {
      const {out} = session.standing;
      for (const entry of entries.values()) {
        const {boxes, stop} = entry;
        const keys = new Set(boxes.map(({key}) => key));
        const standing = out.filter((one) => keys.has(firstKey(one)));
        const nodes = [...stopNodes(standing, session, words), ...acceptedNodes(boxes, session, words)];
        // What stands there already is left alone: it may have the focus.
        const said = nodes.map((node) => node.textContent).join();
        if (said === entry.said) continue;
        entry.said = said;
        stop.className = standing.length > 0 ? 'stop standing' : 'stop';
        stop.replaceChildren(...nodes);
      }
    },
  };
}

function stopNodes(out: readonly ReadingBox[], session: Session, words: TabletWords): Node[] {
  const [first] = out;
  if (first === undefined) return [];
  const branch = session.standing.form.boxes.find(({onlyIf}) =>
    onlyIf.some(({is, boxes}) => isOutAs(is, first, session.answers) && boxes.includes(firstKey(first))),
  );
  const steps = branch === undefined ? words.stopNoSteps : fill(words.stopSteps, {step: branch.step});
  const now = session.standing.rounds.get(firstKey(first))?.[0];
  const round = now === undefined ? 1 : roundOf(session.now(now));
  const says = round > roundOf(first) ? fill(words.stopRound, {number: round}) : steps;
  return [
    make('p', {class: 'stop-title'}, [shape('out'), words.stopTitle]),
    make('p', {}, [says]),
    ...out.map((box) => {
      const value = `${session.answers.get(box.key)?.now?.value ?? ''} ${box.unit}`.trim();
      const name = box.place === '' ? '' : `${box.place.replaceAll('-', ' ')}: `;
      const again = make(
        'button',
        {type: 'button', 'data-again': firstKey(box), 'aria-label': `${words.readAgain}: ${box.label}`},
        [words.readAgain],
      );
      const accept = make(
        'button',
        {type: 'button', 'data-accept': box.key, 'aria-label': `${words.acceptButton}: ${box.label}`},
        [words.acceptButton],
      );
      // Where the sheet has steps for it, they bring the next round.
      return make('p', {class: 'stop-reading'}, [
        make('b', {}, [`${name}${value}`]),
        ...(branch === undefined ? [again] : []),
        accept,
      ]);
    }),
  ];
}

/** Who stands by which reading, and why: it is printed with the sheet. */
function acceptedNodes(boxes: readonly Box[], session: Session, words: TabletWords): Node[] {
  return boxes.flatMap(({key}) =>
    (session.standing.rounds.get(key) ?? []).flatMap((box) => {
      const accepted = box.kind === 'reading' ? acceptedBy(box, session.answers) : undefined;
      if (box.kind !== 'reading' || accepted === undefined) return [];
      const value = `${session.answers.get(box.key)?.now?.value ?? ''} ${box.unit}`.trim();
      const {by, at, value: reason} = accepted;
      const says = {name: box.place.replaceAll('-', ' '), value, by, at: localTime(at), reason};
      return [make('p', {class: 'stop-accepted'}, [fill(words.acceptedAs, says)])];
    }),
  );
}
