/** The parts of every tag by what they are, for clients that colour by meaning. */
import type {Clause, Procedure, Tag} from '../procedure/model.js';
import type {Source, Span} from '../text/source.js';
import {tagsIn} from './mentions-in-tags.js';

/** Types of token of the protocol itself, so that every theme knows their colours. */
export const TOKEN_TYPES = ['function', 'variable', 'enumMember', 'keyword', 'number', 'string'] as const;

/** A part of a tag, and what it is. */
export interface Coloured {
  readonly span: Span;
  readonly type: (typeof TOKEN_TYPES)[number];
}

/** In the order of the text, each within one line. */
export function colours(procedure: Procedure, within?: Span): readonly Coloured[] {
  const tags = tagsIn(procedure).filter(
    ({span}) => within === undefined || (span.start <= within.end && within.start <= span.end),
  );
  return tags
    .flatMap(tagColours)
    .sort((one, other) => one.span.start - other.span.start)
    .flatMap((one) => byLine(one, procedure.source));
}

function tagColours(tag: Tag): Coloured[] {
  return [
    {span: tag.verbSpan, type: 'function'},
    ...tag.targets.flatMap(({span, places}): Coloured[] => [
      {span, type: 'variable'},
      ...places.map((place): Coloured => ({span: place.span, type: 'enumMember'})),
    ]),
    ...tag.clauses.flatMap(clauseColours),
  ];
}

function clauseColours({word, span, valueSpan, value}: Clause): Coloured[] {
  const opening: Coloured = {span: {start: span.start, end: span.start + word.length}, type: 'keyword'};
  if (value.type === 'ids') {
    return [opening, ...value.ids.map((one): Coloured => ({span: one.span, type: 'variable'}))];
  }
  const type = value.type === 'text' ? 'string' : value.type === 'word' ? 'enumMember' : 'number';
  return [opening, {span: valueSpan, type}];
}

/** Not every client takes a token that goes over the end of a line. */
function byLine({span, type}: Coloured, {text}: Source): Coloured[] {
  return [...text.slice(span.start, span.end).matchAll(/[^\r\n]+/g)].flatMap(({0: line, index}) => {
    const start = span.start + index;
    // What stands before the text in a further line is the margin of the list or quote.
    const lead = index === 0 ? 0 : line.length - line.replace(/^[ \t>]+/, '').length;
    return line.length > lead ? [{span: {start: start + lead, end: start + line.length}, type}] : [];
  });
}
