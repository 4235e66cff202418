/** Edits that take something from the engine: every fault of the benchmark of omissions, and what asks for less on both sides. */
import type {Book} from '../../src/build/book.js';
import type {Procedure, Tag} from '../../src/procedure/model.js';
import {clauseOf} from '../../src/procedure/values.js';
import {formatAmount, formatQuantity} from '../../src/quantity/format.js';
import type {Item, Located} from '../../src/spec/model.js';
import type {Edit} from '../../src/text/edit.js';
import type {Span} from '../../src/text/source.js';
import {excuse} from '../omissions/excuses.js';
import {broken, describeFault} from '../omissions/fault.js';
import {faultsOf} from '../omissions/run.js';
import {type Review, withEdits} from './edited.js';

export function weaker(book: Book): Review[] {
  const faults = faultsOf(book).flatMap((fault): Review[] => {
    const at = describeFault(book, fault);
    if (excuse(book, fault, at) !== undefined) return [];
    return [{kind: fault.kind, expected: 'weakened', at, after: () => broken(book, fault)}];
  });
  return [
    ...faults,
    ...book.procedures.flatMap((procedure) => procedureEdits(book, procedure)),
    ...specEdits(book),
  ];
}

function procedureEdits(book: Book, procedure: Procedure): Review[] {
  const {file} = procedure.source;
  const review = (kind: string, edits: readonly Edit[], at: string): Review => ({
    kind,
    expected: 'weakened',
    at: `${file}: ${at}`,
    after: () => withEdits(book, new Map([[file, edits]])),
  });
  return procedure.steps.flatMap((step) => [
    ...step.tags.flatMap((tag) =>
      droppedPass(tag).map((edit) => review('drop a torque pass', [edit], tag.raw)),
    ),
    ...step.tags.slice(0, 1).map((tag) => {
      const at = tag.span.end + 1;
      return review(
        'add a waiver',
        [{span: {start: at, end: at}, text: ' `waive: clean-first by A. Person because it was quick`'}],
        step.number,
      );
    }),
    ...step.cautions.flatMap(({signal, span}) =>
      signal === 'notice' ? [] : [review('soften a signal word', [softened(procedure, span)], step.number)],
    ),
    ...step.tags.flatMap((tag) =>
      tag.verb === 'inspect' ? fewerDefects(tag).map((edit) => review('look for less', [edit], tag.raw)) : [],
    ),
  ]);
}

function softened({source: {text}}: Procedure, span: {start: number; end: number}): Edit {
  const word = /\*\*\w+:?\*\*:?/.exec(text.slice(span.start));
  const start = span.start + (word?.index ?? 0);
  return {span: {start, end: start + (word?.[0].length ?? 0)}, text: '**Notice:**'};
}

function droppedPass(tag: Tag): Edit[] {
  const clause = clauseOf(tag, 'in');
  if (clause?.value.type !== 'amounts' || clause.value.amounts.length < 2) return [];
  return [{span: clause.valueSpan, text: clause.value.amounts.slice(1).map(formatAmount).join(', ')}];
}

function fewerDefects(tag: Tag): Edit[] {
  const clause = clauseOf(tag, 'for');
  const parts = clause?.value.type === 'text' ? clause.value.text.split(', ') : [];
  return clause === undefined || parts.length < 2
    ? []
    : [{span: clause.valueSpan, text: parts.slice(1).join(', ')}];
}

/** What an item waits for, is shut by, or is disturbed by: one name of a list less. */
function orders(item: Item): readonly Located<string>[] {
  switch (item.kind) {
    case 'part':
      return [...item.after, ...item.blocks];
    case 'fastener':
      return [...item.after, ...item.lockAfter];
    case 'fit':
      return item.disturbedBy;
    case 'check':
      return [...item.after, ...item.disturbedBy];
    case 'system':
      return [...item.after, ...item.closedBy];
    default:
      return [];
  }
}

/** A name of a list in brackets, with the comma on one side of it. */
function withComma(text: string, {start, end}: Span): Span {
  const next = /^\s*,\s*/.exec(text.slice(end, end + 99));
  if (next !== null) return {start, end: end + next[0].length};
  const before = /,\s*$/.exec(text.slice(Math.max(0, start - 99), start));
  return {start: start - (before?.[0].length ?? 0), end};
}

