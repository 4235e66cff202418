/** The cover of a book as the data that its Typst template lays out for PDF. */
import {documentDate, type Print} from '../print/document.js';
import type {Cover} from './model.js';
import {frameOf} from './print.js';

export function coverPrint(cover: Cover): Print {
  const {words} = cover;
  const last = cover.procedures.map(({date}) => date).filter((date) => documentDate(date) !== null);
  const cell = (label: string, text: string | undefined, digits: boolean) => ({
    label,
    text: text ?? '',
    width: 4,
    digits,
  });
  const running = {
    left: {name: cover.shop, rest: ` · ${words.cover}`},
    right: {name: cover.engine, rest: ` · ${cover.fingerprint}`},
    engineNumber: cover.engineNumber,
    job: cover.job,
  };
  return {
    template: 'cover',
    data: {
      ...frameOf(running, cover.paper, words),
      title: `${words.cover} · ${cover.engine}`,
      authors: [],
      date: documentDate(last.sort().at(-1) ?? ''),
      shop: cover.shop,
      kind: words.cover,
      heading: cover.engine,
      long: cover.engine.length > 60,
      notes: cover.engineNote === undefined ? [] : [`${cover.engine}: ${cover.engineNote}`],
      cells: [
        cell(words.engineNumber, cover.engineNumber, false),
        cell(words.job, cover.job, false),
        cell(words.fingerprint, cover.fingerprint, true),
      ],
      thisJob: (cover.thisJob ?? []).map(({label, note, text, also}) => ({
        label,
        value: also === undefined ? text : `${text} (${also})`,
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
