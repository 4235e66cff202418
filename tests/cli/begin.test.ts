/** `wmark begin`: the starting book passes its own check, makes its sheets, and never lands on somebody's files. */
import {existsSync, readdirSync, readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {fileURLToPath} from 'node:url';
import {expect, test} from 'vitest';
import {check} from '../../src/findings/check.js';
import {loadBook} from '../../src/host/load.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

test('writes a book that is clean and can be printed', async () => {
  const folder = await temporaryFolder();
  const begun = wmark(folder, 'begin', 'deep/my-engine');
  expect({code: begun.code, err: begun.err}).toEqual({code: 0, err: ''});
  expect(begun.out).toContain('wmark check deep/my-engine\n');
  expect(readdirSync(join(folder, 'deep/my-engine')).sort()).toEqual([
    '01-oil-pump.md',
    '02-sump.md',
    'engine.yaml',
    'shop.yaml',
  ]);
  const checked = wmark(folder, 'check', 'deep/my-engine');
  expect({code: checked.code, err: checked.err}).toEqual({code: 0, err: ''});
  expect(checked.out).toMatch(
    /^1 book, 2 procedures, 14 steps, 14 tags; (\d+) of \1 items covered\n0 errors, 0 warnings\n$/,
  );
  const printed = wmark(folder, 'sheet', 'deep/my-engine', '--out', 'out');
  expect({code: printed.code, err: printed.err}).toEqual({code: 0, err: ''});
  expect(readdirSync(join(folder, 'out/my-engine')).sort()).toEqual([
    '01-oil-pump.html',
    '02-sump.html',
    'index.html',
  ]);
});

test('every step of it counts: without any one of them the check finds something', async () => {
  const folder = await temporaryFolder();
  wmark(folder, 'begin', 'b');
  for (const file of ['01-oil-pump.md', '02-sump.md']) {
    const path = join(folder, 'b', file);
    const whole = readFileSync(path, 'utf8');
    const steps = whole.match(/^\d+\. .*\n(?: {3}.*\n)?/gm) ?? [];
    expect(steps.length).toBeGreaterThan(5);
    for (const step of steps) {
      writeFileSync(path, whole.replace(step, ''));
      const loaded = await loadBook('b', folder);
      const findings = loaded.ok ? check(loaded.book).findings : [];
      expect({step, errors: findings.filter(({severity}) => severity === 'error')}).not.toEqual({
        step,
        errors: [],
      });
    }
    writeFileSync(path, whole);
  }
});

test('its YAML leads an editor to the schemas of this package', async () => {
  const folder = await temporaryFolder();
  wmark(folder, 'begin', 'b');
  for (const name of ['engine', 'shop']) {
    const [first = ''] = readFileSync(join(folder, 'b', `${name}.yaml`), 'utf8').split('\n');
    const address = /^# yaml-language-server: \$schema=(.*)$/.exec(first)?.[1] ?? '';
    expect(address).toMatch(new RegExp(`/${name}[.]schema[.]json$`));
    expect(existsSync(fileURLToPath(address))).toBe(true);
  }
});

test('it leads to the schemas that its project has installed, by a way that moves with the project', async () => {
  const folder = await temporaryFolder({
    'project/node_modules/witness-mark/schemas/engine.schema.json': '{}',
    'project/node_modules/witness-mark/schemas/shop.schema.json': '{}',
    'node_modules/another/schemas/engine.schema.json': '{}',
  });
  wmark(folder, 'begin', 'project/engines/b');
  wmark(folder, 'begin', 'beside');
  const first = (book: string) => readFileSync(join(folder, book, 'engine.yaml'), 'utf8').split('\n')[0];
  expect(first('project/engines/b')).toBe(
    '# yaml-language-server: $schema=../../node_modules/witness-mark/schemas/engine.schema.json',
  );
  expect(first('beside')).toMatch(/\$schema=file:\/\/.*\/schemas\/engine[.]schema[.]json$/);
});

test('a folder with anything in it is left alone', async () => {
  const folder = await temporaryFolder({'b/mine.txt': 'mine'});
  expect(wmark(folder, 'begin', 'b')).toEqual({
    code: 2,
    out: '',
    err: 'wmark: b: the folder is not empty; name a new one\n',
  });
  expect(readdirSync(join(folder, 'b'))).toEqual(['mine.txt']);
});

test('an empty folder will do; a file in the way will not', async () => {
  const folder = await temporaryFolder({file: 'mine'});
  expect(wmark(folder, 'begin', '.').code).toBe(2);
  const {code, err} = wmark(folder, 'begin', 'file');
  expect({code, err}).toEqual({
    code: 2,
    err: 'wmark: file: a part of its path is a file, not a folder; see that the name is right\n',
  });
  const empty = await temporaryFolder();
  expect(wmark(empty, 'begin', '.').code).toBe(0);
});
