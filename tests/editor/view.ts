/** A small book of texts, and places in it by the words that stand there. */
import {BookView} from '../../src/editor/book-view.js';
import {book} from '../help/example.js';

export const ENGINE = `
parts:
  block: {given: true}
  main-caps: {name: main bearing caps, at: [front, rear], closes: [journals], after: [main-clearance]}
surfaces:
  journals: {at: [front, rear], assembly: lubed, lubricants: [assembly-lube]}
fasteners:
  cap-bolts:
    name: cap bolts
    at: [front, rear]
    holds: [main-caps]
    thread: 1/2-13 UNC
    grade: SAE 8
    torque: {value: 80 lbf·ft, source: house, note: oiled threads}
    threads: [engine-oil]
    lock: safety-wire
fits:
  main-clearance: {between: [journals, main-caps], limits: 0.0015–0.0025 in, using: [feeler-gauges], when: {installed: []}}
`;

export const STEPS = `## Caps

1. Wipe the journals dry. \`clean: journals with solvent\`
2. Read the clearance. \`measure: main-clearance\`
3. Brush lube on. \`lube: journals with assembly-lube\`
4. Set the caps on. \`install: main-caps\`
5. Oil the threads. \`lube: cap-bolts with engine-oil\`
6. Bring the bolts up. \`torque: cap-bolts to 80 lbf·ft\`
`;

export const LAST_STEP = '7. Wire the bolts. `lock: cap-bolts[front, rear] with wire-032`\n';

export const FILE = 'caps.md';

/** The whole book, or the same with other steps. */
export function viewOf(steps: string = STEPS + LAST_STEP, engine: string = ENGINE): BookView {
  const made = book({engine, procedures: {[FILE]: steps}});
  return new BookView({
    ok: true,
    file: 'engine.yaml',
    folder: '/',
    shopFolder: '/',
    cwd: '/',
    book: made,
    jobs: [],
  });
}

/** The offset of the first character of the words, or of one `into` them. */
export function offsetIn(view: BookView, file: string, words: string, into = 0): number {
  const at = view.texts.get(file)?.text.indexOf(words) ?? -1;
  if (at < 0) throw new Error(`${file} does not hold ${words}`);
  return at + into;
}

/** The text of a span of a file. */
export function textOf(
  view: BookView,
  {file, span}: {file: string; span: {start: number; end: number}},
): string {
  return view.texts.get(file)?.text.slice(span.start, span.end) ?? '';
}

export const ADDRESSES = {uri: (file: string) => `book:${file}`};
