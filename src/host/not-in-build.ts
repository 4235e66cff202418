/**
 * Procedures that lie beside an engine.yaml and that no book of the shop names: whoever wrote one and forgot to list it
 * believes that it is followed.
 */
import {basename, join} from 'node:path';
import type {Procedure} from '../procedure/model.js';
import type {Located, Specification} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import type {Problem} from '../text/problem.js';
import type {Source} from '../text/source.js';
import {ENGINE_FILE, isSearched} from './find.js';
import {listingBooks} from './listing-books.js';
import {liesBelow, shownName} from './names.js';
import {LIMITS} from './read.js';
import type {Reader} from './reader.js';

interface Beside {
  /** True path of the folder of engine.yaml. */
  readonly folder: string;
  readonly shopFolder: string;
  readonly cwd: string;
  readonly reader: Reader;
  /** True paths of the procedures that the book itself names. */
  readonly named: ReadonlySet<string>;
}

/** A problem at the `build:` for each, in order of their names; none where the book has no `build:`. */
export async function notInBuild(spec: Specification, beside: Beside): Promise<Problem[]> {
  const last = lastNamed(spec, beside);
  if (last === undefined) return [];
  const {folder, shopFolder, cwd, reader, named} = beside;
  const names = await reader.disk.names(folder);
  // Names in a file that it extends count from the folder of that file.
  const own = last.where.file === ownFile(beside) ? last.where.file : undefined;
  const problems: Problem[] = [];
  for (const name of 'code' in names ? [] : names.filter(isMarkdown)) {
    const path = await reader.disk.truePath(join(folder, name));
    if (path === undefined || named.has(path) || !liesBelow(path, shopFolder)) continue;
    const read = await reader.text(path, shownName(path, cwd), LIMITS.procedure);
    if (!read.ok || !readsAsProcedure(reader.procedure(read.source))) continue;
    if (await isNamedElsewhere(path, beside)) continue;
    problems.push(problemOf(read.source.file, last, own === undefined ? undefined : spec.files.get(own)));
  }
  return problems;
}

/** Not every Markdown file beside a book is a procedure. */
export function readsAsProcedure({front, steps}: Procedure): boolean {
  return front.revision !== '' || steps.some(({tags}) => tags.length > 0);
}

function isMarkdown(name: string): boolean {
  return !name.startsWith('.') && /\.(?:md|markdown)$/i.test(name);
}

/** The last name under `build:` of engine.yaml itself; else the last of all, which stands in a file that it extends. */
function lastNamed({build}: Specification, beside: Beside): Located<string> | undefined {
  const own = ownFile(beside);
  return build.findLast(({where}) => where.file === own) ?? build.at(-1);
}

function ownFile({folder, cwd}: Beside): string {
  return shownName(join(folder, ENGINE_FILE), cwd);
}

/** Specifications are read only where some YAML of the shop holds the file's name at all. */
async function isNamedElsewhere(path: string, {shopFolder, cwd, reader}: Beside): Promise<boolean> {
  const name = basename(path);
  const yaml = await yamlBelow(shopFolder, reader.disk);
  for (const file of yaml) {
    const read = await reader.text(file, shownName(file, cwd), LIMITS.specification);
    if (!read.ok || !read.source.text.includes(name)) continue;
    const engines = yaml.filter((one) => basename(one) === ENGINE_FILE);
    return (await listingBooks(engines, path, {cwd, reader})).length > 0;
  }
  return false;
}

/** Through the reader, so that an answer that is kept hangs on it. */
async function yamlBelow(folder: string, disk: Reader['disk']): Promise<string[]> {
  const names = await disk.names(folder);
  const found: string[] = [];
  for (const name of 'code' in names ? [] : names.filter(isSearched)) {
    const path = join(folder, name);
    // A symbolic link to a folder could lead in a circle.
    const kind = (await disk.truePath(path)) === path ? await disk.kind(path) : 'other';
    if (kind === 'folder') found.push(...(await yamlBelow(path, disk)));
    else if (kind === 'file' && /\.ya?ml$/i.test(name)) found.push(path);
  }
  return found;
}

/** Of a procedure that is checked alone, since no book of the shop names it. */
export function notInAnyBuild({source, front}: Procedure): Problem {
  return {
    name: 'not-in-build',
    where: {file: source.file, span: {start: 0, end: front.span.end}},
    says: 'no `build:` names this procedure, so no check of a book looks at it',
    hint: `list it in ${ENGINE_FILE} where it is followed`,
  };
}

function problemOf(file: string, last: Located<string>, from: Source | undefined): Problem {
  const name = basename(file);
  const fix = from && addedTo(from, name, last);
  return {
    name: 'not-in-build',
    where: last.where,
    says: `${name} is a procedure that no \`build:\` names, so nothing of it counts`,
    hint: 'list it where it is followed, or move it out of this folder',
    related: [{where: {file, span: {start: 0, end: 0}}, says: 'the procedure'}],
    ...(fix && {fix}),
  };
}

function addedTo(from: Source, name: string, {where}: Located<string>): Fix {
  const {start, end} = where.span;
  const lineStart = from.text.lastIndexOf('\n', start - 1) + 1;
  const before = from.text.slice(lineStart, start);
  const written = /^[\w./-]+$/.test(name) ? name : JSON.stringify(name);
  const hasLine = /^\s*- +$/.test(before);
  const restOfLine = /[^\r\n]*/.exec(from.text.slice(end))?.[0].length ?? 0;
  const at = hasLine ? end + restOfLine : end;
  const newLine = from.text.includes('\r\n') ? '\r\n' : '\n';
  const text = hasLine ? `${newLine}${before}${written}` : `, ${written}`;
  return {
    title: `Add ${name} at the end of \`build:\``,
    file: from.file,
    edits: [{span: {start: at, end: at}, text}],
  };
}
