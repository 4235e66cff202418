/** What the specification asks of an item in one respect, in words: the `required before` and `required now` of a change. */
import type {Item, Specification} from '../spec/model.js';
import {demandsOf} from './demands.js';
import {stemOf} from './field-words.js';
import {valueSays} from './values.js';

/** "safety-wire"; "nothing" where it asks nothing in that respect; "no such item" where it has none. */
export function requiredOf(spec: Specification, id: string, aspect: string): string {
  const item = spec.items.get(id);
  if (item === undefined) return 'no such item';
  const demands = demandsOf(item);
  const stems = new Set(demands.map(stemOf));
  const own = [...stems].find((stem) => aspect.startsWith(`${stem} `)) ?? aspect;
  const fields = FIELDS[own] ?? [own];
  const asked = fields.flatMap((field) => {
    const of = demands.filter((demand) => stemOf(demand) === field || demand.aspect.startsWith(`${field} `));
    const named = of.flatMap(({about}) => (about === undefined ? [] : [about]));
    const others = of
      .filter(({about}) => about === undefined)
      .map(({aspect: one, value}) => (value.type === 'there' ? one : `${one} ${valueSays(value)}`));
    return [...others, ...(named.length === 0 ? [] : [`${field} ${named.join(', ')}`])];
  });
  return asked.length > 0 ? [...new Set(asked)].join(', ') : implied(item, aspect);
}

/** What a verb, or the going of an item, puts at stake. */
const FIELDS: Readonly<Record<string, readonly string[]>> = {
  clean: ['assembly'],
  lube: ['assembly', 'lubricant', 'threads'],
  torque: ['torque', 'angle', 'passes'],
  measure: ['limits', 'disturbed by'],
  lay: ['limits', 'by'],
  cure: ['seal'],
  alter: ['alter'],
  'looks for': ['inspect', 'check'],
  'clean-first': ['assembly'],
  'lube-first': ['assembly', 'lubricant'],
  'thread-condition': ['threads'],
  'inspect-first': ['inspect'],
  'alter-first': ['alter'],
  'single-use-reused': ['renew'],
  'install-order': ['after', 'locked after', 'holds'],
  'install-manner': ['tool', 'turn'],
  'lock-before-torque': ['torque', 'lock'],
  'measured-slack': ['installed', 'tight'],
  'cure-short': ['seal', 'cure'],
  'witnessed-early': ['ask'],
  if: ['rework'],
  repeat: ['rework'],
  item: [
    'install',
    'torque',
    'angle',
    'passes',
    'order',
    'threads',
    'lock',
    'stripe',
    'limits',
    'seal',
    'assembly',
    'check',
    'witness',
    'record',
    'fill',
    'measure',
  ],
};

function implied(item: Item, aspect: string): string {
  return item.kind === 'fit' && aspect === 'measure' ? 'measured' : 'nothing';
}
