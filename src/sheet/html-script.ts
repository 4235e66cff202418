/**
 * What makes a sheet work on a tablet: its form and the script's words as data, and the script itself. The script is
 * handed in as text, so that compiling a sheet needs no disk.
 */
import type {Element} from 'hast';
import {h} from 'hastscript';
import {formOf} from './form.js';
import type {Sheet} from './model.js';
import {DATA_ID, type PageData} from './page-data.js';

/** The end of the body of a sheet that works on a tablet. */
export function scriptNodes(sheet: Sheet, script: string): Element[] {
  const data: PageData = {form: formOf(sheet), words: sheet.words.tablet};
  return [h('script', {type: 'application/json', id: DATA_ID}, jsonForHtml(data)), h('script', script)];
}

/** JSON in which nothing can end the element that it stands in, or be taken for markup. */
function jsonForHtml(data: unknown): string {
  return JSON.stringify(data).replace(
    /[<>&]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
