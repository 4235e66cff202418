/** `--house FILE`: rules of a house on the command line, and what becomes of it when one of them is no good. */
import {expect, test} from 'vitest';
import {PROCEDURE, SHOP, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

/** A rule without any import, so that it can lie in any folder. */
const RULE = `
export const findings = [{
  name: 'house-plug-alone',
  severity: 'error',
  summary: 'A plug goes in without a second pair of eyes',
  why: 'We have lost one before.',
  before: {
    install({item, tag, step}, {report}) {
      report({where: {file: step.procedure.source.file, span: tag.span}, item: item.id, message: item.id + ' goes in unseen'});
    },
  },
}];
`;

const THROWS = RULE.replace('report({', 'item.at.front.back; report({').replace('plug-alone', 'plug-thrown');
const LINE = 'book/plug.md:9:24: error: plug goes in unseen  [house-plug-alone]';

async function folderWith(modules: {readonly [name: string]: string}, procedure = PROCEDURE) {
  return temporaryFolder({...smallBook({'book/plug.md': procedure}), ...modules});
}

test('its rules find beside ours', async () => {
  const folder = await folderWith({'house.mjs': RULE});
  const {code, out, err} = wmark(folder, 'check', 'book', '--house', 'house.mjs');
  expect({code, err}).toEqual({code: 1, err: ''});
  expect(out).toContain(LINE);
});

test('nothing of a book can ask for it', async () => {
  const folder = await folderWith({
    'book/house.mjs': 'process.exit(7);',
    'book/shop.yaml': `${SHOP}house: house.mjs\n`,
  });
  const {code, out} = wmark(folder, 'check', 'book');
  expect(code).toBe(1);
  expect(out).toContain('[spec-form]');
});

test('every form of the report has them, SARIF with their rule', async () => {
  const folder = await folderWith({'house.mjs': RULE});
  for (const form of ['json', 'annotations', 'junit']) {
    expect(wmark(folder, 'check', 'book', '--house', 'house.mjs', '--as', form).out).toContain(
      'plug goes in unseen',
    );
  }
  const {out} = wmark(folder, 'check', 'book', '--house', 'house.mjs', '--as', 'sarif');
  const [run] = JSON.parse(out).runs;
  expect(run.tool.driver.rules.at(-1)).toMatchObject({id: 'house-plug-alone'});
  expect(run.results).toMatchObject([{ruleId: 'house-plug-alone'}]);
});

test('one that throws is told with its place in book and module, and costs only its own findings', async () => {
  const folder = await folderWith({'thrown.mjs': THROWS, 'house.mjs': RULE});
  const words = ['check', 'book', '--house', 'thrown.mjs', '--house', 'house.mjs'];
  const {code, out, err} = wmark(folder, ...words);
  expect(code).toBe(2);
  expect(out).toContain(LINE);
  const [first, second, ...rest] = err.split('\n');
  expect(first).toContain(
    'wmark: thrown.mjs: house-plug-thrown went wrong (before install) at book/plug.md:9:24: TypeError: ',
  );
  expect(second).toMatch(/^wmark: {3}at .*thrown\.mjs:9:\d+/);
  expect(rest).toEqual(['']);
});

test.each([
  {title: 'no file', text: undefined, says: 'house.mjs: there is no such file or folder'},
  {title: 'no module', text: 'export const findings = [', says: "house.mjs: it can't be loaded: SyntaxError"},
  {
    title: 'one that throws',
    text: 'throw new Error("early\\u001b[31m");',
    says: "it can't be loaded: Error: early\\u001b[31m",
  },
  {title: 'no list', text: 'export const rules = [];', says: 'house.mjs: it exports no `findings`'},
  {title: 'no rules', text: 'export const findings = [];', says: 'at least one rule is due here'},
  {
    title: 'a name of ours',
    text: RULE.replace('house-plug-alone', 'clean-first'),
    says: 'clean-first: name: ',
  },
])('$title can be used for nothing', async ({text, says}) => {
  const folder = await folderWith(text === undefined ? {} : {'house.mjs': text});
  for (const words of [
    ['check', 'book'],
    ['known', 'k.yaml', 'book', '--because', 'x', '--owner', 'y'],
    ['why'],
  ]) {
    const {code, out, err} = wmark(folder, ...words, '--house', 'house.mjs');
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toContain(says);
  }
});

test('two modules with one name are refused', async () => {
  const folder = await folderWith({'one.mjs': RULE, 'two.mjs': RULE});
  const {code, err} = wmark(folder, 'check', 'book', '--house', 'one.mjs', '--house', 'two.mjs');
  expect({code, err}).toEqual({
    code: 2,
    err: 'wmark: two.mjs: house-plug-alone is in one.mjs already; give each rule a name of its own\n',
  });
});

test('`why` explains one, and says where to look for one that is not at hand', async () => {
  const folder = await folderWith({'house.mjs': RULE});
  const page = wmark(folder, 'why', 'house-plug-alone', '--house', 'house.mjs');
  expect(page.code).toBe(0);
  expect(page.out).toContain(
    '# house-plug-alone\n\nA plug goes in without a second pair of eyes. (error; house)',
  );
  expect(wmark(folder, 'why', '--house', 'house.mjs').out).toContain('house\n  house-plug-alone ');
  expect(wmark(folder, 'why', 'house-plug-alone').err).toContain('--house FILE');
});

test('no sheet is written while a rule finds an error, or goes wrong', async () => {
  const folder = await folderWith({'house.mjs': RULE, 'thrown.mjs': THROWS});
  const sheet = (file: string) => wmark(folder, 'sheet', 'book', '--out', 'out', '--house', file);
  expect(sheet('house.mjs')).toMatchObject({code: 1, out: ''});
  const thrown = sheet('thrown.mjs');
  expect(thrown).toMatchObject({code: 2, out: ''});
  expect(thrown.err).toContain('no sheet was written');
});

test('a list of known findings keeps what a run without the rules cannot see', async () => {
  const folder = await folderWith({'house.mjs': RULE});
  const why = ['--because', 'old procedures', '--owner', 'R. Tamsin'];
  const known = (...words: readonly string[]) =>
    wmark(folder, 'known', 'known.yaml', 'book', ...why, ...words).out;
  expect(known('--house', 'house.mjs')).toBe('known.yaml: 1 finding added, 0 entries struck off\n');
  expect(known()).toBe('known.yaml: 0 findings added, 0 entries struck off\n');
  const plain = wmark(folder, 'check', 'book', '--known', 'known.yaml');
  expect(plain).toMatchObject({code: 0, err: ''});
  const both = wmark(folder, 'check', 'book', '--known', 'known.yaml', '--house', 'house.mjs');
  expect(both).toMatchObject({code: 0, err: ''});
});

test('slices are checked without', async () => {
  const folder = await folderWith({'house.mjs': RULE});
  const {code, err} = wmark(
    folder,
    'check',
    'book',
    '--house',
    'house.mjs',
    '--slice',
    '1/2',
    '--as',
    'json',
  );
  expect({code, err}).toEqual({
    code: 2,
    err: 'wmark: --house and --slice do not go together; leave one of them out\n',
  });
});
