/** The languages in which sheets can be printed. */
import type {Language} from '../spec/model.js';
import {GERMAN} from './german.js';
import {ENGLISH, type Words} from './words.js';

export const LANGUAGES: Readonly<Record<Language, Words>> = {en: ENGLISH, de: GERMAN};
