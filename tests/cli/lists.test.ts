/** `wmark lists` as a user runs it: every form, some lists only, one job, and slips of the keyboard. */
import {describe, expect, test} from 'vitest';
import {ENGINE, PROCEDURE, SHOP, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

const BOOK = smallBook({
  'book/shop.yaml': SHOP.replace(
    '{soft-mallet: soft-faced mallet}',
    '{soft-mallet: {name: soft-faced mallet, due: 2001-01-01}}',
  ),
  'book/engine.yaml': `${ENGINE}fasteners:
  bolts: {holds: [plug], count: 2, torque: 80 lbf·ft, threads: dry, lock: {value: none, because: it is a try}}
`,
  'book/plug.md': `${PROCEDURE.replace('author:', 'time: 90 min\nauthor:')}3. Torque. \`torque: bolts\`\n`,
  'book/jobs/S-1.yaml': 'job: {number: S-1, engine: small}\n',
});

describe('wmark lists', () => {
  test('prints every list as text', async () => {
    const {code, out, err} = wmark(await temporaryFolder(BOOK), 'lists', 'book');
    expect({code, err}).toEqual({code: 0, err: ''});
    expect(out.replaceAll('\u00A0', ' ')).toMatch(
      /^Small engine \(Fingerprint [0-9a-f]{10}\)\n\nTools and gauges\n {2}Name +Calibration due +Sheet · step\n {2}soft-faced mallet +2001-01-01, run out +1 · 2\n/,
    );
    for (const title of ['Consumables', 'Parts', 'Torque table', 'Time plan'])
      expect(out).toContain(`\n${title}\n`);
  });

  test.each([
    [
      'csv',
      /^\uFEFF"Engine","Job no.","List","Fastener",.*\r\n"Small engine","","Torque table","bolts",.*\r\n$/,
    ],
    ['markdown', /^# Lists: Small engine\n.*## Torque table\n\n\| Fastener +\|/s],
    ['html', /^<!doctype html>.*<h2[^>]*>Torque table<\/h2>/s],
  ])('as %s, one list only', async (form, expected) => {
    const {code, out} = wmark(
      await temporaryFolder(BOOK),
      'lists',
      'book',
      '--list',
      'torques',
      '--as',
      form,
    );
    expect(code).toBe(0);
    expect(out).toMatch(expected);
    expect(out).not.toContain('Time plan');
  });

  test('as JSON, for a job', async () => {
    const folder = await temporaryFolder(BOOK);
    const words = ['lists', 'book', '--job', 'S-1', '--as', 'json'];
    const {lists} = JSON.parse(wmark(folder, ...words).out);
    expect(lists).toMatchObject([
      {
        engine: 'Small engine',
        job: 'S-1',
        torques: [{id: 'bolts', torque: {text: '80 lbf·ft', also: '108 N·m'}}],
      },
    ]);
    expect(lists[0]).not.toHaveProperty('words');
    const [one] = JSON.parse(wmark(folder, ...words, '--list', 'time,new-parts').out).lists;
    expect(Object.keys(one).slice(-2)).toEqual(['newParts', 'time']);
    expect(one).not.toHaveProperty('tools');
  });

  test('of one procedure alone', async () => {
    const {code, out} = wmark(await temporaryFolder(BOOK), 'lists', 'book/plug.md', '--as', 'json');
    expect(code).toBe(0);
    expect(JSON.parse(out).lists[0]).not.toHaveProperty('time');
  });

  test.each([
    [
      ['--list', 'torque'],
      'Did you mean torques? The lists are tools, consumables, parts, new-parts, torques, time.',
    ],
    [['--as', 'cvs'], 'Allowed choices are text, markdown, csv, html, json.'],
    [['--job', 'S1'], 'no book here has a job S1; did you mean S-1? the jobs are S-1'],
  ])('says what is wrong with %j', async (words, says) => {
    const {code, out, err} = wmark(await temporaryFolder(BOOK), 'lists', 'book', ...words);
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toContain(says);
  });
});
