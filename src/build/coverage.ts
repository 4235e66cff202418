/** For every item and place of the specification, which steps deal with it. */
import type {Item} from '../spec/model.js';
import {isTemporary} from '../spec/temporary.js';
import type {FactKind} from './facts.js';
import type {Ledger} from './ledger.js';
import type {StepRef} from './program.js';
import {lives} from './story.js';

/** What a build does to items, in the order in which a person asks. */
export const COVERED = [
  'installed',
  'measured',
  'tight',
  'locked',
  'striped',
  'sealed',
  'checked',
  'recorded',
  'filled',
  'witnessed',
] as const satisfies readonly FactKind[];

export type Covered = (typeof COVERED)[number];

export interface Row {
  readonly item: Item;
  /** '' for an item in one place only. */
  readonly place: string;
  /** Every step that did it here, by what it did, in build order: also those that a later step undid. */
  readonly steps: ReadonlyMap<Covered, readonly StepRef[]>;
  /** What must hold of this item at the end, and whether it does. */
  readonly due: ReadonlyMap<Covered, boolean>;
}

/** One row an item and place, in the order of the specification; tools, consumables and alterations have none. */
export function coverage(run: Ledger): Row[] {
  return [...lives(run).values()].flatMap(({item, turns, end}) => {
    const due = isTemporary(item, run.relations.spec) ? [] : dueOf(item);
    if (due.length === 0) return [];
    return [...end].map(([place, held]) => ({
      item,
      place,
      steps: new Map(
        COVERED.map((kind) => [
          kind,
          turns
            .filter((turn) => turn.kind === kind && turn.holds && turn.places.includes(place))
            .map(({action}) => action.step),
        ]),
      ),
      due: new Map(due.map((kind) => [kind, held.includes(kind)])),
    }));
  });
}

/** What is on the engine for a while only: it must be off at the end, and so is no cell of the table. */
export interface TemporaryRow {
  readonly item: Item;
  /** Steps that put it on or take it off, in build order. */
  readonly on: readonly StepRef[];
  readonly off: readonly StepRef[];
}

/** In the order of the specification, those too that no step deals with. */
export function temporaries(run: Ledger): TemporaryRow[] {
  return [...lives(run).values()].flatMap(({item, turns}) => {
    if (!isTemporary(item, run.relations.spec)) return [];
    const kind = item.kind === 'part' ? 'installed' : 'tight';
    const steps = (holds: boolean) =>
      turns.filter((turn) => turn.kind === kind && turn.holds === holds).map(({action}) => action.step);
    return [{item, on: steps(true), off: steps(false)}];
  });
}

function dueOf(item: Item): readonly Covered[] {
  switch (item.kind) {
    case 'part':
      return item.given ? [] : ['installed'];
    case 'fastener':
      return [
        ...(isAsked(item.torque?.value) ? (['tight'] as const) : []),
        ...(isAsked(item.lock?.value) ? (['locked'] as const) : []),
        ...(item.stripe ? (['striped'] as const) : []),
      ];
    case 'fit':
      return ['measured'];
    case 'joint':
      return isAsked(item.seal?.value) ? ['sealed'] : [];
    case 'check':
      return ['checked'];
    case 'mark':
      return ['recorded'];
    case 'system':
      return ['filled'];
    case 'hold-point':
      return ['witnessed'];
    default:
      return [];
  }
}

function isAsked(value: unknown): boolean {
  return value !== undefined && value !== 'none' && value !== 'unknown';
}
