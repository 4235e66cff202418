/** What the script of a sheet finds in its page: handed over as JSON, so that no text of an author is ever code. */
import type {Form} from '../build/form.js';
import type {Words} from './words.js';

export interface PageData {
  readonly form: Form;
  readonly words: TabletWords;
}

export type TabletWords = Words['tablet'];

/** Id of the element that holds it. */
export const DATA_ID = 'form-data';
