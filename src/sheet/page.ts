/**
 * Paper, running head and running foot of a printed sheet, as CSS margin boxes (CSS Paged Media Level 3, section 4).
 * Here alone a procedure's text enters CSS, as strings.
 */
import type {Paper} from './model.js';
import type {Words} from './words.js';

export interface Running {
  readonly paper: Paper;
  readonly words: Words;
  readonly topLeft: string;
  readonly topRight: string;
  readonly bottomLeft: string;
}

/** Longer running texts are cut: a margin box does not grow into the page, it covers it. */
const LONGEST = 58;

export function pageStyle({paper, words, topLeft, topRight, bottomLeft}: Running): string {
  const page = `${cssString(`${words.page} `)} counter(page) ${cssString(` ${words.of} `)} counter(pages)`;
  return `@page {
  size: ${paper === 'A4' ? 'A4' : 'letter'} portrait;
  margin: 17mm 12mm 17mm 15mm;
  @top-left { content: ${cssString(shortened(topLeft))}; ${TOP} text-align: left; width: 65%; }
  @top-right { content: ${cssString(shortened(topRight))}; ${TOP} text-align: right; width: 35%; }
  @bottom-left { content: ${cssString(shortened(bottomLeft))}; ${BOTTOM} text-align: left; width: 33%; }
  @bottom-center { content: ${cssString(`${words.pageInitials} ________________`)}; ${BOTTOM} text-align: center; width: 34%; }
  @bottom-right { content: ${page}; ${BOTTOM} text-align: right; font-weight: 700; width: 33%; }
}
`;
}

const FONT =
  'font: 9.5pt/1.2 "Noto Sans", "Open Sans", "Segoe UI", "Helvetica Neue", "DejaVu Sans", Verdana, Arial, sans-serif; color: #000; white-space: nowrap; overflow: hidden;';
const TOP = `${FONT} border-bottom: 0.5pt solid #000; vertical-align: bottom; padding-bottom: 1.2mm; margin-bottom: 3mm;`;
const BOTTOM = `${FONT} border-top: 0.5pt solid #000; vertical-align: top; padding-top: 1.2mm; margin-top: 3mm;`;

function shortened(text: string): string {
  const characters = [...text];
  return characters.length <= LONGEST
    ? text
    : `${characters
        .slice(0, LONGEST - 1)
        .join('')
        .trimEnd()}…`;
}

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
