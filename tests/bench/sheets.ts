/**
 * The benchmark of sheets: time over bare parsing of the same text, pages a second, size, peak memory and growth, for
 * HTML and PDF of a generated book in one file, and of the demonstration book. Use:
 * `node .config/run.mjs tests/bench/sheets.ts`.
 */
import {spawnSync} from 'node:child_process';
import {fileURLToPath} from 'node:url';
import {loadBook} from '../../src/host/load.js';
import {type PdfMaker, pdfMaker} from '../../src/host/pdf.js';
import {compileSheet, type SheetBook} from '../../src/sheet/compile.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {sheetPrint} from '../../src/sheet/print.js';
import {generatedBook} from './generated.js';
import {growth} from './growth.js';
import {parseBare, readWhole} from './subjects.js';

const DEMO = 'procedures/ottermouth-four';
const SIZES = {html: [100, 1_000, 10_000], pdf: [100, 300, 1_000]} as const;
type Form = keyof typeof SIZES;

const [, , mode, ...words] = process.argv;
if (mode === 'peak') await printPeak(words);
else await printAll();

async function printAll(): Promise<void> {
  // First of all: a new process starts with the peak of the one that started it.
  const peaks = new Map(
    (['html', 'pdf'] as const).flatMap((form) =>
      [...SIZES[form].map(String), DEMO].map((of) => [`${form} ${of}`, peak(form, of)] as const),
    ),
  );
  const make = await pdfMaker();
  made(bookOf(100), 'html', make);
  made(bookOf(100), 'pdf', make);
  for (const form of ['html', 'pdf'] as const) {
    const rows = SIZES[form].map((steps) => row(steps, form, make, peaks));
    console.log(`\nSheets of a generated book in one file, ${form.toUpperCase()}`);
    console.table(rows.map(({steps, columns}) => ({steps, ...columns})));
    const exponent = growth(rows.map(({steps, time}) => [steps, time]));
    console.log(`growth: time goes with steps to the power ${exponent.toFixed(2)} (1 is in proportion)`);
  }
  await printDemo(make, peaks);
}

function row(steps: number, form: Form, make: PdfMaker, peaks: ReadonlyMap<string, number>) {
  const generated = generatedBook(steps, Number.POSITIVE_INFINITY);
  const bare = timed(() => parseBare(generated)).time;
  const book = bookOf(steps);
  const {time, result} = timed(() => made(book, form, make));
  const pages =
    result.pages === 0 ? {} : {pages: result.pages, 'pages/s': Math.round((result.pages / time) * 1000)};
  const columns = {
    ms: Math.round(time),
    'over bare parsing': (time / bare).toFixed(2),
    KB: Math.round(result.bytes / 1000),
    ...pages,
    'peak MiB': peaks.get(`${form} ${steps}`),
  };
  return {steps, time, columns};
}

async function printDemo(make: PdfMaker, peaks: ReadonlyMap<string, number>): Promise<void> {
  const book = await demoBook();
  console.log('\nAll sheets of the demonstration book');
  console.table(
    (['html', 'pdf'] as const).map((form) => {
      const {time, result} = timed(() => made(book, form, make));
      const pages =
        result.pages === 0 ? {} : {pages: result.pages, 'pages/s': Math.round((result.pages / time) * 1000)};
      return {
        form,
        ms: Math.round(time),
        KB: Math.round(result.bytes / 1000),
        ...pages,
        'peak MiB': peaks.get(`${form} ${DEMO}`),
      };
    }),
  );
}

/** Every sheet of the book, one after the other. */
function made(book: SheetBook, form: Form, make: PdfMaker): {readonly bytes: number; readonly pages: number} {
  let [bytes, pages] = [0, 0];
  for (const procedure of book.procedures) {
    const sheet = compileSheet(book, procedure, {fingerprint: '0123456789'});
    if (form === 'html') {
      bytes += Buffer.byteLength(sheetHtml(sheet));
      continue;
    }
    const pdf = make((pathOf) => sheetPrint(sheet, pathOf), []);
    if (!pdf.ok) throw new Error(pdf.says);
    bytes += pdf.bytes.length;
    pages += pdf.pages;
  }
  return {bytes, pages};
}

function bookOf(steps: number): SheetBook {
  return readWhole(generatedBook(steps, Number.POSITIVE_INFINITY));
}

async function demoBook(): Promise<SheetBook> {
  const loaded = await loadBook(DEMO);
  if (!loaded.ok) throw new Error(loaded.says);
  return loaded.book;
}

/** Milliseconds of the processor: unlike the clock, they hold on a machine that has other things to do. */
function timed<T>(run: () => T): {readonly time: number; readonly result: T} {
  const start = process.cpuUsage();
  const result = run();
  const {user, system} = process.cpuUsage(start);
  return {time: (user + system) / 1000, result};
}

/** Peak resident memory, in MiB, of a process of its own that makes the sheets once. */
function peak(form: Form, of: string): number {
  const run = spawnSync(process.execPath, [fileURLToPath(import.meta.url), 'peak', form, of], {
    encoding: 'utf8',
  });
  return Number(run.stdout);
}

async function printPeak([form, of = DEMO]: readonly string[]): Promise<void> {
  const book = of === DEMO ? await demoBook() : bookOf(Number(of));
  made(book, form === 'pdf' ? 'pdf' : 'html', await pdfMaker());
  console.log(Math.round(process.resourceUsage().maxRSS / 1024));
}
