/**
 * What findings say beside their message, in the wrong example of each: the story of the fact, the places of the
 * specification to look at, the title of the fix. Each line was read against its example.
 */
import {describe, expect, it} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import type {Finding} from '../../src/findings/model.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {positionAt, type Source, type Where} from '../../src/text/source.js';
import {exampleBook} from '../help/example.js';
import {CASES, caseBook} from './cases.js';

const TODAY = {today: '2026-06-01'};

const TOLD: readonly (readonly [name: string, lines: readonly string[]])[] = [
  ['tag-form', ['fix: Write `torque:`']],
  ['unknown-item', ['fix: Write main-cap-bolts']],
  ['wrong-kind', ['see: engine.yaml:7 main-caps is specified here']],
  ['spec-contradiction', ['see: engine.yaml:13 front is here']],
  ['untagged-action', ['fix: Add `lube: camshaft-bores` to step 2']],
  ['value-disagrees', ['see: engine.yaml:9 main-cap-bolts is specified here', 'fix: Write 85 lbf·ft']],
  ['prose-disagrees', ['see: 8 the tag', 'fix: Write 85 lbf·ft']],
  [
    'alter-first',
    [
      'see: engine.yaml:7 main-shells needs grind-off-lip',
      'see: engine.yaml:9 grind-off-lip is specified here',
    ],
  ],
  ['barred-material', ['see: engine.yaml:11 silicone-sealant is barred here']],
  ['clean-first', ['see: engine.yaml:9 plug-seats is specified here']],
  ['cure-short', ['see: shop.yaml:15 liquid-gasket is specified here', 'fix: Leave it 24 h']],
  ['inspect-first', ['see: engine.yaml:7 camshaft is specified here']],
  ['install-order', ['see: engine.yaml:8 camshaft comes after camshaft-bearings']],
  [
    'left-in',
    [
      'story: 7 step 1 of procedure.md: in (install: timing-pin)',
      'see: engine.yaml:7 timing-pin is temporary',
    ],
  ],
  ['left-filled-open', ['see: engine.yaml:7 drain-tap is specified here']],
  ['left-out', ['see: engine.yaml:7 core-plugs belongs in the engine']],
  [
    'left-slack',
    [
      'story: 8 step 2 of procedure.md: tight (torque: main-cap-bolts)',
      'see: engine.yaml:9 main-cap-bolts must be torqued',
      'fix: Write the missing step: torque main-cap-bolts',
    ],
  ],
  ['left-unchecked', ['see: engine.yaml:6 shells-seated is a check of this engine']],
  ['left-unfilled', ['see: engine.yaml:6 cooling is a system of this engine']],
  [
    'left-unlocked',
    [
      'story: 8 step 2 of procedure.md: tight (torque: oil-pump-bolts)',
      'see: engine.yaml:9 oil-pump-bolts is specified with lock: safety-wire',
      'fix: Write the missing step: lock oil-pump-bolts',
    ],
  ],
  [
    'left-unmeasured',
    ['see: engine.yaml:9 end-play is specified with limits', 'fix: Write the missing step: measure end-play'],
  ],
  [
    'left-unrecorded',
    [
      'see: engine.yaml:7 hull-plate-number is a mark of this engine',
      'fix: Write the missing step: record hull-plate-number',
    ],
  ],
  ['left-unsealed', ['see: engine.yaml:9 sump-joint is specified with a seal']],
  [
    'left-unstriped',
    [
      'story: 9 step 3 of procedure.md: striped (stripe: main-cap-bolts)',
      'story: 10 step 4 of procedure.md: no longer striped (torque: main-cap-bolts)',
      'story: 10 step 4 of procedure.md: tight (torque: main-cap-bolts)',
      'see: engine.yaml:9 main-cap-bolts is specified with stripe: true',
      'fix: Write the missing step: stripe main-cap-bolts',
    ],
  ],
  [
    'left-unwitnessed',
    [
      'see: engine.yaml:9 bottom-end-closed asks for a second signature',
      'fix: Write the missing step: witness bottom-end-closed',
    ],
  ],
  [
    'loaded-before-cure',
    [
      'story: 8 step 2 of procedure.md: sealed (seal: plug-seat-joint)',
      'see: shop.yaml:15 liquid-gasket is specified here',
      'see: engine.yaml:8 plug-seat-joint is specified here',
    ],
  ],
  [
    'lock-before-torque',
    [
      'story: 8 step 2 of procedure.md: tight (torque: main-cap-bolts)',
      'see: engine.yaml:9 main-cap-bolts is specified here',
    ],
  ],
  [
    'lock-wrong-kind',
    ['see: engine.yaml:9 main-cap-bolts is specified with lock: safety-wire', 'fix: Lock with safety-wire'],
  ],
  ['lube-first', ['see: engine.yaml:9 camshaft-bores goes together lubed with assembly-lube']],
  [
    'measured-slack',
    [
      'story: 8 step 2 of procedure.md: gauging strip in it (lay: main-clearance)',
      'see: engine.yaml:15 main-clearance is specified here',
    ],
  ],
  [
    'measured-too-late',
    [
      'story: 8 step 2 of procedure.md: gauging strip in it (lay: main-clearance)',
      'story: 13 step 7 of procedure.md: no longer gauging strip in it (clean: shell-faces)',
    ],
  ],
  [
    'fluids-mixed',
    ['story: 7 step 1 of procedure.md: filled (fill: oil)', 'see: engine.yaml:6 oil is specified here'],
  ],
  ['step-unmarked', ['fix: Write 3. as a step of its own']],
  ['passes-not-rising', ['see: engine.yaml:9 main-cap-bolts is specified here']],
  ['single-use-reused', ['see: engine.yaml:7 core-plugs is specified here']],
  [
    'strip-left-in',
    [
      'story: 8 step 2 of procedure.md: gauging strip in it (lay: main-clearance)',
      'see: engine.yaml:15 main-clearance is specified here',
    ],
  ],
  [
    'strip-not-dry',
    [
      'story: 7 step 1 of procedure.md: clean (clean: journals)',
      'story: 8 step 2 of procedure.md: lubed (lube: journals)',
      'see: engine.yaml:11 journals is specified here',
    ],
  ],
  ['strip-turned', ['story: 8 step 2 of procedure.md: gauging strip in it (lay: main-clearance)']],
  [
    'turned-blocked',
    [
      'story: 8 step 2 of procedure.md: in (install: crank-pin)',
      'see: engine.yaml:8 crank-pin blocks crankshaft',
    ],
  ],
  ['thread-condition', ['see: engine.yaml:9 main-cap-bolts is specified with engine-oil on the threads']],
  [
    'witnessed-early',
    [
      'see: engine.yaml:9 bottom-end-closed asks for main-caps',
      'see: engine.yaml:7 main-caps is specified here',
    ],
  ],
  ['unmeasured-branch', ['see: engine.yaml:9 end-play is specified here']],
  ['barred-tool', ['see: engine.yaml:9 steel-hammer is barred here']],
  [
    'install-manner',
    ['see: engine.yaml:7 camshaft is specified here', 'fix: Add `turn: camshaft` to step 1'],
  ],
  ['calibration-due', ['see: shop.yaml:6 dial-gauge is due by this date']],
  [
    'wrench-out-of-range',
    [
      'see: engine.yaml:9 pickup-bolts is specified here',
      'see: shop.yaml:6 torque-wrench-half is specified here',
      'fix: Use torque-wrench-small',
    ],
  ],
  [
    'gauge-too-coarse',
    ['see: engine.yaml:9 end-play is specified here', 'see: shop.yaml:6 dial-gauge is specified here'],
  ],
  ['wire-size', ['see: engine.yaml:9 pump-bolts is specified here']],
  ['cotter-size', ['see: engine.yaml:9 rod-nuts is specified here']],
  [
    'fit-impossible',
    [
      'see: engine.yaml:10 the size of cam-journals is here',
      'see: engine.yaml:9 the size of cam-bores is here',
    ],
  ],
  ['caution-missing', ['see: engine.yaml:9 eyes is a hazard of grind-off-lip']],
  [
    'caution-late',
    [
      'see: 7 the caution is needed before this',
      'see: engine.yaml:9 eyes is a hazard of grind-off-lip',
      'fix: Move the caution above step 1',
    ],
  ],
  ['hold-by-same-person', ['see: 8 A. Penrose did this']],
  ['waiver-stale', ['fix: Take the waiver out']],
  [
    'mark-mismatch',
    [
      'see: jobs/1.yaml hull-plate-number is written here',
      'see: engine.yaml:6 engine-number is specified here',
    ],
  ],
  [
    'undersize-mismatch',
    [
      'see: jobs/1.yaml main-journals is ground 0.010 in under',
      'see: engine.yaml:10 main-journals is specified here',
    ],
  ],
  [
    'substitute-unaltered',
    ['see: jobs/1.yaml the job fits twin-shells', 'see: engine.yaml:7 twin-shells needs grind-off-lip'],
  ],
  ['only-missing', ['fix: Say for which engines the step is']],
  ['rework-missing', ['see: engine.yaml:9 end-play is specified with rework']],
  [
    'left-in',
    [
      'story: 7 step 1 of procedure.md: in (install: timing-pin)',
      'see: engine.yaml:7 timing-pin is temporary',
    ],
  ],
];

