/**
 * Sealant in the prose beside a tag that names only gaskets: what the apprentice smears on, no tag and no joint asks for.
 * Common practice, no source.
 */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  cylinder: {closes: [base]}
joints:
  base: {between: [block, cylinder], seal: [paper-gasket]}
`;
const found = (says: string, tag: string, engine = ENGINE) =>
  check(
    book({
      engine,
      procedures: {
        'x.md': `1. Wipe the faces. \`clean: base\`\n2. ${says} \`${tag}\`\n3. Set it on. \`install: cylinder\`\n`,
      },
    }),
  )
    .findings.filter(({name}) => name === 'untagged-action')
    .map(({message}) => message);
const GASKET = 'seal: base with paper-gasket';
const SILICONE = ENGINE.replace('[paper-gasket]', '[silicone-sealant]');

it.each([
  ['Smear grey sealant on the gaskets and lay them on.', GASKET, 'Smear grey sealant on the gaskets'],
  ['Smear grey sealant on the gaskets and lay them on.', 'seal: base', 'Smear grey sealant on the gaskets'],
  ['Run a bead of silicone round the face.', GASKET, 'Run a bead of silicone round the face'],
])('%s `%s`', (says, tag, shown) => {
  expect(found(says, tag)).toEqual([
    `step 2 says "${shown}", and no tag of it puts on sealant; name it in a \`seal\` tag, or take it out of the prose`,
  ]);
});

it.each([
  ['Lay the gasket on dry, no sealant.', GASKET, ENGINE],
  ['Lay the gasket on without sealant.', GASKET, ENGINE],
  ['Put the gasket on dry, without jointing.', GASKET, ENGINE],
  ['Put no sealant on the gasket.', GASKET, ENGINE],
  ['Lay the sealing washer on.', GASKET, ENGINE],
  ['Smear sealant on the face.', 'seal: base with silicone-sealant', SILICONE],
  ['Smear sealant on the face.', 'seal: base', SILICONE],
  ['Smear sealant on the gasket.', 'seal: base with paper-gasket, silicone-sealant', ENGINE],
])('%s `%s` is no slip', (says, tag, engine) => {
  expect(found(says, tag, engine)).toEqual([]);
});
