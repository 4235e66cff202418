<<<<<<< HEAD
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

=======
/** Commands of the prose that no tag says: all that is told of them, with the tag that the fix adds. Common practice, no source. */
import {describe} from 'vitest';
import {EXAMPLE_SHOP} from '../help/example.js';
import {SILENT, tellsOfText} from '../help/stories.js';

>>>>>>> fe
const ENGINE = `
parts:
  block: {given: true}
  camshaft: {}
<<<<<<< HEAD
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
=======
  pan: {name: oil tray}
  base: {}
surfaces:
  bores: {on: block, name: camshaft bores, assembly: lubed, lubricants: [assembly-lube]}
  followers: {on: block, assembly: lubed, lubricants: [assembly-lube]}
joints:
  rim: {between: [block, base], seal: [paper-gasket]}
`;

const tells = (stories: Parameters<typeof tellsOfText>[2]) =>
  tellsOfText('untagged-action', {engine: ENGINE, shop: EXAMPLE_SHOP}, stories);

describe('a command without a tag', () => {
  tells([
    [
      'is told with the item that it names, and gets its tag',
      '\n1. Oil the camshaft bores. `turn: camshaft`\n',
      `
untagged-action bores: bores: step 1 says "Oil the camshaft bores", and no tag of it says \`lube\`
  fix: Add \`lube: bores\` to step 1: " \`lube: bores\`" after "…amshaft\`"`,
    ],
    [
      'names no item where it could be either of two',
      '\n1. Oil the camshaft bores and followers.\n',
      `
untagged-action: step 1 says "Oil the camshaft bores and followers", and no tag of it says \`lube\``,
    ],
    [
      'names no item that only another sentence names',
      '\n1. Oil it all round. The followers come later.\n',
      `
untagged-action: step 1 says "Oil it all round", and no tag of it says \`lube\``,
    ],
    [
      'is told once for a verb',
      '\n1. Oil the followers. Grease the bore. Wipe the bench light.\n',
      `
untagged-action followers: followers: step 1 says "Oil the followers", and no tag of it says \`lube\`
  fix: Add \`lube: followers\` to step 1: " \`lube: followers\`" after "…h light."`,
    ],
    [
      'is shown on one line',
      '\n1. Oil it\n   all round.\n',
      `
untagged-action: step 1 says "Oil it all round", and no tag of it says \`lube\``,
    ],
    [
      'is shown whole up to 48 letters',
      '\n1. Oil it all round with a brush the lads have left.\n2. Oil it all round with a brush the lads had left us.\n',
      `
untagged-action: step 1 says "Oil it all round with a brush the lads have left", and no tag of it says \`lube\`
untagged-action: step 2 says "Oil it all round with a brush the lads had left…", and no tag of it says \`lube\``,
    ],
    [
      'is shown without a space before what is cut off',
      '\n1. Oil it all round with a brush and a rag with a long stick.\n',
      `
untagged-action: step 1 says "Oil it all round with a brush and a rag with a…", and no tag of it says \`lube\``,
    ],
  ]);
});

describe('a tag', () => {
  tells([
    [
      'of a step speaks for those below it',
      '\n1. Bores. `lube: bores`\n   1. Left.\n      1. Oil the bores.\n',
      SILENT,
    ],
    [
      'below a step speaks for it',
      '\n1. Oil the bores.\n   1. Left.\n      1. Bores. `lube: bores`\n',
      SILENT,
    ],
    [
      'of a step speaks for none beside it',
      '\n1. Bores.\n   1. Left. `lube: bores`\n   2. Oil the bores.\n',
      `
untagged-action bores: bores: step 1b says "Oil the bores", and no tag of it says \`lube\`
  fix: Add \`lube: bores\` to step 1b: " \`lube: bores\`" after "…e bores."`,
    ],
    ['that is broken may be the one', '\n1. Oil the bores. `lube:`\n', SILENT],
    ['that never closes may be the one', '\n1. Oil the bores. `lube: bores\n', SILENT],
    ['whose verb is misspelt may be the one', '\n1. Oil the bores. `loob: bores`\n', SILENT],
    [
      'that is broken in the steps around it is not the one',
      '\n1. Look. `lube:`\n2. Oil it.\n3. Look. `lube:`\n',
      `
untagged-action: step 2 says "Oil it", and no tag of it says \`lube\``,
    ],
    [
      'with another mistake in it is not the one',
      '\n1. Oil it. `measure: play within 3`\n',
      `
untagged-action: step 1 says "Oil it", and no tag of it says \`lube\``,
    ],
  ]);
});

describe('sealant', () => {
  tells([
    [
      'is none that is wiped off',
      '\n1. Wipe off the silicone, and lay the gasket on. `clean: rim` `seal: rim with paper-gasket`\n',
      SILENT,
    ],
    [
      'is none that another sentence speaks of',
      '\n1. Lay the gasket on. The silicone stays in its tube. `seal: rim with paper-gasket`\n',
>>>>>>> fe
      SILENT,
    ],
  ]);
});
<<<<<<< HEAD
=======

const front = (words: string) => `---
title: T
revision: A
date: 2026-03-01
untagged: [${words}]
---

`;

describe('what the front matter excuses', () => {
  tells([
    ['is a command of it', `${front('drip cup')}1. Hang the drip cup up.\n`, SILENT],
    [
      'is none of which another sentence speaks',
      `${front('drip cup')}1. Clean the wheel. The drip cup hangs below.\n`,
      `
untagged-action: untagged: drip cup excuses no command of this procedure; take it out
untagged-action: step 1 says "Clean the wheel", and no tag of it says \`clean\``,
    ],
  ]);
});
>>>>>>> fe
