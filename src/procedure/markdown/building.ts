/** A tree of Markdown while it is built: what is open in it, and where the next text goes. */
import type {ImageReference, Nodes, PhrasingContent, Root, Text} from 'mdast';
import {type Context, pointOf, positionOf, type Token} from './events.js';
import {ListItems} from './list-items.js';

/** What a token does to the tree when it begins or ends. */
export type Handler = (building: Building, token: Token, context: Context) => void;
export type Handlers = Readonly<Record<string, Handler>>;

/** A link or picture whose end has not come: only there it is known whether it refers to a definition. */
export interface Media {
  label: string;
  identifier: string;
  url: string;
  title: string | null;
  /** What stands between its brackets. */
  readonly inside: PhrasingContent[];
  /** How it refers to a definition; undefined where it says itself what it leads to. */
  reference: ImageReference['referenceType'] | undefined;
}

/** What takes in all that comes until it is closed. */
interface Open {
  /** Undefined for what only holds children until it is known what they belong to. */
  readonly node: Nodes | undefined;
  readonly children: Nodes[];
  /** Line ends in it are part of its text. */
  readonly takesLines: boolean;
}

/** Lives while one tree is built. */
export class Building {
  readonly items = new ListItems();
  readonly media: Media[] = [];
  /** Text that becomes a value, and no node of its own; undefined where none is gathered. */
  gathered: string | undefined;
  /** A hard break has come, which takes in the end of its line. */
  atBreak = false;
  /** The next line end stands above the underline of a heading. */
  aboveUnderline = false;
  /** The marks of a heading have said how deep it is. */
  depthKnown = false;
  readonly #open: Open[];
  /** The whole text; undefined where it holds characters that the tokenizer alters. */
  readonly #plain: string | undefined;

  constructor(text: string, root: Root) {
    this.#open = [{node: root, children: root.children, takesLines: false}];
    this.#plain = /[\t\0]/.test(text) ? undefined : text;
  }

  /** The innermost node that is open. */
  get node(): Nodes | undefined {
    return this.#open.at(-1)?.node;
  }

  /** A node that is not closed yet, and where its children go. */
  open(node: Nodes | undefined, children: Nodes[] = [], takesLines = false): void {
    if (node) this.add(node);
    this.#open.push({node, children, takesLines});
  }

  /** Closes what is innermost. */
  close(): void {
    this.#open.pop();
  }

  add(node: Nodes): void {
    this.#open.at(-1)?.children.push(node);
  }

  /** The text of a token that does not go over the end of its line. */
  textOf(token: Token, context: Context): string {
    return this.#plain?.slice(token.start.offset, token.end.offset) ?? context.sliceSerialize(token);
  }

  /** Text that goes on with the text before it. */
  text(token: Token, value: string): void {
    if (this.gathered !== undefined) {
      this.gathered += value;
      return;
    }
    const siblings = this.#open.at(-1)?.children ?? [];
    const last = siblings.at(-1);
    if (last?.type !== 'text') siblings.push(textNode(token, value));
    else {
      last.value += value;
      if (last.position) last.position.end = pointOf(token.end);
    }
  }

  /** The end of a line, which is text only in what holds text. */
  lineEnd(token: Token, context: Context): void {
    const innermost = this.#open.at(-1);
    if (this.atBreak) {
      const last = innermost?.children.at(-1);
      if (last?.position) last.position.end = pointOf(token.end);
      this.atBreak = false;
    } else if (this.gathered !== undefined || (innermost?.takesLines && !this.aboveUnderline)) {
      this.text(token, context.sliceSerialize(token));
    }
  }

  /** The text gathered since that began. */
  taken(): string {
    const text = this.gathered ?? '';
    this.gathered = undefined;
    return text;
  }
}

function textNode(token: Token, value: string): Text {
  return {type: 'text', value, position: positionOf(token)};
}
