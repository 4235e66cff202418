/**
 * A step's own prose as it stands in the file: everything that is not prose (tags, markup, sub-steps, cautions,
 * pictures) blanked out, so that a place in it is a place in the file.
 */
import type {StepRef} from '../build/program.js';
import type {Block, Caution} from '../procedure/model.js';
import type {Span} from '../text/source.js';

export interface Prose {
  readonly text: string;
  /** Offset of the text in the file. */
  readonly start: number;
}

export function proseOf({procedure, step}: Pick<StepRef, 'procedure' | 'step'>): Prose {
  const {start, end} = step.span;
  let text = procedure.source.text.slice(start, end);
  const away = ({start: from, end: to}: Span) => {
    text = blank(text, from - start, to - start);
  };
  away({start, end: step.headSpan.start});
  for (const {span} of step.steps) away(span);
  for (const {span} of step.pictures) away(span);
  if (text.includes('>')) for (const {span} of cautionsBelow({procedure, step})) away(span);
  for (const block of step.more) {
    const span = blockAway(block);
    if (span !== undefined) away(span);
  }
  for (const [mark, pattern] of MARKUP) if (mark.test(text)) text = text.replace(pattern, blanked);
  return {text, start};
}

/** Below the words of a step a caution stands by its indentation only: it is the next step's, or its section's last. */
function cautionsBelow({
  procedure: {steps, sections},
  step,
}: Pick<StepRef, 'procedure' | 'step'>): readonly Caution[] {
  const next = steps[step.index + 1]?.cautions ?? [];
  return [...next, ...sections.flatMap(({content}) => lastCautions(content))];
}

function lastCautions(content: readonly Block[]): readonly Caution[] {
  const last = content.at(-1);
  return last?.type === 'caution' ? [...lastCautions(content.slice(0, -1)), last.caution] : [];
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

function blockAway(block: Block): Span | undefined {
  switch (block.type) {
    case 'prose':
      return undefined;
    case 'caution':
      return block.caution.span;
    case 'step':
      return block.step.span;
    case 'picture':
      return block.picture.span;
    case 'other':
    case 'left-out':
      return block.span;
  }
}

/**
 * Code spans, comments and HTML, where a link leads to, and the marks of emphasis and of links, each behind a mark
 * without which there is none.
 */
const MARKUP: readonly (readonly [mark: RegExp, pattern: RegExp])[] = [
  [/`/, /`[^`]*`/g],
  [/</, /<[^<>]*>/g],
  [/\]\(/, /\]\([^()\s]*\)/g],
  [/[*_[\]>]/, /[*_[\]]|^[ \t]*>/gm],
];

function blank(text: string, start: number, end: number): string {
  const from = Math.max(0, start);
  if (end <= from) return text;
  return text.slice(0, from) + blanked(text.slice(from, end)) + text.slice(end);
}

/** Line ends stay, so that paragraphs do. */
function blanked(text: string): string {
  return /[\r\n]/.test(text) ? text.replace(/[^\r\n]/g, ' ') : ' '.repeat(text.length);
}
