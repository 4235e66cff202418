/** One YAML file of a book, read and held against its shape. */
import type * as z from 'zod';
import type {Problem} from '../text/problem.js';
import type {Source} from '../text/source.js';
import {joinedAtCommas} from './commas.js';
import {formProblems} from './form.js';
import {entryOf, type MapNode, textOf} from './tree.js';
import {readYaml} from './yaml.js';

export interface BookFile {
  readonly from: Source;
  /** Empty where nothing could be read. */
  readonly tree: MapNode;
  /** The source that the file gives to values that name none. */
  readonly fileSource?: string;
  readonly problems: readonly Problem[];
  /** It is not YAML, or a whole section of it has a misspelt name, so that nothing follows from what it lacks. */
  readonly broken: boolean;
}

/**
 * Reads a YAML text and holds it against its shape. Never throws; what is not understood is left out of the tree and is
 * among the problems. Of a broken file only the causes are told, for all else would be their echo.
 */
export function bookFile(from: Source, shape: z.ZodType): BookFile {
  const {tree: read, problems: faults, broken} = readYaml(from);
  if (broken || read?.type !== 'map') {
    const empty: MapNode = {type: 'map', where: {file: from.file, span: {start: 0, end: 0}}, entries: []};
    // A half-read map still says which engine it is and what it extends, so that the book is found and named.
    const kept = read?.type === 'map' ? read : empty;
    return {from, tree: kept, problems: broken ? faults : [...faults, noMap(from, shape)], broken: true};
  }
  const {tree, problems: torn} = joinedAtCommas(from, read, shape);
  const problems = [...faults, ...torn];
  const fileSource = textOf(entryOf(tree, 'source')?.value);
  const misfits = formProblems(from, tree, shape);
  const lost = misfits.filter((misfit) => losesSection(misfit, tree, shape));
  if (lost.length > 0) return {from, tree, problems: lost, broken: true};
  const sourced = fileSource === undefined ? {} : {fileSource};
  return {from, tree, ...sourced, problems: [...problems, ...misfits], broken: false};
}

/** A key at the top that is likely a slip for one of the file's sections. */
function losesSection({where, hint = ''}: Problem, tree: MapNode, shape: z.ZodType): boolean {
  const key = tree.entries.find(({keyWhere}) => keyWhere.span.start === where.span.start)?.key;
  return key !== undefined && hint.startsWith('did you mean') && !(key in shapeKeys(shape));
}

function noMap(from: Source, shape: z.ZodType): Problem {
  const start = from.text.search(/\S/);
  const end = start < 0 ? 0 : from.text.trimEnd().length;
  const line = from.text.slice(Math.max(0, start), end).search(/[\r\n]/);
  const span = {start: Math.max(0, start), end: line < 0 ? end : start + line};
  return {
    name: 'spec-form',
    where: {file: from.file, span},
    says: from.text.trim() === '' ? 'the file is empty' : 'the file does not start with a key',
    hint: `begin with ${Object.keys(shapeKeys(shape))[0] ?? 'a key'}:`,
  };
}

function shapeKeys(shape: z.ZodType): object {
  return 'shape' in shape && typeof shape.shape === 'object' && shape.shape !== null ? shape.shape : {};
}
