/**
 * Random edits of a small book, typed into the editor's core and saved into a book beside it: after each, what the
 * core finds must be what a check of the saved book finds that knows nothing of what was before.
 */
import {mkdir, mkdtemp, readdir, readFile, realpath, rm, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';
import {Desk} from '../../src/editor/desk.js';
import {checkWithJobs} from '../../src/findings/check-jobs.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {loadBooks} from '../../src/host/load.js';
import {generatedBook} from '../bench/generated.js';
import {type Random, seeded} from '../help/random.js';

const FILES = ['shop.yaml', 'engine.yaml', '01-oil-pump.md', '02-sump.md', 'jobs/1.yaml'];

/** Of the book whose procedure is one long text. */
const LONG_STEPS = 60;

const JOB = 'job: {number: 1, engine: my-engine}\n';

/** What is typed: pieces of tags, of YAML and of Markdown, and what no reader likes. */
const PIECES = [
  ...[
    '`',
    '`lock: ',
    '`clean: ',
    'torque: pump-bolts to 18 lbf·ft',
    ' with wire-032',
    '[front]',
    ', ',
    ': ',
    '{',
    '}',
    '[',
  ],
  ...[
    '\n',
    '\n\n',
    '\r',
    '\n9. ',
    '\n   1. ',
    '\n## ',
    '\n> **Warning:** ',
    '\n> **Warning:** Hot. `hazard: burn`\n\n',
    '\n## Once more\n\n1. Look. ',
    '![gone](gone.png)',
    '[x]: /there\n',
    '<!-- ',
    '-->',
    '---\n',
    '```\n',
    '    ',
    '\t',
    '- ',
    '# ',
  ],
  ...[
    'pump-bolts',
    'unknown',
    'none',
    'waive: left-unlocked because ',
    'if: ',
    'repeat: ',
    'step: ',
    '0',
    '18',
    ' N·m',
    '°',
  ],
  ...[
    '\n  x: {',
    'build: [',
    'extends: shop.yaml',
    'source: ',
    '&a ',
    '*a',
    '"',
    "'",
    '\0',
    '\uFEFF',
    '\u200B',
    'é',
  ],
];

export interface Soaked {
  readonly edits: number;
  /** The first edit after which the two disagreed, with both answers. */
  readonly disagreement?: {readonly edit: number; readonly typed: string; readonly saved: string};
  /** Bytes in use, at every tenth of the way. */
  readonly memory: readonly number[];
}

export type SoakBook = 'small' | 'long' | 'demo';

/** `book` is the small one with a job, a generated one whose steps all stand in one text, or the demonstration book. */
export async function soak(
  edits: number,
  seed: number,
  book: SoakBook = 'small',
  rest: () => void = () => undefined,
): Promise<Soaked> {
  const folder = await realpath(await mkdtemp(join(tmpdir(), 'wmark-soak-')));
  try {
    return await run(folder, {edits, seed, rest, ...(await BEGINNINGS[book]())});
  } finally {
    await rm(folder, {recursive: true, force: true});
  }
}

interface Beginning {
  /** The texts by name. */
  readonly first: ReadonlyMap<string, string>;
  readonly engine: string;
  /** How often a file begins anew: otherwise all is rubble after a hundred edits. */
  readonly afresh: (name: string) => number;
}

interface Plan extends Beginning {
  readonly edits: number;
  readonly seed: number;
  readonly rest: () => void;
}

async function run(folder: string, {edits, seed, rest, first, engine, afresh}: Plan): Promise<Soaked> {
  const random = seeded(seed);
  const [typed, saved] = [join(folder, 'typed'), join(folder, 'saved')];
  const names = [...first.keys()];
  for (const place of [typed, saved]) {
    for (const [name, text] of first) {
      await mkdir(dirname(join(place, name)), {recursive: true});
      await writeFile(join(place, name), text);
    }
  }
  const now = new Map(first);
  const desk = new Desk({cwd: typed});
  for (const [name, text] of first) desk.open(join(typed, name), text);
  const memory: number[] = [];
  for (let edit = 1; edit <= edits; edit++) {
    const name = names[Math.floor(random() * names.length)] ?? 'shop.yaml';
    const before = now.get(name) ?? '';
    const text = random() < afresh(name) ? (first.get(name) ?? '') : changed(before, random);
    now.set(name, text);
    desk.change(join(typed, name), text);
    await writeFile(join(saved, name), text);
    const [one, other] = [await foundOnDesk(desk, engine), await foundOnDisk(saved, engine)];
    if (one !== other) return {edits: edit, memory, disagreement: {edit, typed: one, saved: other}};
    if (edit % Math.ceil(edits / 10) === 0) {
      rest();
      memory.push(process.memoryUsage().heapUsed);
    }
  }
  return {edits, memory};
}

/** In the small book everything breaks often; in the large ones mostly what the procedures say is in play. */
const BEGINNINGS: {readonly [book in SoakBook]: () => Promise<Beginning>} = {
  small: async () => ({first: await smallBook(), engine: 'engine.yaml', afresh: () => 0.15}),
  long: async () => ({first: longBook(), engine: 'engine.yaml', afresh: () => 0.15}),
  demo: async () => ({
    first: await demoBook(),
    engine: `${DEMO}/engine.yaml`,
    afresh: (name) => (name.endsWith('.yaml') ? 0.6 : 0.15),
  }),
};

const DEMO = 'ottermouth-four';

async function smallBook(): Promise<Map<string, string>> {
  const texts = new Map<string, string>();
  for (const name of FILES) {
    texts.set(name, name.startsWith('jobs/') ? JOB : await readFile(join('src/cli/begin', name), 'utf8'));
  }
  return texts;
}

/** With jobs that have options, ground sizes and substitutes. */
async function demoBook(): Promise<Map<string, string>> {
  const all = await readdir(join('procedures', DEMO), {recursive: true});
  const own = all.filter((name) => /\.(?:md|yaml)$/.test(name)).map((name) => `${DEMO}/${name}`);
  const texts = new Map<string, string>();
  for (const name of ['shop.yaml', ...own.sort()])
    texts.set(name, await readFile(join('procedures', name), 'utf8'));
  return texts;
}

function longBook(): Map<string, string> {
  const {shop, engine, procedures} = generatedBook(LONG_STEPS, LONG_STEPS, {loops: true});
  return new Map([['shop.yaml', shop], ['engine.yaml', engine], ...procedures]);
}

function changed(text: string, random: Random): string {
  const at = Math.floor(random() * (text.length + 1));
  const piece = PIECES[Math.floor(random() * PIECES.length)] ?? '';
  const length = random() < 0.5 ? 0 : Math.floor(random() * 40);
  return text.slice(0, at) + (random() < 0.3 ? '' : piece) + text.slice(at + length);
}

async function foundOnDesk(desk: Desk, engine: string): Promise<string> {
  const {views, failures} = await desk.settled();
  const view = views.find(({loaded}) => loaded.file === engine && !loaded.alone);
  return view ? JSON.stringify(view.findings) : JSON.stringify(failures);
}

async function foundOnDisk(folder: string, engine: string): Promise<string> {
  const {books, failures} = await loadBooks([engine], folder);
  const [loaded] = books;
  if (loaded === undefined) return JSON.stringify(failures);
  const {findings, ofJobs} = checkWithJobs(loaded.book, loaded.jobs);
  const all = [...findings, ...ofJobs.map(({finding}) => finding)];
  // Where nothing is built yet, the editor keeps to what it could not read.
  const isRead = (name: string) => FINDINGS.some((kind) => kind.name === name && kind.group === 'reading');
  return JSON.stringify(loaded.book.spec.build.length > 0 ? all : all.filter(({name}) => isRead(name)));
}
