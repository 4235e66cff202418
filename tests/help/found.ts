/** What the check says of a small book of one procedure, a tag a step. */
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import type {Finding} from '../../src/findings/model.js';
import type {Edit} from '../../src/text/edit.js';
import {positionAt, type Source, type Where} from '../../src/text/source.js';
import {book} from './example.js';

const TODAY = {today: '2026-06-01'};

/** Every finding as `name: message`, in the order in which they stand. */
export function found(engine: string, tags: readonly string[], shop?: string): string[] {
  return check(bookOf(engine, tags, shop), TODAY).findings.map(({name, message}) => `${name}: ${message}`);
}

/**
 * Every finding with all that it tells, a line each: `name item[place]: message`, then below it its story, the places of
 * the specification to look at, and its fix.
 */
export function told(engine: string, tags: readonly string[], shop?: string): string[] {
  return toldOf(bookOf(engine, tags, shop));
}

/** The same of any book. */
export function toldOf(whole: Book): string[] {
  return check(whole, TODAY).findings.flatMap((finding) => linesOf(whole, finding));
}

function bookOf(engine: string, tags: readonly string[], shop: string | undefined): Book {
  const steps = tags.map((tag, index) => `${index + 1}. Do it. ${tag.startsWith('`') ? tag : `\`${tag}\``}`);
  return book({engine, ...(shop && {shop}), procedures: {'procedure.md': `\n${steps.join('\n')}\n`}});
}

function linesOf(whole: Book, {name, item, place, message, story, related, fix}: Finding): string[] {
  const of = [name, item === undefined ? '' : ` ${item}`, place === undefined ? '' : `[${place}]`].join('');
  return [
    `${of}: ${message}`,
    ...story.map(({says}) => `  story: ${says}`),
    ...related.map(({where, says}) => `  see ${placeOf(whole, where)}: ${says}`),
    ...(fix
      ? [`  fix: ${fix.title}: ${fix.edits.map((edit) => editOf(whole, fix.file, edit)).join(', ')}`]
      : []),
  ];
}

/** `engine.yaml:9`. */
function placeOf(whole: Book, {file, span}: Where): string {
  const from = sourceOf(whole, file);
  return from === undefined ? file : `${file}:${positionAt(from, span.start).line}`;
}

/** `"front" for "frnt"`; where nothing is replaced, `" with oil" after "…e: bores"`. */
function editOf(whole: Book, file: string, {span: {start, end}, text}: Edit): string {
  const from = sourceOf(whole, file)?.text ?? '';
  const old = from.slice(start, end);
  const before = `…${from.slice(Math.max(start - 8, 0), start)}`;
  return old === ''
    ? `${JSON.stringify(text)} after ${JSON.stringify(before)}`
    : `${JSON.stringify(text)} for ${JSON.stringify(old)}`;
}

function sourceOf({spec, procedures}: Book, file: string): Source | undefined {
  return spec.files.get(file) ?? procedures.find(({source}) => source.file === file)?.source;
}

/** What the fix of the first finding of that name writes, without the space around it; the finding must be there. */
export function fixOf(finding: string, engine: string, tags: string, shop?: string): string | undefined {
  const {findings} = check(bookOf(engine, tags.split('; '), shop), TODAY);
  const its = findings.find(({name}) => name === finding);
  if (its === undefined) throw new Error(`${finding} is not told`);
  return its.fix?.edits[0]?.text.trim();
}
