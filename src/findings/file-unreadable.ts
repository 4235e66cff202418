/** A file of the book that is not there, or cannot be read: reported by the host, so it has no example in text. */
import type {FindingKind} from './model.js';

export const fileUnreadable: FindingKind = {
  name: 'file-unreadable',
  group: 'reading',
  severity: 'error',
  summary: 'A file that the book names is missing, too large, no text, or outside the folder of shop.yaml',
  why: 'A book that is checked without one of its procedures is checked as another engine.',
  source: 'common practice, no source',
  fromReading: true,
};
