/** Every single fault of the listed kinds that can be made in the procedures of a book. */
import type {Book} from '../../src/build/book.js';
import type {Caution, Procedure, Step, Tag, Target} from '../../src/procedure/model.js';
import {amountOf, clauseOf} from '../../src/procedure/values.js';
import {formatQuantity} from '../../src/quantity/format.js';
import type {Amount, Quantity} from '../../src/quantity/model.js';
import {isLockKind, LOCK_KINDS} from '../../src/spec/locks.js';
import type {Edit} from '../../src/text/edit.js';
import type {Span} from '../../src/text/source.js';
import {codeSpan, cut, idsOf, type Make, maker, NOT_OF_THE_ENGINE, put} from './edits.js';
import type {Fault} from './fault.js';

export function procedureFaults(book: Book): Fault[] {
  return book.procedures.flatMap((procedure) => {
    const make = maker(procedure.source.file);
    return [
      ...procedure.steps.flatMap((step) => [
        make('drop a step', verbsOf(step), wholeStep(procedure, step), idsOf(step.tags)),
        ...step.cautions.flatMap((caution) => dropCaution(make, caution)),
        ...dropRework(make, procedure, step),
        ...dropBranchTags(make, step),
        ...step.tags.flatMap((tag) => [
          ...dropTag(make, tag),
          ...dropPlaces(make, book, tag),
          ...changeTorque(make, tag),
          ...lowerLastPass(make, tag),
          ...changeLock(make, book, tag),
          ...shortenCure(make, tag),
          ...widenLimit(make, tag),
          ...useBarred(make, book, tag),
        ]),
      ]),
    ].filter(({names}) => names.length > 0);
  });
}

function dropTag(make: Make, tag: Tag): Fault[] {
  if (NOT_OF_THE_ENGINE.has(tag.verb)) return [];
  const kind = tag.verb === 'witness' ? 'drop a hold point' : 'drop a tag';
  return [make(kind, tag.verb, [cut(codeSpan(tag.span))], idsOf([tag]))];
}

function dropPlaces(make: Make, book: Book, tag: Tag): Fault[] {
  if (NOT_OF_THE_ENGINE.has(tag.verb)) return [];
  return tag.targets.flatMap((target) => {
    const all = book.spec.items.get(target.id)?.at ?? [];
    const named = target.places.length > 0 ? target.places.map(({name}) => name) : all;
    if (named.length < 2) return [];
    return named.map((gone) =>
      make(
        'drop a place',
        tag.verb,
        [
          onlyAt(
            target,
            named.filter((name) => name !== gone),
          ),
        ],
        [target.id],
      ),
    );
  });
}

function changeTorque(make: Make, tag: Tag): Fault[] {
  const to = amountOf(tag, 'to');
  const clause = clauseOf(tag, 'to');
  if (tag.verb !== 'torque' || to?.form !== 'single' || clause === undefined) return [];
  const {value, unit} = to.value;
  const names = idsOf([tag]);
  const digits = transposed(value);
  const change = (kind: string, quantity: string) =>
    make(kind, 'torque', [put(clause.valueSpan, quantity)], names);
  return [
    change('torque off by 10 %', `${Math.round(value * 1.1)} ${unit.symbol}`),
    change('torque in another unit', `${value} ${unit.symbol === 'N·m' ? 'lbf·ft' : 'N·m'}`),
    ...(digits === undefined ? [] : [change('torque with digits transposed', `${digits} ${unit.symbol}`)]),
  ];
}

function lowerLastPass(make: Make, tag: Tag): Fault[] {
  const clause = clauseOf(tag, 'in');
  if (clause?.value.type !== 'amounts') return [];
  const passes = clause.value.amounts.flatMap(single);
  const last = passes.at(-1);
  const before = passes.at(-2);
  if (last === undefined || before === undefined) return [];
  const lower = {...last, value: Math.round((last.value + before.value) / 2)};
  const text = [...passes.slice(0, -1), lower].map(formatQuantity).join(', ');
  return [make('lower the last pass', 'torque', [put(clause.valueSpan, text)], idsOf([tag]))];
}

function changeLock(make: Make, book: Book, tag: Tag): Fault[] {
  const clause = clauseOf(tag, 'with');
  const first = clause?.value.type === 'ids' ? clause.value.ids[0] : undefined;
  if (tag.verb !== 'lock' || clause === undefined || first === undefined) return [];
  const item = book.spec.items.get(first.id);
  const kind = item?.kind === 'consumable' ? item.lock : first.id;
  const other = Object.keys(LOCK_KINDS).filter((word) => isLockKind(word) && word !== kind);
  return other
    .slice(0, 2)
    .map((word) => make('change the kind of lock', 'lock', [put(clause.valueSpan, word)], idsOf([tag])));
}

