/** `npm run reviews`: every edit of the known classes in the demonstration books, and how `wmark compare` places it. */
import type {Book} from '../../src/build/book.js';
import {EFFECTS} from '../../src/compare/model.js';
import {loadBook} from '../../src/host/load.js';
import {generatedClean} from '../omissions/generated.js';
import {type Placed, placed, reviewsOf} from './run.js';

const BOOKS = ['procedures/ottermouth-four', 'procedures/fjordholm/twin'];

/**
 * A word of the classes wanted, which of them, and the seconds after which no more are begun: `widen 5 300` is every
 * fifth edit of the classes that say `widen`, for five minutes.
 */
const [only = '', each = '1', seconds = 'Infinity'] = process.argv.slice(2);
const end = performance.now() + Number(seconds) * 1000;

const all: Placed[] = [];
for (const book of [...(await Promise.all(BOOKS.map(demoBook))), generatedClean(1, 30)]) {
  const {there, back} = reviewsOf(book);
  const wanted = <T extends {kind: string}>(list: readonly T[]) =>
    list.filter(({kind}) => kind.includes(only)).filter((_, index) => index % Number(each) === 0);
  for (const chunk of chunks(wanted(there))) add(placed(book, {there: chunk, back: []}));
  for (const chunk of chunks(wanted(back))) add(placed(book, {there: [], back: chunk}));
}
print();

/** A few at a time, while there is time. */
function* chunks<T>(list: readonly T[]): Generator<readonly T[]> {
  for (let first = 0; first < list.length && performance.now() < end; first += 10)
    yield list.slice(first, first + 10);
}

async function demoBook(folder: string): Promise<Book> {
  const loaded = await loadBook(folder);
  if (!loaded.ok) throw new Error(`${folder}: ${loaded.says}`);
  return loaded.book;
}

function add(rows: readonly Placed[]): void {
  for (const row of rows) {
    const sum = all.find(({kind}) => kind === row.kind);
    if (sum === undefined) all.push(row);
    else {
      for (const [effect, count] of row.as) sum.as.set(effect, (sum.as.get(effect) ?? 0) + count);
      sum.wrong.push(...row.wrong);
    }
  }
}

function print(): void {
  const columns = [...EFFECTS, 'nothing'] as const;
  console.log(`| edit | should be | ${columns.join(' | ')} | wrong |`);
  console.log(`| --- | --- | ${columns.map(() => '---:').join(' | ')} | ---: |`);
  for (const {kind, expected, as, wrong} of all) {
    console.log(
      `| ${kind} | ${expected} | ${columns.map((effect) => as.get(effect) ?? 0).join(' | ')} | ${wrong.length} |`,
    );
  }
  for (const expected of ['weakened', 'strengthened', 'harmless'] as const) {
    const rows = all.filter((row) => row.expected === expected);
    const made = rows.reduce((sum, {as}) => sum + [...as.values()].reduce((a, b) => a + b, 0), 0);
    const wrong = rows.reduce((sum, row) => sum + row.wrong.length, 0);
    console.log(
      `${expected}: ${made} edits, ${wrong} placed otherwise (${((100 * wrong) / Math.max(1, made)).toFixed(2)} %)`,
    );
  }
  for (const line of all.flatMap(({wrong}) => wrong)) console.log(`wrong: ${line}`);
  process.exitCode = all.some(({expected, wrong}) => expected === 'weakened' && wrong.length > 0) ? 1 : 0;
}
