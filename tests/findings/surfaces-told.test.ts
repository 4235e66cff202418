/** Which surfaces count as clean and as lubed when they are closed: all that is told of it. Common practice, no source. */
import {describe} from 'vitest';
import {SILENT, tells} from '../help/stories.js';

const LINERS = `
parts:
  block: {given: true}
  liners: {at: [front, rear]}
  head: {closes: [tops, skirts]}
surfaces:
  tops: {on: liners, assembly: clean}
  skirts: {on: block, assembly: lubed, lubricants: [assembly-lube, engine-oil]}
`;

const HEAD = 'clean: skirts; lube: skirts with engine-oil; install: head';

describe('a face that several liners have in common', () => {
  tells(LINERS, [
    ['is clean where all are new', `renew: liners; install: liners; ${HEAD}`, SILENT],
    [
      'is not where one of them is',
      `renew: liners[front]; install: liners; ${HEAD}`,
      `
clean-first tops: tops are not clean when head closes them, and go together clean
  see engine.yaml:10: tops is specified here`,
    ],
    [
      'is not where they have been in use since',
      `renew: liners; install: liners; ${HEAD}; remove: head; ${HEAD}`,
      `
clean-first tops: tops are not clean when head closes them, and go together clean
  story: step 6 of procedure.md: no longer clean (remove: head)
  see engine.yaml:10: tops is specified here`,
    ],
  ]);
});

describe('a face on what nobody specified', () => {
  tells(LINERS.replace('on: liners', 'on: linrs'), [
    [
      'is clean only once it is cleaned',
      `install: liners; ${HEAD}`,
      `
unknown-item tops: nothing is called linrs; did you mean liners?
  fix: Write liners: "liners" for "linrs"
clean-first tops: tops are not clean when head closes them, and go together clean
  see engine.yaml:10: tops is specified here`,
    ],
  ]);
});

describe('bores in two places', () => {
  tells(
    `
parts:
  block: {given: true}
  cover: {closes: [bores]}
surfaces:
  bores: {on: block, at: [front, rear], assembly: lubed, lubricants: [assembly-lube]}
`,
    [
      [
        'are lubed no longer where one of them was wiped and the other never lubed',
        'clean: bores; lube: bores[front] with assembly-lube; clean: bores; install: cover',
        `
lube-first bores: bores are no longer lubed with assembly-lube when cover closes them
  story: step 2 of procedure.md: lubed (lube: bores)
  story: step 3 of procedure.md: no longer lubed (clean: bores)
  see engine.yaml:9: bores go together lubed with assembly-lube`,
      ],
    ],
  );
});
