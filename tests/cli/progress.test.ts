/** How far a check has come: seen on a terminal, gone at the end, and never in a pipe. */
import {expect, test} from 'vitest';
import {progressOn} from '../../src/cli/progress.js';
import {smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {shell, wmark} from './run.js';

/** A terminal that keeps what is written, with a clock that goes on when it is told to. */
function terminal(env: NodeJS.ProcessEnv = {}, isTTY = true) {
  let [text, now] = ['', 0];
  const write = (more: string) => {
    text += more;
  };
  const line = progressOn({isTTY, columns: 30, write}, env, () => now);
  return {
    line,
    at(time: number, say: string) {
      now = time;
      line.show(say);
    },
    written: () => text,
    /** What stands in the line, as a terminal that knows carriage returns shows it. */
    seen: () => {
      const cells: string[] = [];
      for (const part of text.split('\r')) for (const [at, sign] of [...part].entries()) cells[at] = sign;
      return cells.join('').trimEnd();
    },
  };
}

test('one line, written over, not before half a second nor more often than ten times a second', () => {
  const {at, seen, written} = terminal();
  at(400, '1 of 9 books checked');
  expect(written()).toBe('');
  at(600, '10 of 19 books checked');
  at(650, '11 of 19 books checked');
  expect(seen()).toBe('10 of 19 books checked');
  at(700, '2 of 3');
  expect(seen()).toBe('2 of 3');
});

test('gone when it is cleared', () => {
  const {at, line, seen, written} = terminal();
  at(600, 'half');
  line.clear();
  expect(seen()).toBe('');
  const before = written();
  line.clear();
  expect(written()).toBe(before);
});

test('never longer than the line of the terminal, and without escape sequences', () => {
  const {at, written} = terminal({NO_COLOR: '1'});
  at(600, 'x'.repeat(100));
  expect(written()).toBe(`\r${'x'.repeat(29)}`);
});

test.each([
  ['a pipe', {}, false],
  ['a pipeline', {CI: 'true'}, true],
  ['a terminal that only goes forward', {TERM: 'dumb'}, true],
])('%s sees nothing', (_, env, isTTY) => {
  const {at, line, written} = terminal(env, isTTY);
  at(600, 'half');
  line.clear();
  expect(written()).toBe('');
});

test('the command in a pipe says nothing aside', async () => {
  const folder = await temporaryFolder(smallBook());
  expect(wmark(folder, 'check', '--no-cache', 'book').err).toBe('');
});

test('the command on a terminal shows it, and takes it away before the report', async () => {
  const folder = await temporaryFolder({...smallBook(), ...smallBookAt('second'), ...smallBookAt('third')});
  // A pseudo-terminal made by util-linux; the clock goes a second further with every question.
  const ran = shell(
    folder,
    `cat > fast.mjs <<'END'
let now = 0;
Date.now = () => (now += 1000);
END
     export NODE_OPTIONS="--import $PWD/fast.mjs"
     unset CI
     TERM=xterm script -q -e -c "$WMARK check --no-cache ." typed > /dev/null < /dev/null
     cat typed`,
  );
  expect(ran.out).toContain('\r1 of 3 books checked\r2 of 3 books checked\r3 of 3 books checked\r');
  const last = ran.out.split('\n').find((line) => line.includes('3 books, 3 procedures')) ?? '';
  expect(last).toMatch(/\r3 of 3 books checked\r +\r3 books, 3 procedures/);
});

function smallBookAt(name: string) {
  return Object.fromEntries(
    Object.entries(smallBook()).map(([path, text]) => [path.replace('book', name), text]),
  );
}
