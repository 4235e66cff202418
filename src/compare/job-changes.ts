/** What jobs say otherwise: numbers, grinds, undersizes, substitutes and options of one engine on the stand. */
import {formatAmount} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import type {Job} from '../spec/job.js';
import type {Located} from '../spec/model.js';
import type {Where} from '../text/source.js';
import type {Piece} from './model.js';

/** Jobs are matched by number. */
export function jobChanges(before: readonly Job[], now: readonly Job[]): Piece[] {
  const fresh = new Map(now.map((job) => [job.number, job]));
  const known = new Set(before.map(({number}) => number));
  return [
    ...before.flatMap((job) => {
      const other = fresh.get(job.number);
      return other === undefined
        ? [
            piece(
              {effect: 'changed', number: job.number, aspect: 'job', says: 'taken out'},
              job.where,
              undefined,
            ),
          ]
        : fieldChanges(job, other);
    }),
    ...now
      .filter(({number}) => !known.has(number))
      .map((job) =>
        piece({effect: 'changed', number: job.number, aspect: 'job', says: 'new'}, undefined, job.where),
      ),
  ];
}

interface Field {
  readonly says: string;
  readonly where: Where;
}

function fieldChanges(before: Job, now: Job): Piece[] {
  const [old, fresh] = [fieldsOf(before), fieldsOf(now)];
  return [...new Set([...old.keys(), ...fresh.keys()])].flatMap((field) => {
    const [was, is] = [old.get(field), fresh.get(field)];
    if (was?.says === is?.says) return [];
    const effect = field === 'note' ? 'reworded' : 'changed';
    const says = `${field} ${was?.says ?? 'not stated'}, now ${is?.says ?? 'not stated'}`;
    return [
      piece(
        {effect, number: now.number, aspect: field, says},
        was?.where ?? before.where,
        is?.where ?? now.where,
      ),
    ];
  });
}

function fieldsOf(job: Job): Map<string, Field> {
  const text = (value: string) => value;
  const size = (value: Amount | 'standard') => (value === 'standard' ? value : formatAmount(value));
  const fields = new Map<string, Field>();
  const add = <T>(section: string, map: ReadonlyMap<string, Located<T>>, say: (value: T) => string) => {
    for (const [id, {value, where}] of map) fields.set(`${section} ${id}`, {says: say(value), where});
  };
  add('mark', job.marks, text);
  add('grind of', job.grinds, size);
  add('undersize of', job.fitted, size);
  add('substitute for', job.substitutes, text);
  const options = job.options.map(({value}) => value).join(', ');
  if (options !== '') fields.set('options', {says: options, where: job.options[0]?.where ?? job.where});
  if (job.note !== undefined) fields.set('note', {says: job.note, where: job.where});
  return fields;
}

function piece(
  {number, ...told}: Pick<Piece, 'effect' | 'aspect' | 'says'> & {readonly number: string},
  before: Where | undefined,
  now: Where | undefined,
): Piece {
  const at = (where: Where | undefined) => (where === undefined ? [] : [{where, says: `job ${number}`}]);
  return {...told, subject: `job ${number}`, before: at(before), now: at(now)};
}
