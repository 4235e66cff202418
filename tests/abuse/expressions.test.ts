/**
 * Every regular expression of `src` is proven to take time in proportion to its text, whatever the text, by the
 * checker `recheck`: those that stand as literals are read by TypeScript's own parser, those that are put together
 * from parts are caught as they are made.
 */
import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {checkSync} from 'recheck';
import ts from 'typescript';
import {afterEach, expect, test, vi} from 'vitest';

/** Those that are not linear, by file and how they begin, each with what bounds its text instead. */
const BOUNDED: readonly {readonly file: string; readonly starts: string; readonly because: string}[] = [
  {
    file: 'src/trade/thread.ts',
    starts: '^M\\s?',
    because: 'readThread refuses more than 60 characters first',
  },
  {
    file: 'src/trade/thread.ts',
    starts: '^(\\d+[- ]\\d+',
    because: 'readThread refuses more than 60 characters first',
  },
];

interface Expression {
  readonly file: string;
  readonly source: string;
  readonly flags: string;
}

const FILES = readdirSync('src', {recursive: true, encoding: 'utf8'})
  .filter((name) => name.endsWith('.ts'))
  .map((name) => join('src', name));

/** Walks the literals and the calls of `RegExp` of a file. */
function expressionsIn(file: string): {readonly literals: Expression[]; readonly calls: number} {
  const literals: Expression[] = [];
  let calls = 0;
  const visit = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node)) {
      const end = node.text.lastIndexOf('/');
      literals.push({file, source: node.text.slice(1, end), flags: node.text.slice(end + 1)});
    }
    const isCall = ts.isNewExpression(node) || ts.isCallExpression(node);
    if (isCall && ts.isIdentifier(node.expression) && node.expression.text === 'RegExp') calls++;
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest));
  return {literals, calls};
}

const READ = FILES.map((file) => ({file, ...expressionsIn(file)}));

afterEach(() => {
  vi.unstubAllGlobals();
});

/** Loads a file afresh and gives the expressions that it puts together while it loads. */
async function builtBy(file: string): Promise<Expression[]> {
  const built: Expression[] = [];
  class Recorded extends RegExp {
    constructor(pattern: string | RegExp, flags?: string) {
      super(pattern, flags);
      const by = new Error('where this is made').stack ?? '';
      if (by.split('\n').some((line) => line.includes(file)))
        built.push({file, source: this.source, flags: this.flags});
    }
  }
  vi.resetModules();
  vi.stubGlobal('RegExp', Recorded);
  await import(join(process.cwd(), file));
  vi.unstubAllGlobals();
  return built;
}

function isBounded({file, source}: Expression): boolean {
  return BOUNDED.some((one) => one.file === file && source.startsWith(one.starts));
}

/** The proofs of all take some twenty seconds of a processor. */
const LONG = 600_000;

/** Nothing where it is linear; else what is known of it, with a text that shows it. */
function objection({file, source, flags}: Expression): string | undefined {
  const {status, ...more} = checkSync(source, flags, {timeout: 50_000, randomSeed: 1});
  if (status === 'safe') return undefined;
  const shows = status === 'vulnerable' ? more : 'no proof either way';
  return `${file}: /${source}/${flags}: ${status}: ${JSON.stringify(shows).slice(0, 300)}`;
}

test(
  'every expression that stands in the text of src is linear',
  () => {
    const all = new Map(
      READ.flatMap(({literals}) => literals).map((one) => [`/${one.source}/${one.flags}`, one]),
    );
    expect(all.size).toBeGreaterThan(200);
    const loose = [...all.values()].filter((one) => !isBounded(one));
    expect(loose.flatMap((one) => objection(one) ?? [])).toEqual([]);
  },
  LONG,
);

test(
  'every expression that src puts together is linear',
  async () => {
    for (const {file} of READ.filter(({calls}) => calls > 0)) {
      const built = await builtBy(file);
      // One that is made later, from what a user wrote, would not be among them.
      expect(built.length, `${file} puts an expression together only when it is called`).toBeGreaterThan(0);
      // No rule of the lexicon sees more than 600 characters of a clause (`findings/commands.ts`).
      const loose = file === 'src/findings/lexicon.ts' ? [] : built;
      expect(loose.flatMap((one) => objection(one) ?? [])).toEqual([]);
    }
  },
  LONG,
);

test(
  'every exception is still needed',
  () => {
    const all = READ.flatMap(({literals}) => literals);
    for (const {file, starts, because} of BOUNDED) {
      expect(because).not.toBe('');
      const named = all.filter((one) => one.file === file && one.source.startsWith(starts));
      expect(
        named.flatMap((one) => objection(one) ?? []),
        `${file}: ${starts}`,
      ).not.toEqual([]);
    }
  },
  LONG,
);
