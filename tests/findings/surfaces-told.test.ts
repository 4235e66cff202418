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
