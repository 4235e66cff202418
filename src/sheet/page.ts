/**
 * Paper, running head and running foot of a printed page, as CSS margin boxes (CSS Paged Media Level 3, section 4).
 * Here alone a procedure's text enters CSS, as strings.
 */
import type {Paper} from './model.js';
import {fill, type Words} from './words.js';

/** What every page says of the whole: a name, which is cut where it must be, and what follows it, which never is. */
export interface Running {
  readonly left: {readonly name: string; readonly rest: string};
  readonly right: {readonly name: string; readonly rest: string};
  readonly engineNumber?: string;
}

export function pageStyle(running: Running, paper: Paper, words: Words): string {
  const {left, right} = fitted(running);
  const number = running.engineNumber ?? '____________';
  const foot = `${words.engineNumber} ${shortened(number, ENGINE_NUMBER)}`;
  const page = fill(words.page, {number: '\n', of: '\n'}).split('\n').map(cssString);
  return `@page {
  size: ${paper === 'A4' ? 'A4' : 'letter'} portrait;
  margin: 17mm 12mm 17mm 15mm;
  @top-left { content: ${cssString(left)}; ${TOP} text-align: left; }
  @top-right { content: ${cssString(right)}; ${TOP} text-align: right; }
  @bottom-left { content: ${cssString(foot)}; ${BOTTOM} text-align: left; width: 33%; }
  @bottom-center { content: ${cssString(`${words.pageInitials} ________________`)}; ${BOTTOM} text-align: center; width: 34%; }
  @bottom-right { content: ${page[0]} counter(page) ${page[1]} counter(pages) ${page[2]}; ${BOTTOM} text-align: right; font-weight: 700; width: 33%; }
}
`;
}

/**
 * How many characters the running head and the engine's number on the foot have room for in the widest of the fonts:
 * a margin box does not grow with its text, it lets it run off the page.
 */
const HEAD = 82;
export const ENGINE_NUMBER = 18;
/** The name at the right is left at least this much. */
const LEAST = 20;

/** Both sides of the running head, each name cut where the other leaves it no room. */
export function fitted({left, right}: Running): {readonly left: string; readonly right: string} {
  const room = HEAD - widthOf(left.rest) - widthOf(right.rest);
  const forRight = Math.max(LEAST, room - widthOf(left.name));
  const rightName = shortened(right.name, forRight);
  const leftName = shortened(left.name, Math.max(LEAST, room - widthOf(rightName)));
  return {left: leftName + left.rest, right: rightName + right.rest};
}

/** A text cut to a width in characters. */
export function shortened(text: string, room: number): string {
  if (widthOf(text) <= room) return text;
  let kept = '';
  for (const character of text) {
    if (widthOf(kept) + widthOf(character) >= room) break;
    kept += character;
  }
  return `${kept.trimEnd()}…`;
}

/** Ideographs and their like, from U+1100 on, are about twice as wide as letters. */
function widthOf(text: string): number {
  let width = 0;
  for (const character of text) width += (character.codePointAt(0) ?? 0) >= 0x1100 ? 2 : 1;
  return width;
}

const FONT =
  'font: 9.5pt/1.2 "Noto Sans", "Open Sans", "Segoe UI", "Helvetica Neue", "DejaVu Sans", Verdana, Arial, sans-serif; ' +
  'color: #000; white-space: nowrap; overflow: hidden;';
const TOP = `${FONT} border-bottom: 0.5pt solid #000; vertical-align: bottom; padding-bottom: 1.2mm; margin-bottom: 3mm;`;
const BOTTOM = `${FONT} border-top: 0.5pt solid #000; vertical-align: top; padding-top: 1.2mm; margin-top: 3mm;`;

/**
 * A CSS string. Whatever is not a letter, digit or blank is written as an escape, so that no text can end the
 * string, the rule or the style element that it stands in.
 */
export function cssString(text: string): string {
  const escaped = text.replace(/[^\p{L}\p{M}\p{N} ]/gu, (character) => {
    const code = character.codePointAt(0) ?? 0;
    // Nought, lone surrogates and controls print as the replacement character.
    const shown = code < 0x20 || (code >= 0xd800 && code <= 0xdfff) ? 0xfffd : code;
    return `\\${shown.toString(16)} `;
  });
  return `"${escaped}"`;
}
