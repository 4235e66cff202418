/** What must hold of anything that was read, whatever the text: every span slices to what it claims. */
import {expect} from 'vitest';
import type {Procedure, Step, Tag} from '../../src/procedure/model.js';
import {editFault} from '../../src/text/edit.js';
import type {Problem} from '../../src/text/problem.js';
import {type Source, type Span, slice} from '../../src/text/source.js';

/** Fails with the text and the span where something does not hold. */
export function expectSound(procedure: Procedure): void {
  const {source, steps, sections, problems} = procedure;
  for (const problem of problems) expectProblem(source, problem);
  steps.forEach((step, index) => {
    expect(step.index).toBe(index);
    expectStep(source, step);
  });
  sections.forEach((section, index) => {
    within(source, section.span);
    expect(section.span.end).toBe(sections[index + 1]?.span.start ?? source.text.length);
  });
  const tops = sections.flatMap(({content}) => content.flatMap((b) => (b.type === 'step' ? [b.step] : [])));
  expect(flat(tops)).toEqual(steps);
}

export function expectProblem(source: Source, problem: Problem): void {
  within(source, problem.where.span);
  expect(problem.where.file).toBe(source.file);
  expect(problem.says).toMatch(/^\S.*[^.\s]$/s);
  if (problem.fix) expect(editFault(problem.fix.edits, source.text.length)).toBeUndefined();
}

export function expectTag(source: Source, tag: Tag): void {
  expect(slice(source, tag.span)).toBe(tag.raw);
  expect(slice(source, tag.verbSpan).toLowerCase()).toBe(tag.verb);
  inside(tag.verbSpan, tag.span);
  for (const target of tag.targets) {
    expect(slice(source, target.span)).toBe(target.id);
    inside(target.span, tag.span);
    for (const place of target.places) {
      expect(unbroken(slice(source, place.span))).toBe(place.name);
      inside(place.span, tag.span);
    }
  }
  for (const {word, span, valueSpan, value} of tag.clauses) {
    expect(slice(source, span).startsWith(word)).toBe(true);
    inside(span, tag.span);
    inside(valueSpan, span);
    if (value.type === 'text') expect(unbroken(slice(source, valueSpan))).toBe(value.text);
    if (value.type === 'ids') for (const one of value.ids) expect(slice(source, one.span)).toBe(one.id);
  }
}

function expectStep(source: Source, step: Step): void {
  within(source, step.span);
  inside(step.headSpan, step.span);
  expect(slice(source, step.headSpan)).not.toMatch(/[\r\n]/);
  expect(step.text).toBe(step.text.replace(/[ \t\r\n]+/g, ' ').trim());
  for (const tag of step.tags) {
    expectTag(source, tag);
    inside(tag.span, step.span);
    expect(tag.verb).not.toBe('hazard');
  }
  for (const {span, tags, hazards} of step.cautions) {
    within(source, span);
    for (const tag of tags) expectTag(source, tag);
    for (const {word, span} of hazards) expect(slice(source, span)).toBe(word);
  }
  for (const {span} of step.pictures) inside(span, step.span);
  for (const sub of step.steps) inside(sub.span, step.span);
}

function flat(steps: readonly Step[]): Step[] {
  return steps.flatMap((step) => [step, ...flat(step.steps)]);
}

function unbroken(text: string): string {
  return text
    .replace(/(?:\r\n|\r|\n)[ \t>]*/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

function within(source: Source, {start, end}: Span): void {
  inside({start, end}, {start: 0, end: source.text.length});
}

function inside(inner: Span, outer: Span): void {
  expect(inner.start).toBeGreaterThanOrEqual(outer.start);
  expect(inner.end).toBeGreaterThanOrEqual(inner.start);
  expect(inner.end).toBeLessThanOrEqual(outer.end);
}
