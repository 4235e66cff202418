/** What a repeat goes back to do a second time without having undone it: a part that is in, a fastener that is tight. */
import type {Change, FactKind} from '../build/facts.js';
import {type Node, whereIn} from '../build/program.js';
import {stepName} from '../build/tell.js';
import type {Context} from './model.js';
import {about, agreeing, itemAt, storyOf} from './phrase.js';

/** Reports what was put in or tightened since the step that is gone back to, and still is. */
export function stillDone(node: Node, gained: readonly Change[], context: Context): void {
  for (const kind of ['installed', 'tight'] as const) {
    const changes = gained.filter((change) => change.kind === kind);
    for (const id of new Set(changes.map(({item}) => item))) {
      const places = changes.filter(({item}) => item === id).map(({place}) => place);
      still(node, kind, {id, places}, context);
    }
  }
}

function still(
  node: Node,
  kind: FactKind,
  {id, places}: {readonly id: string; readonly places: readonly string[]},
  {book, state, report}: Context,
): void {
  const item = book.spec.items.get(id);
  if (node.repeat === undefined || item === undefined) return;
  const be = agreeing(item, 'is', 'are');
  const [standing, again] =
    kind === 'installed' ? ['in', agreeing(item, 'goes in', 'go in')] : ['tight', `${be} torqued`];
  report({
    where: whereIn(node.step, node.repeat.tag.span),
    message: `${itemAt(item, places)} ${be} still ${standing} when ${stepName(node.step, node.step)} goes back to ${node.repeat.id}, and ${again} again after that`,
    ...about(item, places),
    step: node.step,
    story: storyOf(places.map((place) => state.get(kind, id, place))),
  });
}
