/** Steps to rows, and sections to blocks of a sheet. */
import type {PhrasingContent} from 'mdast';
import type {Block, Caution, Picture, PlainBlock, Procedure, Step, Tag} from '../procedure/model.js';
import {clauseOf, tagsOf} from '../procedure/values.js';
import {askedOf} from './asked.js';
import {conditionOf} from './condition.js';
import {type Context, nameOf, spaced, subjectOf, type Use, usesOf} from './context.js';
import {entriesOf} from './entry.js';
import {clauseValue} from './facts.js';
import {blockOf, proseOf} from './inline.js';
import {askKeys, distinct, doneKey, holdKey} from './keys.js';
import {branchOf, stepsLookedAt} from './looked-back.js';
import type {Entry, Figure, Hold, Notice, Row, SheetBlock, SheetSection} from './model.js';
import {fill} from './words.js';

/** The sections of a procedure; levels are evened out so that no heading skips one on the way down. */
export function sectionsOf(procedure: Procedure, context: Context): SheetSection[] {
  const claimed = new Set(procedure.steps.flatMap((step) => step.cautions.map(({span}) => span.start)));
  let level = 1;
  return procedure.sections.flatMap((section) => {
    const only = onlyWith(section.only, context);
    const content = [
      ...(only === undefined ? [] : [{type: 'prose', prose: proseOf([strong(`${only}.`)])} as const]),
      ...section.content.flatMap((block) => blocksOf(block, claimed, context)),
    ];
    if (section.title === '' && content.length === 0) return [];
    level = Math.max(2, Math.min(section.depth, level + 1));
    return [{title: section.title, level, content}];
  });
}

function blocksOf(block: Block, claimed: ReadonlySet<number>, context: Context): SheetBlock[] {
  switch (block.type) {
    case 'step':
      return [{type: 'row', row: rowOf(block.step, context)}];
    case 'caution':
      // A caution is printed with the step that it belongs to; here only one that has none.
      return claimed.has(block.caution.span.start)
        ? []
        : [{type: 'notice', notice: noticeOf(block.caution, context)}];
    case 'picture':
      return [{type: 'figure', figure: figureOf(block.picture)}];
    default:
      return [plainOf(block, context)];
  }
}

function plainOf(block: PlainBlock, context: Context): SheetBlock {
  switch (block.type) {
    case 'prose':
      return {type: 'prose', prose: proseOf(block.inline)};
    case 'other':
      return blockOf(block.text);
    case 'left-out':
      return {type: 'prose', prose: proseOf([leftOut(block, context)])};
  }
}

/** A gap in the numbers of the steps, explained. */
function leftOut({steps, options}: LeftOut, {words, spec}: Context): PhrasingContent {
  const list = steps.length > 2 ? `${steps[0]}–${steps.at(-1)}` : steps.join(words.and);
  const names = options.map((id) => spec.options.get(id)?.name ?? spaced(id)).join(words.or);
  const says = names === '' ? words.leftOut : words.leftOutFor;
  return {type: 'emphasis', children: [{type: 'text', value: fill(says, {steps: list, options: names})}]};
}

type LeftOut = Extract<Block, {readonly type: 'left-out'}>;

function rowOf(step: Step, context: Context): Row {
  const uses = usesOf(step, context);
  const branch = uses.find(({tag}) => tag.verb === 'if');
  return {
    number: step.number,
    key: doneKey(step.number),
    notices: step.cautions.map((caution) => noticeOf(caution, context)),
    prose: proseOf([...leadOf(step, context), ...step.inline]),
    entries: [...entriesOf(step, context), ...notesOf(uses, context)],
    more: moreOf(step, context),
    holds: holdsOf(step, context),
    ...(branch === undefined
      ? {}
      : {onlyIf: conditionOf(branch, step, context), branch: branchOf(branch, step, context)}),
    ...wayBack(uses, context),
    rows: step.steps.map((sub) => rowOf(sub, context)),
  };
}

