/** Makes the parts of other engines that may stand in for one, each with what it needs before it fits. */
import {defined} from './defined.js';
import {type ItemReader, references, text} from './fields.js';
import type {Part, Substitute} from './model.js';
import {statedOf} from './raw.js';
import {type Entry, textOf} from './tree.js';

/** By the name that jobs use; empty where the part has none. */
export function substitutes(reader: ItemReader): Part['substitutes'] {
  const field = reader.raw.fields.get('substitutes');
  if (field?.value.type !== 'map') return new Map();
  return new Map(field.value.entries.map((entry) => [entry.key, substitute(reader, entry)]));
}

function substitute(reader: ItemReader, {key, keyWhere, value}: Entry): Substitute {
  const fields = new Map((value.type === 'map' ? value.entries : []).map((entry) => [entry.key, entry]));
  const inner: ItemReader = {...reader, raw: {...reader.raw, fields}};
  return {
    name: text(inner, 'name') ?? key.replaceAll('-', ' '),
    alterations: alterations(inner, key, keyWhere),
    ...defined({note: text(inner, 'note')}),
    where: keyWhere,
  };
}

/** No silence here either: that nobody thought of an alteration and that none is needed look the same. */
function alterations(
  reader: ItemReader,
  name: string,
  where: Substitute['where'],
): Substitute['alterations'] {
  const field = reader.raw.fields.get('alterations');
  const stated = field && statedOf(field.value);
  if (stated === undefined || stated.value.type === 'empty') {
    silent(reader, where, `${name} does not say its alterations`);
    return [];
  }
  if (textOf(stated.value) !== 'none') return references(reader, 'alterations', ['alteration']);
  if (textOf(stated.because) === undefined) {
    silent(reader, stated.value.where, `alterations of ${name} is none without a reason`);
  }
  return [];
}

function silent({problems, raw}: ItemReader, where: Substitute['where'], says: string): void {
  const hint = 'write alterations: [an alteration], or {value: none, because: …}';
  problems.push({name: 'spec-silent', where, says, hint, item: raw.id});
}
