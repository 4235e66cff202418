/**
 * What a tag changes in what is known of the engine: every fact that it sets or undoes, and nothing else.
 * Common practice, no source.
 */
import {describe, expect, it} from 'vitest';
import type {Detail} from '../../src/build/facts.js';
import {ledger} from '../../src/build/ledger.js';
import {formatAmount} from '../../src/quantity/format.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  crankshaft: {given: true}
  shells: {at: [front, rear], single-use: true}
  caps: {at: [front, rear], closes: [faces, cap-joint], alterations: [relieve]}
  cover: {closes: [cover-joint], alterations: [relieve, drill]}
surfaces:
  journals: {on: crankshaft, at: [front, rear]}
  faces: {on: shells, at: [front, rear]}
  edge: {on: cover}
joints:
  cap-joint: {at: [front, rear], between: [block, caps], seal: [liquid-gasket, paper-gasket]}
  cover-joint: {between: [block, cover], seal: [liquid-gasket, paper-gasket]}
fasteners:
  bolts: {at: [front, rear], holds: [caps], torque: 40 lbf·ft, lock: [threadlocker, safety-wire], stripe: true}
  nuts: {holds: [cover], torque: 10 lbf·ft, lock: [tab-washer, safety-wire]}
  caulked: {holds: [cover], torque: snug}
  turned: {holds: [cover], torque: 20 lbf·ft, angle: 90°}
  sprung: {holds: [cover], torque: snug, angle: 90°}
  plain: {holds: [cover]}
fits:
  clearance: {at: [front, rear], between: [journals, faces], by: strip, when: {installed: [caps], tight: [bolts]}}
  float: {between: [cover, block], by: gauge, when: {installed: [cover], tight: [bolts]}}
alterations:
  relieve: {of: [caps, cover]}
  drill: {of: [cover]}
marks:
  number: {}
checks:
  turns: {}
systems:
  oil: {joints: [cover-joint], closed-by: [cover], with: [engine-oil]}
hold-points:
  signed: {asks: [bolts, clearance, cap-joint, oil]}
`;

const SHOP = `
shop: {name: Example Works}
sources: {house: {title: House notes, note: invented}}
tools: {soft-mallet: mallet}
consumables:
  solvent: {use: cleaner}
  engine-oil: {use: lubricant}
  liquid-gasket: {use: sealant}
  paper-gasket: {use: gasket}
  wire: {use: lock, lock: safety-wire}
  blue: {use: lock, lock: threadlocker}
  strip: {use: strip}
  paint: {use: other}
`;

/** What the last of the tags changes: `+lubed journals[front] engine-oil`, `-tight bolts`. */
function changes(tags: readonly string[]): string[] {
  const procedure = tags.map((tag, at) => `${at + 1}. Do it. \`${tag}\`\n`).join('');
  const run = ledger(book({engine: ENGINE, shop: SHOP, procedures: {'p.md': `\n${procedure}`}}));
  let mark = 0;
  let last: string[] = [];
  run.walk({
    before(_, state) {
      mark = state.mark();
    },
    after(_, state) {
      const all = state.changesSince(mark).map(({kind, item, place, holds}) => {
        const fact = state.get(kind, item, place);
        const left = holds ? '' : 'but for ';
        const detail = fact.holds ? `${left}${detailWords(fact.detail)}` : '';
        return `${holds ? '+' : '-'}${kind} ${item}${place && `[${place}]`} ${detail}`.trim();
      });
      last = [...new Set(all)];
    },
  });
  return last;
}

function detailWords({ids, lacks, torque, final}: Detail = {}): string {
  return [
    ids?.join(', '),
    lacks && `without ${lacks.join(', ')}`,
    torque && `${formatAmount(torque)}`,
    final && 'final',
  ]
    .filter(Boolean)
    .join(' ');
}

const both = (fact: string, detail = '') =>
  ['front', 'rear'].map((place) => `${fact}[${place}] ${detail}`.trim());

type Row = readonly [tags: readonly string[], changes: readonly string[]];

