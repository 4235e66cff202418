/**
 * Pages of a PDF as small grey pictures: drawn by pdf.js in a real browser with the fonts that are inside the file,
 * six times as large, and averaged, so that hair lines are as thin as they are and edges are smoothed alike.
 */
/// <reference lib="dom" />
import {readFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import type * as PdfLibrary from 'pdfjs-dist';
import type {Browser} from 'playwright-core';

/** Grey from 0 (black) to 255, row by row. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly grey: readonly number[];
}

export interface Studio {
  /** Page `number` of the PDF, from 1, `HEIGHT` dots high; drawn `fold` times as large first. */
  readonly draw: (pdf: Uint8Array, number: number, fold?: number) => Promise<Picture>;
  readonly png: (picture: Picture) => Promise<Buffer>;
  readonly read: (png: Buffer) => Promise<Picture>;
  readonly close: () => Promise<void>;
}

/** A line of type is some four dots high. */
const HEIGHT = 240;
const FOLD = 6;

export async function openStudio(browser: Browser): Promise<Studio> {
  const page = await browser.newPage();
  await page.route('**/*', async (route) => {
    const name = new URL(route.request().url()).pathname.slice(1);
    if (name === '') await route.fulfill({contentType: 'text/html', body: EASEL});
    else await route.fulfill({contentType: 'text/javascript', body: readFileSync(library(name))});
  });
  await page.goto('http://pages.example/');
  await page.waitForFunction(() => 'pdfjs' in globalThis);
  return {
    draw: (pdf, number, fold = FOLD) =>
      page.evaluate(drawn, {pdf: base64(pdf), number, fold, height: HEIGHT}),
    png: async (picture) => Buffer.from(await page.evaluate(encoded, picture), 'base64'),
    read: (png) => page.evaluate(decoded, png.toString('base64')),
    close: () => page.close(),
  };
}

/** The page in which pages are drawn; it asks for nothing outside this machine. */
const EASEL =
  '<!doctype html><title>Pages</title><script type="module">globalThis.pdfjs = await import("/pdf.mjs")</script>';

declare global {
  var pdfjs: typeof PdfLibrary;
}

function library(name: string): string {
  return createRequire(import.meta.url).resolve(`pdfjs-dist/legacy/build/${name}`);
}

function base64(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('base64');
}

interface Drawing {
  readonly pdf: string;
  readonly number: number;
  readonly fold: number;
  readonly height: number;
}

/** Runs in the page, and so is whole in itself. */
async function drawn({pdf, number, fold, height}: Drawing): Promise<Picture> {
  const {getDocument, GlobalWorkerOptions} = globalThis.pdfjs;
  GlobalWorkerOptions.workerSrc = '/pdf.worker.mjs';
  const data = Uint8Array.from(atob(pdf), (letter) => letter.charCodeAt(0));
  const loading = getDocument({data});
  const paper = await (await loading.promise).getPage(number);
  const viewport = paper.getViewport({scale: (height * fold) / paper.getViewport({scale: 1}).height});
  const width = Math.floor(viewport.width / fold);
  const canvas = document.createElement('canvas');
  canvas.width = width * fold;
  canvas.height = height * fold;
  const context = canvas.getContext('2d', {willReadFrequently: true});
  await paper.render({canvas, viewport, background: '#fff'}).promise;
  const dots = context?.getImageData(0, 0, width * fold, height * fold).data ?? new Uint8ClampedArray();
  const sums = new Float64Array(width * height);
  for (let y = 0; y < height * fold; y++) {
    for (let x = 0; x < width * fold; x++) {
      const at = 4 * (y * width * fold + x);
      const light = 0.299 * (dots[at] ?? 0) + 0.587 * (dots[at + 1] ?? 0) + 0.114 * (dots[at + 2] ?? 0);
      const to = Math.floor(y / fold) * width + Math.floor(x / fold);
      sums[to] = (sums[to] ?? 0) + light;
    }
  }
  await loading.destroy();
  return {width, height, grey: Array.from(sums, (sum) => Math.round(sum / (fold * fold)))};
}

async function encoded({width, height, grey}: Picture): Promise<string> {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  const dots = new ImageData(width, height);
  for (const [at, light] of grey.entries()) dots.data.set([light, light, light, 255], 4 * at);
  context?.putImageData(dots, 0, 0);
  const bytes = new Uint8Array(await (await canvas.convertToBlob({type: 'image/png'})).arrayBuffer());
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}

async function decoded(png: string): Promise<Picture> {
  const bytes = Uint8Array.from(atob(png), (letter) => letter.charCodeAt(0));
  const bitmap = await createImageBitmap(new Blob([bytes], {type: 'image/png'}));
  const {width, height} = bitmap;
  const context = new OffscreenCanvas(width, height).getContext('2d');
  context?.drawImage(bitmap, 0, 0);
  const {data} = context?.getImageData(0, 0, width, height) ?? {data: new Uint8ClampedArray()};
  return {width, height, grey: Array.from({length: width * height}, (_, at) => data[4 * at] ?? 0)};
}
