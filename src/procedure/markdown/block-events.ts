/**
 * The events of a text's blocks in one list: those of its containers (lists, quotes), and between them those of what
 * stands in them, line by line.
 */
import {type Event, endsLine, type Token} from './events.js';

/** `document` is what the tokenizer of documents gave. Texts of paragraphs and headings are not taken apart yet. */
export function blockEvents(document: readonly Event[]): Event[] {
  const events: Event[] = [];
  let from: Token['_tokenizer'];
  let at = 0;
  for (const event of document) {
    const [side, token] = event;
    if (token.type !== 'chunkFlow') {
      events.push(event);
      if (side === 'exit' && token._container) endAboveBlankLines(events, event);
    } else if (side === 'enter' && token._tokenizer) {
      if (token._tokenizer !== from) at = 0;
      from = token._tokenizer;
      at = takeLine(from.events, at, token.next === undefined, events);
    }
  }
  return events;
}

/** Takes the events of one line, or of all that is left, and gives the index of the next one. */
function takeLine(flow: readonly Event[], from: number, rest: boolean, into: Event[]): number {
  let before: Event | undefined;
  for (let at = from; at < flow.length; at++) {
    const event = flow[at];
    if (event === undefined) break;
    into.push(event);
    if (!rest && before !== undefined && isLineBreak(before, event)) return at + 1;
    before = event;
  }
  return flow.length;
}

/** A token that holds no other and goes over the end of its line. */
function isLineBreak([enter, token]: Event, [exit, same]: Event): boolean {
  return exit === 'exit' && enter === 'enter' && token === same && token.start.line !== token.end.line;
}

/** A list or quote does not hold the blank lines below it: its end is put above them. */
function endAboveBlankLines(events: Event[], exit: Event): void {
  let first: number | undefined;
  for (let at = events.length - 2; at > 0; at--) {
    const [side, token] = events[at] ?? exit;
    if (endsLine(token)) {
      if (side === 'exit') continue;
      const later = first === undefined ? undefined : events[first];
      if (later) later[1].type = 'lineEndingBlank';
      token.type = 'lineEnding';
      first = at;
    } else if (token.type !== 'linePrefix' && token.type !== 'listItemIndent') break;
  }
  const line = first === undefined ? undefined : events[first];
  if (first === undefined || line === undefined) return;
  exit[1].end = {...line[1].start};
  events.pop();
  events.splice(first, 0, exit);
}
