/** Reads a PDF back with an independent library. */
import {getDocument} from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PdfPage {
  /** Points of 1/72 in. */
  readonly width: number;
  readonly height: number;
  /** All its text, white space folded. */
  readonly text: string;
  readonly pieces: readonly PdfPiece[];
}

/** A run of text and the box that it takes; y counts upwards from the foot of the page. */
export interface PdfPiece {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export async function readPdf(bytes: Uint8Array): Promise<PdfPage[]> {
  const loading = getDocument({data: new Uint8Array(bytes), verbosity: 0});
  const document = await loading.promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const {width, height} = page.getViewport({scale: 1});
    const {items} = await page.getTextContent();
    const pieces = items.flatMap((item) =>
      'str' in item
        ? [{text: item.str, x: Number(item.transform[4]), y: Number(item.transform[5]), width: item.width}]
        : [],
    );
    const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : '')).join('');
    pages.push({width, height, text: text.replace(/\s+/g, ' '), pieces});
  }
  await loading.destroy();
  return pages;
}
