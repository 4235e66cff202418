/** Faults of the means: a wrench or gauge that cannot do it, a barred tool, a lock of another size, an angle off. */
import type {Book} from '../../src/build/book.js';
import type {Tag} from '../../src/procedure/model.js';
import {amountOf, clauseOf} from '../../src/procedure/values.js';
import {formatQuantity} from '../../src/quantity/format.js';
import type {Amount, Quantity} from '../../src/quantity/model.js';
import {itemsOfKind} from '../../src/spec/items.js';
import type {Tool} from '../../src/spec/model.js';
import {cut, idsIn, idsOf, type Make, maker, put} from './edits.js';
import type {Fault} from './fault.js';

export function toolFaults(book: Book): Fault[] {
  return book.procedures.flatMap(({source, steps}) => {
    const make = maker(source.file);
    return steps.flatMap(({tags}) =>
      tags.flatMap((tag) => [
        ...otherWrench(make, book, tag),
        ...otherGauge(make, book, tag),
        ...barredTool(make, book, tag),
        ...withoutTool(make, book, tag),
        ...offAngle(make, tag),
        ...withoutUnit(make, tag),
        ...passesSwapped(make, tag),
      ]),
    );
  });
}

/** The first other wrench of the shop whose marked range the torque lies outside. */
function otherWrench(make: Make, book: Book, tag: Tag): Fault[] {
  const using = idsIn(tag, 'using');
  const to = amountOf(tag, 'to');
  if (tag.verb !== 'torque' || using === undefined || to?.form !== 'single') return [];
  const other = toolsOf(book).find(
    ({id, range}) =>
      !using.ids.includes(id) && range !== undefined && lies(to.value, range.value) === 'outside',
  );
  return other === undefined
    ? []
    : [make('use a wrench out of its range', 'torque', [put(using.span, other.id)], idsOf([tag]))];
}

/** The first gauge of the shop that is not among those which the specification names. */
function otherGauge(make: Make, book: Book, tag: Tag): Fault[] {
  const using = idsIn(tag, 'using');
  const item = book.spec.items.get(tag.targets[0]?.id ?? '');
  if (tag.verb !== 'measure' || using === undefined || item?.kind !== 'fit') return [];
  const named = item.using.map(({value}) => value);
  const other = toolsOf(book).find(({id, gauge}) => gauge && !named.includes(id) && !using.ids.includes(id));
  return other === undefined
    ? []
    : [make('measure with another gauge', 'measure', [put(using.span, other.id)], idsOf([tag]))];
}

function barredTool(make: Make, book: Book, tag: Tag): Fault[] {
  const targets = idsOf([tag]);
  if (tag.verb !== 'install' && tag.verb !== 'torque') return [];
  const using = idsIn(tag, 'using');
  const end = {start: tag.span.end, end: tag.span.end};
  return book.spec.bars
    .filter(({on}) => on.length === 0 || on.some(({value}) => targets.includes(value)))
    .flatMap(({what}) => what.filter(({value}) => book.spec.items.get(value)?.kind === 'tool'))
    .map(({value}) => {
      const edit = using === undefined ? put(end, ` using ${value}`) : put(using.span, value);
      return make('use a barred tool', tag.verb, [edit], [...targets, value]);
    });
}

/** Only what the specification asks for can be missed. */
function withoutTool(make: Make, book: Book, tag: Tag): Fault[] {
  const clause = clauseOf(tag, 'using');
  const asked = tag.targets.some(({id}) => {
    const item = book.spec.items.get(id);
    return item?.kind === 'part' && item.using.length > 0;
  });
  if (tag.verb !== 'install' || clause === undefined || !asked) return [];
  return [make('drop a tool that is asked for', 'install', [cut(clause.span)], idsOf([tag]))];
}

function offAngle(make: Make, tag: Tag): Fault[] {
  const clause = clauseOf(tag, 'turn');
  const angle = amountOf(tag, 'turn');
  if (clause === undefined || angle?.form !== 'single') return [];
  const more = formatQuantity({...angle.value, value: Math.round(angle.value.value * 1.1), step: 1});
  return [make('angle off by 10 %', tag.verb, [put(clause.valueSpan, more)], idsOf([tag]))];
}

function withoutUnit(make: Make, tag: Tag): Fault[] {
  const clause = clauseOf(tag, 'to');
  const to = amountOf(tag, 'to');
  if (clause === undefined || to?.form !== 'single') return [];
  // What is wrong is the number, and that is what is named.
  const bare = String(to.value.value);
  return [make('drop a unit', tag.verb, [put(clause.valueSpan, bare)], [...idsOf([tag]), bare])];
}

function passesSwapped(make: Make, tag: Tag): Fault[] {
  const clause = clauseOf(tag, 'in');
  if (clause?.value.type !== 'amounts' || clause.value.amounts.length < 3) return [];
  const [first, second, ...rest] = clause.value.amounts.flatMap((one) =>
    one.form === 'single' ? [one.value] : [],
  );
  if (first === undefined || second === undefined || first.value === second.value) return [];
  const text = [second, first, ...rest].map(formatQuantity).join(', ');
  return [make('swap two passes', 'torque', [put(clause.valueSpan, text)], idsOf([tag]))];
}

function toolsOf({spec}: Book): readonly Tool[] {
  return itemsOfKind(spec, 'tool');
}

function lies({value, unit}: Quantity, range: Amount): 'outside' | 'inside' | 'elsewhere' {
  if (range.form !== 'range' || range.low.unit.dimension !== unit.dimension) return 'elsewhere';
  const here = value * unit.factor;
  const inside =
    here >= range.low.value * range.low.unit.factor && here <= range.high.value * range.high.unit.factor;
  return inside ? 'inside' : 'outside';
}
