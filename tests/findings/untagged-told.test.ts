/** Commands of the prose without a tag: what is told of each, and the fix. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tellsOfText} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  oil: {use: lubricant}
  glue: {use: sealant}
  paper: {use: gasket}
`;

const ENGINE = `
parts:
  block: {given: true}
  camshaft: {}
  wheel: {}
surfaces:
  bores: {on: block, assembly: lubed, lubricants: [oil]}
  pads: {on: block, assembly: clean}
joints:
  face: {between: [block, camshaft], seal: [paper]}
`;

const FRONT = '---\ntitle: T\nrevision: A\ndate: 2026-01-15\nuntagged: [drip pan]\n---\n\n';

describe('of commands without a tag', () => {
  tellsOfText('untagged-', {engine: ENGINE, shop: SHOP}, [
    [
      'one of an item',
      '1. Oil the bores.\n',
      `
untagged-action bores: bores: step 1 says "Oil the bores", and no tag of it says \`lube\`
  fix: Add \`lube: bores\` to step 1: " \`lube: bores\`" after "…e bores."`,
    ],
    [
      'one of two items, which nobody can tell apart',
      '1. Oil the bores and the pads.\n',
      `
untagged-action: step 1 says "Oil the bores and the pads", and no tag of it says \`lube\``,
    ],
    [
      'one of an item that another sentence names',
      '1. Look at the bores. Oil all. `inspect: bores`\n',
      `
untagged-action: step 1 says "Oil all", and no tag of it says \`lube\``,
    ],
    [
      'two of one verb, once',
      '1. Oil the bores. Oil the pads.\n',
      `
untagged-action bores: bores: step 1 says "Oil the bores", and no tag of it says \`lube\`
  fix: Add \`lube: bores\` to step 1: " \`lube: bores\`" after "…he pads."`,
    ],
    [
      'one over a line end',
      '1. Oil\n   the bores.\n',
      `
untagged-action bores: bores: step 1 says "Oil the bores", and no tag of it says \`lube\`
  fix: Add \`lube: bores\` to step 1: " \`lube: bores\`" after "…e bores."`,
    ],
    [
      'one of just 48 characters, and one of more',
      '1. Turn it slowly with the help of the old bar by h.\n2. Turn it slowly with the help of the old bar by hand.\n',
      `
untagged-action: step 1 says "Turn it slowly with the help of the old bar by h", and no tag of it says \`turn\`
untagged-action: step 2 says "Turn it slowly with the help of the old bar by…", and no tag of it says \`turn\``,
    ],
    [
      'those that the tag of a step above says, and the one above that',
      '1. Ready it. `lube: bores`\n   1. In turn. `clean: pads`\n      1. Oil the bores and wipe the pads.\n',
      SILENT,
    ],
    [
      'those of a step with a tag that is not read',
      '1. Oil the bores. `lubee: bores`\n2. Wipe the pads. `clean: pads by`\n3. Turn the wheel.\n',
      `
untagged-action wheel: wheel: step 3 says "Turn the wheel", and no tag of it says \`turn\`
  fix: Add \`turn: wheel\` to step 3: " \`turn: wheel\`" after "…e wheel."`,
    ],
    [
      'those of steps around one with a tag that is not read',
      '1. Turn the wheel.\n2. Oil the bores. `lubee: bores`\n3. Turn the wheel.\n',
      `
untagged-action wheel: wheel: step 1 says "Turn the wheel", and no tag of it says \`turn\`
  fix: Add \`turn: wheel\` to step 1: " \`turn: wheel\`" after "…e wheel."
untagged-action wheel: wheel: step 3 says "Turn the wheel", and no tag of it says \`turn\`
  fix: Add \`turn: wheel\` to step 3: " \`turn: wheel\`" after "…e wheel."`,
    ],
    [
      'those of a step with a mistake of another kind',
      '1. Turn the wheel. `clean: nobody[`\n2. Turn the wheel. `clean: nobody`\n',
      `
untagged-action wheel: wheel: step 2 says "Turn the wheel", and no tag of it says \`turn\`
  fix: Add \`turn: wheel\` to step 2: " \`turn: wheel\`" after "… nobody\`"`,
    ],
    [
      'those of a step with an amount that is not read',
      '1. Turn the wheel. `cure: face for 3 foos`\n',
      `
untagged-action wheel: wheel: step 1 says "Turn the wheel", and no tag of it says \`turn\`
  fix: Add \`turn: wheel\` to step 1: " \`turn: wheel\`" after "… 3 foos\`"`,
    ],
    ['those of a step with a tag that is not closed', '1. Oil the bores. `lube: bores', SILENT],
    [
      'one that the front matter excuses, beside another',
      `${FRONT}1. Turn it over. Wipe the drip pan.\n`,
      `
untagged-action: step 1 says "Turn it over", and no tag of it says \`turn\``,
    ],
    [
      'sealant, where the tag means a gasket',
      '1. Seal the face with sealant. `seal: face`\n',
      `
untagged-action face: face: step 1 says "Seal the face with sealant", and no tag of it puts on sealant; name it in a \`seal\` tag, or take it out of the prose`,
    ],
    [
      'sealant that is wiped off, where the tag means a gasket',
      '1. Wipe the sealant off the pads, then seal the face. `clean: pads` `seal: face`\n',
      SILENT,
    ],
    [
      'sealant of another sentence, where the tag means a gasket',
      '1. Wipe off the sealant. Seal the face. `clean: pads` `seal: face`\n',
      SILENT,
    ],
  ]);
});