/** For which engines the step is, where it is not for all: a sheet for one engine has left the others' out. */
function leadOf({added, tags}: Step, context: Context): PhrasingContent[] {
  const says = added === undefined ? onlyWith(tagsOf({tags}, 'only'), context) : context.words.forThisJob;
  return says === undefined ? [] : [strong(`${says}:`), {type: 'text', value: ' '}];
}

function onlyWith(tags: readonly Tag[], {words, spec}: Context): string | undefined {
  const groups = tags.map(({targets}) =>
    targets.map(({id}) => spec.options.get(id)?.name ?? spaced(id)).join(words.or),
  );
  return groups.length === 0 ? undefined : fill(words.onlyWith, {options: groups.join(words.and)});
}

function strong(value: string): PhrasingContent {
  return {type: 'strong', children: [{type: 'text', value}]};
}

function wayBack(uses: readonly Use[], {stepNumbers}: Context): Pick<Row, 'backTo'> {
  const use = uses.find(({tag}) => tag.verb === 'repeat');
  const backTo = use && stepNumbers.get(use.target.id);
  return backTo === undefined ? {} : {backTo};
}

/** Going back, and what is waived here, as entries. */
function notesOf(uses: readonly Use[], context: Context): Entry[] {
  return uses.flatMap((use): Entry[] => {
    const {verb} = use.tag;
    const {words} = context;
    const {id} = use.target;
    if (verb === 'repeat') {
      const number = context.stepNumbers.get(id);
      const subject =
        number === undefined ? fill(words.goBackUnknown, {step: spaced(id)}) : fill(words.goBack, {number});
      const facts = number === undefined ? [] : [{label: words.eachRound, text: words.eachRoundText}];
      return [{verb, title: words.verbs.repeat, subject, facts}];
    }
    if (verb !== 'waive') return [];
    const reason = reasonOf(use.tag, context);
    const facts = reason === '' ? [] : [{label: words.because, text: reason}];
    return [{verb, title: words.verbs.waive, subject: spaced(id), facts}];
  });
}

/** Why a tag departs from the rule; empty where it does not say. */
export function reasonOf(tag: Tag, context: Context): string {
  const clause = clauseOf(tag, 'because');
  return clause === undefined ? '' : clauseValue(clause, context).text;
}

/** What a step holds below its first line. */
function moreOf(step: Step, context: Context): SheetBlock[] {
  return [
    ...step.more.map((block) => plainOf(block, context)),
    ...step.pictures.map((picture): SheetBlock => ({type: 'figure', figure: figureOf(picture)})),
  ];
}

/** A job adds a caution of which no more than its hazards is known. */
function noticeOf(caution: Caution, {words}: Context): Notice {
  const bare = caution.inline.length === 0 && caution.hazards.length > 0;
  return {
    signal: caution.signal,
    prose: proseOf(bare ? [{type: 'text', value: words.askFirst}] : caution.inline),
    hazards: caution.hazards.map(({word}) => spaced(word)),
  };
}

function figureOf({url, alt, title}: Picture): Figure {
  return {url, alt, ...(title === undefined ? {} : {caption: title})};
}

/** The hold points that a step signs off, its sub-steps' not among them. */
export function holdsOf(step: Step, context: Context): Hold[] {
  const uses = usesOf(step, context).filter(({tag}) => tag.verb === 'witness');
  const keys = distinct(uses.map(({target}) => holdKey(step.number, target.id)));
  return uses.map((use, at) => holdOf(use, {step, key: keys[at] ?? ''}, context));
}

function holdOf(use: Use, {step, key}: {readonly step: Step; readonly key: string}, context: Context): Hold {
  const point = use.item?.kind === 'hold-point' ? use.item : undefined;
  const stated = clauseOf(use.tag, 'by');
  const by = stated === undefined ? point?.by : clauseValue(stated, context).text;
  const asks = point?.asks.map(({value}) => value) ?? [];
  return {
    id: use.target.id,
    key,
    name: subjectOf(use, context),
    ...(by === undefined ? {} : {by}),
    asks: asks.map((id) => nameOf(id, context)),
    asked: asks.map((id) => askedOf(id, context)),
    askKeys: askKeys(key, asks),
    steps: stepsLookedAt(asks, step, context),
  };
}
