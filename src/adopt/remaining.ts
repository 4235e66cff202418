/** What the specification requires and a draft does not say: of the items that it deals with, and of all the others. */
import {type Covered, coverage} from '../build/coverage.js';
import {ledger} from '../build/ledger.js';
import {actionsOf} from '../build/program.js';
import {check} from '../findings/check.js';
import type {FindingGroup} from '../findings/model.js';
import {FINDINGS} from '../findings/registry.js';
import type {Procedure} from '../procedure/model.js';
import type {Specification} from '../spec/model.js';

export interface Left {
  /** Findings about what the draft deals with, one line each. */
  readonly unfinished: readonly string[];
  /** Items that neither the draft nor another procedure of the book deals with, one line each. */
  readonly unsaid: readonly string[];
}

export function leftOver(
  draft: Procedure,
  {spec, others}: {readonly spec: Specification; readonly others: readonly Procedure[]},
): Left {
  const {findings} = check({spec, procedures: [draft], problems: []}, {alone: true});
  const unfinished = findings
    .filter(({name, where}) => MISSING.has(name) && where.file === draft.source.file)
    .map(({message}) => plain(message));
  return {unfinished: [...new Set(unfinished)], unsaid: unsaidIn(draft, spec, others)};
}

/** Groups of findings that say that something is missing or comes too late. */
const GROUPS: readonly FindingGroup[] = ['order', 'left undone', 'people'];

const MISSING: ReadonlySet<string> = new Set(
  FINDINGS.filter(({group, severity}) => GROUPS.includes(group) && severity === 'error').map(
    ({name}) => name,
  ),
);

function unsaidIn(draft: Procedure, spec: Specification, others: readonly Procedure[]): string[] {
  const run = ledger({spec, procedures: [...others, draft], problems: []});
  const dealtWith = new Set(
    [...actionsOf(run.program.parts.flatMap(({nodes}) => nodes))].map(({item}) => item.id),
  );
  const due = new Map<string, Set<string>>();
  for (const {item, due: kinds} of coverage(run)) {
    if (dealtWith.has(item.id)) continue;
    for (const [kind, holds] of kinds) {
      if (!holds) due.set(item.id, (due.get(item.id) ?? new Set()).add(DUE[kind]));
    }
  }
  return [...due].map(([id, words]) => {
    const name = spec.items.get(id)?.name ?? id;
    return plain(
      `${id}${name === id.replaceAll('-', ' ') ? '' : ` (${name})`}: to be ${[...words].join(' and ')}`,
    );
  });
}

const DUE: {readonly [kind in Covered]: string} = {
  installed: 'installed',
  measured: 'measured',
  tight: 'tightened',
  locked: 'locked',
  sealed: 'sealed',
  checked: 'checked',
  recorded: 'recorded',
  filled: 'filled',
  witnessed: 'signed for',
};

/** No mark-up: a code span in a list would read as a tag that stands outside a step. */
function plain(text: string): string {
  return text.replaceAll('`', "'").replace(/[\\*_<>[\]]/g, '\\$&');
}
