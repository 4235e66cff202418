/** A sheet for one engine on the stand: its numbers, sizes, substitutes and options, and the gaps explained. */
import {describe, expect, it, test} from 'vitest';
import {forJob} from '../../src/build/for-job.js';
import {compileCover} from '../../src/sheet/cover.js';
import {bookFingerprint} from '../../src/sheet/fingerprint.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {coverHtml} from '../../src/sheet/html-cover.js';
import {sheetMarkdown} from '../../src/sheet/markdown.js';
import type {Row, Sheet} from '../../src/sheet/model.js';
import {book} from '../help/example.js';
import {firstSheet} from '../help/sheet.js';

const ENGINE = `
options: {electric-starter: electric starter, sea-water: {name: sea-water cooling}}
parts:
  block: {given: true}
  crankshaft: {given: true}
  shells:
    name: main shells
    at: [front, rear]
    quantity: 2
    single-use: true
    substitutes:
      six: {name: shells of the Six, alterations: [grind-lip], note: they came in a blue box}
      twin: {name: shells of the Twin, alterations: {value: none, because: they are the same}, note: thinner oil}
  starter: {only: electric-starter}
surfaces:
  journals: {name: main journals, on: crankshaft, at: [front, rear], assembly: clean, size: 2.500 in, grinds: [0.010 in]}
  faces: {on: shells, at: [front, rear], assembly: clean, sizes: {front: 2.502 in, rear: 2.503 in}}
fits:
  clearance: {between: [journals, faces], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [shells]}}
  journal-size: {between: [journals], limits: 2.4990–2.5000 in, using: [feeler-gauges], when: {installed: [block]}}
  journal-round: {between: [journals], limits: max 0.001 in, using: [feeler-gauges], when: {installed: [block]}}
marks:
  engine-number: {stamped: pad, matches: plate-number}
  plate-number: {}
  crank-grind: {}
alterations:
  grind-lip: {of: [shells], does: grind the lip flush, using: [steel-hammer], hazards: [sparks]}
hold-points:
  closed: {asks: [starter, shells], by: shop lead}
`;

const STEPS = `
1. Copy the numbers. \`record: engine-number, plate-number, crank-grind\`
2. Read the size. \`measure: journal-size\`
3. Read the shape. \`measure: journal-round\`
4. Unwrap the shells. \`renew: shells\`
5. Press them in. \`install: shells\`
6. Read the clearance. \`measure: clearance\`

## Starter \`only: electric-starter\`

7. Slide the starter in. \`install: starter\`

## Last

8. Connect the battery. \`only: electric-starter, sea-water\`
9. Call the shop lead. \`witness: closed\`
`;

function made(job: string | undefined) {
  const whole = book({engine: ENGINE, procedures: {'p.md': STEPS}, job});
  const own = forJob(whole);
  return {whole, own, sheet: firstSheet(own)};
}

function rowsOf({sections}: Sheet): Row[] {
  return sections.flatMap(({content}) =>
    content.flatMap((block) => (block.type === 'row' ? [block.row] : [])),
  );
}

/** `label text (note)` of every fact of a step. */
function factsAt(number: string, job: string | undefined): string[] {
  const row = rowsOf(made(job).sheet).find((one) => one.number === number);
  return (row?.entries ?? []).flatMap(({facts}) =>
    facts.map(({label, text, note}) => [label, text, note && `(${note})`].filter(Boolean).join(' ')),
  );
}

function proseAt(number: string, job: string | undefined): string | undefined {
  const row = rowsOf(made(job).sheet).find((one) => one.number === number);
  return row && JSON.stringify(row.prose.map((node) => ('value' in node ? node.value : node)));
}

describe('numbers', () => {
  const mustRead = (job: string) => factsAt('1', job).filter((fact) => fact.startsWith('Must read'));

  it.each([
    [
      'of every mark that the job knows',
      'marks: {engine-number: OF 7, plate-number: OF 7, crank-grind: 10}',
      ['OF 7', 'OF 7', '10'],
    ],
    ['of a mark by the one that it must match', 'marks: {plate-number: OF 7}', ['OF 7', 'OF 7']],
    ['of the mark that must match it', 'marks: {engine-number: OF 7}', ['OF 7', 'OF 7']],
    ['of none where the job says nothing', '', []],
  ])('are printed %s', (_, job, expected) => {
    expect(mustRead(job)).toEqual(expected.map((text) => `Must read ${text}`));
  });

  it('stand in the head, with that of the job', () => {
    expect(made('marks: {engine-number: OF 7}').sheet.head).toMatchObject({job: '1', engineNumber: 'OF 7'});
    const {head} = made('').sheet;
    expect([head.job, head.engineNumber]).toEqual(['1', undefined]);
    expect(made(undefined).sheet.head.job).toBeUndefined();
  });
});

