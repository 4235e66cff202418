/** What the check says of a small book of one procedure, a tag a step. */
import {check} from '../../src/findings/check.js';
import {book} from './example.js';

/** Every finding as `name: message`, in the order in which they stand. */
export function found(engine: string, tags: readonly string[], shop?: string): string[] {
  const steps = tags.map((tag, index) => `${index + 1}. Do it. ${tag.startsWith('`') ? tag : `\`${tag}\``}`);
  const made = book({engine, ...(shop && {shop}), procedures: {'procedure.md': `\n${steps.join('\n')}\n`}});
  return check(made, {today: '2026-06-01'}).findings.map(({name, message}) => `${name}: ${message}`);
}
