/** Many values of one file without a source have one cause: it is said once, and not with every value. */
import type {Problem} from '../text/problem.js';
import type {BookFile} from './file.js';
import {entryOf} from './tree.js';

/** As many as a person may still have overlooked one by one. */
const FEW = 10;

/** Tells of a file that names no source for itself once, where more than a few of its values have none. */
export function unsourcedOnce(files: readonly BookFile[], problems: readonly Problem[]): readonly Problem[] {
  const summed = new Map<Problem, Problem>();
  const told = new Set<Problem>();
  for (const {from, tree} of files) {
    if (entryOf(tree, 'source') !== undefined) continue;
    const own = problems.filter(({name, where}) => name === 'source-missing' && where.file === from.file);
    const [first] = own;
    if (first === undefined || own.length <= FEW) continue;
    summed.set(first, once(first, own));
    for (const one of own) told.add(one);
  }
  return problems.flatMap((one) => summed.get(one) ?? (told.has(one) ? [] : [one]));
}

/** At the first of the values, which is where the writer looks next. */
function once(first: Problem, all: readonly Problem[]): Problem {
  const items = [...new Set(all.flatMap(({item}) => item ?? []))];
  const named = `${items.slice(0, 3).join(', ')}${items.length > 3 ? ` and ${items.length - 3} other items` : ''}`;
  return {
    name: 'source-missing',
    where: first.where,
    says: `${all.length} values of ${items.length === 0 ? 'practice' : named} have no source`,
    hint: 'give the whole file a source (`source: house-notes` at its head), or each value its own',
    ...(first.item !== undefined && {item: first.item}),
  };
}
