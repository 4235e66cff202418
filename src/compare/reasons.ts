/**
 * The reason and the note that stand beside a value. A reason can be more than words: some findings judge a value no
 * longer once it is stated with one, so that a new reason is a waiver in effect.
 */
import type {Remark} from '../build/found.js';
import type {Item, Specified} from '../spec/model.js';
import type {Effect, Piece} from './model.js';

/** Changes of reasons and notes of one item; a reason that only came with another value in `changed` is told with that. */
export function reasonChanges(item: Item, other: Item, changed: ReadonlySet<string>): Piece[] {
  const [old, fresh] = [reasoned(item), reasoned(other)];
  return [...new Set([...old.keys(), ...fresh.keys()])].flatMap((field) => {
    const [was, is] = [old.get(field), fresh.get(field)];
    const at = {
      before: [remark(item, was, field)],
      now: [remark(other, is, field)],
    };
    const piece = (effect: Effect, says: string): Piece => ({
      ...{effect, subject: other.id, item: other.id, aspect: field, says, asks: true},
      ...at,
    });
    const reason = becauseChange(item, field, was, is);
    const told = reason.filter(([effect]) => effect !== 'reworded' || !changed.has(field));
    return [...told, ...noteChange(field, was, is)].map(([effect, says]) => piece(effect, says));
  });
}

/** "because the copper washer grips": the reason of the field, where it is stated with one. */
export function reasonOf(item: Item, field: string): string | undefined {
  return reasoned(item).get(field)?.because;
}

type Told = readonly [effect: Effect, says: string];

function becauseChange(
  item: Item,
  field: string,
  was: Reasoned | undefined,
  is: Reasoned | undefined,
): Told[] {
  const [old, fresh] = [was?.because, is?.because];
  if (old === fresh) return [];
  const silenced = SILENCES[item.kind]?.[field];
  if (old !== undefined && fresh !== undefined)
    return [['reworded', `the reason of ${field} is worded anew: ${fresh}; before: ${old}`]];
  if (fresh !== undefined)
    return [
      silenced === undefined
        ? ['reworded', `${field} stated with a reason now: ${fresh}`]
        : [
            'weakened',
            `${field} stated with a reason now, so that ${silenced} no longer judges it: ${fresh}`,
          ],
    ];
  return [
    silenced === undefined
      ? ['reworded', `${field} stated without its reason now; before: ${old}`]
      : [
          'strengthened',
          `${field} stated without a reason now, so that ${silenced} judges it; before: ${old}`,
        ],
  ];
}

function noteChange(field: string, was: Reasoned | undefined, is: Reasoned | undefined): Told[] {
  if (was?.note === is?.note) return [];
  return [['reworded', `the note of ${field}: ${is?.note ?? 'none'}; before: ${was?.note ?? 'none'}`]];
}

/** The finding that a reason beside the field keeps silent, as those findings say of themselves. */
const SILENCES: {readonly [kind in Item['kind']]?: Readonly<Record<string, string>>} = {
  fit: {limits: 'gauge-too-coarse'},
  check: {limits: 'gauge-too-coarse'},
  fastener: {
    torque: 'preload-out-of-range',
    engagement: 'thread-engagement',
    thread: 'thread-unknown',
    grade: 'grade-unknown',
  },
};

type Reasoned = Pick<Specified<unknown>, 'because' | 'note' | 'where'>;

/** By field, and by field and place for sizes. What practice supplies is told where practice stands. */
function reasoned(item: Item): Map<string, Reasoned> {
  const found = new Map<string, Reasoned>();
  const add = (field: string, value: unknown) => {
    if (isReasoned(value)) found.set(field, value);
  };
  for (const [field, value] of Object.entries(item)) {
    if (value instanceof Map) for (const [place, one] of value) add(`${field} at ${place}`, one);
    else add(field, value);
  }
  return found;
}

function isReasoned(value: unknown): value is Reasoned {
  if (typeof value !== 'object' || value === null || !('where' in value) || !('value' in value)) return false;
  if ('fromPractice' in value && value.fromPractice === true) return false;
  return 'because' in value || 'note' in value;
}

function remark(item: Item, field: Reasoned | undefined, name: string): Remark {
  const said = [
    ...(field?.because === undefined ? [] : [`because ${field.because}`]),
    ...(field?.note === undefined ? [] : [`note ${field.note}`]),
  ];
  return {
    where: field?.where ?? item.where,
    says: `${item.id} in the specification: ${name}${said.length === 0 ? ' without reason or note' : `, ${said.join(', ')}`}`,
  };
}
