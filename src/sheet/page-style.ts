/**
 * Paper, running head and running foot of a printed page, as CSS margin boxes (CSS Paged Media Level 3, section 4).
 * Here alone a procedure's text enters CSS, as strings.
 */
import {BLANK, fitted, footOf, type Running} from '../print/running.js';
import type {Paper} from '../spec/model.js';
import {fill, type Words} from './words.js';

/** A browser prints what CSS says of a page and nothing else, so head and foot are cut to their room here. */
export function pageStyle(running: Running, paper: Paper, words: Words): string {
  const {left, right} = fitted(running);
  const {engineNumber = BLANK, job} = footOf(running, words);
  const foot = `${words.engineNumber} ${engineNumber}${job}`;
  const page = fill(words.page, {number: '\n', of: '\n'}).split('\n').map(cssString);
  return `@page {
  size: ${paper === 'A4' ? 'A4' : 'letter'} portrait;
  margin: 17mm 12mm 17mm 15mm;
  @top-left { content: ${cssString(left)}; ${TOP} text-align: left; }
  @top-right { content: ${cssString(right)}; ${TOP} text-align: right; }
  @bottom-left { content: ${cssString(foot)}; ${BOTTOM} text-align: left; width: 45%; }
  @bottom-center { content: ${cssString(`${words.pageInitials} ________________`)}; ${BOTTOM} text-align: center; width: 33%; }
  @bottom-right { content: ${page[0]} counter(page) ${page[1]} counter(pages) ${page[2]}; ${BOTTOM} text-align: right; font-weight: 700; width: 22%; }
}
@page :left { margin-left: 12mm; margin-right: 15mm; }
`;
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
