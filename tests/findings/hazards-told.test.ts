/** Cautions that are missing, by section, material and part. Where a caution stands: MIL-DTL-87268D, 3.2.2.4 a. */
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
      'no caution for two hazards of a material',
      `1. Wipe. \`clean: faces with solvent\`
2. Wipe. \`clean: pads with solvent\`
`,
      `
caution-missing solvent: solvent brings the hazards vapour and burn at step 1, and no caution before it warns of them
  see shop.yaml:6: vapour is a hazard of solvent
  see shop.yaml:6: burn is a hazard of solvent`,
    ],
    [
      'a caution for one of two hazards',
      `${caution('burn')}

1. Wipe. \`clean: faces with solvent\`
`,
      `
caution-missing solvent: solvent brings the hazard vapour at step 1, and no caution before it warns of that
  see shop.yaml:6: vapour is a hazard of solvent`,
    ],
    [
      'a caution for both',
      `${caution('burn, vapour')}

1. Wipe. \`clean: faces with solvent\`
`,
      SILENT,
    ],
    [
      'the same hazard of another material is known by then',
      `${caution('vapour')}

1. Wipe. \`clean: faces with solvent\`
2. Glue. \`clean: pads with glue\`
`,
      `
caution-missing solvent: solvent brings the hazard burn at step 1, and no caution before it warns of that
  see shop.yaml:6: burn is a hazard of solvent`,
    ],
    [
      'a material in a section of its own is known by then',
      `# One

1. Wipe. \`clean: faces with solvent\`

# Two

1. Wipe. \`clean: pads with solvent\`
`,
      `
caution-missing solvent: solvent brings the hazards vapour and burn at step 1, and no caution before it warns of them
  see shop.yaml:6: vapour is a hazard of solvent
  see shop.yaml:6: burn is a hazard of solvent`,
    ],
    [
      'another material with a hazard that was met is known by then',
      `# One

1. Wipe. \`clean: faces with solvent\`

# Two

1. Glue. \`clean: pads with glue\`
`,
      `
caution-missing solvent: solvent brings the hazards vapour and burn at step 1, and no caution before it warns of them
  see shop.yaml:6: vapour is a hazard of solvent
  see shop.yaml:6: burn is a hazard of solvent`,
    ],
    [
      'a part is known by then in its own section',
      `# One

1. Lift. \`install: head\`
2. Lift. \`install: wheel\`
`,
      `
caution-missing head: head brings the hazards heavy and sharp at step 1, and no caution before it warns of them
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head`,
    ],
    [
      'another part in another section is not',
      `# One

1. Lift. \`install: head\`

# Two

1. Lift. \`install: wheel\`
`,
      `
caution-missing head: head brings the hazards heavy and sharp at step 1, and no caution before it warns of them
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head
caution-missing wheel: wheel brings the hazard heavy at step 2, and no caution before it warns of that
  see engine.yaml:8: heavy is a hazard of wheel`,
    ],
    [
      'the same part in another section is',
      `# One

1. Lift. \`install: head\`

# Two

1. Lift. \`remove: head\`
`,
      `
caution-missing head: head brings the hazards heavy and sharp at step 1, and no caution before it warns of them
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head`,
    ],
    [
      'a third part in the second section is',
      `# One

1. Lift. \`install: head\`

# Two

1. Lift. \`install: wheel\`
2. Spin. \`check: spin\`
`,
      `
caution-missing head: head brings the hazards heavy and sharp at step 1, and no caution before it warns of them
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head
caution-missing wheel: wheel brings the hazard heavy at step 2, and no caution before it warns of that
  see engine.yaml:8: heavy is a hazard of wheel`,
    ],
    [
      'a caution of another section, for a part',
      `# One

${caution('heavy, sharp')}

1. Lift. \`install: head\`

# Two

1. Look.
2. Lift. \`install: wheel\`
`,
      `
caution-missing wheel: wheel brings the hazard heavy at step 3, and no caution before it warns of that
  see engine.yaml:8: heavy is a hazard of wheel
  see procedure.md:9: this caution stands in another section, and speaks of something else`,
    ],
    [
      'a caution of another section, for a material',
      `# One

${caution('burn, vapour')}

1. Look.

# Two

1. Look.
2. Wipe. \`clean: faces with solvent\`
`,
      SILENT,
    ],
    [
      'a caution at the end of the section before',
      `# One

1. Look.

${caution('heavy, sharp')}

# Two

1. Lift. \`install: head\`
`,
      SILENT,
    ],
    [
      'a caution of the section around it',
      `# One

${caution('heavy, sharp')}

## Within

1. Lift. \`install: head\`

## Another

1. Lift. \`install: wheel\`
`,
      SILENT,
    ],
    [
      'a caution of a section below the one before',
      `# One

## Within

${caution('heavy')}

1. Look.

## Another

1. Look.
2. Lift. \`install: wheel\`
`,
      `
caution-missing wheel: wheel brings the hazard heavy at step 3, and no caution before it warns of that
  see engine.yaml:8: heavy is a hazard of wheel
  see procedure.md:11: this caution stands in another section, and speaks of something else`,
    ],
    [
      'a caution in the step itself',
      `1. Lift it.

   ${caution('heavy, sharp')}

   Slowly. \`install: head\`
`,
      `
caution-late head: head brings the hazards heavy and sharp at step 1, and the caution stands only after it
  see procedure.md:11: the caution is needed before this
  see engine.yaml:7: heavy is a hazard of head
  see engine.yaml:7: sharp is a hazard of head`,
    ],
    [
      'a caution between paragraphs',
      `${caution('heavy, sharp')}

Some words.

1. Lift. \`install: head\`
`,
      SILENT,
    ],
    [
      'a slip in a caution',
      `${caution('hevy')}

1. Lift. \`install: wheel\`
`,
      `
caution-missing wheel: wheel brings the hazard heavy at step 1, and no caution before it warns of that; did you mean heavy where a caution says hevy?
  see engine.yaml:8: heavy is a hazard of wheel
  fix: Write heavy in the caution: "heavy" for "hevy"`,
    ],
    [
      'a word that is no slip, for the specification has it',
      `${caution('sharp')}

1. Lift. \`install: wheel\`
`,
      `
caution-missing wheel: wheel brings the hazard heavy at step 1, and no caution before it warns of that
  see engine.yaml:8: heavy is a hazard of wheel`,
    ],
    [
      'a slip of which nothing is near',
      `${caution('grit')}

1. Lift. \`install: wheel\`
`,
      `
caution-missing wheel: wheel brings the hazard heavy at step 1, and no caution before it warns of that
  see engine.yaml:8: heavy is a hazard of wheel`,
    ],
  ]);
});
