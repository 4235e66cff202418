/** The links of a tolerance stack as they are written for a figure: `+ case: 1.750 ±0.003 in`, `- shaft: …`. */
import {type Option, type Read, readAmountOf, text} from './figure-options.js';
import type {Link} from './stack.js';
import {refused} from './worked.js';

export function linkOption(example: string): Option<Link> {
  const takes = '+ or -, a name, a colon and a length with its limits; a factor may follow the sign';
  return text(takes, 'a size that widens (+) or narrows (-) the gap', example, readLink);
}

function readLink(given: string): Read<Link> {
  const colon = given.indexOf(':');
  const head = /^([-+−])\s*(?:(\d+(?:\.\d+)?)\s*[×*]\s*)?(\S.*)$/.exec(
    given.slice(0, Math.max(colon, 0)).trim(),
  );
  if (head === null)
    return refused(
      'the size has no sign and name',
      'write it as + case: 1.750 ±0.003 in, or - shaft: 0.750 in',
    );
  const size = readAmountOf(given.slice(colon + 1), 'length');
  if (!size.ok) return size;
  const [, sign, factor = '1', name = ''] = head;
  const times = sign === '+' ? Number(factor) : -Number(factor);
  return {ok: true, value: {name, size: size.value, times}};
}
