/** The cover of a book as the data that its Typst template lays out for PDF. */
import {documentDate, type Print} from '../print/document.js';
import type {Cover} from './cover-model.js';
import {frameOf} from './print.js';
import {coverTitles} from './title-block.js';
import {valueText} from './value.js';

/** Dated by the latest of its procedures, for a cover has no date of its own and the clock must not come in. */
export function coverPrint(cover: Cover): Print {
  const {words} = cover;
  const last = cover.procedures.map(({date}) => date).filter((date) => documentDate(date) !== null);
  return {
    template: 'cover',
    data: {
      ...frameOf(coverTitles(cover), cover.paper, words),
      authors: [],
      date: documentDate(last.sort().at(-1) ?? ''),
      thisJob: (cover.thisJob ?? []).map(({label, note, ...value}) => ({
        label,
        value: valueText(value),
        note: note ?? '',
      })),
      procedures: cover.procedures.map(({file, ...line}) => ({
        ...line,
        url: `${encodeURIComponent(file)}.pdf`,
      })),
      holds: cover.holds.map(({procedure, step, name, by}) => ({
        at: `${procedure} · ${step}`,
        name: by === undefined ? name : `${name} (${by})`,
      })),
      waivers: cover.waivers.map(({procedure, step, ...waiver}) => ({
        ...waiver,
        step: `${procedure} · ${step}`,
      })),
      sources: cover.sources,
    },
  };
}
