/** A picture of a step that is not there, or cannot be shown: reported by the host, so it has no example in text. */
import type {FindingKind} from './model.js';

export const pictureMissing: FindingKind = {
  name: 'picture-missing',
  group: 'reading',
  severity: 'warning',
  summary:
    'A picture that a procedure shows is missing, no picture, too large, or outside the folder of shop.yaml',
  why: 'The sheet says that a picture belongs there and cannot show it: whoever follows it looks for what the author saw and finds a frame. `![the pump](pictures/pump.jpg)` takes a PNG, JPEG, GIF or WebP file of up to 8 MiB below the folder of shop.yaml, by its path from the procedure; nothing is fetched from elsewhere.',
  source: 'common practice, no source',
  fromReading: true,
};
