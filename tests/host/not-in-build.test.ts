/** Procedures that lie beside a book and that nothing names: which are told, and what the fix makes of `build:`. */
import {join} from 'node:path';
import {expect, test} from 'vitest';
import {check} from '../../src/findings/check.js';
import type {Finding} from '../../src/findings/model.js';
import {loadBook, loadBooks} from '../../src/host/load.js';
import {applyEdits} from '../../src/text/edit.js';
import {ENGINE, PROCEDURE, SHOP, smallBook} from './small-book.js';
import {temporaryFolder} from './temporary.js';

const TOLD =
  'book/engine.yaml: extra.md is a procedure that no `build:` names, so nothing of it counts; list it where it is followed, or move it out of this folder';

/** A shop with a second book in it, which lists what the function says. */
function twoBooks(listed: string) {
  return {
    'shop.yaml': SHOP,
    'book/engine.yaml': ENGINE,
    'book/plug.md': PROCEDURE,
    'book/extra.md': PROCEDURE,
    'other/engine.yaml': ENGINE.replace('id: small', 'id: other').replace('plug.md', listed),
    'other/plug.md': PROCEDURE,
  };
}

async function found(files: Parameters<typeof temporaryFolder>[0]): Promise<[Finding[], string]> {
  const folder = await temporaryFolder(files);
  const loaded = await loadBook(join(folder, 'book'), folder);
  if (!loaded.ok) throw new Error(loaded.says);
  const engine = loaded.book.spec.files.get('book/engine.yaml')?.text ?? '';
  return [check(loaded.book).findings.filter(({name}) => name === 'not-in-build'), engine];
}

test.each([
  {what: 'a procedure', files: smallBook({'book/extra.md': PROCEDURE}), told: [TOLD]},
  {
    what: 'one without front matter, but with a tag',
    files: smallBook({'book/extra.md': '1. Drive it in. `install: plug`\n'}),
    told: [TOLD],
  },
  {
    what: 'one without tags yet, but with a revision',
    files: smallBook({'book/extra.md': PROCEDURE.replaceAll(/ `.*`/g, '')}),
    told: [TOLD],
  },
  {what: 'none', files: smallBook(), told: []},
  {
    what: 'a README with numbered lines',
    files: smallBook({'book/README.md': '---\ntitle: Read me\n---\n\n1. Print the sheets.\n'}),
    told: [],
  },
  {what: 'a hidden file', files: smallBook({'book/.extra.md': PROCEDURE}), told: []},
  {what: 'another kind of file', files: smallBook({'book/extra.txt': PROCEDURE}), told: []},
  {what: 'a draft in a folder of its own', files: smallBook({'book/drafts/extra.md': PROCEDURE}), told: []},
  {what: 'one that another book lists', files: twoBooks('../book/extra.md'), told: []},
  {what: 'one whose name another book lists of its own folder', files: twoBooks('extra.md'), told: [TOLD]},
])('$what', async ({files, told}) => {
  const [findings] = await found(files);
  expect(findings.map(({where, message}) => `${where.file}: ${message}`)).toEqual(told);
});

test('the procedure is among the places to look at, so that a check of changed files tells it', async () => {
  const [[finding]] = await found(smallBook({'book/extra.md': PROCEDURE}));
  expect(finding?.related.map(({where}) => where.file)).toEqual(['book/extra.md']);
});

test.each([
  {build: 'build: [plug.md]', name: 'extra.md', becomes: 'build: [plug.md, extra.md]'},
  {build: 'build:\n  - plug.md', name: 'extra.md', becomes: 'build:\n  - plug.md\n  - extra.md'},
  {
    build: 'build:\n  - plug.md # for now',
    name: 'more, later.md',
    becomes: 'build:\n  - plug.md # for now\n  - "more, later.md"',
  },
  {build: 'build:\r\n- plug.md\r', name: 'extra.md', becomes: 'build:\r\n- plug.md\r\n- extra.md\r'},
])('the fix of $build', async ({build, name, becomes}) => {
  const engine = ENGINE.replace('build: [plug.md]', build);
  const [[finding], text] = await found(smallBook({'book/engine.yaml': engine, [`book/${name}`]: PROCEDURE}));
  expect(applyEdits(text, finding?.fix?.edits ?? [])).toBe(engine.replace(build, becomes));
});

test('a procedure that is checked alone says why no book is', async () => {
  const folder = await temporaryFolder(smallBook({'book/extra.md': PROCEDURE}));
  const {books} = await loadBooks(['book/extra.md', 'book/plug.md'], folder);
  const told = books.map(({book, alone}) => [
    alone === true,
    check(book, {alone: alone === true}).findings.map(({where, message}) => `${where.file}: ${message}`),
  ]);
  const says = 'no `build:` names this procedure, so no check of a book looks at it';
  expect(told).toEqual([
    [true, [`book/extra.md: ${says}; list it in engine.yaml where it is followed`]],
    [false, [TOLD]],
  ]);
});
