/** A procedure that no `build:` names: reported by the host, so it has no example in text. */
import type {FindingKind} from './model.js';

export const notInBuild: FindingKind = {
  name: 'not-in-build',
  group: 'reading',
  severity: 'warning',
  summary: "A procedure lies in the book's folder, and no `build:` of the shop names it",
  why: 'What no `build:` names is neither checked nor printed: whoever wrote it believes that it is followed, and the engine goes together without it. A draft that is not ready, or an old revision, is better kept in a folder of its own. A Markdown file without a revision in its front matter and without tags (a README) is no procedure, and is never reported.',
  source: 'common practice, no source',
  fromReading: true,
};
