/** Everything that is signed: hold points, waivers, the closing of a sheet. */
import type {Element} from 'hast';
import {h} from 'hastscript';
import {box, line} from './html-parts.js';
import type {Hold, Waiver} from './model.js';
import {fill, type Words} from './words.js';

export function holdNode({name, by, asks}: Hold, words: Words): Element {
  const second = by === undefined ? words.witnessedBy : fill(words.witnessedByRole, {role: by});
  return h('div.hold', {role: 'group', ariaLabel: `${words.hold}: ${name}`}, [
    h('p.hold-title', [h('span.word', words.hold), ` ${name}`]),
    h('p', words.holdText),
    ...(asks.length === 0
      ? []
      : [
          h('p', `${words.holdAsks}:`),
          h(
            'ul.ticks',
            asks.map((ask) => h('li', [box('small'), h('span', ask)])),
          ),
        ]),
    signs([words.doneBy, second], words),
  ]);
}

/** A line for a signature and one for the date, for each of these people. */
export function signs(people: readonly string[], words: Words): Element {
  return h(
    'dl.signs',
    people.map((person) =>
      h('div', [h('dt', person), h('dd', [line(), h('span.tag', words.date), line('date')])]),
    ),
  );
}

export function waiverTable(
  waivers: readonly (Waiver & {readonly procedure?: number})[],
  words: Words,
): Element {
  const ofBook = waivers.some(({procedure}) => procedure !== undefined);
  const titles = [ofBook ? words.sheetAndStep : words.number, words.finding, words.reason, words.approvedBy];
  return h('section', {ariaLabelledBy: ['waivers']}, [
    h('h2', {id: 'waivers'}, words.waivers),
    h('table.list', [
      h(
        'thead',
        h(
          'tr',
          titles.map((title) => h('th', {scope: 'col'}, title)),
        ),
      ),
      h(
        'tbody',
        waivers.map(({procedure, step, finding, reason, approvedBy}) =>
          h('tr', [
            h('th.number', {scope: 'row'}, procedure === undefined ? step : `${procedure} · ${step}`),
            h('td', finding),
            h('td', reason),
            h('td', approvedBy ?? line()),
          ]),
        ),
      ),
    ]),
  ]);
}

/** The end of a sheet or book: what is signed for, and by whom. */
export function closing(title: string, text: string, words: Words): Element {
  return h('section.closing', {ariaLabelledBy: ['closing']}, [
    h('div.closing-head', [
      h('h2', {id: 'closing'}, title),
      h('p.complete', [box('large'), h('span', words.closingBox)]),
    ]),
    h('p', text),
    signs([words.builtBy, words.checkedBy], words),
  ]);
}
