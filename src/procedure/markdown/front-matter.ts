/** Finds YAML front matter at the head of a text, as remark-frontmatter does, and where the Markdown after it begins. */
import type {Yaml} from 'mdast';
import type {Point} from './events.js';

export interface FrontMatter {
  /** Undefined where there is none, or none that ends. */
  readonly node?: Yaml;
  /** Where the first line after it begins, or the text ends. */
  readonly end: Point;
}

/** Only at the very head of the text, and only where a line of hyphens ends it. */
export function frontMatterIn(text: string): FrontMatter {
  const start = {line: 1, column: 1, offset: 0};
  const opening = /^---[ \t]*(?=[\r\n])/.exec(text)?.[0];
  const closing = opening === undefined ? undefined : closingAfter(text, opening.length);
  if (opening === undefined || closing === undefined) return {end: start};
  const value = withoutEnds(text.slice(opening.length, closing.start)).replaceAll('\0', '\uFFFD');
  const line = 1 + lineEnds(text.slice(0, closing.start));
  const end = {line, column: closing.end - closing.start + 1, offset: closing.end};
  const ending = /\r\n|\r|\n|$/y;
  ending.lastIndex = closing.end;
  const length = ending.exec(text)?.[0].length ?? 0;
  return {
    node: {type: 'yaml', value, position: {start, end}},
    end: length === 0 ? end : {line: line + 1, column: 1, offset: closing.end + length},
  };
}

/** The line that ends it, with the white space after its hyphens. */
function closingAfter(
  text: string,
  from: number,
): {readonly start: number; readonly end: number} | undefined {
  const closing = /(?<=[\r\n])---[ \t]*(?![^\r\n])/g;
  closing.lastIndex = from;
  const match = closing.exec(text);
  return match === null ? undefined : {start: match.index, end: match.index + match[0].length};
}

/** The text without the line ends after its first line of hyphens and before its last. */
function withoutEnds(text: string): string {
  return text.replace(/^(?:\r?\n|\r)|(?:\r?\n|\r)$/g, '');
}

function lineEnds(text: string): number {
  return text.match(/\r\n|\r|\n/g)?.length ?? 0;
}
