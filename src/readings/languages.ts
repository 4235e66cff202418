/** The languages in which builds are reported on: those of the sheets. */
import type {Language} from '../spec/model.js';
import {GERMAN} from './german.js';
import {ENGLISH, type ReportWords} from './words.js';

export const LANGUAGES: Readonly<Record<Language, ReportWords>> = {en: ENGLISH, de: GERMAN};