function fileOf({spec, procedures, job}: Book, file: string): Source | undefined {
  if (job?.source.file === file) return job.source;
  return spec.files.get(file) ?? procedures.find(({source}) => source.file === file)?.source;
}

/** `engine.yaml:9`, or the line alone in the procedure; a job is all of a few lines. */
function placeOf(book: Book, {file, span}: Where): string {
  const from = fileOf(book, file);
  if (from === undefined || file.startsWith('jobs/')) return file;
  const {line} = positionAt(from, span.start);
  return file === 'procedure.md' ? `${line}` : `${file}:${line}`;
}

function linesOf(book: Book, {story, related, fix}: Finding): readonly string[] {
  return [
    ...story.map(({where, says}) => `story: ${placeOf(book, where)} ${says}`),
    ...related.map(({where, says}) => `see: ${placeOf(book, where)} ${says}`),
    ...(fix ? [`fix: ${fix.title}`] : []),
  ];
}

const EXAMPLES = FINDINGS.flatMap(({name, example}) =>
  example ? [{name, book: () => exampleBook(example, 'wrong')}] : [],
);

describe.each(EXAMPLES)('$name', ({name, book}) => {
  it('tells its story, where to look and what to do', () => {
    const wrong = book();
    const lines = check(wrong, TODAY)
      .findings.filter((finding) => finding.name === name)
      .flatMap((finding) => linesOf(wrong, finding));
    expect(lines).toEqual(TOLD.find(([told]) => told === name)?.[1] ?? []);
  });
});

const CASES_BY_FINDING = CASES.map((one) => ({title: `${one.finding}: ${one.title}`, one}));

it.each(CASES_BY_FINDING)('says something at every place that it names: $title', ({one}) => {
  const wrong = caseBook(one);
  for (const {message, story, related, where} of check(wrong, TODAY).findings)
    for (const remark of [{where, says: message}, ...story, ...related]) {
      expect(remark.says).toMatch(/^\S.*[^.\s]$/);
      const length = fileOf(wrong, remark.where.file)?.text.length ?? -1;
      expect(remark.where.span.end).toBeLessThanOrEqual(length);
    }
});
