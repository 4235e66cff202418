/** A procedure's pieces moved to where they stand in a longer text: what was read of a part of it, put in its place. */
import type {Nodes, PhrasingContent} from 'mdast';
import type {
  Block,
  Caution,
  Clause,
  Picture,
  PlainBlock,
  Section,
  Step,
  Tag,
  Target,
} from '../../procedure/model.js';
import type {Edit} from '../../text/edit.js';
import type {Problem} from '../../text/problem.js';
import type {Span, Where} from '../../text/source.js';

/** How much text, and how many steps, stand above. */
export interface Shift {
  readonly offset: number;
  /** Line breaks. */
  readonly line: number;
  /** Steps of all lists, and of the outermost ones, by which steps are numbered. */
  readonly index: number;
  readonly count: number;
}

export interface Read {
  readonly sections: readonly Section[];
  readonly steps: readonly Step[];
  readonly problems: readonly Problem[];
}

/** The same pieces where nothing stands above. */
export function shifted(read: Read, by: Shift): Read {
  if (by.offset === 0) return read;
  const steps: Step[] = [];
  const sections = read.sections.map((section) => ({
    ...section,
    span: span(section.span, by),
    only: section.only.map((tag) => tagAt(tag, by)),
    content: section.content.map((block) => blockAt(block, by, steps)),
  }));
  return {sections, steps, problems: read.problems.map((problem) => problemAt(problem, by))};
}

function span({start, end}: Span, {offset}: Shift): Span {
  return {start: start + offset, end: end + offset};
}

function blockAt(block: Block, by: Shift, steps: Step[]): Block {
  switch (block.type) {
    case 'caution':
      return {type: 'caution', caution: cautionAt(block.caution, by)};
    case 'step':
      return {type: 'step', step: stepAt(block.step, by, steps)};
    case 'picture':
      return {type: 'picture', picture: pictureAt(block.picture, by)};
    default:
      return plainAt(block, by);
  }
}

function plainAt(block: PlainBlock, by: Shift): PlainBlock {
  const moved = {...block, span: span(block.span, by)};
  return moved.type === 'prose' ? {...moved, inline: inlineAt(moved.inline, by)} : moved;
}

/** Steps stand in the list in reading order: each before those below it. */
function stepAt(step: Step, by: Shift, steps: Step[]): Step {
  const place = steps.length;
  steps.push(step);
  const moved: Step = {
    ...step,
    number: step.number.replace(/^\d+/, (count) => String(Number(count) + by.count)),
    index: step.index + by.index,
    span: span(step.span, by),
    headSpan: span(step.headSpan, by),
    inline: inlineAt(step.inline, by),
    tags: step.tags.map((tag) => tagAt(tag, by)),
    cautions: step.cautions.map((caution) => cautionAt(caution, by)),
    pictures: step.pictures.map((picture) => pictureAt(picture, by)),
    steps: step.steps.map((below) => stepAt(below, by, steps)),
    more: step.more.map((block) => plainAt(block, by)),
  };
  steps[place] = moved;
  return moved;
}

function tagAt(tag: Tag, by: Shift): Tag {
  return {
    ...tag,
    span: span(tag.span, by),
    verbSpan: span(tag.verbSpan, by),
    targets: tag.targets.map((target) => targetAt(target, by)),
    clauses: tag.clauses.map((clause) => clauseAt(clause, by)),
  };
}

function targetAt({id, span: at, places}: Target, by: Shift): Target {
  return {id, span: span(at, by), places: places.map((place) => ({...place, span: span(place.span, by)}))};
}

function clauseAt(clause: Clause, by: Shift): Clause {
  const {value} = clause;
  const moved = {...clause, span: span(clause.span, by), valueSpan: span(clause.valueSpan, by)};
  if (value.type !== 'ids') return moved;
  return {...moved, value: {type: 'ids', ids: value.ids.map((one) => ({...one, span: span(one.span, by)}))}};
}

function cautionAt(caution: Caution, by: Shift): Caution {
  return {
    ...caution,
    span: span(caution.span, by),
    inline: inlineAt(caution.inline, by),
    hazards: caution.hazards.map((hazard) => ({...hazard, span: span(hazard.span, by)})),
    tags: caution.tags.map((tag) => tagAt(tag, by)),
  };
}

function pictureAt(picture: Picture, by: Shift): Picture {
  return {...picture, span: span(picture.span, by)};
}

function inlineAt(nodes: readonly PhrasingContent[], by: Shift): PhrasingContent[] {
  return nodes.map((node) => {
    const moved = placed(node, by);
    return 'children' in moved ? {...moved, children: inlineAt(moved.children, by)} : moved;
  });
}

function placed<N extends Nodes>(node: N, by: Shift): N {
  const {position} = node;
  if (position === undefined) return node;
  return {...node, position: {start: pointAt(position.start, by), end: pointAt(position.end, by)}};
}

interface Point {
  line: number;
  column: number;
  offset?: number | undefined;
}

function pointAt({line, column, offset}: Point, by: Shift): Point {
  return {line: line + by.line, column, offset: (offset ?? 0) + by.offset};
}

function problemAt(problem: Problem, by: Shift): Problem {
  const {where, related, fix} = problem;
  const whereAt = ({file, span: at}: Where) => ({file, span: span(at, by)});
  const edits = fix?.edits.map((edit): Edit => ({...edit, span: span(edit.span, by)}));
  return {
    ...problem,
    where: whereAt(where),
    ...(related && {related: related.map((remark) => ({...remark, where: whereAt(remark.where)}))}),
    ...(fix && edits && {fix: {...fix, edits}}),
  };
}
