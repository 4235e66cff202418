/** Cautions that come too late, and where they are moved. Where a caution stands: MIL-DTL-87268D, 3.2.2.4 a. */
import {describe} from 'vitest';
import {SILENT, tellsOfText} from '../help/stories.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  solvent: {use: cleaner, hazards: [vapour, burn]}
  glue: {use: sealant, hazards: [burn]}
`;

const ENGINE = `
parts:
  block: {given: true}
  head: {hazards: [heavy, sharp]}
  wheel: {hazards: [heavy]}
surfaces:
  faces: {on: block, assembly: clean}
  pads: {on: block, assembly: clean}
checks:
  spin: {expect: freely, hazards: [heavy]}
`;

const caution = (words: string) => `> **Warning:** Mind it. \`hazard: ${words}\``;

describe('of its cautions a procedure has', () => {
  tellsOfText('caution-', {engine: ENGINE, shop: SHOP}, [
    [
      'a caution too late for one of two hazards, and none for the other',
      `1. Lift. \`install: head\`

${caution('sharp')}

2. Look.
`,
      `
caution-missing head: head brings the hazard heavy at step 1, and no caution before it warns of that
  see engine.yaml:7: heavy is a hazard of head
caution-late head: head brings the hazard sharp at step 1, and the caution stands only after it
  see procedure.md:7: the caution is needed before this
  see engine.yaml:7: sharp is a hazard of head
  fix: Move the caution above step 1: "> **Warning:** Mind it. \`hazard: sharp\`\\n\\n" after "…01\\n---\\n\\n", "" for "> **Warning:** Mind it. \`hazard: sharp\`\\n\\n"`,
    ],
    [
      'the first in the text of two that are too late',
      `1. Wipe. \`clean: faces with solvent\`

Some words.

${caution('burn, vapour')}

More words.

${caution('vapour, burn')}

1. Look.
`,
      `
caution-late solvent: solvent brings the hazards vapour and burn at step 1, and the caution stands only after it
  see procedure.md:7: the caution is needed before this
  see shop.yaml:6: vapour is a hazard of solvent
  see shop.yaml:6: burn is a hazard of solvent
  fix: Move the caution above step 1: "> **Warning:** Mind it. \`hazard: burn, vapour\`\\n\\n" after "…01\\n---\\n\\n", "" for "> **Warning:** Mind it. \`hazard: burn, vapour\`\\n\\n"`,
    ],
    [
      'a caution too late, and three empty lines behind it',
      `1. Lift. \`install: head\`

${caution('heavy, sharp')}
  
   

2. Look.
`,
      `
caution-late head: head brings the hazards heavy and sharp at step 1, and the caution stands only after it
  see procedure.md:7: the caution is needed before this
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head
  fix: Move the caution above step 1: "> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n\\n" after "…01\\n---\\n\\n", "" for "> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n  \\n"`,
    ],
    [
      'a caution too late',
      `1. Look.
2. Lift. \`install: head\`

${caution('heavy, sharp')}

3. Look.
`,
      `
caution-late head: head brings the hazards heavy and sharp at step 2, and the caution stands only after it
  see procedure.md:8: the caution is needed before this
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head
  fix: Move the caution above step 2: "\\n> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n\\n" after "…. Look.\\n", "" for "> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n\\n"`,
    ],
    [
      'two cautions too late',
      `1. Lift. \`install: head\`

${caution('sharp')}

2. Look.

${caution('heavy')}

3. Look.
`,
      `
caution-late head: head brings the hazards heavy and sharp at step 1, and the caution stands only after it
  see procedure.md:7: the caution is needed before this
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head
  fix: Move the caution above step 1: "> **Warning:** Mind it. \`hazard: heavy\`\\n\\n" after "…01\\n---\\n\\n", "" for "> **Warning:** Mind it. \`hazard: heavy\`\\n\\n"`,
    ],
    [
      'one in time for one hazard, one too late for both',
      `${caution('heavy')}

1. Lift. \`install: head\`

${caution('heavy, sharp')}

2. Look.
`,
      `
caution-late head: head brings the hazard sharp at step 1, and the caution stands only after it
  see procedure.md:9: the caution is needed before this
  see engine.yaml:7: sharp is a hazard of head
  fix: Move the caution above step 1: "> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n\\n" after "…heavy\`\\n\\n", "" for "> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n\\n"`,
    ],
    [
      'one in time, and one late',
      `${caution('heavy, sharp')}

1. Lift. \`install: head\`

${caution('heavy, sharp')}

2. Look.
`,
      SILENT,
    ],
    [
      'a caution too late, without an empty line before the step',
      `Some words.
1. Lift. \`install: head\`

${caution('heavy, sharp')}

2. Look.
`,
      `
caution-late head: head brings the hazards heavy and sharp at step 1, and the caution stands only after it
  see procedure.md:8: the caution is needed before this
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head
  fix: Move the caution above step 1: "\\n> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n\\n" after "… words.\\n", "" for "> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n\\n"`,
    ],
    [
      'a caution too late at the end of the text',
      `1. Lift. \`install: head\`

${caution('heavy, sharp')}`,
      `
caution-late head: head brings the hazards heavy and sharp at step 1, and the caution stands only after it
  see procedure.md:7: the caution is needed before this
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head
  fix: Move the caution above step 1: "> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n\\n" after "…01\\n---\\n\\n", "" for "> **Warning:** Mind it. \`hazard: heavy, sharp\`"`,
    ],
    [
      'a caution too late with no empty line behind it',
      `1. Lift. \`install: head\`

${caution('heavy, sharp')}
1. Look.
`,
      `
caution-late head: head brings the hazards heavy and sharp at step 1, and the caution stands only after it
  see procedure.md:7: the caution is needed before this
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head
  fix: Move the caution above step 1: "> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n\\n" after "…01\\n---\\n\\n", "" for "> **Warning:** Mind it. \`hazard: heavy, sharp\`\\n"`,
    ],
    [
      'a caution too late, below a step, which is left to a person',
      `1. Lift. \`install: head\`
2. Look.

   ${caution('heavy, sharp')}

3. Look.
`,
      `
caution-late head: head brings the hazards heavy and sharp at step 1, and the caution stands only after it
  see procedure.md:7: the caution is needed before this
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head`,
    ],
  ]);
});
