/** The report as text, comma-separated values and HTML. */
import fc from 'fast-check';
import {HtmlValidate} from 'html-validate';
import {describe, expect, test} from 'vitest';
import {readingsCsv} from '../../src/readings/csv.js';
import {GERMAN} from '../../src/readings/german.js';
import {readingsHtml} from '../../src/readings/html.js';
import type {BuildReport} from '../../src/readings/report.js';
import {spreadOf} from '../../src/readings/spread.js';
import {reportText} from '../../src/readings/text.js';
import {readCsv} from '../help/csv.js';
import {withEntries} from '../help/record.js';
import {judged, sample} from './small.js';

const ONE = judged(
  sample({
    engineNumber: 'X-1',
    answer: ({key}, usual) => ({'7:1': '0.0081', '4:1:front': '0.0020', '1:1': ''})[key] ?? usual,
  }),
);
const OTHER = judged(sample({engineNumber: 'X-2', seed: 77_001}));
const TWO = [ONE, OTHER];

test('the text says what is out first, then near, then missing', () => {
  const text = reportText({builds: [ONE], spread: []});
  const lines = text.split('\n');
  expect(lines.slice(0, 2)).toEqual([
    'Example engine, engine number X-1',
    '2 of 2 sheets judged; 32 of 33 boxes answered',
  ]);
  const places = ['Out of limits', 'Near a limit', 'Missing', 'Seals: each', 'whoever makes'].map((word) =>
    text.indexOf(word),
  );
  expect(places.every((place, index) => place > (places[index - 1] ?? 0))).toBe(true);
  expect(text).toContain(
    '  01-crank, step 7: error: end play: 0.0081 in (AB, 2026-03-02 08:50 UTC); over its limits, 0.004–0.008 in  [out]\n',
  );
  expect(lines.at(-2)).toBe('4 errors, 1 warning');
});

test('several builds have the spread of each fit', () => {
  const spread = spreadOf(TWO);
  expect(spread.map(({item, place, values}) => [item, place, values.length])).toEqual([
    ['journal-size', 'front', 2],
    ['journal-size', 'rear', 2],
    ['bore-size', 'front', 2],
    ['bore-size', 'rear', 2],
    ['clearance', 'front', 2],
    ['clearance', 'rear', 2],
    ['end-play', '', 2],
  ]);
  const play = spread.at(-1);
  const [one, other] = play?.values.map(({value}) => value) ?? [];
  expect(play?.mean).toBeCloseTo(((one ?? 0) + (other ?? 0)) / 2, 12);
  expect(reportText({builds: TWO, spread})).toMatch(
    / {2}end play: n 2, least 0\.00\d\d, mean 0\.00\d{3}, most 0\.0081 in, standard deviation /,
  );
  expect(spreadOf([ONE])).toEqual([]);
});

test('only builds of one engine are compared', () => {
  expect(spreadOf([ONE, {...OTHER, engine: 'other'}])).toEqual([]);
});

