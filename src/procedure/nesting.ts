/**
 * How deep a Markdown text nests, told before it is parsed: the parser's time grows with the square of the depth, so
 * that a few kilobytes made for it would take minutes.
 */

/** Lists and quotes in each other; ten are more than a person can follow. A list makes two levels of the tree. */
const MOST_CONTAINERS = 50;
/** Brackets in brackets, or emphasis in emphasis, in one paragraph. */
const MOST_INLINE = 100;

/** A text of which nothing nests too deep. */
export interface Flat {
  /** As long as the text that was given, with blanks in place of what stood too deep, each to the end of its line. */
  readonly text: string;
  /** The first such place, and how deep it may be at most. */
  readonly deep?: {readonly at: number; readonly most: number};
}

/** Takes time in proportion to the text, however it nests. What stands before `from`, the front matter, is no Markdown. */
export function withoutDeep(text: string, from = 0): Flat {
  const cuts: {readonly start: number; readonly end: number; readonly most: number}[] = [];
  const columns: number[] = [];
  const paragraph: Paragraph = {brackets: [], emphasis: []};
  for (let start = from; start < text.length; ) {
    const end = lineEnd(text, start);
    const markers = markersOf(text, start, end);
    if (markers.end === end) clear(paragraph);
    const deep = markers.list.find((marker) => isTooDeep(marker, columns))?.offset;
    const inline = deep ?? inlineTooDeep(text, {start: markers.end, end}, paragraph);
    if (inline !== undefined)
      cuts.push({start: inline, end, most: deep === undefined ? MOST_INLINE : MOST_CONTAINERS});
    start = end + 1;
  }
  const [first] = cuts;
  return first === undefined
    ? {text}
    : {text: blanked(text, cuts), deep: {at: first.start, most: first.most}};
}

/** What stands less far in closes what stood farther in; a marker that is too deep is not entered. */
function isTooDeep({column}: Marker, columns: number[]): boolean {
  while ((columns.at(-1) ?? -1) >= column) columns.pop();
  if (columns.length === MOST_CONTAINERS) return true;
  columns.push(column);
  return false;
}

function blanked(text: string, cuts: readonly {readonly start: number; readonly end: number}[]): string {
  const parts: string[] = [];
  let done = 0;
  for (const {start, end} of cuts) {
    parts.push(text.slice(done, start), ' '.repeat(end - start));
    done = end;
  }
  return parts.join('') + text.slice(done);
}

function lineEnd(text: string, from: number): number {
  for (let at = from; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 10 || code === 13) return at;
  }
  return text.length;
}

interface Marker {
  readonly column: number;
  readonly offset: number;
  readonly text: string;
}

/** The markers of quotes and list items that open a line, and where they and the white space about them end. */
function markersOf(text: string, start: number, lineEnd: number): {list: readonly Marker[]; end: number} {
  const list: Marker[] = [];
  let column = 0;
  let at = start;
  for (; at < lineEnd; ) {
    const found = text[at];
    if (found === ' ' || found === '\t') {
      column = found === ' ' ? column + 1 : column - (column % 4) + 4;
      at++;
      continue;
    }
    const marker = markerAt(text, at, lineEnd);
    if (marker === undefined) break;
    list.push({column, offset: at, text: marker});
    at += marker.length;
    column += marker.length;
  }
  return {list: at === lineEnd ? withoutRule(list) : list, end: at};
}

function markerAt(text: string, at: number, lineEnd: number): string | undefined {
  if (text[at] === '>') return '>';
  MARKER.lastIndex = at;
  const found = MARKER.exec(text)?.[0];
  return found !== undefined && at + found.length <= lineEnd ? found : undefined;
}

const MARKER = /(?:[-*+]|\d{1,9}[.)])(?![^ \t\r\n])/y;

/** `- - - -` draws a line. */
function withoutRule(list: readonly Marker[]): readonly Marker[] {
  const last = list.at(-1)?.text;
  const same = list.length - 1 - list.findLastIndex(({text}) => text !== last);
  return same >= 3 ? list.slice(0, -same) : list;
}

/** What is open in a paragraph: how deep the matter goes that is closed within each. */
interface Paragraph {
  readonly brackets: Open[];
  readonly emphasis: Open[];
}

interface Open {
  readonly mark: string;
  readonly size: number;
  inside: number;
}

function clear({brackets, emphasis}: Paragraph): void {
  brackets.length = 0;
  emphasis.length = 0;
}

/** Only what is closed nests; an interval `[0, 1)` or a lone asterisk is text. */
function inlineTooDeep(
  text: string,
  {start, end}: {readonly start: number; readonly end: number},
  {brackets, emphasis}: Paragraph,
): number | undefined {
  for (let at = start; at < end; at++) {
    const found = text[at];
    if (found === '\\') at++;
    else if (found === '[') brackets.push({mark: '[', size: 1, inside: 0});
    else if (found === ']') {
      if (closed(brackets, {mark: '[', size: 1}).depth > MOST_INLINE) return at;
    } else if (found === '*' || found === '_') {
      const size = runAt(text, at, end, found);
      const opens = !isBlank(text[at + size]);
      const closes = !isBlank(text[at - 1]) && (emphasis.at(-1)?.mark === found || !opens);
      const {depth, left} = closes ? closed(emphasis, {mark: found, size}) : {depth: 0, left: size};
      if (depth > MOST_INLINE) return at;
      if (left > 0 && opens) emphasis.push({mark: found, size: left, inside: 0});
      at += size - 1;
    }
  }
  return undefined;
}

/**
 * Closes from the innermost outwards what was opened by the same mark, and drops what stands open within it; gives the
 * most depth of what is then closed, and how much of the mark is left over.
 */
function closed(
  open: Open[],
  {mark, size}: {readonly mark: string; readonly size: number},
): {readonly depth: number; readonly left: number} {
  let depth = 0;
  let left = size;
  for (let last = open.pop(); last !== undefined; last = open.pop()) {
    const taken = last.mark === mark ? Math.min(left, last.size) : 0;
    depth = Math.max(last.inside, depth) + Math.ceil(taken / 2);
    left -= taken;
    if (taken > 0 && last.size > taken) open.push({...last, size: last.size - taken, inside: depth});
    if (left === 0) break;
  }
  const around = open.at(-1);
  if (around !== undefined) around.inside = Math.max(around.inside, depth);
  return {depth, left};
}

function runAt(text: string, from: number, end: number, character: string): number {
  let at = from;
  while (at < end && text[at] === character) at++;
  return at - from;
}

function isBlank(character: string | undefined): boolean {
  return character === undefined || /\s/.test(character);
}
