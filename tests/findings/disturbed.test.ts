/** Readings that count no longer once screws or parts are moved: an air gap and the screws of its plate. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';
import {found} from '../help/found.js';

const NO_LOCK = 'lock: {value: none, because: set by them}';
const ENGINE = `
parts:
  block: {given: true}
  plate: {substitutes: {long-plate: {alterations: [slot]}}}
  caps: {at: [front, rear]}
  cylinders: {at: [left, right]}
fasteners:
  plate-screws: {count: 3, holds: [plate], torque: 40 lbf·in, threads: dry, ${NO_LOCK}}
  cap-nuts: {at: [front, rear], count: 4, holds: [caps], torque: 40 lbf·ft, threads: dry, ${NO_LOCK}}
fits:
  air-gap: {between: [block, plate], limits: 0.010–0.014 in, using: [feeler-gauges], disturbed-by: [plate-screws], when: {installed: [plate], tight: [plate-screws]}}
  clearance: {at: [front, rear], between: [block], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [caps], tight: [cap-nuts]}}
  squish: {at: [left, right], between: [block], limits: 0.035–0.050 in, using: [feeler-gauges], disturbed-by: [cylinders], when: {installed: [cylinders], tight: []}}
checks:
  timing: {expect: the marks meet, disturbed-by: [plate]}
hold-points:
  ready: {asks: [air-gap, timing], by: shop lead}
alterations:
  slot: {of: [plate], does: slot the holes}
`;

const SCREWS = 'torque: plate-screws to 40 lbf·in';
const GAP = 'measure: air-gap using feeler-gauges';
const SIGNED = 'witness: ready by "shop lead"';
const WHOLE = [
  'install: plate, caps, cylinders',
  SCREWS,
  'torque: cap-nuts to 40 lbf·ft',
  GAP,
  'measure: clearance, squish using feeler-gauges',
  'check: timing',
  SIGNED,
];
const ENDS = 'procedure.md';

/** What is said of the gap, and of the signature that stood for it, that a step undoes. */
function lostGap(by: string): string[] {
  return [
    `left-unmeasured: air-gap was measured before it was changed: done at step 4, undone at step 8 of ${ENDS} (${by}) and never made good`,
    `left-unwitnessed: ready is witnessed too early: done at step 7, undone at step 8 of ${ENDS} (${by}) and never made good`,
  ];
}

/** The same of the check. */
function lostTiming(by: string): string[] {
  return [
    `left-unchecked: timing is checked too early: done at step 6, undone at step 8 of ${ENDS} (${by}) and never made good`,
    `left-unwitnessed: ready is witnessed too early: done at step 7, undone at step 8 of ${ENDS} (${by}) and never made good`,
  ];
}

