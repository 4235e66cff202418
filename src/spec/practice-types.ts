/**
 * Practice for a type that no item has, though one has nearly that: it fills in nothing, and what it should is silent.
 * A shop builds several engines, so a type that only another one has is no fault.
 */
import type {Problem} from '../text/problem.js';
import type {BookFile} from './file.js';
import {nearName} from './near.js';
import type {RawItem} from './raw.js';
import {KIND_SAYS} from './sections.js';
import {entryOf, textOf} from './tree.js';

/** Every such type of the shop's practice, with the type that was meant. */
export function strangeTypes(shop: BookFile | undefined, raws: readonly RawItem[]): Problem[] {
  const list = entryOf(shop?.tree, 'practice')?.value;
  const stated = (list?.type === 'list' ? list.items : []).flatMap((node) => {
    const type = entryOf(node, 'type')?.value;
    const [every, says] = [textOf(entryOf(node, 'every')?.value), textOf(type)];
    return type && every !== undefined && says !== undefined ? [{every, type: says, where: type.where}] : [];
  });
  const problems: Problem[] = [];
  for (const {every, type, where} of stated) {
    const ofKind = raws.filter(({kind}) => kind === every);
    const types = new Set(ofKind.flatMap(({fields}) => textOf(fields.get('type')?.value) ?? []));
    const meant = stated.flatMap((one) => (one.every === every ? [one.type] : []));
    // A type that practice speaks of by its own name is no slip of another: `m6-stud` and `m8-stud`.
    const free = [...types].filter(
      (one) => !meant.includes(one) && withoutFigures(one) !== withoutFigures(type),
    );
    const near = types.has(type) ? undefined : nearName(type, free, problems.length);
    if (near === undefined) continue;
    problems.push({
      name: 'unknown-item',
      where,
      says: `practice speaks of the type ${type}, and ${noneOf(every)} is of that type`,
      hint: `did you mean ${near}?`,
      fix: {title: `Write ${near}`, file: where.file, edits: [{span: where.span, text: near}]},
    });
  }
  return problems;
}

function withoutFigures(type: string): string {
  return type.replace(/\d+/g, '');
}

/** No other kinds may stand there. */
function noneOf(every: string): string {
  const says = Object.entries(KIND_SAYS).find(([kind]) => kind === every)?.[1] ?? 'an item';
  return says.replace(/^an? /, 'no ');
}
