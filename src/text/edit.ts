/** Changes to a text, as data: the only way in which the tool ever touches a file that a person wrote. */
import type {Span} from './source.js';

/** Puts `text` in place of `span`; an empty span inserts, an empty text deletes. */
export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** One cure for a finding: what it does, in the imperative, and the edits of one file in order. */
export interface Fix {
  readonly title: string;
  readonly file: string;
  readonly edits: readonly Edit[];
}

/** Says what is wrong with a list of edits for a text of this length; nothing when it can be applied. */
export function editFault(edits: readonly Edit[], length: number): string | undefined {
  let end = 0;
  for (const edit of edits) {
    if (edit.span.start > edit.span.end) return `an edit ends at ${edit.span.end} before it starts`;
    if (edit.span.start < end) return `an edit at ${edit.span.start} stands in or before the one ahead of it`;
    if (edit.span.end > length) return `an edit ends at ${edit.span.end}, past the text's ${length}`;
    end = edit.span.end;
  }
  return undefined;
}

/** The text after the edits, which must be in order, apart from each other, and inside it. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  const fault = editFault(edits, text.length);
  if (fault !== undefined) throw new RangeError(fault);
  let result = '';
  let done = 0;
  for (const edit of edits) {
    result += text.slice(done, edit.span.start) + edit.text;
    done = edit.span.end;
  }
  return result + text.slice(done);
}

/** Where an offset of the text after the edits stood before them; one inside new text at the start of its edit. */
export function offsetBefore(edits: readonly Edit[], offset: number): number {
  let moved = 0;
  for (const {span, text} of edits) {
    const start = span.start + moved;
    if (offset < start) break;
    if (offset < start + text.length) return span.start;
    moved += text.length - (span.end - span.start);
  }
  return offset - moved;
}