/** Limits widened and cures shortened in specification and steps alike, so that no check can see it; bars; severities. */
function specEdits(book: Book): Review[] {
  const {spec} = book;
  const both = (
    kind: string,
    id: string,
    from: {start: number; end: number; file: string},
    fresh: string,
    word: 'within' | 'for',
  ) => {
    const edits = new Map<string, Edit[]>([[from.file, [{span: from, text: fresh}]]]);
    for (const {source, steps} of book.procedures) {
      const tags = steps.flatMap((step) =>
        step.tags.filter(({targets}) => targets.some((target) => target.id === id)),
      );
      const own = tags.flatMap((tag) => {
        const clause = clauseOf(tag, word);
        return clause === undefined ? [] : [{span: clause.valueSpan, text: fresh}];
      });
      if (own.length > 0) edits.set(source.file, own);
    }
    return {kind, expected: 'weakened' as const, at: id, after: () => withEdits(book, edits)};
  };
  const items = [...spec.items.values()];
  return [
    ...items.flatMap((item): Review[] => {
      if (item.kind !== 'fit' && item.kind !== 'check') return [];
      const {limits} = item;
      if (
        limits === undefined ||
        limits.value === 'unknown' ||
        limits.value.form !== 'range' ||
        limits.fromPractice
      )
        return [];
      const {low, high} = limits.value;
      const range = (lower: number) =>
        formatAmount({
          form: 'range',
          low: {...low, value: low.value * lower},
          high: {...high, value: high.value * 1.5},
        });
      const text =
        spec.files.get(limits.where.file)?.text.slice(limits.where.span.start, limits.where.span.end) ?? '';
      if (text.includes(':')) return [];
      const from = {...limits.where.span, file: limits.where.file};
      const reasoned = [{span: limits.where.span, text: `{value: ${text}, because: measured in a hurry}`}];
      return [
        both('widen a limit everywhere', item.id, from, range(1), 'within'),
        ...(low.value > 0 ? [both('shift a limit everywhere', item.id, from, range(1.25), 'within')] : []),
        {
          kind: 'state a limit with a reason',
          expected: 'weakened',
          at: item.id,
          after: () => withEdits(book, new Map([[limits.where.file, reasoned]])),
        },
      ];
    }),
    ...items.flatMap((item): Review[] => {
      const cure = item.kind === 'consumable' ? item.cure : undefined;
      if (cure === undefined || cure.value.form !== 'single') return [];
      const {span, file} = cure.where;
      const text = spec.files.get(file)?.text.slice(span.start, span.end) ?? '';
      return text.includes(':')
        ? []
        : [
            both(
              'shorten a cure in the shop',
              item.id,
              {...span, file},
              formatQuantity({...cure.value.value, value: cure.value.value.value / 2, step: 0}),
              'for',
            ),
          ];
    }),
    ...items.flatMap((item) =>
      orders(item).map(({value, where: {file, span}}): Review => {
        const text = spec.files.get(file)?.text ?? '';
        const edits = new Map([[file, [{span: withComma(text, span), text: ''}]]]);
        const at = `${item.id}: ${value}`;
        return {kind: 'ask for less order', expected: 'weakened', at, after: () => withEdits(book, edits)};
      }),
    ),
    ...spec.bars.flatMap(({where}, index): Review[] => {
      const text = spec.files.get(where.file)?.text;
      if (text === undefined) return [];
      const start = text.lastIndexOf('\n', where.span.start) + 1;
      const next = text.indexOf('\n', where.span.end - 1);
      const edits = new Map([
        [where.file, [{span: {start, end: next === -1 ? text.length : next + 1}, text: ''}]],
      ]);
      return [
        {
          kind: 'lift a bar',
          expected: 'weakened',
          at: `bar ${index + 1}`,
          after: () => withEdits(book, edits),
        },
      ];
    }),
    ...['left-unlocked', 'clean-first', 'left-slack', 'cure-short'].flatMap((name): Review[] => {
      const shop = [...spec.files.values()].find(({file}) => file.endsWith('shop.yaml'));
      if (shop === undefined || /^severity:/m.test(shop.text)) return [];
      const end = shop.text.length;
      const edits = new Map([
        [shop.file, [{span: {start: end, end}, text: `\nseverity: {${name}: information}\n`}]],
      ]);
      return [
        {kind: 'lower a severity', expected: 'weakened', at: name, after: () => withEdits(book, edits)},
      ];
    }),
  ];
}
