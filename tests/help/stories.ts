/** Tables of small jobs at the bench, each with all that the check tells of it. */
import {expect, it} from 'vitest';
import {told} from './found.js';

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

/** As a `Story`, with an engine of its own. */
export type StoryOf = readonly [title: string, engine: string, tags: string, lines: string];

/** A test for each story, of what one finding tells; others may tell more. */
export function tellsOf(finding: string, stories: readonly StoryOf[], shop: string): void {
  it.each<StoryOf>(stories)('%s', (_, engine, tags, lines) => {
    let isIts = false;
    const its = told(engine, tags.split('; '), shop).filter((line) => {
      if (!line.startsWith(' ')) isIts = line.startsWith(`${finding} `);
      return isIts;
    });
    expect(['', ...its].join('\n').trimEnd()).toBe(lines);
  });
}