describe.each<[title: string, ...rows: Row[]]>([
  [
    'what is cleaned is clean, carries nothing, and no strip lies in its fits',
    [
      ['lay: clearance', 'lube: journals', 'clean: journals[front]'],
      ['+clean journals[front]', '-lubed journals[front]', '-strip clearance[front]'],
    ],
    [
      ['lay: clearance', 'torque: bolts', 'clean: faces[rear]'],
      ['+clean faces[rear]', '-strip clearance[rear]', '-crushed clearance[rear]'],
    ],
    [
      ['lube: faces', 'clean: shells'],
      [...both('+clean shells'), ...both('+clean faces'), ...both('-lubed faces')],
    ],
    [
      ['seal: cap-joint with liquid-gasket', 'cure: cap-joint', 'clean: cap-joint'],
      [...both('+clean cap-joint'), ...both('-sealed cap-joint'), ...both('-cured cap-joint')],
    ],
  ],
  [
    'a part is lubed on its surfaces, a fastener on its threads',
    [['lube: crankshaft with engine-oil'], both('+lubed journals', 'engine-oil')],
    [['lube: journals[front]'], ['+lubed journals[front]']],
    [['lube: caps with engine-oil'], []],
    [['lube: bolts with engine-oil'], both('+threads bolts', 'engine-oil')],
  ],
  [
    'a strip is crushed when the fasteners over it come to their final torque',
    [['lay: clearance', 'torque: bolts to snug'], both('+tight bolts')],
    [['lay: clearance with strip'], both('+strip clearance', 'strip')],
    [
      ['lay: clearance', 'torque: bolts'],
      [
        '+tight bolts[front] 40 lbf·ft final',
        '+crushed clearance[front]',
        '+tight bolts[rear] 40 lbf·ft final',
        '+crushed clearance[rear]',
      ],
    ],
    [['torque: bolts', 'lay: clearance', 'torque: nuts'], ['+tight nuts 10 lbf·ft final']],
    [
      ['lay: clearance with strip', 'torque: bolts', 'lay: clearance'],
      [...both('+strip clearance'), ...both('-crushed clearance')],
    ],
  ],
  [
    'a joint made up anew is not cured, and a sealant cures the joints that it is in',
    [
      ['seal: cover-joint with liquid-gasket', 'cure: cover-joint', 'seal: cover-joint with paper-gasket'],
      ['+sealed cover-joint paper-gasket', '-cured cover-joint'],
    ],
    [['seal: cap-joint with liquid-gasket', 'cure: cap-joint'], both('+cured cap-joint')],
    [
      [
        'seal: cap-joint[rear] with liquid-gasket',
        'seal: cover-joint with paper-gasket',
        'cure: liquid-gasket',
      ],
      both('+cured cap-joint'),
    ],
    [['seal: cover-joint', 'cure: liquid-gasket'], []],
  ],
  [
    'an alteration leaves swarf, and the fits of the part are other fits',
    [['alter: caps'], both('+altered caps', 'relieve')],
    [
      ['alter: cover by relieve', 'lube: edge', 'measure: float', 'alter: cover by drill'],
      ['+altered cover relieve, drill', '-lubed edge', '-clean edge', '-measured float'],
    ],
    [
      ['alter: cover by relieve', 'renew: cover', 'alter: cover by drill'],
      ['+altered cover drill', '-clean edge'],
    ],
  ],
  [
    'a new part is as it comes',
    [
      ['alter: caps', 'inspect: caps', 'renew: caps[front]'],
      ['+fresh caps[front]', '-altered caps[front]', '-inspected caps[front]'],
    ],
    [
      ['lube: faces', 'measure: clearance', 'lay: clearance', 'renew: shells[front]'],
      [
        '+fresh shells[front]',
        '-lubed faces[front]',
        '-measured clearance[front]',
        '-strip clearance[front]',
      ],
    ],
    [
      ['lube: bolts', 'stripe: bolts', 'renew: bolts'],
      [...both('+fresh bolts'), ...both('-threads bolts'), ...both('-striped bolts')],
    ],
  ],
  [
    'a part that comes out leaves its fasteners slack and bare, and opens what it closed',
    [['install: caps[front]'], ['+installed caps[front]']],
    [
      [
        'install: caps',
        'torque: bolts',
        'lock: bolts',
        'stripe: bolts',
        'lube: faces',
        'seal: cap-joint',
        'cure: cap-joint',
        'remove: caps[front]',
      ],
      [
        '-installed caps[front]',
        '-tight bolts[front]',
        '-locked bolts[front]',
        '-striped bolts[front]',
        '-lubed faces[front]',
        '-clean faces[front]',
        '-sealed cap-joint[front]',
        '-cured cap-joint[front]',
        '-clean cap-joint[front]',
      ],
    ],
    [
      ['renew: shells', 'install: shells', 'remove: shells[front]'],
      ['-installed shells[front]', '-fresh shells[front]'],
    ],
    [
      ['renew: cover', 'install: cover', 'torque: bolts', 'remove: cover'],
      ['-installed cover', '-clean cover-joint'],
    ],
  ],
  [
    'a torque is what it states, or else what is specified; the last one ends it',
    [['torque: nuts'], ['+tight nuts 10 lbf·ft final']],
    [['torque: nuts to 5 lbf·ft'], ['+tight nuts 5 lbf·ft final']],
    [['torque: nuts to snug'], ['+tight nuts']],
    [['torque: caulked'], ['+tight caulked final']],
    [['torque: caulked to snug'], ['+tight caulked final']],
    [['torque: caulked to 5 lbf·ft'], ['+tight caulked 5 lbf·ft final']],
    [['torque: turned'], ['+tight turned 20 lbf·ft final']],
    [['torque: turned to 20 lbf·ft'], ['+tight turned 20 lbf·ft']],
    [['torque: turned to 20 lbf·ft turn 90°'], ['+tight turned 20 lbf·ft final']],
    [['torque: turned to 20 lbf·ft', 'torque: turned turn 90°'], ['+tight turned 20 lbf·ft final']],
    [['torque: turned turn 90°'], ['+tight turned']],
    [['torque: turned to 20 lbf·ft', 'loosen: turned', 'torque: turned turn 90°'], ['+tight turned']],
    [['torque: sprung to snug'], ['+tight sprung']],
    [['torque: sprung to snug turn 90°'], ['+tight sprung final']],
    [['torque: sprung turn 90°'], ['+tight sprung final']],
    [['torque: plain'], ['+tight plain']],
    [['torque: plain to 5 lbf·ft'], ['+tight plain 5 lbf·ft']],
    [
      ['stripe: bolts', 'torque: bolts[rear]'],
      ['+tight bolts[rear] 40 lbf·ft final', '-striped bolts[rear]'],
    ],
    [
      ['renew: bolts', 'torque: bolts', 'lock: bolts', 'stripe: bolts', 'loosen: bolts'],
      [...both('-tight bolts'), ...both('-locked bolts'), ...both('-striped bolts'), ...both('-fresh bolts')],
    ],
  ],
  [
    'locks add up, and what goes on after the torque is lost with the next',
    [['lock: nuts'], ['+locked nuts tab-washer, safety-wire']],
    [['lock: nuts with wire'], ['+locked nuts wire without tab-washer']],
    [['lock: nuts with wire', 'lock: nuts with tab-washer'], ['+locked nuts wire, tab-washer']],
    [['lock: nuts with staking'], ['+locked nuts staking without tab-washer, safety-wire']],
    [['lock: nuts with staking', 'lock: nuts with wire'], ['+locked nuts staking, wire']],
    [
      ['lock: bolts[front] with blue'],
      ['+locked bolts[front] blue without safety-wire', '+threads bolts[front] blue'],
    ],
    [
      ['lock: bolts[front]'],
      ['+locked bolts[front] threadlocker, safety-wire', '+threads bolts[front] threadlocker'],
    ],
    [['lock: plain'], ['+locked plain']],
    [
      ['lock: plain', 'torque: plain'],
      ['+tight plain', '-locked plain'],
    ],
    [
      ['lock: nuts with engine-oil', 'torque: nuts'],
      ['+tight nuts 10 lbf·ft final', '-locked nuts'],
    ],
    [
      ['lock: nuts', 'torque: nuts'],
      ['+tight nuts 10 lbf·ft final', '-locked nuts'],
    ],
    [['lock: bolts with blue', 'torque: bolts[front]'], ['+tight bolts[front] 40 lbf·ft final']],
    [
      ['lock: bolts with blue, wire', 'torque: bolts[front]'],
      ['+tight bolts[front] 40 lbf·ft final', '-locked bolts[front] but for blue without safety-wire'],
    ],
  ],
  [
    'what is done is done',
    [['inspect: caps'], both('+inspected caps')],
    [['measure: clearance[rear]'], ['+measured clearance[rear]']],
    [['stripe: nuts with paint'], ['+striped nuts paint']],
    [['turn: crankshaft'], ['+turned crankshaft']],
    [['fill: oil with engine-oil'], ['+filled oil engine-oil']],
    [['fill: oil', 'drain: oil'], ['-filled oil']],
    [['drain: oil'], []],
    [['check: turns'], ['+checked turns']],
    [['record: number'], ['+recorded number']],
    [['witness: signed'], ['+witnessed signed']],
  ],
  [
    'a signature goes with what it stood for, and not when that is only done once more',
    [
      ['install: caps', 'torque: bolts', 'witness: signed', 'loosen: bolts[rear]'],
      ['-tight bolts[rear]', '-witnessed signed'],
    ],
    [['torque: nuts', 'witness: signed', 'loosen: nuts'], ['-tight nuts']],
    [['measure: clearance', 'witness: signed', 'measure: clearance[front]'], ['+measured clearance[front]']],
    [
      ['measure: clearance[rear]', 'witness: signed', 'renew: shells[rear]'],
      ['+fresh shells[rear]', '-measured clearance[rear]', '-witnessed signed'],
    ],
    [['renew: bolts', 'witness: signed', 'loosen: bolts'], both('-fresh bolts')],
  ],
])('%s', (_, ...rows) => {
  it.each(rows.map(([tags, expected]) => [tags.join(' · '), tags, expected] as const))(
    '%s',
    (_title, tags, expected) => {
      expect(changes(tags)).toEqual(expected);
    },
  );
});
