/** What is wrong with a name in a tag that means nothing in this book, or something that cannot stand there. */
import type {Item, ItemKind, Specification} from '../spec/model.js';
import {KIND_SAYS} from '../spec/sections.js';
import {mayBear} from '../spec/written-over.js';
import {alternatives} from '../text/alternatives.js';
import {nearest} from '../text/nearest.js';
import type {Problem} from '../text/problem.js';
import type {Where} from '../text/source.js';

/** An id, and what could stand in its place. */
export interface Named {
  readonly id: string;
  readonly where: Where;
  readonly kinds: readonly ItemKind[];
  /** The verb or the word of the clause that takes those kinds. */
  readonly taker: string;
}

/** An id that no item bears; the nearest one is offered among those of a kind that can stand there. */
export function unknownItem({id, where, kinds, taker}: Named, spec: Specification): Problem {
  const fit = [...spec.items.values()].filter((item) => kinds.includes(item.kind));
  const near = nearest(
    id,
    fit.map((item) => item.id),
  );
  // Tools are the shop's and not the engine's: who writes one into engine.yaml finds it refused there.
  const isTool = taker === 'using';
  const add = isTool ? 'add it to shop.yaml' : 'add it to engine.yaml or shop.yaml';
  return {
    name: isTool ? 'tool-not-in-shop' : 'unknown-item',
    where,
    says: isTool ? `${id} is not a tool of the shop` : `${id} is not in the specification`,
    item: id,
    hint: near === undefined ? `${add}, or correct the id` : `did you mean ${near}?`,
    ...mayBear(spec.writtenOver ?? [], kinds),
    ...(near !== undefined && {
      fix: {title: `Write ${near}`, file: where.file, edits: [{span: where.span, text: near}]},
    }),
  };
}

/** An id of an item, or of a kind of lock, where such a thing cannot stand. */
export function wrongKind({id, where, kinds, taker}: Named, is: Item | 'lock-kind'): Problem {
  const isLock = is === 'lock-kind';
  const takes = alternatives(kinds.map((kind) => KIND_SAYS[kind]));
  return {
    name: 'wrong-kind',
    where,
    says: `${id} is ${isLock ? 'a kind of lock' : KIND_SAYS[is.kind]}, and \`${taker}\` takes ${takes}`,
    item: id,
    ...(!isLock && {related: [{where: is.where, says: `${id} is specified here`}]}),
  };
}

/** A place that the item does not have. */
export function unknownPlace(item: Item, name: string, where: Where): Problem {
  const near = nearest(name, item.at);
  return {
    name: 'unknown-item',
    where,
    says:
      item.at.length === 0
        ? `${item.id} has no places, so [${name}] says nothing`
        : `${item.id} has no place ${name}`,
    item: item.id,
    hint: near === undefined ? `its places are: ${item.at.join(', ') || 'none'}` : `did you mean ${near}?`,
    related: [{where: item.where, says: `${item.id} is specified here`}],
  };
}

/** A step to go back to that the procedure does not have; `ids` are those that it has. */
export function unknownStep(id: string, where: Where, ids: ReadonlySet<string>): Problem {
  const near = nearest(id, ids);
  return {
    name: 'unknown-item',
    where,
    says: `no step of this procedure is named ${id}`,
    item: id,
    hint: near === undefined ? `name the step with \`step: ${id}\`` : `did you mean ${near}?`,
  };
}
