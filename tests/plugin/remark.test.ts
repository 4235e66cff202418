/** The remark plugin as any remark user would run it: in a pipeline, and over files with unified-engine. */
import {writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import {PassThrough} from 'node:stream';
import {fileURLToPath} from 'node:url';
import {remark} from 'remark';
import remarkParse from 'remark-parse';
import remarkStringify from 'remark-stringify';
import {unified} from 'unified';
import {engine} from 'unified-engine';
import {VFile} from 'vfile';
import {describe, expect, test} from 'vitest';
import standard, {
  check,
  type HouseFinding,
  type LoadedBook,
  loadBook,
  type WitnessMarkOptions,
  whereIn,
  witnessMark,
} from '../../src/index.js';
import {PROCEDURE, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';

const UNCLEAN = PROCEDURE.replace('1. Wipe the seat with solvent. `clean: seat with solvent`\n2.', '1.');

function processed(
  folder: string,
  value: string,
  book: WitnessMarkOptions['book'] = 'book',
  path = 'book/plug.md',
) {
  const processor = unified().use(remarkParse).use(witnessMark, {book}).use(remarkStringify);
  return processor.process(new VFile({cwd: folder, path, value}));
}

async function loaded(cwd: string, path = 'book'): Promise<LoadedBook> {
  const book = await loadBook(path, cwd);
  if (!book.ok) throw new Error(book.says);
  return book;
}

describe('in a pipeline', () => {
  test('is the default export as well', () => {
    expect(standard).toBe(witnessMark);
  });

  test('leaves a message with rule, source, place, note and address', async () => {
    const folder = await temporaryFolder(smallBook());
    const file = await processed(folder, UNCLEAN);
    const message = file.messages.find(({ruleId}) => ruleId === 'clean-first');
    expect(message).toMatchObject({
      source: 'witness-mark',
      fatal: true,
      line: 8,
      column: 24,
      place: {start: {line: 8, column: 24, offset: UNCLEAN.indexOf('install:')}, end: {line: 8, column: 55}},
    });
    expect(message?.reason).toContain('seat');
    expect(message?.note).toContain('book/engine.yaml:7:3: ');
    expect(message?.note).toContain('`wmark why clean-first` explains it');
    const readme = new URL('../../README.md', import.meta.url);
    expect(message?.url).toBe(`${readme.href}#clean-first`);
  });

  test('the messages are those of the check, for the text as it stands now', async () => {
    const folder = await temporaryFolder(smallBook());
    const unsaved = await processed(folder, UNCLEAN);
    await writeFile(join(folder, 'book/plug.md'), UNCLEAN);
    const saved = check((await loaded(folder)).book).findings.filter(({where}) =>
      where.file.endsWith('plug.md'),
    );
    expect(saved.length).toBeGreaterThan(0);
    expect(unsaved.messages.map(({ruleId, reason}) => [ruleId, reason])).toEqual(
      saved.map(({name, message}) => [name, message]),
    );
  });

  test('a clean text has no message, and the tree is left as it is', async () => {
    const folder = await temporaryFolder(smallBook());
    const plain = await unified().use(remarkParse).use(remarkStringify).process(PROCEDURE);
    const file = await processed(folder, PROCEDURE);
    expect(file.messages).toEqual([]);
    expect(String(file)).toBe(String(plain));
  });

  test('a loaded book serves as well as its folder, by absolute path too', async () => {
    const folder = await temporaryFolder(smallBook());
    const rules = async (book: WitnessMarkOptions['book']) =>
      (await processed(folder, UNCLEAN, book, join(folder, 'book/plug.md'))).messages.map(
        ({ruleId}) => ruleId,
      );
    const byName = await rules('book');
    expect(byName).toContain('clean-first');
    expect(await rules(join(folder, 'book'))).toEqual(byName);
    expect(await rules((await loaded(folder)).book)).toEqual(byName);
    expect(await rules(await loaded('/', join(folder, 'book')))).toEqual(byName);
  });

  test('what a warning and an information weigh', async () => {
    const severity = 'severity: {clean-first: information}\n';
    const book = smallBook();
    const folder = await temporaryFolder({...book, 'book/shop.yaml': `${book['book/shop.yaml']}${severity}`});
    const {messages} = await processed(folder, UNCLEAN);
    const found = messages.find(({ruleId}) => ruleId === 'clean-first');
    expect(found).toBeDefined();
    expect(found?.fatal).toBeUndefined();
  });
});

describe('with rules of the house', () => {
  const rule = (before: HouseFinding['before']): HouseFinding => ({
    name: 'house-plug-alone',
    severity: 'warning',
    summary: 'A plug goes in unseen',
    why: 'We have lost one before.',
    ...(before && {before}),
  });

  async function left(before: HouseFinding['before']) {
    const folder = await temporaryFolder(smallBook());
    const file = new VFile({cwd: folder, path: 'book/plug.md', value: PROCEDURE});
    const options = {book: 'book', house: [rule(before)]};
    await unified().use(remarkParse).use(witnessMark, options).use(remarkStringify).process(file);
    return file.messages.map(({ruleId, fatal, line, reason}) => ({ruleId, fatal, line, reason}));
  }

  test('they leave messages like ours', async () => {
    const said = await left({
      install: ({step, tag}, {report}) =>
        report({where: whereIn(step, tag.span), message: 'plug goes in unseen'}),
    });
    expect(said).toEqual([
      {ruleId: 'house-plug-alone', fatal: false, line: 9, reason: 'plug goes in unseen'},
    ]);
  });

  test('one that throws leaves a message of its own, and stops the file from passing', async () => {
    const said = await left({
      install() {
        throw new RangeError('no such plug');
      },
    });
    expect(said).toMatchObject([{ruleId: 'house-plug-alone', fatal: true}]);
    expect(said[0]?.reason).toBe('house-plug-alone went wrong (before install): RangeError: no such plug');
  });
});

describe('where there is nothing to check', () => {
  test('a tree without a text', async () => {
    const folder = await temporaryFolder(smallBook());
    const file = new VFile({cwd: folder, path: 'book/plug.md'});
    const tree = unified().use(remarkParse).parse(UNCLEAN);
    await unified().use(witnessMark, {book: 'book'}).run(tree, file);
    expect(file.messages).toEqual([]);
  });

  test('a file that the book does not list', async () => {
    const folder = await temporaryFolder(smallBook());
    expect((await processed(folder, UNCLEAN, 'book', 'README.md')).messages).toEqual([]);
  });

  test('a text without a path is told so', async () => {
    const folder = await temporaryFolder(smallBook());
    const file = await remark()
      .use(witnessMark, {book: 'book'})
      .process(new VFile({cwd: folder, value: UNCLEAN}));
    expect(file.messages.map(({ruleId, fatal}) => [ruleId, fatal])).toEqual([['no-path', undefined]]);
  });

  test('a book that can not be loaded stops the file', async () => {
    const folder = await temporaryFolder(smallBook());
    await expect(processed(folder, UNCLEAN, 'nowhere')).rejects.toMatchObject({
      ruleId: 'could-not-run',
      source: 'witness-mark',
      reason: 'nowhere: there is no such file or folder; see that the path is right',
    });
  });
});

describe('over files, by unified-engine', () => {
  interface Outcome {
    readonly code: number;
    readonly report: string;
  }

  /** As remark-cli runs it, with a configuration file that names the plugin. */
  function runEngine(folder: string): Promise<Outcome> {
    const written: string[] = [];
    const streamError = new PassThrough();
    streamError.on('data', (chunk) => written.push(String(chunk)));
    return new Promise((resolve, reject) => {
      engine(
        {
          processor: remark(),
          cwd: folder,
          files: ['book'],
          extensions: ['md'],
          rcName: '.remarkrc',
          packageField: 'remarkConfig',
          color: false,
          streamError,
          streamOut: new PassThrough(),
        },
        (error, code) => {
          if (error) reject(error);
          else resolve({code: code ?? -1, report: written.join('')});
        },
      );
    });
  }

  const built = fileURLToPath(new URL('../../dist/index.js', import.meta.url));
  const configuration = JSON.stringify({plugins: [[built, {book: 'book'}]]});

  test('a clean book', async () => {
    const folder = await temporaryFolder(smallBook({'.remarkrc': configuration}));
    expect(await runEngine(folder)).toEqual({code: 0, report: 'book/plug.md: no issues found\n'});
  });

  test('a book with a finding', async () => {
    const folder = await temporaryFolder(smallBook({'.remarkrc': configuration, 'book/plug.md': UNCLEAN}));
    const {code, report} = await runEngine(folder);
    expect(code).toBe(1);
    expect(report).toMatch(/^8:24-8:55 +error +.*seat.* +clean-first +witness-mark$/m);
  });
});
