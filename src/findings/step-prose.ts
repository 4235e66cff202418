/**
 * A step's own prose as it stands in the file: everything that is not prose (tags, markup, sub-steps, cautions,
 * pictures) blanked out, so that a place in it is a place in the file.
 */
import type {StepRef} from '../build/program.js';
import type {Block} from '../procedure/model.js';
import type {Span} from '../text/source.js';

export interface Prose {
  readonly text: string;
  /** Offset of the text in the file. */
  readonly start: number;
}

export function proseOf({procedure, step}: StepRef): Prose {
  const {start, end} = step.span;
  const text = procedure.source.text.slice(start, end);
  const away = [
    {start, end: step.headSpan.start},
    ...step.steps.map(({span}) => span),
    ...step.pictures.map(({span}) => span),
    ...step.more.flatMap(blockAway),
  ];
  const kept = away.reduce(
    (left, span) => blank(left, {start: span.start - start, end: span.end - start}),
    text,
  );
  return {text: MARKUP.reduce((left, pattern) => left.replace(pattern, blanked), kept), start};
}

/** The span of something found in the prose, in the file. */
export function inFile({start}: Prose, span: Span): Span {
  return {start: span.start + start, end: span.end + start};
}

/** Where the paragraph that holds an offset of the prose ends, in the file: tags and all. */
export function paragraphEnd({procedure, step}: StepRef, prose: Prose, offset: number): number {
  const from = prose.start + offset;
  const below = step.steps.filter(({span}) => span.start > from).map(({span}) => span.start);
  const rest = procedure.source.text.slice(from, Math.min(step.span.end, ...below));
  const paragraph = rest.split(/\r\n?[ \t]*\r|\n[ \t]*\r?\n/, 1)[0] ?? '';
  // The marker of the first sub-step stands on the line before its text, or on its own.
  const own = below.length > 0 ? withoutMarker(paragraph) : paragraph;
  return from + own.trimEnd().length;
}

/** Without a last line that holds nothing but the marker of a list item, or nothing. */
function withoutMarker(paragraph: string): string {
  const last = Math.max(paragraph.lastIndexOf('\n'), paragraph.lastIndexOf('\r')) + 1;
  const isMarker = /^(?:(?:\d+|[a-z])[.)])?$/.test(paragraph.slice(last).trim());
  return last > 0 && isMarker ? paragraph.slice(0, last) : paragraph;
}

function blockAway(block: Block): Span[] {
  switch (block.type) {
    case 'prose':
      return [];
    case 'caution':
      return [block.caution.span];
    case 'step':
      return [block.step.span];
    case 'picture':
      return [block.picture.span];
    case 'other':
    case 'left-out':
      return [block.span];
  }
}

/** Code spans, comments and HTML, where a link leads to, and the marks of emphasis and of links. */
const MARKUP: readonly RegExp[] = [/`[^`]*`/g, /<[^<>]*>/g, /\]\([^()\s]*\)/g, /[*_[\]]|^[ \t]*>/gm];

function blank(text: string, {start, end}: Span): string {
  const from = Math.max(0, start);
  if (end <= from) return text;
  return text.slice(0, from) + blanked(text.slice(from, end)) + text.slice(end);
}

/** Line ends stay, so that paragraphs do. */
function blanked(text: string): string {
  return /[\r\n]/.test(text) ? text.replace(/[^\r\n]/g, ' ') : ' '.repeat(text.length);
}
