/** What a book amounts to, in numbers. */
import type {Book} from '../build/book.js';
import type {Ledger} from '../build/ledger.js';
import type {Item} from '../spec/model.js';
import type {Finding} from './model.js';

export interface Summary {
  readonly procedures: number;
  readonly steps: number;
  readonly tags: number;
  /** False where the specification cannot be read whole: what is in it and covered nobody knows, and no item is counted. */
  readonly judged: boolean;
  /** Items of the engine that a build must deal with: parts not given, surfaces, joints, fasteners, fits, marks, checks, hold points, systems. */
  readonly items: number;
  /** Those of them that some step deals with. */
  readonly covered: number;
  /** Ids of the others, in the order of the specification. */
  readonly uncovered: readonly string[];
  readonly errors: number;
  readonly warnings: number;
}

export function summarise(book: Book, run: Ledger, findings: readonly Finding[]): Summary {
  const judged = book.spec.broken !== true;
  const items = judged ? [...book.spec.items.values()].filter(mustBeDealtWith) : [];
  const touched = new Set<Item>();
  for (const {actions} of run.program.parts) for (const {item} of actions) touched.add(item);
  const uncovered = items.filter((item) => !touched.has(item)).map(({id}) => id);
  const steps = book.procedures.flatMap((procedure) => procedure.steps);
  return {
    procedures: book.procedures.length,
    steps: steps.length,
    tags: steps.reduce((sum, {tags}) => sum + tags.length, 0),
    judged,
    items: items.length,
    covered: items.length - uncovered.length,
    uncovered,
    errors: findings.filter(({severity}) => severity === 'error').length,
    warnings: findings.filter(({severity}) => severity === 'warning').length,
  };
}

function mustBeDealtWith(item: Item): boolean {
  if (item.kind === 'part') return !item.given;
  return item.kind !== 'tool' && item.kind !== 'consumable' && item.kind !== 'alteration';
}
