/** The pages of which pictures are kept: one of each kind, made of books that are invented and stay as they are. */
import {type PdfMaker, pdfMaker} from '../../src/host/pdf.js';
import type {Print} from '../../src/print/document.js';
import {reportPrint} from '../../src/readings/print.js';
import {compileCover} from '../../src/sheet/cover.js';
import {sheetPrint} from '../../src/sheet/print.js';
import {coverPrint} from '../../src/sheet/print-cover.js';
import {FINGERPRINT, firstSheet} from '../help/sheet.js';
import {judged, sample} from '../readings/small.js';
import {trialBook} from '../sheet/trial.js';

export interface KeptPage {
  readonly name: string;
  readonly print: Print;
  /** Words of the page that is kept; the first page that has them. */
  readonly has: string;
}

export function keptPages(): KeptPage[] {
  const sheet = sheetPrint(firstSheet(trialBook), () => undefined);
  const read = judged(
    sample({answer: ({key}, usual) => ({'7:1': '0.0081', '4:1:front': '0.0020'})[key] ?? usual}),
  );
  return [
    {
      name: 'cover',
      print: coverPrint(compileCover(trialBook, {fingerprint: FINGERPRINT})),
      has: 'Hold points',
    },
    {name: 'steps', print: sheet, has: 'Bring the head bolts up in the order drawn'},
    {name: 'hold-point', print: sheet, has: 'Turn the crankshaft by hand'},
    {name: 'report', print: reportPrint({builds: [read], spread: []}, 'A4'), has: 'Out of limits'},
  ];
}

/** A print as PDF. */
export async function pdfOf(print: Print, make?: PdfMaker): Promise<Uint8Array> {
  const pdf = (make ?? (await pdfMaker()))(() => print, []);
  if (!pdf.ok) throw new Error(pdf.says);
  return pdf.bytes;
}
