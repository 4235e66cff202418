/**
 * The package as its users get it: packed, installed in an empty project, and used as the README says. The examples
 * are taken out of the README itself.
 */
import {existsSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {afterAll, beforeAll, describe, expect, test} from 'vitest';
import {install, node, run, tsc} from './install.js';

const README = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** The fenced blocks of a language, in order. */
function examples(language: string): string[] {
  const fence = new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\`$`, 'gm');
  return [...README.matchAll(fence)].map(([, text = '']) => text);
}

const scripts = examples('js');
const typed = examples('ts');
const house = scripts.find((text) => text.startsWith('// house.mjs\n'));
const plain = scripts.filter((text) => text !== house);

/** One project for all: packing takes its time, and no test changes what another reads. */
const folder = realpathSync(mkdtempSync(join(tmpdir(), 'wmark-')));

afterAll(() => rmSync(folder, {recursive: true, force: true}));

beforeAll(() => {
  install(folder);
  expect(run(folder, 'npx', ['wmark', 'begin', 'my-engine'])).toMatchObject({code: 0, err: ''});
  if (house !== undefined) writeFileSync(join(folder, 'house.mjs'), house);
});

test('the README has the examples that are meant', () => {
  expect({plain: plain.length, typed: typed.length, house: house !== undefined}).toEqual({
    plain: 3,
    typed: 1,
    house: true,
  });
});

describe('the examples of the README', () => {
  test.each(plain.map((text, index) => [index + 1, text] as const))('run as a script: %i', (index, text) => {
    const file = `example-${index}.mjs`;
    writeFileSync(join(folder, file), text);
    const {code, out, err} = node(folder, file);
    expect({code, err}).toEqual({code: 0, err: ''});
    expect(out).toEqual(OUTPUT[index - 1]);
  });

  test('are sound under strict TypeScript, with every declaration that they reach; a slip is not', () => {
    plain.forEach((text, index) => {
      writeFileSync(join(folder, `example-${index + 1}.ts`), text);
    });
    typed.forEach((text, index) => {
      writeFileSync(join(folder, `typed-${index + 1}.ts`), text);
    });
    const line = /^.*state\.holds\('turned'.*$/m;
    const slip = (found: string) => `// @ts-expect-error\n${found.replace('turned', 'truned')}`;
    writeFileSync(join(folder, 'slip.ts'), (typed[0] ?? '').replace(line, slip));
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(TSCONFIG));
    expect(tsc(folder)).toEqual({code: 0, out: '', err: ''});
  }, 600_000);
});

const OUTPUT = [
  '',
  '0 errors\n',
  expect.stringMatching(/^unknown-verb .*Write `install`$[\s\S]*^left-out plug is never installed/m),
];

const TSCONFIG = {
  compilerOptions: {
    target: 'es2022',
    module: 'nodenext',
    types: ['node'],
    ...{strict: true, exactOptionalPropertyTypes: true, noUncheckedIndexedAccess: true},
    ...{noEmit: true, allowJs: true, checkJs: true, skipLibCheck: false},
  },
  include: ['*.ts', 'house.mjs'],
};

test('CommonJS can require it', () => {
  const text =
    "const {check, loadBook} = require('witness-mark');\nconsole.log(typeof check, typeof loadBook);\n";
  writeFileSync(join(folder, 'example.cjs'), text);
  expect(node(folder, 'example.cjs')).toMatchObject({code: 0, out: 'function function\n'});
});

test('the schemas can be found by the name of the package', () => {
  const text = "console.log(import.meta.resolve('witness-mark/schemas/engine.schema.json'));\n";
  writeFileSync(join(folder, 'schema.mjs'), text);
  const {out} = node(folder, 'schema.mjs');
  expect(existsSync(new URL(out.trim()))).toBe(true);
});

describe('the command', () => {
  const wmark = (...words: readonly string[]) => run(folder, 'npx', ['wmark', ...words]);

  test('explains itself', () => {
    const {code, out} = wmark('--help');
    expect(code).toBe(0);
    expect(out).toContain('Usage: wmark');
  });

  test('runs the rule of the README, which finds what the README says', async () => {
    expect(wmark('check', 'my-engine', '--house', 'house.mjs')).toMatchObject({code: 0, err: ''});
    const path = join(folder, 'my-engine', '01-oil-pump.md');
    const whole = readFileSync(path, 'utf8');
    writeFileSync(path, whole.replace('to 18 lbf·ft using torque-wrench', 'to 18 lbf·ft'));
    const {code, out, err} = wmark('check', 'my-engine', '--house', 'house.mjs');
    writeFileSync(path, whole);
    expect({code, err}).toEqual({code: 0, err: ''});
    const line = out.split('\n').find((one) => one.includes('[house-wrench-named]'));
    expect(README).toContain(`\n${line}\n`);
  });

  test('makes HTML and PDF with the fonts that come along', () => {
    expect(wmark('sheet', 'my-engine', '--out', 'out', '--as', 'both')).toMatchObject({code: 0, err: ''});
    const pdf = readFileSync(join(folder, 'out', 'my-engine', '01-oil-pump.pdf'), 'latin1');
    expect(pdf.slice(0, 5)).toBe('%PDF-');
    expect(pdf).toContain('DejaVuSansCondensed');
    expect(existsSync(join(folder, 'out', 'my-engine', '01-oil-pump.html'))).toBe(true);
  });
});
