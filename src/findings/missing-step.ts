/** The fix that writes a step which is nowhere: behind the step that it must follow, as the next item of its list. */
import type {StepRef} from '../build/program.js';
import type {Item} from '../spec/model.js';
import type {Fix} from '../text/edit.js';

export interface MissingStep {
  /** A sentence in the imperative: "Lock the main cap bolts." */
  readonly says: string;
  /** Without its backticks. */
  readonly tag: string;
}

/**
 * Nothing where one item more would not do: behind a sub-step, which may be one of several ways, or in a list that
 * stands in a quote.
 */
export function stepBehind(
  {procedure, step}: StepRef,
  {says, tag}: MissingStep,
  title: string,
): Fix | undefined {
  const {source, sections} = procedure;
  const isTop = sections.some(({content}) =>
    content.some((block) => block.type === 'step' && block.step === step),
  );
  if (!isTop || step.added !== undefined) return undefined;
  const {file, text} = source;
  const lineStart =
    Math.max(text.lastIndexOf('\n', step.span.start), text.lastIndexOf('\r', step.span.start)) + 1;
  const indent = text.slice(lineStart, step.span.start);
  const {end} = step.span;
  const next = text
    .slice(step.span.start)
    .replace(/^(\d+)(.)[^]*/, (_, numeral, mark) => `${Number(numeral) + 1}${mark}`);
  const line = `${lineEndOf(text)}${indent}${next} ${says} \`${tag}\``;
  return {title, file, edits: [{span: {start: end, end}, text: line}]};
}

/** What the fix for an item is called. */
export function titleOf(verb: string, item: Item): string {
  return `Write the missing step: ${verb} ${item.id}`;
}

/** As the text itself ends its lines. */
function lineEndOf(text: string): string {
  return /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
}
