/** With what a part goes in, and whether it is turned: all that is told of it. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tellsOf} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  mallet: soft-faced mallet
  drift: brass drift
  hammer: steel hammer
  feelers: {name: feeler gauges, gauge: true}
consumables:
  silicone: {use: sealant}
  solvent: {use: cleaner}
  engine-oil: {use: lubricant}
  wire: {use: lock, lock: safety-wire}
`;

const cam = (fields: string) => `
parts:
  block: {given: true}
  cam: {${fields}}
  plug: {}
barred:
  - {what: [hammer], on: [cam], because: it burrs}
`;

describe('the step that puts a part in', () => {
  tellsOf(
    'install-manner',
    [
      [
        'names no tool',
        cam('using: [mallet]'),
        'install: cam',
        `
install-manner cam: cam must go in with mallet, and step 1 names no tool
  see engine.yaml:7: cam is specified here
  fix: Use mallet: " using mallet" after "…all: cam"`,
      ],
      [
        'names no tool of two',
        cam('using: [mallet, drift]'),
        'install: cam',
        `
install-manner cam: cam must go in with mallet or drift, and step 1 names no tool
  see engine.yaml:7: cam is specified here`,
      ],
      [
        'names another tool',
        cam('using: [mallet]'),
        'install: cam using feelers',
        `
install-manner cam: cam must go in with mallet, and step 1 uses feelers
  see engine.yaml:7: cam is specified here
  fix: Use mallet: "mallet" for "feelers"`,
      ],
      [
        'names two other tools',
        cam('using: [mallet]'),
        'install: cam using feelers, drift',
        `
install-manner cam: cam must go in with mallet, and step 1 uses feelers and drift
  see engine.yaml:7: cam is specified here`,
      ],
      ['names one of two', cam('using: [mallet, drift]'), 'install: cam using drift', SILENT],
      [
        'names the right one beside another',
        cam('using: [mallet]'),
        'install: cam using drift, mallet',
        SILENT,
      ],
      [
        'names a barred one, which is told as that',
        cam('using: [mallet]'),
        'install: cam using hammer',
        SILENT,
      ],
      ['names none of two, one of which nobody knows', cam('using: [mallet, drft]'), 'install: cam', SILENT],
      [
        'does not turn it',
        cam('turning: true'),
        'install: cam',
        `
install-manner cam: cam must be turned as it goes in, and step 1 does not turn it
  see engine.yaml:7: cam is specified here
  fix: Add \`turn: cam\` to step 1: " \`turn: cam\`" after "…ll: cam\`"`,
      ],
      ['turns it', cam('turning: true'), '`install: cam` `turn: cam`', SILENT],
      [
        'turns something else',
        cam('turning: true'),
        '`install: cam` `turn: plug`',
        `
install-manner cam: cam must be turned as it goes in, and step 1 does not turn it
  see engine.yaml:7: cam is specified here
  fix: Add \`turn: cam\` to step 1: " \`turn: cam\`" after "…ll: cam\`"`,
      ],
      ['turns both', cam('turning: true'), '`install: cam` `turn: plug, cam`', SILENT],
      [
        'does not turn it, in two backticks',
        cam('turning: true'),
        '``install: cam`` with care.',
        `
install-manner cam: cam must be turned as it goes in, and step 1 does not turn it
  see engine.yaml:7: cam is specified here
  fix: Add \`turn: cam\` to step 1: " \`turn: cam\`" after "…l: cam\`\`"`,
      ],
      [
        'does not turn it, in two backticks and spaces',
        cam('turning: true'),
        '`` install: cam `` with care.',
        `
install-manner cam: cam must be turned as it goes in, and step 1 does not turn it
  see engine.yaml:7: cam is specified here
  fix: Add \`turn: cam\` to step 1: " \`turn: cam\`" after "…: cam \`\`"`,
      ],
      [
        'does not turn it, and has more spaces before its backticks',
        cam('turning: true'),
        '`` install: cam   ``',
        `
install-manner cam: cam must be turned as it goes in, and step 1 does not turn it
  see engine.yaml:7: cam is specified here
  fix: Add \`turn: cam\` to step 1: " \`turn: cam\`" after "…cam   \`\`"`,
      ],
      [
        'does not turn it, and says more',
        cam('turning: true'),
        '`install: cam` and mind the `lobes`.',
        `
install-manner cam: cam must be turned as it goes in, and step 1 does not turn it
  see engine.yaml:7: cam is specified here
  fix: Add \`turn: cam\` to step 1: " \`turn: cam\`" after "…ll: cam\`"`,
      ],
    ],
    SHOP,
  );
});
