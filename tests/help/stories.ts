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
