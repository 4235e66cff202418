/** What there is to know of an item: what the specification says of it, in both unit systems, and from which source. */
import {told} from '../findings/worked-figures.js';
import type {Amount} from '../quantity/model.js';
import type {Fastener, Item, Located, Specification, Specified} from '../spec/model.js';
import {KIND_SAYS} from '../spec/sections.js';
import {code, plain} from './markdown.js';
import {preloadLines} from './preload-lines.js';

/** The item as Markdown: its name and kind, then a line a field. */
export function itemPage(item: Item, spec: Specification): string {
  const head = `**${plain(item.name)}** · ${code(item.id)}, ${KIND_SAYS[item.kind]}`;
  const places = item.at.length > 0 ? [line('places', item.at.map(plain).join(', '))] : [];
  const lines = [...places, ...fieldsOf(item, spec)];
  const figures = item.kind === 'fastener' ? preloadLines(item, spec) : [];
  const note = item.note === undefined ? [] : [plain(item.note)];
  return [head, lines.join('\n'), ...figures, ...note].filter((block) => block !== '').join('\n\n');
}

function fieldsOf(item: Item, spec: Specification): string[] {
  switch (item.kind) {
    case 'part':
      return [
        ...named('closes', item.closes),
        ...named('comes after', item.after),
        ...named('needs', item.alterations),
        ...named('with', item.using),
        ...flags({
          'new each time': item.singleUse,
          reused: item.reused,
          temporary: item.temporary,
          'turned as it goes in': item.turning,
        }),
        ...stated('size', item.size, spec),
      ];
    case 'surface':
      return [
        ...stated('goes together', item.assembly, spec),
        ...named('lubricant', item.lubricants, ' or '),
        ...[...item.sizes].flatMap(([place, size]) =>
          stated(place === '' ? 'size' : `size ${place}`, size, spec),
        ),
      ];
    case 'joint':
      return [...named('between', item.between, ' and '), ...stated('seal', item.seal, spec)];
    case 'fastener':
      return fastenerFields(item, spec);
    case 'fit':
      return [
        ...named('between', item.between, ' and '),
        ...stated('limits', item.limits, spec),
        ...named('taper of', item.taperOf, ' and '),
        ...named('out-of-round of', item.outOfRoundOf, ' and '),
        ...named('read with', item.using, ' or '),
        ...named('when these are in', item.when?.installed ?? []),
        ...named('when these are tight', item.when?.tight ?? []),
        ...named('disturbed by', item.disturbedBy),
      ];
    case 'check':
      return [
        ...stated('limits', item.limits, spec),
        ...(item.expect === undefined ? [] : [line('expect', plain(item.expect))]),
        ...named('made after', item.after),
        ...named('disturbed by', item.disturbedBy),
      ];
    case 'mark':
      return item.stamped === undefined ? [] : [line('stamped', plain(item.stamped))];
    case 'hold-point':
      return [
        ...named('asks for', item.asks),
        ...(item.by === undefined ? [] : [line('signed by', plain(item.by))]),
      ];
    case 'system':
      return [
        ...named('holds', item.with, ' or '),
        ...stated('amount', item.amount, spec),
        ...named('closed by', item.closedBy),
        ...named('filled after', item.after),
      ];
    case 'alteration':
      return [...named('of', item.of), ...(item.does === undefined ? [] : [line('does', plain(item.does))])];
    case 'tool':
      return [
        ...stated('range', item.range, spec),
        ...stated('resolution', item.resolution, spec),
        ...(item.due === undefined ? [] : [line('calibration due', plain(item.due.value))]),
      ];
    case 'consumable':
      return [
        line('use', item.use),
        ...stated('cure', item.cure, spec),
        ...stated('size', item.size, spec),
        ...named('hazards', item.hazards),
      ];
  }
}

function fastenerFields(item: Fastener, spec: Specification): string[] {
  return [
    ...(item.count > 1 ? [line('count', String(item.count))] : []),
    ...named('holds', item.holds),
    ...named('tightened after', item.after),
    ...stated('torque', item.torque, spec),
    ...stated('then turn', item.angle, spec),
    ...stated('passes', item.passes, spec),
    ...stated('threads', item.threads, spec),
    ...stated('lock', item.lock, spec, ' and '),
    ...flags({'striped with paint': item.stripe, 'new each time': item.singleUse}),
    ...stated('thread', item.thread, spec),
    ...stated('grade', item.grade, spec),
  ];
}

function line(label: string, text: string): string {
  return `- ${label}: ${text}`;
}

function named(label: string, ids: readonly Located<string>[], joiner = ', '): string[] {
  return ids.length === 0 ? [] : [line(label, ids.map(({value}) => plain(value)).join(joiner))];
}

function flags(all: Readonly<Record<string, boolean>>): string[] {
  const on = Object.entries(all).flatMap(([says, holds]) => (holds ? [says] : []));
  return on.length === 0 ? [] : [line('is', on.join(', '))];
}

/** The value with where it comes from: its source, or the shop's practice. */
function stated(
  label: string,
  value: Specified<Amount | string | readonly (Amount | string)[] | number> | undefined,
  spec: Specification,
  joiner = ' or ',
): string[] {
  if (value === undefined) return [];
  const {source, note, because, fromPractice} = value;
  const from = [
    ...(note === undefined ? [] : [plain(note)]),
    ...(because === undefined ? [] : [`because ${plain(because)}`]),
    ...(source === undefined ? [] : [plain(spec.sources.get(source)?.title ?? source)]),
    ...(fromPractice ? ['practice of the shop'] : []),
  ];
  const text = `**${valueText(value.value, spec, joiner)}**`;
  return [line(label, from.length === 0 ? text : `${text} (${from.join('; ')})`)];
}

/** In the shop's units with the other system behind it. */
export function valueText(
  value: Amount | string | readonly (Amount | string)[] | number,
  spec: Specification,
  joiner = ' or ',
): string {
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return plain(value);
  if ('form' in value) return plain(told(value, spec));
  return value.map((one) => valueText(one, spec)).join(joiner);
}
