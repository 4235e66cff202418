/**
 * Findings that a change brings and those that it settles, matched by meaning; and which of them the steps brought,
 * rather than a specification that now asks for more: those are weakenings, whatever else the change is.
 */
import type {Book} from '../build/book.js';
import {meaningOf} from '../findings/meaning.js';
import type {Finding} from '../findings/model.js';
import {FINDINGS} from '../findings/registry.js';
import type {Procedure, Tag} from '../procedure/model.js';
import {readProcedure} from '../procedure/read.js';
import {applyEdits, type Edit} from '../text/edit.js';
import {source} from '../text/source.js';
import {demandsOf} from './demands.js';
import type {Sides} from './judge.js';
import {idNow, itemBefore} from './renames.js';
import {judged} from './values.js';

/** What the check finds on one side only. */
export interface FoundChanges {
  readonly brought: readonly Finding[];
  readonly settled: readonly Finding[];
}

/** By meaning and number: of three findings of one meaning where there were two, the third is brought. */
export function findingChanges(sides: Sides): FoundChanges {
  const {before, now} = sides;
  const [old, fresh] = [before.findings.map(oldKey(sides)), now.findings.map(newKey(sides))];
  return {brought: beyond(now.findings, fresh, old), settled: beyond(before.findings, old, fresh)};
}

/**
 * Of the findings that the change brings, those that the old specification would have brought too. `check` judges
 * the new procedures by the old specification; where that is the new one too, nothing need be judged again.
 */
export function fromSteps(
  {brought}: FoundChanges,
  sides: Sides,
  check: (book: Book) => readonly Finding[],
): readonly Finding[] {
  const serious = brought.filter(isOfTheEngine);
  if (serious.length === 0 || sameSpecification(sides)) return serious;
  const procedures = sides.now.book.procedures.map((procedure) => underOldNames(procedure, sides));
  const judged = check({...sides.before.book, procedures, problems: []});
  const there = new Set(judged.map(oldKey(sides)));
  return serious.filter((finding) => there.has(newKey(sides)(finding)) || isWorseValue(finding, sides));
}

/** What is about reading the text, or about a waiver that is no longer needed, harms no engine by itself. */
function isOfTheEngine({name, severity}: Finding): boolean {
  if (severity === 'information' || name === 'waiver-stale') return false;
  const group = FINDINGS.find((kind) => kind.name === name)?.group;
  return group !== 'reading' || UNCLEAR.has(name);
}

/** What the apprentice reads is another value than meant, or none. */
const UNCLEAR = new Set([
  'value-disagrees',
  'prose-disagrees',
  'unit-missing',
  'unit-wrong-kind',
  'tag-form',
  'clause-not-taken',
  'spec-contradiction',
]);

/** A value of the item is another than it was, and what is worked out from it no longer holds good. */
function isWorseValue({name, item}: Finding, {before, now, renames}: Sides): boolean {
  const group = FINDINGS.find((kind) => kind.name === name)?.group;
  if (item === undefined || (group !== 'engineering' && name !== 'spec-contradiction')) return false;
  const old = itemBefore(before.book.spec, renames, item);
  const fresh = now.book.spec.items.get(item);
  if (old === undefined || fresh === undefined) return false;
  const values = new Map(demandsOf(old).map(({aspect, value}) => [aspect, value]));
  return demandsOf(fresh).some(({aspect, value}) => {
    const was = values.get(aspect);
    return (
      was !== undefined &&
      judged(was, value).some(({effect}) => effect === 'changed' || effect === 'weakened')
    );
  });
}

function sameSpecification({before, now}: Sides): boolean {
  const texts = ({book}: Sides['now']) => JSON.stringify([...book.spec.files.values()].map(({text}) => text));
  return texts(before) === texts(now);
}

/** Both sides' findings under the names of the new side. */
function oldKey({before, renames, steps}: Sides): (finding: Finding) => string {
  const byFile = new Map([...steps.procedures].map(([old, fresh]) => [old.source.file, fresh.source.file]));
  const yaml = yamlNames(before.book);
  return (finding) => {
    const {file} = finding.where;
    // A file of the new side alone comes up too, where its steps were judged by the old specification.
    const name = yaml.get(file) ?? byFile.get(file) ?? file;
    return meaningOf(finding, name, finding.item === undefined ? undefined : idNow(renames, finding.item));
  };
}

function newKey({now}: Sides): (finding: Finding) => string {
  const yaml = yamlNames(now.book);
  return (finding) => meaningOf(finding, yaml.get(finding.where.file) ?? finding.where.file);
}

/** The YAML of a book may lie in other folders on the two sides: its part in the book is what counts. */
function yamlNames({spec}: Book): Map<string, string> {
  return new Map([...spec.files.keys()].map((file, index) => [file, `specification ${index}`]));
}

/** Those of the first list that the second does not hold as often. */
function beyond(findings: readonly Finding[], keys: readonly string[], others: readonly string[]): Finding[] {
  const left = new Map<string, number>();
  for (const key of others) left.set(key, (left.get(key) ?? 0) + 1);
  return findings.filter((_, index) => {
    const key = keys[index] ?? '';
    const count = left.get(key) ?? 0;
    left.set(key, count - 1);
    return count <= 0;
  });
}

/** The procedure as if it had been written with the names of the old side. */
function underOldNames(procedure: Procedure, {renames}: Sides): Procedure {
  const back = new Map([...renames.items].map(([old, fresh]) => [fresh, old]));
  if (back.size === 0) return procedure;
  const tags = [...procedure.steps.flatMap((step) => step.tags)].flatMap(namesIn);
  const edits = tags.flatMap(({id, start}): Edit[] => {
    const old = back.get(id);
    return old === undefined ? [] : [{span: {start, end: start + id.length}, text: old}];
  });
  edits.sort((a, b) => a.span.start - b.span.start);
  const {file, text} = procedure.source;
  return readProcedure(source(file, applyEdits(text, edits)));
}

function namesIn({targets, clauses}: Tag): {readonly id: string; readonly start: number}[] {
  const inClauses = clauses.flatMap(({value}) => (value.type === 'ids' ? value.ids : []));
  return [...targets, ...inClauses].map(({id, span}) => ({id, start: span.start}));
}
