/** The script of a sheet on a tablet: makes the printed page one that can be filled in, and keeps its record. */
/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import {DATA_ID, type PageData} from '../sheet/page-data.js';
import {work} from './page.js';
import {Session} from './session.js';
import type {Storage} from './store.js';

const text = document.getElementById(DATA_ID)?.textContent;
if (typeof text === 'string') {
  const {form, words}: PageData = JSON.parse(text);
  const session = new Session(form, storageOf('localStorage'), () => new Date());
  work(session, words, storageOf('sessionStorage'));
}

/** The storage, if this browser has one and lets it be used. */
function storageOf(kind: 'localStorage' | 'sessionStorage'): Storage | undefined {
  try {
    const storage = window[kind];
    storage.getItem('');
    return storage;
  } catch {
    return undefined;
  }
}
