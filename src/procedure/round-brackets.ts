/** Places in round brackets, `heads(left)`: read as if they stood in square ones, and told with the right spelling. */
import type {Span} from '../text/source.js';
import {formFault, type Read, replacing, shown} from './tag-fault.js';
import {cut, spanOver, type TagText, type Token} from './tag-tokens.js';

/** The tokens with square brackets for round ones, wherever these open behind a name and are closed again. */
export function squareBrackets(tag: TagText, tokens: readonly Token[]): Read<readonly Token[]> {
  if (!tokens.some(({type, text}) => type === 'word' && text.includes('('))) {
    return {value: tokens, faults: []};
  }
  const value: Token[] = [];
  const faults = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    const group = token.type === 'word' && token.text.includes('(') ? closedFrom(tokens, at) : undefined;
    const name = group && (token.text.startsWith('(') ? value.pop() : token);
    if (group === undefined || name?.type !== 'word') {
      if (name) value.push(name);
      value.push(token);
      continue;
    }
    const opens = token.text.indexOf('(');
    const before = token.text.startsWith('(') ? name : part(token, 0, opens);
    const inside = group.flatMap((one, index) =>
      withoutEnds(one, index === 0 ? opens : -1, group.length - 1 === index),
    );
    const span: Span = {start: name.span.start, end: group.at(-1)?.span.end ?? name.span.end};
    const places = spanOver(inside);
    const right = `${before.text}[${places ? cut(tag, places) : ''}]`;
    faults.push(
      formFault(span, `${shown(cut(tag, span))} has its places in round brackets`, {
        hint: `write ${right}`,
        fix: replacing(span, right, `Write ${right}`),
      }),
    );
    value.push(before, bracket('open', token.span.start + opens), ...inside, bracket('close', span.end - 1));
    at += group.length - 1;
  }
  return {value, faults};
}

/** From the token that opens a round bracket to the one that closes it, if there is one that does. */
function closedFrom(tokens: readonly Token[], from: number): readonly Token[] | undefined {
  const rest = tokens.slice(from);
  const last = rest.findIndex(({type, text}) => type === 'word' && text.endsWith(')'));
  if (last < 0) return undefined;
  const group = rest.slice(0, last + 1);
  const text = group.map((token) => token.text).join(' ');
  const plain = group.every(({type}) => type === 'word' || type === 'comma');
  return plain && /^[^()]*\([^()]*[^()\s,][^()]*\)$/.test(text) ? group : undefined;
}

/** What of a token stands in the brackets. */
function withoutEnds(token: Token, opens: number, isLast: boolean): Token[] {
  const inside = part(token, opens + 1, token.text.length - (isLast ? 1 : 0));
  return inside.text === '' ? [] : [inside];
}

function part({type, text, span}: Token, from: number, to: number): Token {
  return {type, text: text.slice(from, to), span: {start: span.start + from, end: span.start + to}};
}

function bracket(type: 'open' | 'close', start: number): Token {
  return {type, text: type === 'open' ? '[' : ']', span: {start, end: start + 1}};
}
