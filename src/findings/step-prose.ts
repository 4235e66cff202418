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
  for (const {type, span} of step.more) if (type !== 'prose') away(span);
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
  const blank = rest.search(/\r\n?[ \t]*\r|\n[ \t]*\r?\n/);
  const paragraph = blank < 0 ? rest : rest.slice(0, blank);
  return from + paragraph.trimEnd().length;
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
