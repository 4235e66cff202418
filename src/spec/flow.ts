/**
 * Reads maps and lists in brackets that stand on one line and hold nothing but plain words, which is nearly all of a
 * specification: here that takes a tenth of the library's time. Whatever is in any way unusual is left to the library.
 */
import type {Where} from '../text/source.js';
import type {Entry, MapNode, Node, ScalarNode} from './tree.js';

/** More levels of brackets than these are left to the library, and so to its care for depth. */
export const FLOW_DEPTH = 4;

/**
 * The text with every value in brackets that was read blanked out by as many letters, and those values by offset. As many,
 * so that all places in the masked text are those of the text.
 */
export interface FlowReading {
  readonly masked: string;
  readonly values: ReadonlyMap<number, Node>;
}

/** Values in brackets that follow a plain key or the dash of a list and end their line. */
export function readFlows(file: string, text: string): FlowReading {
  const values = new Map<number, Node>();
  let masked = '';
  let done = 0;
  for (const match of text.matchAll(OPENING)) {
    const start = match.index + match[0].length - 1;
    const value = new Flow(file, text, start).read();
    if (value === undefined) continue;
    const {end} = value.where.span;
    values.set(start, value);
    masked += text.slice(done, start) + 'x'.repeat(end - start);
    done = end;
  }
  return {masked: masked + text.slice(done), values};
}

/**
 * A text that is nothing but lines of a plain key and a plain value, as front matter is: it needs no library at all.
 * Undefined for any other text.
 */
export function readPlainLines(file: string, text: string): MapNode | undefined {
  const entries: Entry[] = [];
  const keys = new Set<string>();
  let at = text.startsWith('---\n') ? 4 : 0;
  while (at < text.length) {
    PLAIN_LINE.lastIndex = at;
    const [line, key = '', word = ''] = PLAIN_LINE.exec(text) ?? [];
    if (line === undefined || keys.has(key) || word !== word.trimEnd()) return undefined;
    const keyWhere = {file, span: {start: at, end: at + key.length}};
    const start = keyWhere.span.end + 2;
    const value = word === '' ? new Flow(file, text, start).read() : wordAt(file, word, start);
    const name = scalarOf(key, keyWhere);
    if (value === undefined || name.type === 'empty') return undefined;
    keys.add(key);
    entries.push({key, keyWhere, value});
    at = text.indexOf('\n', start) + 1 || text.length;
  }
  const [first] = entries;
  // The library counts the end of its last line to a map.
  const span = {start: first?.keyWhere.span.start ?? 0, end: text.length};
  return first && {type: 'map', where: {file, span}, entries};
}

/** A key of letters and a word to the end of the line, or what may be a value in brackets. */
const PLAIN_LINE =
  /([A-Za-z][A-Za-z0-9-]*): (?:([A-Za-z0-9.±≤≥<½¼¾(~][^:#\p{Cc}\p{Zl}\p{Zp}\uFEFF]*)(?=\n|$)|(?=[[{]))/uy;

function wordAt(file: string, word: string, start: number): ScalarNode {
  return scalarOf(word, {file, span: {start, end: start + word.length}});
}

/** What stands before the bracket is nothing that could carry it off into a key, a comment or a text in quotes. */
const OPENING = /(?<=^|\n) *(?:- )?(?:[A-Za-z0-9-]+: )?(?<=[ \n])[[{]/g;

/** Lives while one value is read. */
class Flow {
  readonly #file: string;
  readonly #text: string;
  #at: number;

  constructor(file: string, text: string, start: number) {
    this.#file = file;
    this.#text = text;
    this.#at = start;
  }

  /** Undefined where anything stands in it or after it that is not read here. */
  read(): Node | undefined {
    const value = this.#value(FLOW_DEPTH);
    const after = this.#text[this.#at];
    const ends =
      after === undefined || after === '\n' || (after === '\r' && this.#text[this.#at + 1] === '\n');
    return ends ? value : undefined;
  }

  #value(levels: number): Node | undefined {
    const opening = this.#text[this.#at];
    if (opening !== '{' && opening !== '[') return this.#word();
    if (levels === 0) return undefined;
    const start = this.#at++;
    this.#space();
    if (opening === '{') {
      const entries = this.#several('}', () => this.#entry(levels - 1));
      const once = entries && new Set(entries.map(({key}) => key)).size === entries.length;
      return once ? {type: 'map', where: this.#where(start), entries} : undefined;
    }
    const items = this.#several(']', () => this.#value(levels - 1));
    return items && {type: 'list', where: this.#where(start), items};
  }

  /** What stands between brackets, apart by commas, up to and with the closing one. */
  #several<T>(closing: string, one: () => T | undefined): T[] | undefined {
    const found: T[] = [];
    if (this.#takes(closing)) return found;
    do {
      this.#space();
      const next = one();
      if (next === undefined) return undefined;
      found.push(next);
      this.#space();
    } while (this.#takes(','));
    return this.#takes(closing) ? found : undefined;
  }

  #entry(levels: number): Entry | undefined {
    const key = this.#word();
    if (key === undefined || key.type === 'empty' || key.text === '__proto__') return undefined;
    if (!this.#takes(':') || !this.#takes(' ')) return undefined;
    this.#space();
    const value = this.#value(levels);
    return value && {key: key.text, keyWhere: key.where, value};
  }

  #word(): ScalarNode | undefined {
    const start = this.#at;
    WORD.lastIndex = start;
    const text = WORD.exec(this.#text)?.[0].trimEnd() ?? '';
    if (text === '') return undefined;
    this.#at += text.length;
    return scalarOf(text, this.#where(start));
  }

  #takes(character: string): boolean {
    if (this.#text[this.#at] !== character) return false;
    this.#at++;
    return true;
  }

  #space(): void {
    while (this.#text[this.#at] === ' ') this.#at++;
  }

  #where(start: number): Where {
    return {file: this.#file, span: {start, end: this.#at}};
  }
}

/** A plain word of YAML that begins with no mark of its own and holds no colon and no hash. */
const WORD = /[A-Za-z0-9.±≤≥<½¼¾(~][^,[\]{}:#\p{Cc}\p{Zl}\p{Zp}\uFEFF]*/uy;

/** What the core schema of YAML 1.2 takes for nothing, a yes or no, or a number. */
function scalarOf(text: string, where: Where): ScalarNode {
  const exact = where.span.start;
  if (/^(?:~|[Nn]ull|NULL)$/.test(text)) return {type: 'empty', where, text: ''};
  if (/^(?:[Tt]rue|TRUE|[Ff]alse|FALSE)$/.test(text)) return {type: 'boolean', where, text, exact};
  return {type: NUMBER.test(text) ? 'number' : 'text', where, text, exact};
}

const NUMBER =
  /^(?:0o[0-7]+|0x[0-9a-fA-F]+|[-+]?[0-9]+|[-+]?(?:\.[0-9]+|[0-9]+\.[0-9]*|(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)[eE][-+]?[0-9]+)|[-+]?\.(?:inf|Inf|INF)|\.nan|\.NaN|\.NAN)$/;
