/** What the check says of a small book of one procedure, a tag a step. */
import type {Book} from '../../src/build/book.js';
import {check} from '../../src/findings/check.js';
import type {Finding} from '../../src/findings/model.js';
import {positionAt, type Where} from '../../src/text/source.js';
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
    ...(fix ? [`  fix: ${fix.title}: ${fix.edits.map(({text}) => JSON.stringify(text)).join(', ')}`] : []),
  ];
}

/** `engine.yaml:9`. */
function placeOf({spec, procedures}: Book, {file, span}: Where): string {
  const from = spec.files.get(file) ?? procedures.find(({source}) => source.file === file)?.source;
  if (from === undefined) return file;
  return `${file}:${positionAt(from, span.start).line}`;
}

/** What the fix of the first finding of that name writes, without the space around it; the finding must be there. */
export function fixOf(finding: string, engine: string, tags: string, shop?: string): string | undefined {
  const {findings} = check(bookOf(engine, tags.split('; '), shop), TODAY);
  const its = findings.find(({name}) => name === finding);
  if (its === undefined) throw new Error(`${finding} is not told`);
  return its.fix?.edits[0]?.text.trim();
}
