/**
 * Pictures of a procedure, put into its sheet as data, so that the sheet is one file. Like every file of a book
 * they lie below the shop's folder; what cannot be put in stays as it was written, and the sheet says so.
 */
import {open, readFile, stat} from 'node:fs/promises';
import {dirname, resolve} from 'node:path';
import type {Figure, Row, Sheet, SheetBlock} from '../sheet/model.js';
import {liesBelow, truePath} from './names.js';
import {nearPicture} from './near-picture.js';

/** Where the pictures of one procedure may lie. */
export interface PictureBounds {
  /** Path of the procedure, to which its pictures are relative. */
  readonly procedure: string;
  /** True path of the shop's folder. */
  readonly shopFolder: string;
}

/** A sheet that needs no file beside it. */
export interface Embedded {
  readonly sheet: Sheet;
  /** Those that were put in, as they stand in the sheet. */
  readonly pictures: readonly string[];
  /** The addresses of those that could not be put in. */
  readonly missing: readonly string[];
}

/** The sheet with its pictures inside. */
export async function embedPictures(sheet: Sheet, bounds: PictureBounds): Promise<Embedded> {
  const urls = new Set(sheet.sections.flatMap(({content}) => content.flatMap(figuresOf)).map(({url}) => url));
  const data = new Map<string, string>();
  for (const url of urls) {
    const found = await dataOf(url, bounds);
    if (found !== undefined) data.set(url, found);
  }
  const sections = sheet.sections.map((section) => ({
    ...section,
    content: section.content.map((block) => withData(block, data)),
  }));
  return {
    sheet: {...sheet, sections},
    pictures: [...data.values()],
    missing: [...urls].filter((url) => !data.has(url)),
  };
}

function figuresOf(block: SheetBlock): Figure[] {
  if (block.type === 'figure') return [block.figure];
  return block.type === 'row' ? figuresOfRow(block.row) : [];
}

function figuresOfRow({more, rows}: Row): Figure[] {
  return [...more.flatMap(figuresOf), ...rows.flatMap(figuresOfRow)];
}

function withData(block: SheetBlock, data: ReadonlyMap<string, string>): SheetBlock {
  if (block.type === 'row') return {...block, row: rowWithData(block.row, data)};
  if (block.type !== 'figure') return block;
  return {...block, figure: {...block.figure, url: data.get(block.figure.url) ?? block.figure.url}};
}

function rowWithData(row: Row, data: ReadonlyMap<string, string>): Row {
  const more = row.more.map((block) => withData(block, data));
  return {...row, more, rows: row.rows.map((below) => rowWithData(below, data))};
}

/** In bytes; larger ones make a sheet that no tablet opens gladly. */
export const LARGEST_PICTURE = 8 * 1024 * 1024;

async function dataOf(url: string, bounds: PictureBounds): Promise<string | undefined> {
  const found = await findPicture(url, bounds);
  if (!found.ok) return undefined;
  const bytes = await readFile(found.path).catch(() => undefined);
  return bytes && `data:${found.type};base64,${base64(bytes)}`;
}

/** In pieces, for a function takes only so many arguments. */
function base64(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += PIECE)
    text += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  return btoa(text);
}

const PIECE = 0x8000;

export type FoundPicture =
  | {readonly ok: true; readonly path: string; readonly type: string}
  /** Why it can't be shown and what to do, as clauses. */
  | {readonly ok: false; readonly says: string; readonly hint: string};

/** The file that a picture's address leads to, if it is one that a sheet can show. */
export async function findPicture(
  url: string,
  {procedure, shopFolder}: PictureBounds,
): Promise<FoundPicture> {
  const refused = (says: string, hint: string) => ({ok: false, says, hint}) as const;
  const name = fileName(url);
  if (name === undefined)
    return refused(`${url} is no path in the book`, 'keep the picture beside the procedure');
  const asked = resolve(dirname(procedure), name);
  const path = await truePath(asked);
  // Where nothing is there, not even its folder, the words of the path say where it would be.
  const at = path ?? (await truePath(dirname(asked))) ?? asked;
  const outside = at !== shopFolder && !liesBelow(at, shopFolder);
  if (outside) return refused(`${name} lies outside the shop's folder`, 'put the picture below it');
  if (path === undefined) {
    const near = await nearPicture(name, dirname(procedure), shopFolder);
    const hint = near === undefined ? 'put it there, or take it out' : `did you mean ${encodeURI(near)}?`;
    return refused(`there is no picture ${name}`, hint);
  }
  const about = await stat(path).catch(() => undefined);
  if (about === undefined) return refused(`${name} can't be read`, 'see who may read it');
  if (!about.isFile()) return refused(`${name} is not a file`, 'name a picture');
  if (about.size > LARGEST_PICTURE) return refused(`${name} is larger than 8 MiB`, 'save it smaller');
  const head = await headOf(path);
  if (head === undefined) return refused(`${name} can't be read`, 'see who may read it');
  const type = pictureType(head);
  return type === undefined
    ? refused(`${name} is no picture that a sheet can show`, 'save it as PNG, JPEG, GIF or WebP')
    : {ok: true, path, type};
}

const HEAD = 12;

async function headOf(path: string): Promise<Uint8Array | undefined> {
  try {
    const handle = await open(path, 'r');
    try {
      const {buffer, bytesRead} = await handle.read(new Uint8Array(HEAD), 0, HEAD, 0);
      return buffer.subarray(0, bytesRead);
    } finally {
      await handle.close();
    }
  } catch {
    return undefined;
  }
}

/** The relative path that a picture's address stands for; nothing for one that leads elsewhere. */
function fileName(url: string): string | undefined {
  if (/^[a-z][a-z0-9+.-]*:|^\/|^\\/i.test(url)) return undefined;
  try {
    const name = decodeURIComponent(url.replace(/[?#].*$/s, ''));
    return name.includes('\0') ? undefined : name;
  } catch {
    return undefined;
  }
}

/** By the first bytes of the file, for its name may lie. */
function pictureType(bytes: Uint8Array): string | undefined {
  const head = String.fromCharCode(...bytes.subarray(0, HEAD));
  if (head.startsWith('\u0089PNG\r\n\u001A\n')) return 'image/png';
  if (head.startsWith('\u00FF\u00D8\u00FF')) return 'image/jpeg';
  if (/^GIF8[79]a/.test(head)) return 'image/gif';
  return /^RIFF.{4}WEBP/s.test(head) ? 'image/webp' : undefined;
}
