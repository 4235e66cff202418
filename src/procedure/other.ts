/** What is neither prose nor step, caution or picture, kept as the Markdown that the author wrote. */
import type {InlineCode, Nodes} from 'mdast';
import type {Span} from '../text/source.js';
import type {PlainBlock} from './model.js';
import {spanOf} from './prose.js';
import type {Reading} from './reading.js';

/** The node's own Markdown, without the tags in it and without the indentation of the containers around it. */
export function otherBlock(node: Nodes, tags: ReadonlySet<InlineCode>, {source}: Reading): PlainBlock {
  const span = spanOf(node);
  const gaps = tagsIn(node, tags).map(spanOf);
  const text = without(source.text, span, gaps);
  return {type: 'other', span, text: outdented(text, (node.position?.start.column ?? 1) - 1)};
}

function tagsIn(node: Nodes, tags: ReadonlySet<InlineCode>): InlineCode[] {
  if (node.type === 'inlineCode') return tags.has(node) ? [node] : [];
  return 'children' in node ? node.children.flatMap((child) => tagsIn(child, tags)) : [];
}

/** The text of a span without the gaps, which are in order, and without the spaces before each. */
function without(text: string, {start, end}: Span, gaps: readonly Span[]): string {
  let result = '';
  let done = start;
  for (const gap of gaps) {
    result += text.slice(done, spacesBefore(text, gap.start, done));
    done = gap.end;
  }
  return result + text.slice(done, end);
}

function spacesBefore(text: string, at: number, from: number): number {
  let start = at;
  while (start > from && (text[start - 1] === ' ' || text[start - 1] === '\t')) start--;
  return start;
}

function outdented(text: string, columns: number): string {
  if (columns === 0) return text;
  const [first = '', ...rest] = text.split(/\r\n|\r|\n/);
  const prefix = (line: string) => Math.min(columns, /^[ \t>]*/.exec(line)?.[0].length ?? 0);
  return [first, ...rest.map((line) => line.slice(prefix(line)))].join('\n');
}
