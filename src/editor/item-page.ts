/** What there is to know of an item: what the specification says of it, in both unit systems, and from which source. */
import {told} from '../findings/worked-figures.js';
import type {Amount} from '../quantity/model.js';
import type {Item, ItemKind, ItemOf, Located, Specification, Specified} from '../spec/model.js';
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

/** What is told of each kind, a line a field: a field that stands here in no line is told nowhere in the editor. */
const FIELDS: {readonly [K in ItemKind]: (item: ItemOf<K>, spec: Specification) => readonly string[]} = {
  part: (item, spec) => [
    ...(item.quantity > 1 ? [line('quantity', String(item.quantity))] : []),
    ...named('closes', item.closes),
    ...named('comes after', item.after),
    ...named('blocks', item.blocks),
    ...named('needs', item.alterations),
    ...named('with', item.using),
    ...flags({
      'there from the start': item.given,
      'new each time': item.singleUse,
      reused: item.reused,
      temporary: item.temporary,
      'turned as it goes in': item.turning,
    }),
    ...stated('size', item.size, spec),
    ...one('seats in', item.seatsIn),
    ...named('hazards', item.hazards),
  ],
  surface: (item, spec) => [
    ...one('on', item.on),
    ...stated('goes together', item.assembly, spec),
    ...named('lubricant', item.lubricants, ' or '),
    ...[...item.sizes].flatMap(([place, size]) =>
      stated(place === '' ? 'size' : `size ${place}`, size, spec),
    ),
  ],
  joint: (item, spec) => [...named('between', item.between, ' and '), ...stated('seal', item.seal, spec)],
  fastener: (item, spec) => [
    ...(item.count > 1 ? [line('count', String(item.count))] : []),
    ...named('holds', item.holds),
    ...named('tightened after', item.after),
    ...stated('torque', item.torque, spec),
    ...stated('then turn', item.angle, spec),
    ...stated('passes', item.passes, spec),
    ...stated('threads', item.threads, spec),
    ...stated('lock', item.lock, spec, ' and '),
    ...stated('hole', item.hole, spec),
    ...flags({'striped with paint': item.stripe, 'new each time': item.singleUse}),
    ...stated('thread', item.thread, spec),
    ...stated('grade', item.grade, spec),
    ...stated('engagement', item.engagement, spec),
    ...stated('tapped in', item.into, spec),
  ],
  fit: (item, spec) => [
    ...named('between', item.between, ' and '),
    ...stated('limits', item.limits, spec),
    ...named('taper of', item.taperOf, ' and '),
    ...named('out-of-round of', item.outOfRoundOf, ' and '),
    ...named('read with', item.using, ' or '),
    ...named('when these are in', item.when?.installed ?? []),
    ...named('when these are tight', item.when?.tight ?? []),
    ...named('disturbed by', item.disturbedBy),
  ],
  check: (item, spec) => [
    ...stated('limits', item.limits, spec),
    ...said('expect', item.expect),
    ...named('read with', item.using, ' or '),
    ...named('made after', item.after),
    ...named('disturbed by', item.disturbedBy),
    ...named('hazards', item.hazards),
  ],
  mark: (item) => [...said('stamped', item.stamped), ...one('must match', item.matches)],
  'hold-point': (item) => [...named('asks for', item.asks), ...said('signed by', item.by)],
  system: (item, spec) => [
    ...named('holds', item.with, ' or '),
    ...stated('amount', item.amount, spec),
    ...named('joints', item.joints),
    ...named('closed by', item.closedBy),
    ...named('filled after', item.after),
    ...named('hazards', item.hazards),
  ],
  alteration: (item) => [
    ...named('of', item.of),
    ...said('does', item.does),
    ...named('with', item.using),
    ...named('hazards', item.hazards),
  ],
  tool: (item, spec) => [
    ...said('serial number', item.serial),
    ...stated('range', item.range, spec),
    ...stated('resolution', item.resolution, spec),
    ...stated('accuracy', item.accuracy, spec),
    ...one('calibration due', item.due),
  ],
  consumable: (item, spec) => [
    line('use', item.use),
    ...said('lock', item.lock),
    ...stated('cure', item.cure, spec),
    ...stated('size', item.size, spec),
    ...stated('reads', item.range, spec),
    ...stated('nut factor', item.k, spec),
    ...named('hazards', item.hazards),
  ],
};

function fieldsOf<K extends ItemKind>(
  item: ItemOf<K> & {readonly kind: K},
  spec: Specification,
): readonly string[] {
  return FIELDS[item.kind](item, spec);
}

function line(label: string, text: string): string {
  return `- ${label}: ${text}`;
}

function named(label: string, ids: readonly Located<string>[], joiner = ', '): string[] {
  return ids.length === 0 ? [] : [line(label, ids.map(({value}) => plain(value)).join(joiner))];
}

function one(label: string, value: Located<string> | undefined): string[] {
  return said(label, value?.value);
}

function said(label: string, text: string | undefined): string[] {
  return text === undefined ? [] : [line(label, plain(text))];
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
