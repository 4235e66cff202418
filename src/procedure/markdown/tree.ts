/** Builds the tree of a text out of the events of its blocks, taking apart the text in them on the way. */
import type {Root} from 'mdast';
import {BLOCKS_BEGIN, BLOCKS_END} from './blocks.js';
import {Building, type Handler} from './building.js';
import type {Context, Event, Token, Tokenizers} from './events.js';
import {PHRASES_BEGIN, PHRASES_END} from './phrasing.js';

/** Lives while one text is read. Its blocks come in parts, each when all link definitions that hold in it are known. */
export class TreeBuilder {
  readonly #building: Building;
  readonly #tokenizers: Tokenizers;

  constructor(text: string, root: Root, tokenizers: Tokenizers) {
    this.#building = new Building(text, root);
    this.#tokenizers = tokenizers;
  }

  add(blocks: readonly Event[]): void {
    for (const event of blocks) {
      this.#take(event);
      this.#building.items.pass(event);
    }
  }

  #take([side, token, context]: Event): void {
    if (side === 'exit') EXIT.get(token.type)?.(this.#building, token, context);
    else if (token.contentType === undefined) ENTER.get(token.type)?.(this.#building, token, context);
    // What goes on over lines is taken apart as one, where it begins.
    else if (token.previous === undefined)
      for (const event of this.#eventsIn(token, context)) this.#take(event);
  }

  /** What stands in a token of text, or of a string such as the title of a link. */
  #eventsIn(token: Token, context: Context): readonly Event[] {
    const {start, contentType} = token;
    const tokenizer =
      contentType === 'string' ? this.#tokenizers.string(start) : this.#tokenizers.text(start);
    if (token._contentTypeTextTrailing) tokenizer._contentTypeTextTrailing = true;
    for (let line: Token | undefined = token; line; line = line.next) {
      const chunks = context.sliceStream(line);
      if (line.next === undefined) chunks.push(null);
      if (line !== token) tokenizer.defineSkip(line.start);
      tokenizer.write(chunks);
    }
    return tokenizer.events;
  }
}

const ENTER: ReadonlyMap<string, Handler> = new Map(Object.entries({...BLOCKS_BEGIN, ...PHRASES_BEGIN}));
const EXIT: ReadonlyMap<string, Handler> = new Map(Object.entries({...BLOCKS_END, ...PHRASES_END}));
