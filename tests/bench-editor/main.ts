/**
 * How fast the language server answers, over its own protocol: `npm run bench:editor`, with `-- WORD` for the books
 * whose name holds the word. From an edit to its diagnostics, as a ratio to the bare parsing of the edited file too;
 * completion; from the start to the first diagnostics.
 */
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import {unified} from 'unified';
import {generatedBook} from '../bench/generated.js';
import {type Client, startClient} from '../editor/client.js';

const ROUNDS = 60;
/** The first ones are before the compiler of the machine has warmed up. */
const WARM = 10;
interface Subject {
  readonly name: string;
  readonly folder: string;
  readonly file: string;
  /** A line whose change makes a finding, and the line changed. */
  readonly line: string;
  readonly changed: string;
}

const root = mkdtempSync(join(tmpdir(), 'wmark-bench-'));
try {
  console.log(
    'Milliseconds; `parse` is remark-parse with front matter on the edited file alone, `processor` what the',
  );
  console.log('server itself took from edit to diagnostics, of its jobs too, which follow.');
  const [word = ''] = process.argv.slice(2);
  const subjects = [demo(), generated(2000, 50), generated(2000, 2000)];
  for (const subject of subjects.filter(({name}) => name.includes(word))) {
    console.table([await measure(subject, ROUNDS)]);
  }
  const vsix = 'out/witness-mark.vsix';
  if (existsSync(vsix)) console.log(`extension: ${Math.round(statSync(vsix).size / 1024)} KiB`);
} finally {
  rmSync(root, {recursive: true, force: true});
}

/** The demonstration book with one procedure made up to fifty steps. */
function demo(): Subject {
  const folder = join(root, 'demo');
  cpSync('procedures', folder, {recursive: true});
  const file = 'ottermouth-four/04-crankshaft.md';
  const text = readFileSync(join(folder, file), 'utf8');
  const count = [...text.matchAll(/^\d+\. /gm)].length;
  const more = Array.from(
    {length: 50 - count},
    (_, index) => `${count + index + 1}. Wipe your hands, and look at the whole once more before you go on.`,
  );
  writeFileSync(join(folder, file), `${text.trimEnd()}\n${more.join('\n')}\n`);
  return {
    name: '50 steps, demonstration book',
    folder,
    file,
    line: '`lock: main-cap-bolts with wire-041`',
    changed: '`lock: main-cap-bolt with wire-041`',
  };
}

function generated(steps: number, stepsPerFile: number): Subject {
  const folder = join(root, `generated-${stepsPerFile}`);
  const {shop, engine, procedures} = generatedBook(steps, stepsPerFile);
  const texts = new Map([['shop.yaml', shop], ['engine.yaml', engine], ...procedures]);
  for (const [name, text] of texts) {
    mkdirSync(dirname(join(folder, name)), {recursive: true});
    writeFileSync(join(folder, name), text);
  }
  const name = `${stepsPerFile} of ${steps} steps in the file`;
  return {
    name,
    folder,
    file: '0001-assembly.md',
    line: '`lock: bolts-3 with wire-032`',
    changed: '`lock: bolt-3 with wire-032`',
  };
}

async function measure({name, folder, file, line, changed}: Subject, count: number) {
  const begun = performance.now();
  const client = await startClient(folder);
  const text = readFileSync(join(folder, file), 'utf8');
  await client.open(file, text);
  await client.until(file, () => true);
  const start = performance.now() - begun;
  const other = text.replace(line, changed);
  if (other === text) throw new Error(`${file} does not hold ${line}`);
  let used = Number.NaN;
  const edits = await rounds(count, async (round) => {
    if (round === WARM) used = processorTime(client);
    const before = client.diagnostics(file).length;
    await client.type(file, round % 2 === 0 ? other : text);
    await client.until(file, (all) => all.length !== before);
  });
  const processor = (processorTime(client) - used) / (count - WARM);
  const completions = await rounds(count, () => complete(client, file, text, line));
  const parser = unified().use(remarkParse).use(remarkFrontmatter, ['yaml']).freeze();
  const parse = await rounds(count, () => parser.parse(text));
  const begin = process.cpuUsage();
  for (let round = 0; round < count; round++) parser.parse(text);
  const {user, system} = process.cpuUsage(begin);
  await client.stop();
  return {
    book: name,
    'edit, median': shown(at(edits, 0.5)),
    'edit, 95 %': shown(at(edits, 0.95)),
    processor: shown(processor),
    'parse, median': shown(at(parse, 0.5)),
    'processor / parse': (processor / ((user + system) / 1000 / count)).toFixed(1),
    'edit / parse': (at(edits, 0.5) / at(parse, 0.5)).toFixed(1),
    'completion, 95 %': shown(at(completions, 0.95)),
    'first diagnostics': Math.round(start),
  };
}

/** Of the server so far, in milliseconds, where the system tells it: by proc(5), in hundredths of a second. */
function processorTime({server: {pid}}: Client): number {
  const stat = `/proc/${pid}/stat`;
  if (!existsSync(stat)) return Number.NaN;
  const fields = readFileSync(stat, 'utf8').split(') ')[1]?.split(' ') ?? [];
  return (Number(fields[11]) + Number(fields[12])) * 10;
}

async function complete(client: Client, file: string, text: string, line: string): Promise<void> {
  const before = text.slice(0, text.indexOf(line) + '`lock: '.length).split('\n');
  const position = {line: before.length - 1, character: before.at(-1)?.length ?? 0};
  await client.request('textDocument/completion', {textDocument: {uri: client.uri(file)}, position});
}

async function rounds(count: number, run: (round: number) => unknown): Promise<number[]> {
  const times: number[] = [];
  for (let round = 0; round < count; round++) {
    const start = performance.now();
    await run(round);
    times.push(performance.now() - start);
  }
  return times.slice(WARM).sort((one, other) => one - other);
}

function at(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

function shown(milliseconds: number): number {
  return Math.round(milliseconds * 10) / 10;
}
