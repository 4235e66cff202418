/** A caution as HTML: the signal word by ANSI Z535.6, told apart by frame and symbol as well as by colour. */
import type {Element} from 'hast';
import {h, s} from 'hastscript';
import type {Notice} from './model.js';
import {proseNodes} from './prose.js';
import type {Words} from './words.js';

export function noticeNode({signal, prose, hazards}: Notice, words: Words): Element {
  const className = ['notice', signal === 'notice' ? 'notice-only' : signal];
  const before = hazards.length === 0 ? [] : [h('span.hazards', `${hazards.join(words.and)}: `)];
  return h('div', {className, role: 'note', ariaLabel: words.signals[signal]}, [
    h('p.signal', [...(signal === 'notice' ? [] : [alertSymbol()]), h('span', words.signals[signal])]),
    h('p.says', [...before, ...proseNodes(prose)]),
  ]);
}

/** The safety alert symbol: a solid triangle with the mark cut out of it. Not for `notice` (no injury). */
function alertSymbol(): Element {
  return s('svg', {viewBox: '0 0 20 18', ariaHidden: 'true', focusable: 'false'}, [
    s('path', {
      fill: 'currentColor',
      fillRule: 'evenodd',
      d: 'M10 0.5 L19.6 17.5 H0.4 Z M8.9 6 L9.3 12 H10.7 L11.1 6 Z M10 13.1 A1.15 1.15 0 1 0 10 15.4 A1.15 1.15 0 1 0 10 13.1 Z',
    }),
  ]);
}
