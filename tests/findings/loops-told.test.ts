/** A repeat that leads nowhere: what is told of it. Common practice, no source. */
import {describe} from 'vitest';
import {EXAMPLE_SHOP} from '../help/example.js';
import {SILENT, tellsOfText} from '../help/stories.js';

const ENGINE = `
parts:
  block: {given: true}
  crankshaft: {}
fits:
  end-play: {between: [block, crankshaft], limits: 0.003–0.009 in, using: [feeler-gauges], when: {installed: [crankshaft], tight: []}}
`;

const READ = `1. Lower it in. \`install: crankshaft\`
2. Read the play. \`measure: end-play using feeler-gauges\` \`step: reading\`
`;

describe('a repeat', () => {
  tellsOfText('endless-repeat', {engine: ENGINE, shop: EXAMPLE_SHOP}, [
    [
      'under a reading that is out',
      `${READ}3. Out: \`if: end-play is out\`
   1. Lift it out and in. \`remove: crankshaft\` \`install: crankshaft\`
   2. Again. \`repeat: reading\`
`,
      SILENT,
    ],
    [
      'that is always taken',
      `${READ}3. Again. \`repeat: reading\`\n`,
      `
endless-repeat: \`repeat: reading\` has no way out: put it under a step with \`if:\``,
    ],
    [
      'that goes back to a step below the reading that is out',
      `${READ}3. Out: \`if: end-play is out\`
   1. Turn it. \`turn: crankshaft\` \`step: turning\`
   2. Again. \`repeat: turning\`
`,
      `
endless-repeat: \`repeat: turning\` has no way out: go back to a step before the \`if:\`, so that it is asked again`,
    ],
    [
      'that goes on to a later step',
      `${READ}3. Out: \`if: end-play is out\`
   1. Again. \`repeat: later\`
4. Look. \`step: later\`
`,
      `
endless-repeat: \`repeat: later\` names a step that does not stand before it`,
    ],
  ]);
});

describe('a step that no way leads to', () => {
  const AGAIN = `${READ}3. Out: \`if: end-play is out\`
   1. Lift it out and in. \`remove: crankshaft\` \`install: crankshaft\`
   2. Again. \`repeat: reading\`
`;

  tellsOfText('unreachable-step', {engine: ENGINE, shop: EXAMPLE_SHOP}, [
    [
      'stands behind a repeat',
      `${AGAIN}   3. Wait.\n`,
      `
unreachable-step: step 3c is never reached: the repeat above is always taken`,
    ],
    [
      'stands behind a repeat with another',
      `${AGAIN}   3. Wait.\n   4. Wait.\n`,
      `
unreachable-step: steps 3c to 3d are never reached: the repeat above is always taken`,
    ],
    [
      'stands behind a repeat with another two',
      `${AGAIN}   3. Wait.\n   4. Wait.\n   5. Wait.\n`,
      `
unreachable-step: steps 3c to 3e are never reached: the repeat above is always taken`,
    ],
    [
      'hangs on a part, which is told otherwise',
      `${READ}3. Out: \`if: block is over\`\n   1. Wait.\n`,
      SILENT,
    ],
  ]);
});
