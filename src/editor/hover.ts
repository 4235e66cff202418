/** What is told of the word under the pointer: verb, clause, item with its life so far, value in both unit systems. */
import {tell} from '../build/tell.js';
import {findingPage} from '../findings/page.js';
import {FINDINGS} from '../findings/registry.js';
import {told} from '../findings/worked-figures.js';
import type {Clause, Tag} from '../procedure/model.js';
import {tagSpec} from '../procedure/verbs.js';
import {isLockKind, LOCK_KINDS} from '../spec/locks.js';
import type {Specification} from '../spec/model.js';
import type {Span} from '../text/source.js';
import type {BookView} from './book-view.js';
import {itemPage} from './item-page.js';
import {code, plain} from './markdown.js';
import type {Mention} from './mention.js';
import {mentionAt} from './mentions.js';
import {tagsIn} from './mentions-in-tags.js';

/** Markdown, and the words that it is about. */
export interface Told {
  readonly span: Span;
  readonly markdown: string;
}

/** Nothing where there is nothing to tell. */
export function hover(view: BookView, file: string, offset: number): Told | undefined {
  const mention = mentionAt(view.mentions, {file, span: {start: offset, end: offset}});
  const page = mention && pageOf(mention, view, offset);
  if (mention && page !== undefined) return {span: mention.where.span, markdown: page};
  const procedure = view.procedure(file);
  const tag = procedure && tagsIn(procedure).find(({span}) => span.start <= offset && offset <= span.end);
  return tag && inTag(tag, view.spec, offset);
}

function pageOf({kind, id, where}: Mention, view: BookView, offset: number): string | undefined {
  const {spec} = view;
  switch (kind) {
    case 'item': {
      const item = spec.items.get(id);
      return item && [itemPage(item, spec), ...lifeSoFar(id, where.file, offset, view)].join('\n\n');
    }
    case 'lock-kind': {
      const note = isLockKind(id) ? LOCK_KINDS[id] : undefined;
      const remark = note?.remark === undefined ? '' : `; ${note.remark}`;
      return note && `**${note.says}**: goes on ${note.goesOn} the final torque${remark}`;
    }
    case 'source': {
      const note = spec.sources.get(id);
      const rest = [note?.date, note?.note].flatMap((one) => (one === undefined ? [] : [plain(one)]));
      return note && [`**${plain(note.title)}**`, ...rest].join(' · ');
    }
    case 'option': {
      const option = spec.options.get(id);
      return option && `**${plain(option.name)}**, an option${option.note ? `. ${plain(option.note)}` : ''}`;
    }
    case 'finding': {
      const finding = FINDINGS.find(({name}) => name === id);
      return finding && findingPage(finding);
    }
    default:
      return undefined;
  }
}

/** In a procedure up to the step that holds the offset, elsewhere through the whole build. */
function lifeSoFar(id: string, file: string, offset: number, view: BookView): string[] {
  const life = view.lives.get(id);
  if (life === undefined || life.turns.length === 0) return [];
  const here = view.ledger.program.steps.findLast(
    ({procedure, step}) => procedure.source.file === file && step.span.start <= offset,
  );
  const turns =
    here === undefined ? life.turns : life.turns.filter(({action}) => action.step.order < here.order);
  const lines = turns.slice(-LONGEST).map(({kind, holds, places, action}) => {
    const at = places.filter((place) => place !== '').map(plain);
    return `- ${plain(tell(kind, holds, action))}${at.length > 0 ? ` at ${at.join(', ')}` : ''}`;
  });
  const title = here === undefined ? 'In the build' : 'Before this step';
  if (lines.length === 0) return [`${title}: nothing yet`];
  const left = turns.length - lines.length;
  return [[`${title}:`, '', ...(left > 0 ? [`- ${left} more before`] : []), ...lines].join('\n')];
}

/** More than this nobody reads in a small window. */
const LONGEST = 12;

function inTag(tag: Tag, spec: Specification, offset: number): Told | undefined {
  const {verb, verbSpan} = tag;
  if (isIn(verbSpan, offset)) return {span: verbSpan, markdown: verbPage(tag)};
  const clause = tag.clauses.find(({span}) => isIn(span, offset));
  if (clause === undefined) return undefined;
  const wordSpan = {start: clause.span.start, end: clause.span.start + clause.word.length};
  const says = tagSpec(verb).clauses[clause.word]?.says ?? '';
  if (isIn(wordSpan, offset)) return {span: wordSpan, markdown: `${code(clause.word)}: ${says}`};
  const value = valueSays(clause, spec);
  return value === undefined ? undefined : {span: clause.valueSpan, markdown: value};
}

function verbPage({verb}: Tag): string {
  const {says, clauses} = tagSpec(verb);
  const lines = Object.entries(clauses).map(([word, clause]) => `- ${code(word)}: ${clause.says}`);
  return [`**${verb}**: ${says}`, lines.join('\n')].filter((part) => part !== '').join('\n\n');
}

function valueSays({value}: Clause, spec: Specification): string | undefined {
  if (value.type === 'amount') return plain(told(value.amount, spec));
  if (value.type === 'amounts') return value.amounts.map((amount) => plain(told(amount, spec))).join(', ');
  return undefined;
}

function isIn({start, end}: Span, offset: number): boolean {
  return start <= offset && offset <= end;
}
