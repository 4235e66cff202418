/** What DEVELOPERS.md sends a newcomer to is there: files, names in the code, commands; and it names every folder. */
import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {fileURLToPath} from 'node:url';
import {expect, test} from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const TEXT = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');

/** What was installed or made is no part of the tree. */
const MADE = new Set(['node_modules', 'dist', 'out', '.git', '.cache', 'coverage']);

function filesBelow(folder: string): string[] {
  return readdirSync(join(ROOT, folder), {withFileTypes: true}).flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (MADE.has(entry.name)) return [];
    return entry.isDirectory() ? filesBelow(path) : [path];
  });
}

const FILES = filesBelow('');
const CODE = FILES.filter(
  (file) => /\.(?:ts|mjs|cjs|typ)$/.test(file) && !file.endsWith('/developers.test.ts'),
)
  .map((file) => readFileSync(join(ROOT, file), 'utf8'))
  .join('\n');

/** Everything in backticks, but not in the blocks of code. */
const NAMED = [
  ...new Set([...TEXT.replace(/^```.*?^```/gms, '').matchAll(/`([^`\n]+)`/g)].map(([, name = '']) => name)),
];

/** A name with stars, or the end of a path. */
function globOf(name: string): RegExp {
  const pattern = name
    .split('*')
    .map((part) => part.replaceAll(/[.+]/g, '\\$&'))
    .join('[^/]*');
  return new RegExp(`(?:^|/)${pattern}$`);
}

test('every file is there', () => {
  const named = NAMED.filter((one) =>
    /^[\w./*-]+\.(?:ts|typ|json|mjs|cjs|yaml)$|^(?:src|tests|\.config)\/[\w./*-]*$/.test(one),
  );
  expect(named.length).toBeGreaterThan(150);
  const isThere = (name: string) =>
    FILES.some(
      (file) =>
        file.endsWith(`/${name}`) ||
        file === name ||
        file.startsWith(`${name.replace(/\/$/, '')}/`) ||
        globOf(name).test(file),
    );
  expect(named.filter((name) => !isThere(name))).toEqual([]);
});

test('every name stands in the code', () => {
  const named = NAMED.filter((one) => /^[A-Za-z_][A-Za-z_.]*[A-Z][A-Za-z_.]*$/.test(one));
  expect(named.length).toBeGreaterThan(30);
  const isThere = (name: string) => new RegExp(`\\b${name.split('.').at(-1)}\\b`).test(CODE);
  expect(named.filter((name) => !isThere(name))).toEqual([]);
});

test('every command of npm is there', () => {
  const {scripts} = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  const named = [...new Set(TEXT.match(/(?<=npm run )[\w:-]+/g))];
  expect(named.filter((name) => !(name in scripts))).toEqual([]);
});

test('every folder of the code stands in the table, in the order in which they may use each other', () => {
  const folders = readdirSync(join(ROOT, 'src'), {withFileTypes: true}).filter((one) => one.isDirectory());
  const rows = [...TEXT.matchAll(/^\| `src\/(\w+)` \|/gm)].map(([, name]) => name);
  expect([...rows].sort()).toEqual(folders.map(({name}) => name).sort());
  const order = /const ORDER = \[([^\]]*)\]/.exec(
    readFileSync(join(ROOT, '.config/dependency-cruiser.cjs'), 'utf8'),
  );
  expect(rows).toEqual(order?.[1]?.match(/\w+/g));
});