describe('a reading that is disturbed', () => {
  it.each<readonly [string, readonly string[], readonly string[]]>([
    ['is not, where nothing is moved after it', WHOLE, []],
    ['is not by a part that is wiped', [...WHOLE, 'clean: plate'], []],
    [
      'by screws that are slackened, though they are tight again',
      [...WHOLE, 'loosen: plate-screws', SCREWS],
      lostGap('loosen: plate-screws'),
    ],
    ['by screws that are torqued once more', [...WHOLE, SCREWS], lostGap('torque: plate-screws')],
    [
      'by screws that are renewed',
      [...WHOLE, 'renew: plate-screws'],
      [
        'left-slack: plate-screws end the build slack: the torque at step 2 was undone at step 8 of procedure.md (renew: plate-screws) and never made good',
        ...lostGap('renew: plate-screws'),
      ],
    ],
    [
      'and is good where it is taken and signed again',
      [...WHOLE, 'loosen: plate-screws', SCREWS, GAP, SIGNED],
      [],
    ],
    [
      'and taken again but not signed again',
      [...WHOLE, 'loosen: plate-screws', SCREWS, GAP],
      lostGap('loosen: plate-screws').slice(1),
    ],
    [
      'and taken again too early',
      [...WHOLE, 'loosen: plate-screws', SCREWS, GAP, SIGNED, SCREWS],
      [
        `left-unmeasured: air-gap was measured before it was changed: done at step 10, undone at step 12 of ${ENDS} (torque: plate-screws) and never made good`,
        `left-unwitnessed: ready is witnessed too early: done at step 11, undone at step 12 of ${ENDS} (torque: plate-screws) and never made good`,
      ],
    ],
    ['by a part that is altered', [...WHOLE, 'alter: plate by slot', GAP], lostTiming('alter: plate')],
    ['by a part that is renewed', [...WHOLE, 'renew: plate', GAP], lostTiming('renew: plate')],
    [
      'by screws that come off with their plate',
      [
        ...WHOLE.filter((one) => one !== SCREWS),
        'remove: plate',
        'install: plate',
        SCREWS,
        'check: timing',
        SIGNED,
      ],
      [
        'measured-slack: air-gap is measured while plate-screws are slack',
        `left-unmeasured: air-gap was measured before it was changed: done at step 3, undone at step 7 of ${ENDS} (remove: plate) and never made good`,
        'witnessed-early: ready is signed at step 11 before air-gap is as it asks',
      ],
    ],
    [
      'in the one place where its cylinder came off',
      [...WHOLE, 'remove: cylinders[left]', 'install: cylinders[left]'],
      [
        `left-unmeasured: squish[left] was measured before it was changed: done at step 5, undone at step 8 of ${ENDS} (remove: cylinders) and never made good`,
      ],
    ],
    [
      'not by what it does not name: a strip outlives the caps',
      [...WHOLE, 'loosen: cap-nuts', 'remove: caps', 'install: caps', 'torque: cap-nuts to 40 lbf·ft'],
      [],
    ],
  ])('%s', (_, tags, says) => {
    expect(found(ENGINE, tags)).toEqual(says);
  });

  it('not by nuts whose caps are renewed: they come off with caps that come out', () => {
    const engine = ENGINE.replace('meet, disturbed-by: [plate]', 'meet, disturbed-by: [cap-nuts]');
    const again = 'measure: clearance using feeler-gauges';
    expect(found(engine, [...WHOLE, 'renew: caps', again])).toEqual([]);
    const out = ['remove: caps', 'install: caps', 'torque: cap-nuts to 40 lbf·ft', again];
    expect(found(engine, [...WHOLE, ...out])).toEqual([
      'install-order: cap-nuts are still tight when caps come off',
      ...lostTiming('remove: caps'),
    ]);
  });

  it('by a part that goes in after it', () => {
    const early = [
      'check: timing',
      ...WHOLE.filter((one) => one !== 'check: timing' && one !== SIGNED),
      SIGNED,
    ];
    expect(found(ENGINE, early)).toEqual([
      `left-unchecked: timing is checked too early: done at step 1, undone at step 2 of ${ENDS} (install: plate) and never made good`,
      'witnessed-early: ready is signed at step 7 before timing is as it asks',
    ]);
  });

  it('in a branch, which may not be taken, is lost', () => {
    const steps = `
1. Fit it all. \`install: plate, caps, cylinders\`
2. Tighten the nuts. \`torque: cap-nuts to 40 lbf·ft\`
3. Tighten the screws. \`${SCREWS}\`
4. Read. \`${GAP}\` \`measure: clearance, squish using feeler-gauges\`
5. Look at the marks. \`check: timing\` \`step: look\`
6. Where it is out: \`if: timing is out\`
    1. Shift the plate. \`loosen: plate-screws\`
    2. Tighten. \`${SCREWS}\`
    3. Go back. \`repeat: look\`
7. Have it signed. \`${SIGNED}\`
`;
    const of = (text: string) => {
      const findings = check(book({engine: ENGINE, procedures: {[ENDS]: text}})).findings;
      return findings.map(({name, message, fix}) => [`${name}: ${message}`, fix?.title]);
    };
    expect(of(steps)).toEqual([
      [
        `left-unmeasured: air-gap was measured before it was changed: done at step 4, undone at step 6a of ${ENDS} (loosen: plate-screws) and never made good`,
        undefined,
      ],
      ['witnessed-early: ready is signed at step 7 before air-gap is as it asks', undefined],
    ]);
    expect(of(steps.replace('`step: look`', '').replace(`\`${GAP}\``, `\`${GAP}\` \`step: look\``))).toEqual(
      [],
    );
  });

  it('is offered where nothing moves it any more, and not before', () => {
    const titles = (tags: readonly string[]) => {
      const steps = tags.map((tag, index) => `${index + 1}. Do it. \`${tag}\``).join('\n');
      const {findings} = check(book({engine: ENGINE, procedures: {[ENDS]: `\n${steps}\n`}}));
      return findings.filter(({name}) => name === 'left-unmeasured').map(({fix}) => fix?.edits[0]?.text);
    };
    const unread = WHOLE.filter((one) => one !== GAP);
    expect(titles(unread)[0]).toContain('measure: air-gap');
    expect(titles([...unread, 'loosen: plate-screws', 'renew: plate-screws'])).toEqual([undefined]);
  });
});
