/** Books made by hand, from plain descriptions, so that a test of a sheet shows everything that it depends on. */
import type {Paragraph, PhrasingContent} from 'mdast';
import remarkParse from 'remark-parse';
import {unified} from 'unified';
import type {
  Block,
  Caution,
  Front,
  Procedure,
  Section,
  Signal,
  Step,
  Tag,
} from '../../src/procedure/model.js';
import {readTag} from '../../src/procedure/tag.js';
import type {Amount} from '../../src/quantity/model.js';
import {readAmount} from '../../src/quantity/parse.js';
import type {Fastener, Item, Located, Part, Specification, Specified} from '../../src/spec/model.js';
import {source} from '../../src/text/source.js';

const NOWHERE = {file: 'engine.yaml', span: {start: 0, end: 0}};
const NO_SPAN = {start: 0, end: 0};

export function amount(text: string): Amount {
  const reading = readAmount(text);
  if (!reading.ok) throw new Error(`${text}: ${reading.fault.says}`);
  return reading.amount;
}

export function located<T>(value: T): Located<T> {
  return {value, where: NOWHERE};
}

export function specified<T>(value: T, more: Partial<Specified<T>> = {}): Specified<T> {
  return {value, where: NOWHERE, ...more};
}

export function base(id: string) {
  return {id, name: id.replaceAll('-', ' '), at: [], where: NOWHERE};
}

export function part(id: string, more: Partial<Part> = {}): Part {
  return {
    ...base(id),
    kind: 'part',
    closes: [],
    after: [],
    given: false,
    singleUse: false,
    reused: false,
    alterations: [],
    using: [],
    turning: false,
    hazards: [],
    quantity: 1,
    ...more,
  };
}

export function fastener(id: string, more: Partial<Fastener> = {}): Fastener {
  return {
    ...base(id),
    kind: 'fastener',
    count: 1,
    holds: [],
    singleUse: false,
    layout: [],
    layoutUnit: 'in',
    order: [],
    ...more,
  };
}

export function specification(items: readonly Item[], more: Partial<Specification> = {}): Specification {
  return {
    shop: {
      name: 'Brackwater Engine Works',
      paper: 'A4',
      units: 'inch',
      severity: new Map(),
      where: NOWHERE,
    },
    engine: {id: 'ottermouth-four', name: 'Ottermouth Four', note: 'every value is invented', where: NOWHERE},
    items: new Map(items.map((item) => [item.id, item])),
    sources: new Map(),
    bars: [],
    build: [],
    files: new Map(),
    problems: [],
    ...more,
  };
}

/** Signal word, text, hazard words. */
type CautionNote = readonly [Signal, string, ...string[]];

export interface StepNote {
  readonly text: string;
  readonly tags?: readonly string[];
  readonly cautions?: readonly CautionNote[];
  readonly steps?: readonly StepNote[];
  readonly pictures?: Step['pictures'];
  readonly more?: readonly Block[];
}

export interface SectionNote {
  readonly title: string;
  readonly depth?: number;
  readonly before?: readonly Block[];
  readonly steps: readonly StepNote[];
}

export function procedure(
  sections: readonly SectionNote[],
  front: Partial<Front> = {},
  file = '01-trial.md',
): Procedure {
  const steps: Step[] = [];
  const made: Section[] = sections.map(({title, depth = 2, before = [], steps: notes}) => ({
    title,
    depth,
    span: NO_SPAN,
    content: [...before, ...notes.flatMap((note) => blocks(note, topNumber(steps), title, steps))],
  }));
  return {
    source: source(file, ''),
    front: {title: 'Trial', revision: 'A', date: '2026-02-03', span: NO_SPAN, ...front},
    sections: made,
    steps,
    problems: [],
  };
}

function topNumber(steps: readonly Step[]): string {
  return String(steps.filter(({number}) => /^\d+$/.test(number)).length + 1);
}

function blocks(note: StepNote, number: string, section: string, steps: Step[]): Block[] {
  const step = made(note, number, section, steps);
  return [...step.cautions.map((caution): Block => ({type: 'caution', caution})), {type: 'step', step}];
}

function made(note: StepNote, number: string, section: string, steps: Step[]): Step {
  const index = steps.length;
  const tags = (note.tags ?? []).map(tag);
  const id = tags.find(({verb}) => verb === 'step')?.targets[0]?.id;
  const step: Step = {
    number,
    index,
    span: NO_SPAN,
    headSpan: NO_SPAN,
    text: note.text,
    inline: inline(note.text),
    tags,
    cautions: (note.cautions ?? []).map((one, at) => caution(one, index * 100 + at)),
    pictures: note.pictures ?? [],
    steps: [],
    more: note.more ?? [],
    section,
    ...(id === undefined ? {} : {id}),
  };
  steps.push(step);
  const below = (note.steps ?? []).map((sub, at) =>
    made(sub, number + String.fromCharCode(97 + at), section, steps),
  );
  const whole = {...step, steps: below};
  steps[index] = whole;
  return whole;
}

function caution(note: CautionNote, start: number): Caution {
  const [signal, text, ...hazards] = note;
  return {
    signal,
    span: {start, end: start + 1},
    text,
    inline: inline(text),
    hazards: hazards.map((word) => ({word, span: NO_SPAN})),
    tags: [],
  };
}

export function tag(text: string): Tag {
  const {tag: read, problems} = readTag(text, 0, 'trial.md');
  if (read === undefined || problems.length > 0) throw new Error(`${text}: ${JSON.stringify(problems)}`);
  return read;
}

export function inline(text: string): PhrasingContent[] {
  const [first] = unified().use(remarkParse).parse(text).children;
  if (first === undefined || !isParagraph(first)) return [{type: 'text', value: text}];
  return first.children;
}

function isParagraph(node: {readonly type: string}): node is Paragraph {
  return node.type === 'paragraph';
}
