/** A small book with one of everything that a record can go wrong over; all of it invented. */
import {askedOfBook} from '../../src/host/asked-of-build.js';
import {type Build, buildsOf} from '../../src/readings/builds.js';
import {type Asked, type JudgeOptions, judgeBuild} from '../../src/readings/judge.js';
import type {BuildRecord} from '../../src/readings/record.js';
import type {BuildReport, Remark} from '../../src/readings/report.js';
import {book} from '../help/example.js';
import {type Sample, sampleRecord} from '../help/record.js';

export const SMALL_BOOK = book({
  shop: `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  micrometers: {gauge: true, resolution: {value: 0.0001 in, source: house}, due: 2026-12-31}
  bore-gauge: {gauge: true, resolution: {value: 0.0001 in, source: house}, due: 2026-12-31}
  indicator: {gauge: true, resolution: {value: 0.001 in, source: house}, due: 2026-12-31}
consumables: {}
`,
  engine: `
parts:
  block: {given: true}
  crankshaft: {}
surfaces:
  main-journals: {on: crankshaft, at: [front, rear], assembly: clean, size: 2.500 in}
  main-bores: {on: block, at: [front, rear], assembly: clean, size: 2.502 in}
fits:
  journal-size: {name: main journal, at: [front, rear], between: [main-journals], limits: 2.4990–2.5000 in, using: [micrometers], when: {installed: [block]}}
  bore-size: {name: main bore, at: [front, rear], between: [main-bores], limits: 2.5015–2.5025 in, using: [bore-gauge], when: {installed: [block]}}
  clearance: {name: main clearance, at: [front, rear], between: [main-journals, main-bores], limits: 0.0020–0.0035 in, using: [bore-gauge, micrometers], rework: true, when: {installed: [block]}}
  end-play: {between: [block, crankshaft], limits: 0.004–0.008 in, using: [indicator], when: {installed: [crankshaft]}}
marks:
  engine-number: {stamped: front of the block}
hold-points:
  crank-in: {asks: [crankshaft, end-play], by: shop lead}
`,
  procedures: {
    '01-crank.md': `
## Sizes

1. Write the number down. \`record: engine-number\`
2. Measure the journals. \`measure: journal-size\`
3. Measure the bores. \`measure: bore-size\`
4. Read the clearance. \`measure: clearance\` \`step: read\`
5. Where it is out: \`if: clearance is out\`
   1. Scrape the bearing. \`clean: main-bores\`
   2. Read it again. \`repeat: read\`

## For good

6. Set the crankshaft down. \`install: crankshaft\`
7. Read the end play. \`measure: end-play\`
8. Have it looked at. \`witness: crank-in\`
`,
    '02-close.md': `
1. Turn the crankshaft by hand. \`turn: crankshaft\`
`,
  },
});

export const SMALL: Asked = await askedOfBook(SMALL_BOOK);

export function sample(more: Partial<Sample> = {}, asked: Asked = SMALL): BuildRecord {
  const forms = asked.sheets.map(({form}) => form);
  return sampleRecord(forms, {seed: 20_260_302, engineNumber: 'X-1', ...more});
}

export function buildOf(...records: readonly BuildRecord[]): Build {
  const [build, second] = buildsOf(
    records.map((record, index) => ({file: `${index + 1}.record.json`, record})),
  );
  if (build === undefined || second) throw new Error('the records are not of one build');
  return build;
}

export function judged(
  record: BuildRecord,
  options: JudgeOptions & {readonly asked?: Asked} = {},
): BuildReport {
  return judgeBuild(buildOf(record), options.asked ?? SMALL, options);
}

/** `name sheet/step`, in the order of the report. */
export function told(remarks: readonly Remark[]): string[] {
  return remarks.map(({name, sheet, step}) => `${name} ${sheet}${step && `/${step}`}`);
}
