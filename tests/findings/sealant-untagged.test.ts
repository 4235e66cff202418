/**
 * Sealant in the prose beside a tag that names only gaskets: what the apprentice smears on, no tag and no joint asks for.
 * Common practice, no source.
 */
import {expect, it} from 'vitest';
import {check} from '../../src/findings/check.js';
import {book, EXAMPLE_SHOP} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  cylinder: {closes: [base]}
  sealant-ring: {given: true}
joints:
  base: {between: [block, cylinder], seal: [paper-gasket]}
`;
const SHOP = `${EXAMPLE_SHOP}
  goo: {use: sealant}
  cork: {use: gasket, name: Cork with Silicone}
  liquid-gasket-pad: {use: gasket, name: G9}
`;
const found = (says: string, tag: string, engine = ENGINE) =>
  check(
    book({
      shop: SHOP,
      engine,
      procedures: {
        'x.md': `1. Wipe the faces. \`clean: base\`\n2. ${says} \`${tag}\`\n3. Set it on. \`install: cylinder\`\n`,
      },
    }),
  )
    .findings.filter(({name}) => name === 'untagged-action')
    .map(({message}) => message);
const GASKET = 'seal: base with paper-gasket';
const SEALED = (seal: string) => ENGINE.replace('seal: [paper-gasket]', seal);
/** Beside it a rim of sealant, and a sill that nothing seals. */
const RIM = `${ENGINE}  rim: {between: [block, cylinder], seal: [silicone-sealant]}\n  sill: {between: [block, cylinder]}\n`;
const SILICONE = ENGINE.replace('[paper-gasket]', '[silicone-sealant]');

it.each([
  ['Smear grey sealant on the gaskets and lay them on.', GASKET, 'Smear grey sealant on the gaskets'],
  ['Smear grey sealant on the gaskets and lay them on.', 'seal: base', 'Smear grey sealant on the gaskets'],
  ['Run a bead of silicone round the face.', GASKET, 'Run a bead of silicone round the face'],
  ['Smear sealant on it.', `${GASKET}\` \`clean: rim`, 'Smear sealant on it', RIM],
  ['Smear sealant on it.', `${GASKET}\` \`inspect: cylinder`, 'Smear sealant on it', RIM],
  ['Smear sealant on it.', 'seal: base with sealant-ring', 'Smear sealant on it'],
])('%s `%s`', (says, tag, shown, engine = ENGINE) => {
  expect(found(says, tag, engine)).toEqual([
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
  ['Smear sealant on the face.', 'seal: base', SEALED('seal: unknown')],
  ['Smear sealant on the face.', 'seal: base', SEALED('seal: {value: none, because: metal to metal}')],
  ['Smear sealant on the face.', 'seal: base', SEALED('seal: [nonesuch]')],
  ['Smear sealant on the face.', 'seal: sill', RIM],
  ['Smear sealant on the face.', 'seal: nowhere', ENGINE],
  ['Smear sealant on the face.', 'seal: base with nonesuch', ENGINE],
  ['Smear sealant on the face.', `${GASKET}\` \`seal: sill`, RIM],
  ['Smear sealant on the face.', `${GASKET}\` \`seal: rim`, RIM],
  ['Run silicone round the face.', 'seal: base with goo', ENGINE],
  ['Run silicone round the face.', 'install: cylinder', ENGINE],
  ['Run silicone round the face.', 'seal: base with cork', ENGINE],
  ['Run liquid gasket round the face.', 'seal: base with liquid-gasket-pad', ENGINE],
  ['Smear sealant on the gasket.', 'seal: base with paper-gasket, silicone-sealant', ENGINE],
])('%s `%s` is no slip', (says, tag, engine) => {
  expect(found(says, tag, engine)).toEqual([]);
});
