/**
 * Disks that are full or read-only: one clear message, exit status 2, and what was there before untouched. The
 * disks are small file systems in memory, mounted apart from the rest of the machine and gone with the command.
 */
import {readFileSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {PROCEDURE, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {canMount, type Ran, shell} from './run.js';

/** What a command says on standard error when it has no other thing to say there. */
const said = ({err}: Ran) => err;

/** The names and contents of every file below a folder, dot files as well, in a form that can be compared. */
const LIST = (folder: string) => `(cd ${folder} && find . -type f | sort | xargs -r md5sum)`;

describe('on a disk of its own', () => {
  test('such a disk can be had here', async () => {
    // Without it the tests below would prove nothing: run them as root, or where user namespaces are allowed.
    expect(canMount(await temporaryFolder())).toBe(true);
  });

  test('a full disk, the first time: nothing is left behind', async () => {
    const folder = await temporaryFolder(smallBook());
    const ran = shell(
      folder,
      `mkdir disk && mount -t tmpfs -o size=8k tmpfs disk
       eval $WMARK sheet book --out disk/out || echo exit $?
       find disk -mindepth 1`,
      {apart: true},
    );
    expect(said(ran)).toBe(
      'wmark: disk/out/small/index.html: the disk is full; make room or choose another folder; what was there before is untouched\n',
    );
    expect(ran.out).toBe('exit 2\n');
  });

  test('a disk that fills up over older sheets: they stay as they were, all of them', async () => {
    const folder = await temporaryFolder(smallBook());
    const ran = shell(
      folder,
      `mkdir disk && mount -t tmpfs -o size=400k tmpfs disk
       eval $WMARK sheet book --out disk > /dev/null
       ${LIST('disk')} > before
       dd if=/dev/zero of=disk/ballast bs=4k 2> /dev/null || true
       sed -i 's/revision: A/revision: B/' book/plug.md
       eval $WMARK sheet book --out disk || echo exit $?
       rm disk/ballast
       ${LIST('disk')} > after`,
      {apart: true},
    );
    expect(ran.out).toBe('exit 2\n');
    expect(said(ran)).toContain('the disk is full');
    expect(readFileSync(join(folder, 'before'), 'utf8')).toContain('index.html');
    expect(readFileSync(join(folder, 'after'), 'utf8')).toBe(readFileSync(join(folder, 'before'), 'utf8'));
  });

  test('a read-only disk', async () => {
    const folder = await temporaryFolder(smallBook());
    const ran = shell(
      folder,
      `mkdir disk && mount -t tmpfs tmpfs disk
       eval $WMARK sheet book --out disk > /dev/null
       ${LIST('disk')} > before
       mount -o remount,ro disk
       eval $WMARK sheet book --out disk || echo exit $?
       eval $WMARK begin disk/new || echo exit $?
       ${LIST('disk')} > after`,
      {apart: true},
    );
    expect(said(ran)).toBe(
      [
        'wmark: disk/small/index.html: it is on a disk that is read-only; choose another folder\n',
        'wmark: disk/new/shop.yaml: it is on a disk that is read-only; choose another folder\n',
      ].join(''),
    );
    expect(ran.out).toBe('exit 2\nexit 2\n');
    expect(readFileSync(join(folder, 'after'), 'utf8')).toBe(readFileSync(join(folder, 'before'), 'utf8'));
  });
});

describe('every command that writes', () => {
  const UNTIDY = PROCEDURE.replace('`clean: seat with solvent`', '`clean:seat  with solvent`');
  const FILES = {...smallBook({'book/plug.md': UNTIDY}), 'book/plain.md': '# Plug\n\n1. Wipe the seat.\n'};
  const SCRIPT = `
    cd disk
    for command in "sheet book --out out" "begin new" "tidy book" \
      "known known.yaml --because old --owner RT book" \
      "adopt book/plain.md --engine book/engine.yaml --out draft.md"
    do
      eval $WMARK $command > /dev/null || echo exit $?
    done
    eval $WMARK check book --cache kept
    cd ..`;

  test.each([
    [
      'full',
      'dd if=/dev/zero of=disk/ballast bs=4k 2> /dev/null || true',
      'the disk is full; make room or choose another folder; what was there before is untouched',
    ],
    ['read-only', 'mount -o remount,ro disk', 'it is on a disk that is read-only; choose another folder'],
  ])('on a disk that is %s', async (_, prepare, says) => {
    const folder = await temporaryFolder(FILES);
    const ran = shell(
      folder,
      `mkdir disk && mount -t tmpfs -o size=64k tmpfs disk && cp -r book disk
       ${prepare}
       ${LIST('disk')} > before
       ${SCRIPT}
       ${LIST('disk')} > after`,
      {apart: true},
    );
    // What the check keeps is nobody's loss.
    expect(ran.out).toBe(
      `${'exit 2\n'.repeat(5)}1 book, 1 procedure, 2 steps, 2 tags; 2 of 2 items covered\n0 errors, 0 warnings\n`,
    );
    const places = ['out/small/index.html', 'new/shop.yaml', 'book/plug.md', 'known.yaml', 'draft.md'];
    expect(said(ran)).toBe(places.map((place) => `wmark: ${place}: ${says}\n`).join(''));
    expect(readFileSync(join(folder, 'after'), 'utf8')).toBe(readFileSync(join(folder, 'before'), 'utf8'));
  });

  test('a comparison with a revision, where the disk for what passes is full or read-only', async () => {
    const folder = await temporaryFolder(smallBook());
    const ran = shell(
      folder,
      `git init -q . && git add . && git -c user.name=n -c user.email=e commit -qm one
       mkdir disk && mount -t tmpfs -o size=8k tmpfs disk && export TMPDIR=$PWD/disk
       eval $WMARK compare --since HEAD book || echo exit $?
       find disk -mindepth 1
       mount -o remount,ro disk
       eval $WMARK compare --since HEAD book || echo exit $?`,
      {apart: true},
    );
    expect(ran.out).toBe('exit 2\nexit 2\n');
    expect(said(ran)).toContain('the disk is full');
    expect(said(ran)).toContain('it is on a disk that is read-only');
  });
});

test('a limit on the size of files, which needs no disk of its own', async () => {
  const folder = await temporaryFolder(smallBook());
  const ran = shell(
    folder,
    `ulimit -f 4
     eval $WMARK sheet book --out out || echo exit $?
     ls -A out 2> /dev/null || echo nothing`,
  );
  expect(said(ran)).toBe(
    'wmark: out/small/index.html: the file would grow past the limit that the system sets; raise the limit or choose another folder; what was there before is untouched\n',
  );
  expect(ran.out).toBe('exit 2\nnothing\n');
});

test('a file where a folder is due, and a folder where a file is due', async () => {
  const folder = await temporaryFolder(smallBook({out: 'mine', 'other/small/plug.html/inner': 'mine'}));
  const ran = shell(
    folder,
    `eval $WMARK sheet book --out out || echo exit $?
     eval $WMARK sheet book --out other || echo exit $?
     find out other -type f | sort`,
  );
  expect(said(ran)).toBe(
    [
      'wmark: out/small/index.html: a file has the name of a folder that is needed; move the file, or choose another folder\n',
      'wmark: other/small/plug.html: it is a folder, not a file; name a file\n',
    ].join(''),
  );
  expect(ran.out).toBe('exit 2\nexit 2\nother/small/plug.html/inner\nout\n');
});
