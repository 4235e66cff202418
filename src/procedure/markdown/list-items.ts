/**
 * Where the items of lists end, and which of them, and which lists, blank lines spread: the tokenizer leaves both to be
 * worked out.
 */
import type {List, ListItem} from 'mdast';
import {type Event, pointOf, type Token} from './events.js';

/** A list or quote that is open. */
interface Container {
  readonly list: List | undefined;
  item: ListItem | undefined;
  /** Offset of the first blank line in the item itself. */
  blank: number | undefined;
}

/** Lives while a tree is built. */
export class ListItems {
  readonly #open: Container[] = [];
  /** The first of the line ends after which nothing has come yet, and whether there are more. */
  #ending: Token | undefined;
  #blankLines = false;
  /** Nothing has come yet since the marker of an item. */
  #atMarker = false;

  /** The innermost list or quote is a new one. */
  enter(list?: List): void {
    this.#open.push({list, item: undefined, blank: undefined});
  }

  /** The innermost list or quote ends, and its item with it. */
  exit(token: Token): void {
    const container = this.#open.pop();
    if (container) this.#close(container, token);
  }

  /** An item of the innermost list begins at its marker, and the one before it has ended. */
  begin(token: Token, item: ListItem): void {
    const container = this.#open.at(-1);
    if (container?.list === undefined) return;
    this.#close(container, token);
    container.item = item;
    container.blank = undefined;
    this.#atMarker = true;
  }

  /** The number of an item; the first is where the list starts. */
  number(found: number): void {
    const list = this.#open.at(-1)?.list;
    if (list?.ordered) list.start ??= found;
  }

  /** To be told of every event of a block, after what else it does. */
  pass([side, token]: Event): void {
    switch (token.type) {
      case 'lineEnding':
      case 'lineEndingBlank':
        if (side === 'enter') this.#endLine(token);
        return;
      case 'linePrefix':
        return;
      case 'listItemIndent':
      case 'blockQuotePrefix':
      case 'blockQuotePrefixWhitespace':
      case 'blockQuoteMarker':
        this.#atMarker = false;
        return;
      case 'listItemPrefix':
      case 'listItemPrefixWhitespace':
      case 'listItemValue':
      case 'listItemMarker':
        break;
      default:
        this.#atMarker = false;
    }
    this.#ending = undefined;
    this.#blankLines = false;
  }

  #endLine(token: Token): void {
    const container = this.#open.at(-1);
    if (token.type === 'lineEndingBlank' && container?.item && !this.#atMarker) {
      container.blank ??= token.start.offset;
    }
    this.#atMarker = false;
    if (this.#ending === undefined) this.#ending = token;
    else this.#blankLines = true;
  }

  #close({list, item, blank}: Container, token: Token): void {
    if (list === undefined || item === undefined) return;
    const end = this.#ending?.start ?? token.end;
    if (item.position) item.position.end = pointOf(end);
    item.spread = blank !== undefined && (this.#ending === undefined || blank < end.offset);
    if (this.#blankLines) list.spread = true;
  }
}
