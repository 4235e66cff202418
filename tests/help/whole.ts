/** Everything that the check says of a book of one procedure, a tag a step: message, place, story, where to look, mend. */
import {check} from '../../src/findings/check.js';
import type {Finding} from '../../src/findings/model.js';
import {applyEdits} from '../../src/text/edit.js';
import {positionAt, type Source, type Where} from '../../src/text/source.js';
import {book} from './example.js';

/** Lines of front matter that the helper of examples puts above the first step. */
const ABOVE = 6;

/**
 * A block of lines a finding: `name: message @ place`, then `story`, `see` and `fix` indented. A place is the number of the
 * step, or a line of the specification by its words. `tags` are written a step each; one that begins with `- ` stands in a
 * caution.
 */
export function whole(engine: string, tags: readonly string[], shop?: string): string[] {
  const steps = tags.map((tag, index) => `${index + 1}. Do it. ${tag.includes('`') ? tag : `\`${tag}\``}`);
  const made = book({engine, ...(shop && {shop}), procedures: {'procedure.md': `\n${steps.join('\n')}\n`}});
  const [procedure] = made.procedures;
  const sourceOf = (file: string): Source | undefined =>
    file === 'procedure.md' ? procedure?.source : made.spec.files.get(file);
  const placeOf = ({file, span}: Where): string => {
    const source = sourceOf(file);
    if (source === undefined) return file;
    const {line} = positionAt(source, span.start);
    if (file === 'procedure.md') return `${line - ABOVE}`;
    return (source.text.split('\n')[line - 1] ?? '').trim().split(':', 1)[0] ?? '';
  };
  const fixOf = (fix: NonNullable<Finding['fix']>): string[] => {
    const before = sourceOf(fix.file)?.text ?? '';
    const old = new Set(before.split('\n'));
    const now = applyEdits(before, fix.edits).split('\n');
    const changed = now.flatMap((line, at) =>
      old.has(line) ? [] : [`    ${now[at - 1]?.split('.', 1)[0]} / ${line}`],
    );
    return [`  fix: ${fix.title}`, ...changed];
  };
  return check(made, {today: '2026-06-01'}).findings.flatMap((one) => [
    `${one.name}: ${one.message} @ ${placeOf(one.where)} ${one.item ?? ''}${one.place ? `[${one.place}]` : ''}`.trim(),
    ...one.story.map(({where, says}) => `  story: ${placeOf(where)}, ${says}`),
    ...one.related.map(({where, says}) => `  see: ${placeOf(where)}, ${says}`),
    ...(one.fix ? fixOf(one.fix) : []),
  ]);
}
