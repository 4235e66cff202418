/** A page in the look of the sheets, made to be printed: sheets, covers and lists. */
import type {ElementContent} from 'hast';
import {htmlPage} from '../print/html-page.js';
import type {Running} from '../print/running.js';
import type {Paper} from '../spec/model.js';
import {pageStyle} from './page-style.js';
import {STYLE} from './style.js';
import type {Words} from './words.js';

export interface PaperPage {
  readonly words: Words;
  readonly title: string;
  readonly paper: Paper;
  readonly running: Running;
  readonly body: readonly ElementContent[];
  /** The one script that may run, and the style that goes with it. */
  readonly active?: {readonly script: string; readonly style: string};
}

/** The whole file, with the running head and foot of its kind. */
export function paperPage({words, title, paper, running, body, active}: PaperPage): string {
  return htmlPage({
    language: words.language,
    title,
    style: pageStyle(running, paper, words) + STYLE + (active?.style ?? ''),
    body,
    pictures: true,
    script: active?.script,
  });
}
