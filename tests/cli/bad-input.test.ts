/**
 * Books that somebody damaged, or made to do damage: each gets one clear message with the place and what to do,
 * as a finding (exit status 1) or, where nothing can be read at all, as a failure (exit status 2).
 */
import {expect, test} from 'vitest';
import {ENGINE, PROCEDURE, SHOP, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

/** Ten levels of ten references each stand for ten thousand million values. */
const BOMB = Array.from({length: 10}, (_, level) => {
  const inner = level === 0 ? 'lol' : `*a${level - 1}`;
  return `a${level}: &a${level} [${Array.from({length: 10}, () => inner).join(', ')}]\n`;
}).join('');

const HEAD = PROCEDURE.slice(0, PROCEDURE.indexOf('1.'));

const CASES: readonly {
  name: string;
  files: {readonly [path: string]: string | Uint8Array | undefined};
  code: 0 | 1 | 2;
  /** A line of the report, or of standard error where there is none. */
  says: RegExp;
}[] = [
  {
    name: 'engine.yaml is missing',
    files: {'book/engine.yaml': undefined},
    code: 2,
    says: /^wmark: book: there is no engine\.yaml here, so no book; `wmark begin DIR` /,
  },
  {
    name: 'engine.yaml is empty',
    files: {'book/engine.yaml': ''},
    code: 2,
    says: /^wmark: book\/engine\.yaml: it is empty; /,
  },
  {
    name: 'engine.yaml is a picture',
    files: {'book/engine.yaml': Buffer.from('\u0089PNG\r\n\u001A\n\0\0\0', 'latin1')},
    code: 2,
    says: /^wmark: book\/engine\.yaml:3: it is binary, not text; name a text file/,
  },
  {
    name: 'engine.yaml has 50 MB',
    files: {'book/engine.yaml': 'a'.repeat(50_000_000)},
    code: 2,
    says: /^wmark: book\/engine\.yaml: it is too large: 47\.7 MiB, and 1 MiB is the most; /,
  },
  {
    name: 'shop.yaml is not UTF-8',
    files: {'book/shop.yaml': Buffer.from('shop: {name: Müller}\n', 'latin1')},
    code: 2,
    says: /^wmark: book\/shop\.yaml:1: it is not written in UTF-8; save it as UTF-8/,
  },
  {
    name: 'a procedure has 50 MB',
    files: {'book/plug.md': 'a'.repeat(50_000_000)},
    code: 1,
    says: /^book\/engine\.yaml:8:9: error: plug\.md can't be read: it is too large: 47\.7 MiB.* {2}\[file-unreadable\]/,
  },
  {
    name: 'a procedure is empty',
    files: {'book/plug.md': ''},
    code: 1,
    says: /^book\/engine\.yaml:8:9: error: plug\.md can't be read: it is empty; .* {2}\[file-unreadable\]/,
  },
  {
    name: 'YAML is indented with a tab',
    files: {'book/engine.yaml': ENGINE.replace('  plug:', '\tplug:')},
    code: 1,
    says: /^book\/engine\.yaml:5:1: error: .*tab.* {2}\[spec-form\]/,
  },
  {
    name: 'YAML has a key twice',
    files: {'book/engine.yaml': ENGINE.replace('surfaces:', '  plug: {}\nsurfaces:')},
    code: 1,
    says: /^book\/engine\.yaml:6:3: error: .*plug.* {2}\[spec-form\]/,
  },
  {
    name: 'YAML is a tower of references that would expand without end',
    files: {'book/engine.yaml': `${BOMB}${ENGINE}`},
    code: 1,
    says: /^book\/engine\.yaml:\d+:\d+: error: .* {2}\[spec-form\]/,
  },
  {
    name: 'YAML is nested a hundred thousand deep',
    files: {'book/engine.yaml': `${ENGINE}\nnote: ${'['.repeat(100_000)}\n`},
    code: 1,
    says: /^book\/engine\.yaml:\d+:\d+: error: .* {2}\[spec-form\]/,
  },
  {
    name: 'YAML has forty thousand keys',
    files: {
      'book/engine.yaml': `${ENGINE}\nchecks:\n${Array.from({length: 40_000}, (_, at) => `  c${at}: {}\n`).join('')}`,
    },
    code: 1,
    says: /^book\/engine\.yaml:\d+:\d+: error: .* {2}\[[a-z-]+\]/,
  },
  {
    name: 'the shop’s YAML is a list',
    files: {'book/shop.yaml': '- a\n- b\n'},
    code: 1,
    says: /^book\/shop\.yaml:1:1: error: .* {2}\[spec-form\]/,
  },
  {
    name: 'a procedure has no steps',
    files: {'book/plug.md': `${HEAD}Nothing yet.\n`},
    code: 1,
    says: /^book\/\S+:\d+:\d+: error: .* {2}\[[a-z-]+\]/,
  },
  {
    name: 'front matter never closes',
    files: {'book/plug.md': PROCEDURE.replace('\n---\n', '\n')},
    code: 1,
    says: /^book\/plug\.md:1:1: error: .* {2}\[front-matter\]/,
  },
  {
    name: 'front matter is a bomb',
    files: {'book/plug.md': PROCEDURE.replace('title: Plug', `title: Plug\n${BOMB.trim()}`)},
    code: 1,
    says: /^book\/plug\.md:\d+:\d+: error: .* {2}\[front-matter\]/,
  },
  {
    name: 'build: names itself',
    files: {'book/engine.yaml': ENGINE.replace('plug.md', 'engine.yaml')},
    code: 1,
    says: /^book\/engine\.yaml:8:9: error: engine\.yaml is the specification itself; name a procedure {2}\[file-unreadable\]/,
  },
  {
    name: 'build: names a file above the shop',
    files: {'book/engine.yaml': ENGINE.replace('plug.md', '../shop.md'), 'shop.md': PROCEDURE},
    code: 1,
    says: /^book\/engine\.yaml:8:9: error: \.\.\/shop\.md lies outside the shop's folder; .* {2}\[file-unreadable\]/,
  },
  {
    name: 'a text of one line of four million letters',
    files: {'book/plug.md': `${PROCEDURE}3. ${'a '.repeat(2_000_000)}\n`},
    code: 0,
    says: /^0 errors, 0 warnings$/,
  },
];

test.each(CASES)('$name', async ({files, code, says}) => {
  const folder = await temporaryFolder(smallBook(files));
  const ran = wmark(folder, 'check', 'book');
  const lines = (ran.out || ran.err).split('\n');
  expect(lines).toContainEqual(expect.stringMatching(says));
  expect(ran.code).toBe(code);
  if (code === 2) expect(ran.out).toBe('');
});

test('damage of any kind leaves older sheets as they are', async () => {
  const folder = await temporaryFolder(
    smallBook({'out/small/index.html': 'old', 'book/shop.yaml': SHOP.replace('name', 'nam')}),
  );
  expect(wmark(folder, 'sheet', 'book', '--out', 'out').code).toBe(1);
  const {out} = wmark(folder, 'check', 'out');
  expect(out).toBe('');
});