describe('grinds', () => {
  const TEN = 'grinds: {journals: 0.010 in}\nfitted: {shells: {undersize: 0.010 in}}';
  const limitsAt = (number: string, job: string | undefined) => {
    const blanks = rowsOf(made(job).sheet).find((row) => row.number === number)?.entries[0]?.blanks;
    return blanks?.type === 'readings' ? blanks.limits?.text : undefined;
  };

  it('move the limits of a size, and of nothing else', () => {
    expect(['2', '3', '6'].map((number) => limitsAt(number, TEN))).toEqual([
      '2.4890–2.4900 in',
      'max 0.001 in',
      '0.001–0.003 in',
    ]);
    expect(['2', '3', '6'].map((number) => limitsAt(number, ''))).toEqual([
      '2.4990–2.5000 in',
      'max 0.001 in',
      '0.001–0.003 in',
    ]);
  });

  it('are said where a size matters, with the size that they give', () => {
    expect(factsAt('2', TEN)).toContain('main journals 2.490 in (63.25 mm) (0.010 in under)');
    expect(factsAt('3', TEN).join()).not.toContain('under');
    expect(factsAt('6', TEN)).toEqual(
      expect.arrayContaining([
        'main journals 2.490 in (63.25 mm) (0.010 in under)',
        'faces front 2.492 in (63.30 mm), rear 2.493 in (63.32 mm) (0.010 in under)',
      ]),
    );
    expect(factsAt('2', 'grinds: {journals: standard}')).toContain(
      'main journals 2.500 in (63.50 mm) (standard size)',
    );
    expect(factsAt('2', '').join()).not.toContain('main journals');
  });

  it('are said of the shells that were bought, in the steps and in the list', () => {
    expect(factsAt('4', TEN)).toContain('On this job 0.010 in under');
    expect(made(TEN).sheet.before.newParts.map(({name}) => name)).toEqual(['main shells (0.010 in under)']);
  });
});

describe('substitutes', () => {
  const SIX = 'substitutes: {shells: six}';

  it('are named in the steps and in the list', () => {
    expect(factsAt('4', SIX)).toContain('On this job shells of the Six (they came in a blue box)');
    expect(made(SIX).sheet.before.newParts.map(({name}) => name)).toEqual([
      'main shells (shells of the Six)',
    ]);
    expect(factsAt('4', 'substitutes: {shells: twin}\nfitted: {shells: {undersize: 0.010 in}}')).toContain(
      'On this job shells of the Twin, 0.010 in under (thinner oil)',
    );
    expect(factsAt('4', '')).toEqual([]);
  });

  it('are altered in a step of its own, in its place, marked, with its tools, cautions and nothing said twice', () => {
    const rows = rowsOf(made(SIX).sheet);
    expect(rows.map(({number}) => number)).toEqual(['1', '2', '3', '4', 'J1', '5', '6', '9']);
    expect(proseAt('J1', SIX)).toContain('For this job:');
    expect(factsAt('J1', SIX)).toEqual(['Using steel hammer']);
    expect(rows[4]?.notices).toMatchObject([{signal: 'warning', hazards: ['sparks']}]);
    expect(made(SIX).sheet.before.tools.map(({names}) => names)).toContainEqual(['steel hammer']);
    for (const text of [sheetHtml(made(SIX).sheet), sheetMarkdown(made(SIX).sheet)]) {
      expect(text).toContain('For this job:');
      expect(text).toContain('Ask the shop lead how to guard against this');
    }
  });
});

describe('options', () => {
  it('are named on the sheet for every engine', () => {
    const {sheet} = made(undefined);
    expect(sheet.sections.find(({title}) => title === 'Starter')?.content[0]).toMatchObject({
      prose: [{children: [{value: 'Only with electric starter.'}]}],
    });
    expect(proseAt('8', undefined)).toContain('Only with electric starter or sea-water cooling:');
  });

  it('are not named where the engine has them, and explain the gap where it has not', () => {
    expect(proseAt('8', 'options: [sea-water]')).toBe('["Connect the battery."]');
    expect(JSON.stringify(made('options: [sea-water]').sheet.sections)).toContain(
      'Left out on this job (no electric starter): 7',
    );
    expect(JSON.stringify(made('').sheet.sections)).toContain(
      'Left out on this job (no electric starter or sea-water cooling): 8',
    );
  });

  it('leave a hold point nothing to ask for that is not there', () => {
    const asks = (job: string) =>
      rowsOf(made(job).sheet).flatMap(({holds}) => holds.map((hold) => hold.asks));
    expect(asks('')).toEqual([['main shells']]);
    expect(asks('options: [electric-starter]')).toEqual([['starter', 'main shells']]);
  });
});

describe('the cover', () => {
  const JOB = `marks: {engine-number: OF 7}
grinds: {journals: 0.010 in}
fitted: {shells: {undersize: 0.010 in}}
substitutes: {shells: six}
options: [sea-water]
`;
  const {own} = made(JOB);
  const cover = compileCover(own, {fingerprint: '0123456789abcdef', leftOut: ['Starter']});

  it('says what is so on this engine, and only there', () => {
    expect(cover).toMatchObject({job: '1', engineNumber: 'OF 7'});
    expect(cover.thisJob?.find(({label}) => label === 'main shells')?.note).toBe('grind the lip flush');
    expect(cover.thisJob?.map(({label, text}) => `${label}: ${text}`)).toEqual([
      'engine number: OF 7',
      'plate number: OF 7',
      'main journals: 0.010 in under',
      'main shells: shells of the Six, 0.010 in under',
      'Has: sea-water cooling',
      'Has not: electric starter',
      'Not on this job: Starter',
    ]);
    expect(compileCover(made(undefined).own, {fingerprint: '0'}).thisJob).toBeUndefined();
  });

  it('prints it', () => {
    expect(coverHtml(cover)).toMatch(/This engine<\/h2>.*shells of the Six, 0\.010 in under/s);
  });
});

test('the fingerprint is that of the job too, blind to what editors change', async () => {
  const print = async (job: string | undefined) => bookFingerprint(made(job).whole);
  const prints = await Promise.all(['', 'options: [sea-water]', undefined].map(print));
  expect(new Set(prints).size).toBe(3);
  expect(await print('options: [sea-water]\r\n\r\n')).toBe(await print('options: [sea-water]\n'));
});
