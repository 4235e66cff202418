/** Reads the items of an ordered list as steps, with everything that stands in them. */
import type {List, ListItem, Paragraph} from 'mdast';
import {addAll} from '../text/add-all.js';
import type {Span} from '../text/source.js';
import {cautionsOf, opensCaution} from './cautions.js';
import {type Found, misplaced, tagsUnder} from './code-spans.js';
import type {Block, Caution, Picture, PlainBlock, Step, Tag} from './model.js';
import {otherBlock} from './other.js';
import {type Lifted, liftProse, spanOf} from './prose.js';
import {type Reading, report} from './reading.js';
import {reportSpoiltTags} from './spoilt-tags.js';

/** Where a list stands. */
export interface Place {
  readonly section: string;
  /** The content of that section: a caution that no step follows goes there. */
  readonly home: Block[];
}

/** The steps of a list that stands in no other. */
export function stepsOf(list: List, place: Place, reading: Reading): Step[] {
  return list.children.map((item) => stepOf(item, String(++reading.counted), 1, place, reading));
}

/** Puts cautions where the next step will find them. */
export function keepWaiting(cautions: readonly Caution[], {home}: Place, reading: Reading): void {
  for (const caution of cautions) reading.waiting.push({caution, home});
}

/** What the children of an item come to. */
interface Gathered {
  readonly cautions: Caution[];
  readonly pictures: Picture[];
  readonly steps: Step[];
  readonly more: PlainBlock[];
  head?: {readonly paragraph: Paragraph; readonly lifted: Lifted};
}

function stepOf(item: ListItem, number: string, depth: number, place: Place, reading: Reading): Step {
  const index = reading.begun++;
  const cautions = reading.waiting.splice(0).map(({caution}) => caution);
  const gathered: Gathered = {cautions, pictures: [], steps: [], more: []};
  const found = stepTags(item, reading);
  const id = nameOf(found.tags, reading);
  for (const child of item.children) {
    if (child.type === 'list' && child.ordered) {
      for (const sub of child.children) {
        const label = number + (depth % 2 === 1 ? letters(gathered.steps.length) : gathered.steps.length + 1);
        gathered.steps.push(stepOf(sub, label, depth + 1, place, reading));
      }
    } else gather(child, gathered, {found, place, reading});
  }
  const {head, pictures, steps, more} = gathered;
  const step: Step = {
    number,
    index,
    span: spanOf(item),
    headSpan: firstLine(head?.paragraph ? spanOf(head.paragraph) : spanOf(item), reading),
    text: head?.lifted.text ?? '',
    inline: head?.lifted.inline ?? [],
    tags: found.tags,
    cautions,
    pictures,
    steps,
    more,
    ...(id !== undefined && {id}),
    section: place.section,
  };
  reading.steps[index] = step;
  return step;
}

/** The tags of an item, save those of its sub-steps and cautions, which are theirs. */
function stepTags(item: ListItem, reading: Reading): Found {
  const own = item.children.filter(
    (child) =>
      !(child.type === 'list' && child.ordered) && !(child.type === 'blockquote' && opensCaution(child)),
  );
  const found = tagsUnder(own, reading);
  reportSpoiltTags(own, reading);
  for (const tag of found.tags) if (tag.verb === 'hazard') misplaced(reading, tag, 'a step');
  return {...found, tags: found.tags.filter(({verb}) => verb !== 'hazard')};
}

/** The name that a `step:` tag gives. */
function nameOf(tags: readonly Tag[], reading: Reading): string | undefined {
  const [target, ...more] = tags.filter(({verb}) => verb === 'step').flatMap(({targets}) => targets);
  for (const {span} of more) {
    report(reading, 'tag-form', span, {says: 'the step has a name already', hint: 'give it one name'});
  }
  if (target === undefined) return undefined;
  const first = reading.names.get(target.id);
  if (first === undefined) {
    reading.names.set(target.id, target.span);
    return target.id;
  }
  report(reading, 'tag-form', target.span, {
    says: `another step is named ${target.id}`,
    hint: 'give every step a name of its own',
    related: [{where: {file: reading.source.file, span: first}, says: `${target.id} is first here`}],
  });
  return undefined;
}

/** What a child of an item is read against. */
interface Around {
  readonly found: Found;
  readonly place: Place;
  readonly reading: Reading;
}

function gather(child: ListItem['children'][number], into: Gathered, around: Around): void {
  const {found, place, reading} = around;
  if (child.type === 'definition') return;
  if (child.type === 'blockquote' && opensCaution(child)) {
    const cautions = cautionsOf(child, reading);
    // One that opens the item is about it; below the prose it is there by its indentation only, and about what follows.
    if (into.head || into.more.length > 0 || into.steps.length > 0) keepWaiting(cautions, place, reading);
    else addAll(into.cautions, cautions);
    return;
  }
  if (child.type !== 'paragraph') {
    into.more.push(otherBlock(child, found.nodes, reading));
    return;
  }
  const lifted = liftProse(child.children, {tags: found.nodes, definitions: reading.definitions});
  addAll(into.pictures, lifted.pictures);
  // A paragraph of nothing but tags leaves the step's words to the next one.
  if (into.head === undefined || into.head.lifted.inline.length === 0) into.head = {paragraph: child, lifted};
  else if (lifted.inline.length > 0)
    into.more.push({type: 'prose', span: spanOf(child), ...withoutPictures(lifted)});
}

function withoutPictures({text, inline}: Lifted): Pick<Lifted, 'text' | 'inline'> {
  return {text, inline};
}

function firstLine({start, end}: Span, {source}: Reading): Span {
  const line = /^[^\r\n]*/.exec(source.text.slice(start, end))?.[0] ?? '';
  return {start, end: start + line.trimEnd().length};
}

/** a to z, then aa, ab … */
function letters(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}