describe('comma-separated values', () => {
  test('have a header, CR LF, and a line a reading', () => {
    const csv = readingsCsv(TWO);
    const [head, ...lines] = readCsv(csv);
    expect(head?.slice(0, 5)).toEqual(['engine', 'build', 'job', 'engine number', 'sheet']);
    expect(lines).toHaveLength(14);
    expect(lines.every((fields) => fields.length === head?.length)).toBe(true);
    const play = lines.find((fields) => fields.includes('end-play'));
    expect(play?.slice(4)).toEqual([
      ...['01-crank', '7', 'end-play', 'end play', '', '1', '0.0081', 'in', '0.004', '0.008', 'out', 'AB'],
      '2026-03-02T08:50:15.000Z',
      ...['', ''],
    ]);
    expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('a place without a reading keeps its line', () => {
    const open = judged(sample({answer: ({key}, usual) => (key === '7:1' ? '' : usual)}));
    const line = readCsv(readingsCsv([open])).find((fields) => fields.includes('end-play'));
    expect(line?.slice(8)).toEqual(['', '', '', 'in', '0.004', '0.008', 'missing', '', '', '', '']);
  });

  test('whatever is in a record is read back, and is no formula', () => {
    fc.assert(
      fc.property(fc.string(), fc.string({unit: 'binary'}), (by, name) => {
        const lines = readCsv(readingsCsv([renamed(ONE, by, name)]));
        for (const fields of lines.slice(1)) {
          expect(bare(fields[15])).toBe(bare(by));
          expect(bare(fields[7])).toBe(bare(name));
          for (const text of fields)
            expect(/^[=+\-@\t\r\n]/.test(text) && Number.isNaN(Number(text))).toBe(false);
        }
      }),
    );
  });

  test.each([
    '=1+1',
    '+1+1',
    '-2+3',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    ' =1',
    '＝1',
    '=HYPERLINK("http://attack.example","x")',
  ])('%j shows as text', (text) => {
    const [, line] = readCsv(readingsCsv([renamed(ONE, text, 'x')]));
    expect(line?.[15]).toBe(`'${text}`);
  });

  test('where cells are parted at semicolons, what follows one is no formula either', () => {
    const [, line] = readCsv(readingsCsv([renamed(ONE, 'AB; =1+1;-2', 'x')]));
    expect(line?.[15]).toBe("AB; '=1+1;'-2");
  });
});

/** Without the apostrophes that keep a formula a text. */
function bare(text: string | undefined): string | undefined {
  return text?.replaceAll("'", '');
}

function renamed(build: BuildReport, by: string, name: string): BuildReport {
  const readings = build.readings.map((line) => ({
    ...line,
    name,
    rounds: line.rounds.map((round) => ({...round, by})),
  }));
  return {...build, readings};
}

/** A build whose end play is out and accepted; nothing else of it is wrong, unless `more` is. */
function acceptedBuild(more: Readonly<Record<string, string>> = {}): BuildReport {
  const entries = [
    {by: 'AB', box: '7:1', value: '0.0081'},
    {by: 'CD', box: '7:1:accepted', value: 'it is the last shim'},
    {by: 'CD', box: '8:hold:crank-in', value: 'done'},
    {by: 'CD', box: 'closing:checked', value: 'done'},
  ].map((entry, at) => ({at: `2026-03-03T08:0${at}:00Z`, ...entry}));
  return judged(withEntries(sample({answer: ({key}, usual) => more[key] ?? usual}), '01-crank', entries));
}

describe('a reading that is out and accepted', () => {
  const build = acceptedBuild();

  test('is told at the head of the build, beside what is wrong and where nothing is', () => {
    const html = readingsHtml({builds: [build], spread: []});
    expect(html).toContain('<td>nothing wrong; 1 accepted as it is</td>');
    const worse = readingsHtml({builds: [acceptedBuild({'1:1': ''})], spread: []});
    expect(worse).toContain('>1 error; 1 accepted as it is</strong>');
    const german = readingsHtml({builds: [build], spread: []}, GERMAN);
    expect(german).toContain('<td>nichts falsch; 1 so angenommen</td>');
    expect(readingsHtml({builds: [OTHER], spread: []})).toContain('<td>nothing wrong</td>');
  });

  test('is told in its row', () => {
    const row = /<td>0\.0081 in<\/td><td><strong class="bad">([^<]*)<\/strong>/;
    expect(row.exec(readingsHtml({builds: [build], spread: []}))?.[1]).toBe('out, accepted as it is');
    expect(row.exec(readingsHtml({builds: [build], spread: []}, GERMAN))?.[1]).toBe(
      'außerhalb, so angenommen',
    );
    expect(row.exec(readingsHtml({builds: [ONE], spread: []}))?.[1]).toBe('out');
  });

  test('is told at the end of the text, and in columns of its own in CSV', () => {
    expect(reportText({builds: [build], spread: []}).trimEnd()).toMatch(
      /\n0 errors, 1 warning; 1 accepted as it is$/,
    );
    const [head, ...lines] = readCsv(readingsCsv([build]));
    const at = head?.indexOf('accepted by') ?? -1;
    expect(lines.find((fields) => fields.includes('0.0081'))?.slice(at)).toEqual([
      'CD',
      'it is the last shim',
    ]);
    expect(lines.find((fields) => fields.includes('clearance'))?.slice(at)).toEqual(['', '']);
  });
});

describe('HTML', () => {
  const html = readingsHtml({builds: TWO, spread: spreadOf(TWO)});

  test('shows what is out before what is in', () => {
    const order = ['Out of limits', 'Missing', '<h4>end play', '<h4>main clearance', '<h4>main journal'].map(
      (word) => html.indexOf(word),
    );
    expect(order.every((place, index) => place > (order[index - 1] ?? 0))).toBe(true);
  });

  test('has a drawing for each fit, whose words are in the table below it', () => {
    // Four fits in each build, and their spread.
    expect(html.match(/<svg[^>]*role="img"[^>]*aria-label="[^"]+"/g)).toHaveLength(12);
    expect(html).toContain('<th scope="row">front</th><td>0.0020 in</td><td>near a limit</td>');
  });

  test('is valid by an HTML validator', async () => {
    const {results} = await new HtmlValidate({extends: ['html-validate:standard']}).validateString(html);
    expect(
      results.flatMap(({messages}) => messages.map(({ruleId, message}) => `${ruleId}: ${message}`)),
    ).toEqual([]);
  });

  test('is the same each time', () => {
    expect(readingsHtml({builds: TWO, spread: spreadOf(TWO)})).toBe(html);
  });

  test('a place that was never read is drawn nowhere', () => {
    const none = judged({...sample(), sheets: sample().sheets.map((sheet) => ({...sheet, entries: []}))});
    const page = readingsHtml({builds: [none], spread: []});
    expect(page).toContain('missing');
    expect(page).not.toMatch(/NaN|Infinity|undefined/);
  });
});
