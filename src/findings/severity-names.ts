/** `severity:` in shop.yaml must name findings: a name with a slip in it would leave the real one as it was, in silence. */
import type {Book} from '../build/book.js';
import {nearest} from '../text/nearest.js';
import {isUnasked} from './house.js';
import type {FindingKind} from './model.js';
import type {Raised} from './settle.js';
import {specForm} from './spec-form.js';

export function severityNames({spec}: Book, kinds: readonly FindingKind[]): Raised[] {
  const names = kinds.map(({name}) => name);
  return [...spec.shop.severity].flatMap(([name, {where}]): Raised[] => {
    if (names.includes(name) || isUnasked(name, kinds)) return [];
    const near = nearest(name, names);
    const hint = near === undefined ? '`wmark why` lists them all' : `did you mean ${near}?`;
    // A name that stands there already cannot stand there twice.
    const fix = near !== undefined &&
      !spec.shop.severity.has(near) && {
        title: `Write ${near}`,
        file: where.file,
        edits: [{span: where.span, text: near}],
      };
    const message = `severity: ${name} is not a finding; ${hint}`;
    return [{kind: specForm, found: {where, message, ...(fix && {fix})}}];
  });
}
