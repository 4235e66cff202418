/** Everything that is signed: hold points, waivers, the closing of a sheet. */
import type {Element} from 'hast';
import {h} from 'hastscript';
import {ticksNode} from './html-entry.js';
import {box, type Filled, line, underHeads} from './html-parts.js';
import type {CLOSING} from './keys.js';
import {secondSigner} from './layout.js';
import type {Hold, Waiver} from './model.js';
import type {Words} from './words.js';

/** `done` is the key of the step's own box. */
export function holdNode(hold: Hold, done: string, words: Words): Element {
  const {key, name, asked, askKeys} = hold;
  return h('div.hold', {role: 'group', ariaLabel: `${words.hold}: ${name}`}, [
    h('p.hold-title', [h('span.word', words.hold), ` ${name}`]),
    h('p', words.holdText),
    ...(asked.length === 0 ? [] : [h('p', `${words.holdAsks}:`), ticksNode(asked, askKeys)]),
    signs(
      [
        {person: words.doneBy, by: done, at: done},
        {person: secondSigner(hold, words), box: key, at: key},
      ],
      words,
    ),
  ]);
}

/** A line for a signature and one for the date, for each of these people. */
function signs(people: readonly Signer[], words: Words): Element {
  return h(
    'dl.signs',
    people.map(({person, at, ...filled}) =>
      h('div', [
        h('dt', person),
        h('dd', [line('name', filled), h('span.tag', words.date), line('date', {at})]),
      ]),
    ),
  );
}

/** Who signs, and the keys of what is written there. */
interface Signer extends Filled {
  readonly person: string;
}

/** What is let stand in spite of a finding, with who answers for it; a line to sign on where nobody is named yet. */
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
        waivers.map(({procedure, step, finding, reason, approvedBy}) => {
          const row = h('tr', [
            h('th.number', {scope: 'row'}, procedure === undefined ? step : `${procedure} · ${step}`),
            h('td', finding),
            h('td', reason),
            h('td', approvedBy ?? line()),
          ]);
          return underHeads(row, titles);
        }),
      ),
    ]),
  ]);
}

/** The end of a sheet or book: what is signed for, and by whom. The boxes of a sheet have keys, those of a book none. */
export function closing(title: string, text: string, words: Words, keys?: typeof CLOSING): Element {
  const [built, checked] = [keys?.built, keys?.checked];
  return h('section.closing', {ariaLabelledBy: ['closing'], dataSection: keys && 'closing'}, [
    h('div.closing-head', [
      h('h2', {id: 'closing'}, title),
      h('p.complete', [box('large', keys?.complete), h('span', words.closingBox)]),
    ]),
    h('p', text),
    signs(
      [
        {person: words.builtBy, box: built, at: built},
        {person: words.checkedBy, box: checked, at: checked},
      ],
      words,
    ),
  ]);
}