function shortenCure(make: Make, tag: Tag): Fault[] {
  const clause = clauseOf(tag, 'for');
  const time = amountOf(tag, 'for');
  if (tag.verb !== 'cure' || clause === undefined || time?.form !== 'single') return [];
  const half = formatQuantity({...time.value, value: time.value.value / 2, step: 0});
  return [make('shorten a cure', 'cure', [put(clause.valueSpan, half)], idsOf([tag]))];
}

function widenLimit(make: Make, tag: Tag): Fault[] {
  const clause = clauseOf(tag, 'within');
  const limits = amountOf(tag, 'within');
  if (clause === undefined || limits === undefined) return [];
  const wider = (text: string) =>
    make('widen a limit', tag.verb, [put(clause.valueSpan, text)], idsOf([tag]));
  if (limits.form === 'most') return [wider(`max ${times(limits.high, 1.5)}`)];
  if (limits.form !== 'range') return [];
  const {low, high} = limits;
  return [
    wider(`${low.value}–${times(high, 1.5)}`),
    wider(`${+(low.value * 0.5).toPrecision(6)}–${formatQuantity(high)}`),
  ];
}

function times({value, unit}: Quantity, factor: number): string {
  return `${+(value * factor).toPrecision(6)} ${unit.symbol}`;
}

function useBarred(make: Make, book: Book, tag: Tag): Fault[] {
  const clause = clauseOf(tag, 'with');
  if (clause === undefined) return [];
  const targets = idsOf([tag]);
  return book.spec.bars
    .filter(({on}) => on.some(({value}) => targets.includes(value)))
    .flatMap(({what}) =>
      what
        .filter(({value}) => book.spec.items.get(value)?.kind === 'consumable')
        .map(({value}) => make('use a barred material', tag.verb, [put(clause.valueSpan, value)], targets)),
    );
}

function dropCaution(make: Make, caution: Caution): Fault[] {
  const words = caution.hazards.map(({word}) => word);
  return words.length === 0 ? [] : [make('drop a caution', 'hazard', [cut(caution.span)], words)];
}

function dropRework(make: Make, {source: {text}}: Procedure, step: Step): Fault[] {
  const tag = step.tags.find(({verb}) => verb === 'if');
  const first = step.steps[0];
  const last = step.steps.at(-1);
  if (tag === undefined || first === undefined || last === undefined) return [];
  const start = text.lastIndexOf('\n', first.span.start);
  return [make("drop a branch's rework", 'if', [cut({start, end: last.span.end})], idsOf([tag]))];
}

/** The `if:` of a branch, and the `repeat:` of a step below it. */
function dropBranchTags(make: Make, step: Step): Fault[] {
  const branch = step.tags.find(({verb}) => verb === 'if');
  if (branch === undefined) return [];
  const repeats = step.steps.flatMap(({tags}) => tags.filter(({verb}) => verb === 'repeat'));
  const back = repeats.flatMap(({targets}) => targets.map(({id}) => id));
  return [
    make('drop a branch', 'if', [cut(codeSpan(branch.span))], [...idsOf([branch]), ...back]),
    ...repeats.map(({span}) =>
      make(
        'drop a repeat',
        'repeat',
        [cut(codeSpan(span))],
        idsOf([branch, ...step.steps.flatMap(({tags}) => tags)]),
      ),
    ),
  ];
}

function wholeStep({source: {text}}: Procedure, step: Step): Edit[] {
  const start = text.lastIndexOf('\n', step.span.start) + 1;
  const end = text.indexOf('\n', step.span.end);
  return [cut({start, end: end === -1 ? text.length : end + 1})];
}

function onlyAt({id, span, places}: Target, names: readonly string[]): Edit {
  const end = places.length === 0 ? span.end : Math.max(span.end, ...places.map((place) => place.span.end));
  return put({start: span.start, end: closing(end, places.length > 0, span)}, `${id}[${names.join(', ')}]`);
}

/** The target's span may or may not take in its places; the bracket comes after the last of them. */
function closing(end: number, bracketed: boolean, span: Span): number {
  return bracketed && end !== span.end ? end + 1 : end;
}

function single(amount: Amount): Quantity[] {
  return amount.form === 'single' ? [amount.value] : [];
}

function transposed(value: number): number | undefined {
  const digits = String(value);
  if (!/^\d{2,}$/.test(digits)) return undefined;
  const swapped = Number(`${digits[1]}${digits[0]}${digits.slice(2)}`);
  return swapped === value ? undefined : swapped;
}

function verbsOf({tags}: Step): string {
  return tags.map(({verb}) => verb).join('+') || 'none';
}
