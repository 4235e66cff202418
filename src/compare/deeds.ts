/** What the steps of a book do, one deed for each verb, item and place, with the conditions under which it is done. */
import type {Book} from '../build/book.js';
import {type Condition, frontCondition, sectionConditions, tagCondition} from '../build/options.js';
import type {Action, Node, Program, StepRef} from '../build/program.js';
import {itemAt} from '../findings/phrase.js';
import type {Block, Procedure, Tag} from '../procedure/model.js';
import type {Verb} from '../procedure/verbs.js';
import {placesOf} from '../spec/items.js';

/** One verb done to one item at one place: the smallest thing that a comparison tells of. */
export interface Deed {
  /** `if` stands for the branch that follows a reading, `repeat` for the way back. */
  readonly verb: Verb;
  readonly item: string;
  readonly place: string;
  readonly step: StepRef;
  readonly tag: Tag;
  /** In words: "only where main-clearance[front] is out", "only with raw-water-cooling". Empty: always. */
  readonly when: readonly string[];
}

/** In the order of the build and of the text. A deed that a tag does at three places is three. */
export function deedsOf(book: Book, program: Program): Deed[] {
  return program.parts.flatMap(({procedure, nodes}) => {
    const sections = conditionsByStep(book, procedure);
    return nodes.flatMap((node) => below(node, sections.get(node.step.step.index) ?? [], undefined));
  });
}

function below(node: Node, above: readonly string[], branch: string | undefined): Deed[] {
  const {step, actions, when} = node;
  const own = [...above, ...optionWords(tagCondition(step.step.tags))];
  const inner =
    when === undefined ? own : [...own, `only where ${itemAt(when.item, when.places)} is ${when.is}`];
  const inside = when?.item.id ?? branch;
  return [
    ...actions.flatMap((action) => ofAction(action, own)),
    ...(when === undefined
      ? []
      : when.places.map(
          (place) => ({verb: 'if', item: when.item.id, place, step, tag: when.tag, when: own}) as const,
        )),
    ...node.below.flatMap((sub) => below(sub, inner, inside)),
    ...(node.repeat === undefined
      ? []
      : [{verb: 'repeat', item: inside ?? '', place: '', step, tag: node.repeat.tag, when: inner} as const]),
  ];
}

function ofAction({verb, item, places, step, tag}: Action, when: readonly string[]): Deed[] {
  const known = placesOf(item);
  return places
    .filter((place) => known.includes(place))
    .map((place) => ({verb, item: item.id, place, step, tag, when}));
}

/** By index of a top step: what the front matter and the headings above it ask for. */
function conditionsByStep({spec}: Book, procedure: Procedure): Map<number, readonly string[]> {
  const front = frontCondition(procedure.front, spec);
  return new Map(
    sectionConditions(procedure).flatMap(([{content}, condition]) => {
      const words = optionWords([...front, ...condition]);
      return content.flatMap((block): [number, readonly string[]][] => stepIn(block, words));
    }),
  );
}

function stepIn(block: Block, words: readonly string[]): [number, readonly string[]][] {
  return block.type === 'step' ? [[block.step.index, words]] : [];
}

function optionWords(condition: Condition): string[] {
  return condition.map((group) => `only with ${group.join(' or ')}`);
}
