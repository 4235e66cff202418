/** The sheet as Markdown, read back by a Markdown parser. */
import type {Nodes} from 'mdast';
import {toString as textOf} from 'mdast-util-to-string';
import remarkParse from 'remark-parse';
import {unified} from 'unified';
import {describe, expect, test} from 'vitest';
import type {Book} from '../../src/build/book.js';
import {sheetMarkdown} from '../../src/sheet/markdown.js';
import {book} from '../help/example.js';
import {firstSheet} from '../help/sheet.js';
import {hardBook, hostileBook} from './hard.js';
import {trialBook} from './trial.js';

function markdownOf(book: Book): string {
  return sheetMarkdown(firstSheet(book));
}

function all(node: Nodes): Nodes[] {
  return [node, ...('children' in node ? node.children.flatMap(all) : [])];
}

const read = (text: string) => all(unified().use(remarkParse).parse(text));

describe.each([
  ['trial', trialBook],
  ['hard', hardBook],
  ['hostile', hostileBook],
] as const)('the %s sheet', (_, one) => {
  const nodes = read(markdownOf(one));

  test('has every step’s number in bold, in order', () => {
    const bold = nodes.flatMap((node) => (node.type === 'strong' ? textOf(node) : []));
    const numbers = one.procedures[0]?.steps.map(({number}) => number) ?? [];
    expect(bold.filter((text) => /^\d+[a-z]*$/.test(text))).toEqual(numbers);
  });

  test('skips no level of heading', () => {
    const depths = nodes.flatMap((node) => (node.type === 'heading' ? node.depth : []));
    expect(depths[0]).toBe(1);
    expect(depths.filter((depth, at) => depth > (depths[at - 1] ?? 0) + 1)).toEqual([]);
  });

  test('holds neither HTML nor a picture nor a link that could do anything', () => {
    expect(
      nodes.filter(({type}) => type === 'html' || type === 'image' || type === 'imageReference'),
    ).toEqual([]);
    const links = nodes.flatMap((node) => (node.type === 'link' ? node.url : []));
    expect(links.filter((url) => !url.startsWith('https://'))).toEqual([]);
  });
});

test('values, limits and blanks stand where the step is', () => {
  const text = markdownOf(trialBook);
  expect(text).toContain('Torque main cap bolts · To 85 lbf·ft (115 N·m) (oiled threads)');
  expect(text).toContain('Limits 0.0015–0.0035 in');
  expect(text).toContain('- rear: ……… in, Round 2 ………, Round 3 ………\n');
  expect(text).toContain('> **DANGER:** fire, vapour: Brake cleaner');
  expect(text).toContain('Only if main clearance is out of limits:');
});

test('the lists say of each thing what the printed sheet says', () => {
  const text = markdownOf(trialBook);
  expect(text).toContain('- ☐ 1 × crankshaft, Hazards: heavy lift (Steps: 7)\n');
  expect(text).toContain(
    '- ☐ 1/2 in torque wrench, 20–150 lbf·ft (27.2–203.3 N·m), serial BW-14, Calibration due 2027-03-01 (Steps: 9',
  );
  expect(text).toContain('- ☐ liquid gasket, Hazards: vapour, Cure 24 h (Steps: 18)\n');
});

test('what the author says first is read before anything is laid out', () => {
  const text = markdownOf(trialBook);
  expect(text.indexOf('Nobody works alone')).toBeGreaterThan(0);
  expect(text.indexOf('Nobody works alone')).toBeLessThan(text.indexOf('## Before you start'));
});

test('a hold point says what the second person looks at', () => {
  expect(markdownOf(trialBook)).toContain(
    '- Look at: ☐ main cap bolts: 85 lbf·ft (115 N·m), safety wire  ' +
      '☐ main clearance: 0.0015–0.0035 in (0.039–0.088 mm)  ' +
      '☐ turns freely: the crankshaft turns by hand through two whole turns without a tight spot\n' +
      '- Hold point: bottom end closed (shop lead) ………\n',
  );
});

test('a picture that nobody has put into words is told by its file', () => {
  const engine = 'parts: {pump: {}}';
  const procedure =
    '---\ntitle: x\nrevision: A\ndate: 2026-01-15\n---\n\n![](pump.png)\n\n1. Fit it. `install: pump`\n';
  expect(markdownOf(book({engine, procedures: {'p.md': procedure}}))).toContain('Picture: pump.png\n');
});
