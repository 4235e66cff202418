/** What the specification asks of an item in one respect, in words: the `required before` and `required now` of a change. */
import type {Item, Specification} from '../spec/model.js';
import {demandsOf} from './demands.js';
import {valueSays} from './values.js';

/** "safety-wire"; "nothing" where it asks nothing in that respect; "no such item" where it has none. */
export function requiredOf(spec: Specification, id: string, aspect: string): string {
  const item = spec.items.get(id);
  if (item === undefined) return 'no such item';
  const fields = FIELDS[aspect] ?? [aspect];
  const demands = demandsOf(item).filter((demand) => fields.some((field) => isOf(demand.aspect, field)));
  const said = demands.map((demand) =>
    demand.value.type === 'there' ? demand.aspect : `${demand.aspect} ${valueSays(demand.value)}`,
  );
  return said.length > 0 ? [...new Set(said)].join(', ') : implied(item, aspect);
}

/** What a verb, or the going of an item, puts at stake. */
const FIELDS: Readonly<Record<string, readonly string[]>> = {
  clean: ['assembly'],
  lube: ['assembly', 'lubricant', 'threads'],
  torque: ['torque', 'angle', 'passes'],
  measure: ['limits'],
  lay: ['limits', 'by'],
  cure: ['seal'],
  alter: ['alter'],
  if: ['rework'],
  repeat: ['rework'],
  item: [
    'install',
    'torque',
    'lock',
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

function isOf(aspect: string, field: string): boolean {
  return aspect === field || aspect.startsWith(`${field} `);
}

function implied(item: Item, aspect: string): string {
  return item.kind === 'fit' && aspect === 'measure' ? 'measured' : 'nothing';
}
