/** Reads a PDF back with an independent library. */
import {getDocument, OPS} from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PdfPage {
  /** Points of 1/72 in. */
  readonly width: number;
  readonly height: number;
  /** All its text, white space folded. */
  readonly text: string;
  readonly pieces: readonly PdfPiece[];
}

/** A run of text and the box that it takes; y counts upwards from the foot of the page. */
export interface PdfPiece {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export async function readPdf(bytes: Uint8Array): Promise<PdfPage[]> {
  const loading = getDocument({data: new Uint8Array(bytes), verbosity: 0});
  const document = await loading.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const {width, height} = page.getViewport({scale: 1});
    const {items} = await page.getTextContent();
    const pieces = items.flatMap((item) =>
      'str' in item
        ? [{text: item.str, x: Number(item.transform[4]), y: Number(item.transform[5]), width: item.width}]
        : [],
    );
    const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : '')).join('');
    pages.push({width, height, text: text.replace(/\s+/g, ' '), pieces});
  }
  await loading.destroy();
  return pages;
}

/** Points of 1/72 in, to the nearest: ISO 216 A4 is 210 × 297 mm, US Letter 8.5 × 11 in. */
export const PAPER_SIZES = {A4: [595, 842], Letter: [612, 792]} as const;

/** The text of all pages. */
export async function pdfText(bytes: Uint8Array): Promise<string> {
  return (await readPdf(bytes)).map(({text}) => text).join(' ');
}

/** What would be cut off, at the sides of the page or nearer than `margin` points to its head and foot. */
export function outsideOf({width, height, pieces}: PdfPage, margin = 0): PdfPiece[] {
  return pieces.filter(
    ({text, x, y, width: wide}) =>
      text.trim() !== '' && (x < 0 || x + wide > width || y < margin || y > height - margin),
  );
}

/**
 * The number of the first page that has the words, from 1.
 * @throws Error where none has.
 */
export async function pageWith(bytes: Uint8Array, words: string): Promise<number> {
  const at = (await readPdf(bytes)).findIndex(({text}) => text.includes(words));
  if (at < 0) throw new Error(`no page has ${words}`);
  return at + 1;
}

/** Its texts as a screen reader meets them: in the order of the tags, each with the kind of its element. */
export async function readTagged(bytes: Uint8Array): Promise<TaggedText[]> {
  const loading = getDocument({data: new Uint8Array(bytes), verbosity: 0});
  const document = await loading.promise;
  const texts: TaggedText[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const {items} = await page.getTextContent({includeMarkedContent: true});
    const marked = new Map<string, string>();
    const open: string[] = [];
    for (const item of items) {
      if ('str' in item) {
        const id = open.at(-1) ?? '';
        if (item.str.trim() !== '' || marked.has(id))
          marked.set(id, (marked.get(id) ?? '') + item.str + (item.hasEOL ? ' ' : ''));
      } else if (item.type === 'endMarkedContent') open.pop();
      else open.push(item.type === 'beginMarkedContentProps' ? item.id : '');
    }
    const drawn = [...marked.keys()];
    follow(await page.getStructTree(), [], (id, roles) => {
      const text = marked.get(id);
      if (text !== undefined) texts.push({roles, text, page: number, drawn: drawn.indexOf(id)});
    });
  }
  await loading.destroy();
  return texts;
}

export interface TaggedText {
  readonly text: string;
  readonly page: number;
  /** Its place in the order in which the page is drawn, and in which text is copied out of it. */
  readonly drawn: number;
  /** From the outermost element to the one that holds it. */
  readonly roles: readonly string[];
}

function follow(
  node: Structure | null,
  roles: readonly string[],
  said: (id: string, roles: readonly string[]) => void,
): void {
  if (node === null) return;
  if (node.id !== undefined) said(node.id, roles);
  const below = node.role === undefined ? roles : [...roles, node.role];
  for (const child of node.children ?? []) {
    if (typeof child === 'object' && child !== null) follow(child, below, said);
  }
}

/** What a PDF says of itself, beside its pages. */
export interface PdfDocument {
  readonly title: string;
  readonly author: string;
  readonly language: string;
  readonly created: string;
  /** Its metadata packet, as XML. */
  readonly packet: string;
  readonly tagged: boolean;
  /** Titles of its bookmarks, each with those below it. */
  readonly bookmarks: readonly string[];
  /** Every kind of structure element that its pages use. */
  readonly roles: ReadonlySet<string>;
  /** What stands in place of pictures. */
  readonly alternatives: readonly string[];
  /** Pictures made of dots, on all pages together; a drawing is made of lines. */
  readonly pictures: number;
  /** Fonts whose programs are not inside the file. */
  readonly fontsOutside: readonly string[];
  readonly fonts: readonly string[];
}

export async function readPdfDocument(bytes: Uint8Array): Promise<PdfDocument> {
  const loading = getDocument({data: new Uint8Array(bytes), verbosity: 0, fontExtraProperties: true});
  const document = await loading.promise;
  const {info, metadata} = await document.getMetadata();
  const about = new Map(Object.entries(info));
  const found = {roles: new Set<string>(), alternatives: [] as string[], fonts: new Map<string, boolean>()};
  let pictures = 0;
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    gather(await page.getStructTree(), found);
    const {fnArray} = await page.getOperatorList();
    pictures += fnArray.filter((operator: number) => PICTURES.includes(operator)).length;
    for (const [, object] of page.commonObjs) {
      if (isFont(object)) found.fonts.set(object.name, object.missingFile !== true);
    }
  }
  const result = {
    title: String(about.get('Title')),
    author: String(about.get('Author')),
    language: String(about.get('Language')),
    created: String(about.get('CreationDate')),
    packet: String(metadata?.getRaw()),
    tagged: (await document.getMarkInfo())?.Marked === true,
    bookmarks: titlesOf((await document.getOutline()) ?? []),
    roles: found.roles,
    alternatives: found.alternatives,
    pictures,
    fonts: [...found.fonts.keys()],
    fontsOutside: [...found.fonts].flatMap(([name, inside]) => (inside ? [] : [name])),
  };
  await loading.destroy();
  return result;
}

const PICTURES = [OPS.paintImageXObject, OPS.paintInlineImageXObject, OPS.paintImageMaskXObject];

interface Structure {
  /** Of marked content, which has no role. */
  readonly id?: string;
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly unknown[];
}

function gather(node: Structure | null, found: {roles: Set<string>; alternatives: string[]}): void {
  if (node?.role !== undefined) found.roles.add(node.role);
  if (node?.alt !== undefined) found.alternatives.push(node.alt);
  for (const child of node?.children ?? []) {
    if (typeof child === 'object' && child !== null) gather(child, found);
  }
}

function isFont(object: unknown): object is {readonly name: string; readonly missingFile?: boolean} {
  return typeof object === 'object' && object !== null && 'name' in object && 'missingFile' in object;
}

interface Bookmark {
  readonly title: string;
  readonly items: readonly Bookmark[];
}

function titlesOf(items: readonly Bookmark[]): string[] {
  return items.flatMap((item) => [item.title, ...titlesOf(item.items)]);
}
