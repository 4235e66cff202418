/** `wmark compare` as a reviewer or a pipeline runs it: two folders, git revisions, every form, and all that can be wrong. */
import {execFileSync} from 'node:child_process';
import {existsSync} from 'node:fs';
import {rename} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {Ajv2020} from 'ajv/dist/2020.js';
import {HtmlValidate} from 'html-validate/node';
import {describe, expect, test} from 'vitest';
import schema from '../../schemas/compare.schema.json' with {type: 'json'};
import {ENGINE, PROCEDURE, SHOP, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {scratch} from './git.js';
import {COMMAND, wmark} from './run.js';
import {sarifFaults} from './sarif-schema.js';

const WITHOUT_CLEAN = PROCEDURE.replace(
  '1. Wipe the seat with solvent. `clean: seat with solvent`\n2.',
  '1.',
);
const REWORDED = PROCEDURE.replace('Drive the plug in.', 'Tap the plug home, square and true.');
const WEAKENED = 'weakened: seat: no longer cleaned  [clean]';

describe('two folders', () => {
  const both = (now: string) =>
    temporaryFolder({
      ...smallBook(),
      ...Object.fromEntries(
        Object.entries(smallBook({'book/plug.md': now})).map(([path, text]) => [`new/${path}`, text]),
      ),
    });

  test('a clean dropped is weakened, with both sides', async () => {
    const {code, out, err} = wmark(await both(WITHOUT_CLEAN), 'compare', 'book', 'new/book');
    expect({code, err}).toEqual({code: 0, err: ''});
    expect(out).toContain(`book/plug.md:8:33: ${WEAKENED}\n    required before and now: assembly dry\n`);
    expect(out).toContain(
      '    before: book/plug.md:8:33: step 1 of plug.md: clean: seat with solvent\n    now: nothing\n    brings clean-first: ',
    );
    expect(out).toMatch(
      /\n1 weakened, 0 strengthened, 0 changed, 0 reworded; 1 finding brought, 0 settled\n$/,
    );
  });

  test('the other way round it is strengthened, and the finding settled', async () => {
    const {out} = wmark(await both(WITHOUT_CLEAN), 'compare', 'new/book', 'book');
    expect(out).toContain('strengthened: seat: cleaned now  [clean]');
    expect(out).toContain('settles error: ');
  });

  test('two procedures', async () => {
    const {out} = wmark(await both(WITHOUT_CLEAN), 'compare', 'book/plug.md', 'new/book/plug.md');
    expect(out).toContain(WEAKENED);
  });

  test.each([
    {words: ['book'], says: 'two sides are needed'},
    {words: ['book', 'nowhere'], says: 'nowhere: there is no such file or folder'},
    {words: ['book', 'new/book', 'book'], says: 'two sides are needed'},
    {words: ['--until', 'main', 'book'], says: '--until needs --since'},
    {words: ['--stop-on', 'rain', 'book', 'new/book'], says: 'weakened, changed, error, warning'},
  ])('$words is told what is wrong', async ({words, says}) => {
    const {code, out, err} = wmark(await both(REWORDED), 'compare', ...words);
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toContain(says);
  });
});

describe('a git revision', () => {
  test('and the working tree', async () => {
    const repo = await scratch(smallBook());
    await repo.write({'book/plug.md': WITHOUT_CLEAN});
    const before = repo.git('status', '--porcelain');
    const {code, out, err} = wmark(repo.folder, 'compare', '--since', 'main');
    expect({code, err}).toEqual({code: 0, err: ''});
    expect(out).toMatch(
      /^Small engine, main and the working tree: 1 weakened, 0 strengthened, 0 changed, 0 reworded\n/,
    );
    expect(out).toContain(`book/plug.md:8:33: ${WEAKENED}`);
    expect(repo.git('status', '--porcelain')).toBe(before);
  });

  test('and another revision, from a folder below the shop', async () => {
    const repo = await scratch(smallBook());
    await repo.commit({'book/plug.md': REWORDED});
    const {code, out} = wmark(join(repo.folder, 'book'), 'compare', '--since', 'HEAD~1', '--until', 'HEAD');
    expect(code).toBe(0);
    expect(out).toContain(
      'HEAD~1 and HEAD: 0 weakened, 0 strengthened, 0 changed, 1 reworded\nplug.md:9:4: reworded: step 2 of plug.md: worded anew  [words]\n',
    );
  });

  test('names files outside the working folder by their true path', async () => {
    const repo = await scratch(smallBook());
    await repo.write({
      'book/shop.yaml': `${smallBook()['book/shop.yaml']}severity: {clean-first: warning}\n`,
      'else/note.txt': '',
    });
    const {out} = wmark(join(repo.folder, 'else'), 'compare', '--since', 'HEAD', '../book');
    expect(out).toContain('weakened: severity of clean-first: error, now warning');
    expect(out).toContain('shop.yaml');
    expect(out).not.toContain('/wmark-old');
    for (const path of out.match(/\S*shop\.yaml/g) ?? [])
      expect(path).toMatch(new RegExp(`^(?:book/|${repo.folder}/)`));
  });

  test('a file renamed and changed at once is the same procedure', async () => {
    const repo = await scratch(smallBook());
    await repo.write({
      'book/plug.md': undefined,
      'book/01-plug.md': WITHOUT_CLEAN,
      'book/engine.yaml': ENGINE.replace('plug.md', '01-plug.md'),
    });
    const {out} = wmark(repo.folder, 'compare', '--since', 'HEAD', 'book');
    expect(out).toContain(WEAKENED);
    expect(out).toContain('reworded: procedure 01-plug.md: called plug.md before');
    expect(out).not.toContain('installed');
  });

  test('a folder renamed and changed at once is found by its engine', async () => {
    const repo = await scratch(smallBook());
    await rename(join(repo.folder, 'book'), join(repo.folder, 'engine'));
    await repo.write({'engine/plug.md': WITHOUT_CLEAN});
    const {code, out} = wmark(repo.folder, 'compare', '--since', 'HEAD', 'engine');
    expect(code).toBe(0);
    expect(out).toContain(WEAKENED);
  });

  test('a new book is new, and one that is gone is a weakening', async () => {
    const repo = await scratch({'note.txt': 'a'});
    await repo.commit(smallBook() as {[path: string]: string});
    expect(wmark(repo.folder, 'compare', '--since', 'HEAD~1', '.').out).toContain('changed: book: new, ');
    await repo.commit({
      'more/engine.yaml': ENGINE.replace('id: small', 'id: other'),
      'more/plug.md': PROCEDURE,
      'more/shop.yaml': SHOP,
    });
    await repo.commit({'book/engine.yaml': undefined});
    const gone = wmark(repo.folder, 'compare', '--since', 'HEAD~1', '--stop-on', 'weakened');
    expect(gone.out).toContain('weakened: book: no longer there');
    expect(gone.code).toBe(1);
  });
});

describe('what can be wrong', () => {
  test.each(['nowhere', '-p', 'HEAD~9', 'main:book'])('revision %s', async (revision) => {
    const repo = await scratch(smallBook());
    const {code, out, err} = wmark(repo.folder, 'compare', `--since=${revision}`);
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toContain(
      `there is no revision ${revision} in this repository; name a branch, a tag or a commit`,
    );
  });

  test('a shallow clone', async () => {
    const repo = await scratch(smallBook());
    await repo.commit({'book/plug.md': REWORDED});
    const clone = join(await temporaryFolder(), 'clone');
    repo.git('clone', '--quiet', '--depth=1', `file://${repo.folder}`, clone);
    const {code, err} = wmark(clone, 'compare', '--since', 'HEAD~1');
    expect(code).toBe(2);
    expect(err).toContain('shallow');
    expect(err).toContain('git fetch --unshallow');
  });

  test('no git on the machine', async () => {
    const repo = await scratch(smallBook());
    const said = runWithout(repo.folder);
    expect(said.code).toBe(2);
    expect(said.err).toContain('there is no git on this machine');
  });

  test('a path outside any repository', async () => {
    const {code, err} = wmark(await temporaryFolder(smallBook()), 'compare', '--since', 'HEAD', 'book');
    expect(code).toBe(2);
    expect(err).toContain('book: it lies in no git repository');
  });

  test('an old side that is not YAML: its steps are compared, and what could not be seen is said', async () => {
    const repo = await scratch(smallBook({'book/engine.yaml': ENGINE.replace('surfaces:', 'surfaces: ][')}));
    await repo.write({'book/engine.yaml': ENGINE, 'book/plug.md': REWORDED});
    const {code, out} = wmark(repo.folder, 'compare', '--since', 'HEAD', 'book');
    expect(out).toMatch(
      /^old side: book\/engine\.yaml:\d+: it is not YAML, so what it asks for could not be seen\n/,
    );
    expect(out).not.toContain('weakened: ');
    expect(code).toBe(0);
  });

  test('a new side that is not YAML ends in status 2', async () => {
    const repo = await scratch(smallBook());
    await repo.write({'book/engine.yaml': ENGINE.replace('surfaces:', 'surfaces: ][')});
    const {code, out} = wmark(repo.folder, 'compare', '--since', 'HEAD', 'book');
    expect(out).toMatch(/^new side: book\/engine\.yaml:\d+: it is not YAML/);
    expect(code).toBe(2);
  });

  test('the markers of a merge', async () => {
    const repo = await scratch(smallBook());
    await repo.write({
      'book/plug.md': `${PROCEDURE}<<<<<<< HEAD\n3. Look.\n=======\n3. Look again.\n>>>>>>> other\n`,
    });
    const {code, out} = wmark(repo.folder, 'compare', '--since', 'HEAD');
    expect(out).toMatch(
      /^new side: book\/plug\.md:10: it holds the markers of a merge that was never settled; settle it first\n/,
    );
    expect(code).toBe(2);
  });

  test('a submodule', async () => {
    const base = await scratch(smallBook());
    const repo = await scratch({'note.txt': 'a'});
    repo.git('submodule', '--quiet', 'add', base.folder, 'sub');
    await repo.commit(smallBook() as {[path: string]: string});
    await repo.write({'book/plug.md': WITHOUT_CLEAN});
    const {code, out} = wmark(repo.folder, 'compare', '--since', 'HEAD', '.');
    expect(out).toContain('old side: sub is a submodule, and its files are not in this repository\n');
    expect(out).toContain(`book/plug.md:8:33: ${WEAKENED}`);
    expect(out).not.toContain('book: new');
    expect(code).toBe(0);
  });

  test('a link that leads out of the repository is not followed', async () => {
    const secret = await temporaryFolder({'plug.md': PROCEDURE});
    const repo = await scratch(smallBook({'book/plug.md': undefined}));
    execFileSync('ln', ['-s', join(secret, 'plug.md'), join(repo.folder, 'book/plug.md')]);
    await repo.commit({});
    execFileSync('rm', [join(repo.folder, 'book/plug.md')]);
    await repo.write({'book/plug.md': PROCEDURE});
    const {out} = wmark(repo.folder, 'compare', '--since', 'HEAD');
    expect(out).toContain("old side: book/engine.yaml:8: plug.md lies outside the shop's folder");
  });
});

test('names in a hostile repository that lead out of it are passed over', async () => {
  const repo = await scratch(smallBook());
  const blob = repo.git('hash-object', '-w', 'book/plug.md');
  const tree = (listing: string) =>
    execFileSync('git', ['-C', repo.folder, 'mktree'], {input: listing, encoding: 'utf8'}).trim();
  const name = `wmark-evil-${process.pid}.md`;
  const inner = tree(`100644 blob ${blob}\t${name}\n`);
  const book = repo.git('rev-parse', 'HEAD:book');
  const outer = tree(`040000 tree ${inner}\t..\n040000 tree ${book}\tbook\n`);
  const commit = repo.git('commit-tree', outer, '-m', 'hostile');
  const {code} = wmark(repo.folder, 'compare', '--since', commit);
  expect(existsSync(join(tmpdir(), name))).toBe(false);
  expect(code).toBe(0);
});

function runWithout(folder: string): {readonly code: number; readonly err: string} {
  try {
    execFileSync(process.execPath, [COMMAND, 'compare', '--since', 'HEAD'], {
      cwd: folder,
      env: {PATH: '/nowhere'},
      encoding: 'utf8',
      stdio: 'pipe',
    });
    return {code: 0, err: ''};
  } catch (error) {
    const {status, stderr} = error as {status: number; stderr: string};
    return {code: status, err: stderr};
  }
}

describe('the forms', () => {
  const changed = async () => {
    const repo = await scratch(smallBook());
    await repo.write({
      'book/plug.md': WITHOUT_CLEAN.replace(
        'Drive the plug in.',
        'Drive <b>the</b> plug in | @all, 1 < 2 & 3.',
      ),
    });
    return repo;
  };
  const as = (folder: string, form: string, ...more: string[]) =>
    wmark(folder, 'compare', '--since', 'HEAD', '--as', form, ...more);

  test('JSON fits its schema', async () => {
    const {out} = as((await changed()).folder, 'json');
    const data = JSON.parse(out);
    const valid = new Ajv2020({strict: true, allErrors: true}).compile(schema);
    expect(valid(data) || valid.errors).toBe(true);
    expect(data.summary).toMatchObject({books: 1, weakened: 1, brought: 1});
    expect(data.books[0].changes[0]).toMatchObject({
      effect: 'weakened',
      item: 'seat',
      aspect: 'clean',
      now: {at: []},
    });
  });

  test('SARIF is valid, and its fingerprints stay when lines move', async () => {
    const repo = await changed();
    const first = JSON.parse(as(repo.folder, 'sarif').out);
    expect(sarifFaults(first)).toEqual([]);
    await repo.write({
      'book/plug.md': WITHOUT_CLEAN.replace('1. Drive', 'A word first.\n\nAnd another.\n\n1. Drive'),
    });
    const second = JSON.parse(as(repo.folder, 'sarif').out);
    const prints = (log: typeof first) =>
      log.runs[0].results.map((one: {partialFingerprints: object}) => one.partialFingerprints);
    expect(prints(second)).toEqual(prints(first));
    const [weakened] = first.runs[0].results;
    expect(weakened).toMatchObject({ruleId: 'weakened', level: 'warning'});
    // The step is gone: its old line is no line of the new file.
    expect(weakened.locations[0].physicalLocation.region.startLine).toBe(1);
    expect(weakened.relatedLocations[0].physicalLocation.region.startLine).toBe(8);
    expect(weakened.relatedLocations[0].message.text).toBe(
      'before: step 1 of plug.md: clean: seat with solvent',
    );
  });

  test('Markdown begins with its mark, says the worst first, folds the rest, and is the same each time', async () => {
    const {folder} = await changed();
    const {out} = as(folder, 'markdown');
    expect(out).toMatch(
      /^<!-- wmark compare -->\n\n### Small engine\n\nHEAD and the working tree: 1 weakened, /,
    );
    expect(out.indexOf('**weakened** seat: no longer cleaned')).toBeLessThan(out.indexOf('<details>'));
    expect(out).not.toContain('<b>');
    expect(as(folder, 'markdown').out).toBe(out);
  });

  test('HTML has the words of the steps that stayed as they were, on both sides', async () => {
    const {out} = as((await changed()).folder, 'html');
    expect(out).toContain('<p>Drive the plug <del>in.</del></p>');
    expect(out).toContain('<p>Drive the plug <ins>in | @all, 1 &#x3C; 2 &#x26; 3.</ins></p>');
    const repo = await scratch(smallBook());
    await repo.write({'book/plug.md': REWORDED});
    expect(as(repo.folder, 'html').out.split('<p>Wipe the seat with solvent.</p>')).toHaveLength(3);
  });

  test.each(['text', 'markdown', 'html'])('%s says a whole commit id by its first figures', async (form) => {
    const repo = await scratch(smallBook());
    const id = repo.git('rev-parse', 'HEAD').trim();
    await repo.write({'book/plug.md': REWORDED});
    const {out} = wmark(repo.folder, 'compare', '--since', id, '--as', form);
    expect(out).toContain(id.slice(0, 10));
    expect(out).not.toContain(id);
    expect(JSON.parse(wmark(repo.folder, 'compare', '--since', id, '--as', 'json').out)).toMatchObject({
      before: id,
    });
  });

  test('HTML folds the steps that stayed, and links a change to its step', async () => {
    const repo = await scratch(smallBook());
    await repo.write({'book/plug.md': REWORDED});
    const {out} = as(repo.folder, 'html');
    expect(out).toContain('<details><summary>Step 1 as before</summary>');
    expect(out).toContain('<summary>plug.md: 1 of 2 steps changed</summary>');
    const [, row = ''] = /<a href="#([^"]+)"><code>book\/plug\.md:9/.exec(out) ?? [];
    expect(out).toContain(`<tr id="${row}" class="reworded">`);
  });

  test('HTML shows the line of the specification that changed', async () => {
    const repo = await scratch(smallBook());
    await repo.write({'book/engine.yaml': ENGINE.replace('assembly: dry', 'assembly: clean')});
    expect(as(repo.folder, 'html').out).toContain('<code>seat: {on: block, assembly: clean}</code>');
  });

  test('of several books, the one that changed comes first', async () => {
    const repo = await scratch({
      ...(smallBook() as {[path: string]: string}),
      'a/engine.yaml': ENGINE.replace('id: small, name: Small engine', 'id: other, name: Another engine'),
      'a/plug.md': PROCEDURE,
      'a/shop.yaml': SHOP,
    });
    await repo.write({'book/plug.md': REWORDED});
    const {out} = as(repo.folder, 'markdown');
    expect(out.indexOf('### Small engine')).toBeLessThan(
      out.indexOf('Another engine: both sides are the same.'),
    );
    expect(out).toContain('before: `book/plug.md:9` step 2 of plug.md: Drive the plug in.');
    expect(as(repo.folder, 'text', '--stop-on', 'changed').code).toBe(0);
  });

  test('HTML stands by itself, and a text of a procedure is only text in it', async () => {
    const {out} = as((await changed()).folder, 'html');
    expect(out).not.toMatch(/<script|<b>|https?:\/\//);
    expect(out).toContain('in | @all, 1 &#x3C; 2 &#x26; 3.');
    const {results} = await new HtmlValidate({extends: ['html-validate:standard']}).validateString(out);
    expect(
      results.flatMap(({messages}) => messages.map(({ruleId, message}) => `${ruleId}: ${message}`)),
    ).toEqual([]);
  });

  test.each([
    {stop: ['weakened'], code: 1},
    {stop: ['error'], code: 1},
    {stop: ['warning'], code: 1},
    {stop: [], code: 0},
  ])('--stop-on $stop', async ({stop, code}) => {
    const {folder} = await changed();
    expect(as(folder, 'text', ...stop.flatMap((one) => ['--stop-on', one])).code).toBe(code);
  });

  test('what is only reworded stops nothing', async () => {
    const repo = await scratch(smallBook());
    await repo.write({'book/plug.md': REWORDED});
    expect(as(repo.folder, 'text', '--stop-on', 'weakened', '--stop-on', 'warning').code).toBe(0);
  });
});
