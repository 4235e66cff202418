/** An alteration that no part asks for: whether any step makes it, nobody would miss it. */
import {idsOf} from '../procedure/values.js';
import type {Alteration, Item, Part} from '../spec/model.js';
import type {Context} from './model.js';

/**
 * Reports, of each part that an alteration is `of`, that nothing asks for it: neither the part nor a substitute of it
 * names it, and no step makes it. One that is of no part must be asked for by some part.
 */
export function unaskedAlterations(context: Context): void {
  const {book, report} = context;
  for (const item of book.spec.items.values()) {
    if (item.kind !== 'alteration') continue;
    const parts = item.of.map(({value}) => book.spec.items.get(value)).filter(isPart);
    if (item.of.length === 0) {
      if (context.relations.parts.some((part) => isAsked(item, part, context))) continue;
      const says = `${item.id} is an alteration of no part, and none asks for it; write of: [a part], and the same in the alterations of that part`;
      report({where: item.where, message: says, item: item.id});
    }
    for (const part of parts.filter((one) => !isAsked(item, one, context))) {
      report({
        where: item.where,
        message: `${item.id} is an alteration of ${part.id} that nothing asks for and no step makes; write alterations: [${item.id}] beside ${part.id} or a substitute of it, or take it out`,
        item: item.id,
        related: [{where: part.where, says: `${part.id} is specified here`}],
        lacks: {item: part.id, verbs: ['alter']},
      });
    }
  }
}

function isPart(item: Item | undefined): item is Part {
  return item?.kind === 'part';
}

/** A name that means nothing, which is told where it stands, may be this one misspelt. */
function isAsked({id}: Alteration, part: Part, context: Context): boolean {
  const {items} = context.book.spec;
  const lists = [part.alterations, ...[...part.substitutes.values()].map(({alterations}) => alterations)];
  return (
    lists.some((list) => list.some(({value}) => value === id || !items.has(value))) ||
    isMade(id, part, context)
  );
}

/** A tag that does not say which is taken to mean it. */
function isMade(id: string, part: Part, {book: {spec}, program}: Context): boolean {
  return program.parts.some(({actions}) =>
    actions.some(({item, tag, verb}) => {
      if (verb !== 'alter' || item.id !== part.id) return false;
      const by = idsOf(tag, 'by');
      return by.length === 0 || by.some((one) => one === id || !spec.items.has(one));
    }),
  );
}
