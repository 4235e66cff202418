/** Limits in a build report have the figures of the specification: a nought at the end says how finely one is meant. */
import {expect, test} from 'vitest';
import {askedOfBook} from '../../src/host/asked-of-build.js';
import {limitsText} from '../../src/readings/figures.js';
import {reportText} from '../../src/readings/text.js';
import {ENGLISH} from '../../src/readings/words.js';
import {book} from '../help/example.js';
import {judged, sample} from './small.js';

test.each([
  [{least: 0.02, most: 0.05, figures: 3}, '0.020–0.050 mm'],
  [{most: 0.05, figures: 3}, 'at most 0.050 mm'],
  [{least: 2, figures: 1}, 'at least 2.0 mm'],
  [{least: 0.02, most: 0.035}, '0.020–0.035 mm'],
  [{most: 0.0503, figures: 3}, 'at most 0.0503 mm'],
])('%o are %s', (limits, text) => {
  expect(limitsText({...limits, unit: 'mm'}, ENGLISH)).toBe(text);
});

test('a reading over such a limit is told with it', async () => {
  const made = book({
    shop: 'shop: {name: Example Works, units: metric}\nsources: {house: {title: notes, note: invented}}\n',
    engine: 'fits:\n  play: {limits: 0.020–0.050 mm, when: {}}\n',
    procedures: {'01-play.md': '\n## Play\n\n1. Read it. `measure: play`\n'},
  });
  const asked = await askedOfBook(made);
  const record = sample({answer: ({key}, usual) => (key === '1:1' ? '0.061' : usual)}, asked);
  const report = judged(record, {asked});
  expect(report.remarks.find(({name}) => name === 'out')?.message).toContain('0.020–0.050 mm');
  expect(reportText({builds: [report], spread: []})).toContain('0.020–0.050 mm');
});
