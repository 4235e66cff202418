/** Tables of small jobs at the bench, each with all that the check tells of it. */
import {expect, it} from 'vitest';
import {book} from './example.js';
import {told, toldOf} from './found.js';
import {whole} from './whole.js';

/** What is particular to the job, its tags (a step each, apart by `; `), and every line that is told, first an empty one. */
export type Story = readonly [title: string, tags: string, lines: string];

/** Nothing is wrong. */
export const SILENT = '';

/** A test for each story of an engine. */
export function tells(engine: string, stories: readonly Story[], shop?: string): void {
  it.each<Story>(stories)('%s', (_, tags, lines) => {
    const all = told(engine, tags.split('; '), shop);
    expect(['', ...all].join('\n').trimEnd()).toBe(lines);
  });
}

/** The same with the place of each finding, and the lines that its mend writes. */
export function tellsWhole(engine: string, stories: readonly Story[], shop?: string): void {
  it.each<Story>(stories)('%s', (_, tags, lines) => {
    expect(['', ...whole(engine, tags.split('; '), shop)].join('\n').trimEnd()).toBe(lines);
  });
}

/** As a `Story`, with an engine of its own. */
export type StoryOf = readonly [title: string, engine: string, tags: string, lines: string];

/** A test for each story, of what one finding tells; others may tell more. */
export function tellsOf(finding: string, stories: readonly StoryOf[], shop: string): void {
  it.each<StoryOf>(stories)('%s', (_, engine, tags, lines) => {
    expect(textOf(`${finding} `, told(engine, tags.split('; '), shop))).toBe(lines);
  });
}

/** A story of a procedure as it is written. */
export type TextStory = readonly [title: string, procedure: string, lines: string];

/** A test for each procedure, of what the findings tell whose names begin so. */
export function tellsOfText(
  findings: string,
  texts: {readonly engine: string; readonly shop: string},
  stories: readonly TextStory[],
): void {
  it.each<TextStory>(stories)('%s', (_, procedure, lines) => {
    const whole = book({...texts, procedures: {'procedure.md': procedure}});
    expect(textOf(findings, toldOf(whole))).toBe(lines);
  });
}

/** The lines of the findings that begin so. */
function textOf(begin: string, all: readonly string[]): string {
  let isIts = false;
  const its = all.filter((line) => {
    if (!line.startsWith(' ')) isIts = line.startsWith(begin);
    return isIts;
  });
  return ['', ...its].join('\n').trimEnd();
}
