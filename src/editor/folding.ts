/** What can be folded in a procedure: front matter, sections, and steps and cautions of more than one line. */
import type {FoldingRange} from 'vscode-languageserver';
import type {Procedure} from '../procedure/model.js';
import {positionAt, type Span} from '../text/source.js';
import {sectionEnd} from './outline.js';

export function folding(procedure: Procedure): FoldingRange[] {
  const {source, front, sections, steps} = procedure;
  const spans: Span[] = [
    front.span,
    ...sections.flatMap(({title, span}, index) =>
      title === '' ? [] : [{start: span.start, end: sectionEnd(procedure, index)}],
    ),
    ...steps.flatMap(({span, cautions}) => [span, ...cautions.map((caution) => caution.span)]),
  ];
  return spans.flatMap((span) => {
    const startLine = positionAt(source, span.start).line - 1;
    const end = span.start + source.text.slice(span.start, span.end).trimEnd().length;
    const endLine = positionAt(source, end).line - 1;
    return endLine > startLine ? [{startLine, endLine}] : [];
  });
}
