/** What the specification requires and a draft does not say: of the items that it deals with, and of all the others. */
import {type Covered, coverage} from '../build/coverage.js';
import {ledger} from '../build/ledger.js';
import {check} from '../findings/check.js';
import type {FindingGroup} from '../findings/model.js';
import {FINDINGS} from '../findings/registry.js';
import type {Procedure, Step} from '../procedure/model.js';
import type {Specification} from '../spec/model.js';
import type {Unfound} from './proposals.js';

/** What the draft leaves to a person. */
export interface Left {
  /** Steps, or what they command, for which the draft has neither tag nor offer, one line each. */
  readonly untold: readonly string[];
  /** Findings about what the draft deals with, one line each. */
  readonly unfinished: readonly string[];
  /** Items that neither the draft nor another procedure of the book deals with, one line each. */
  readonly unsaid: readonly string[];
}

export function leftOver(
  draft: Procedure,
  {
    spec,
    others,
    unfound,
  }: {
    readonly spec: Specification;
    readonly others: readonly Procedure[];
    readonly unfound: readonly Unfound[];
  },
): Left {
  const {findings} = check({spec, procedures: [draft], problems: []}, {alone: true});
  const silent = draft.steps.filter((step) => step.tags.length === 0 && step.steps.length === 0);
  const partly = findings.filter(({name, where: {span}}) => {
    const step = draft.steps.findLast((one) => one.span.start <= span.start && span.end <= one.span.end);
    return (
      name === 'untagged-action' && step !== undefined && step.tags.length > 0 && !isOffered(step, draft)
    );
  });
  const unfinished = findings
    .filter(({name, where}) => MISSING.has(name) && where.file === draft.source.file)
    .map(({message}) => plain(message));
  return {
    untold: [
      ...silent
        .filter((step) => !isOffered(step, draft))
        .map(({number, text}) => plain(`step ${number}: ${shortened(text)}`)),
      ...partly.map(({message}) => plain(message)),
      ...unfound.map(({step, says}) => plain(`step ${step.number} says "${shortened(says)}"`)),
    ],
    unfinished: [...new Set(unfinished)],
    unsaid: unsaidIn(draft, spec, others),
  };
}

/** The step has a tag behind a question mark. */
function isOffered({span}: Step, {source: {text}}: Procedure): boolean {
  return text.slice(span.start, span.end).includes('`? ');
}

function shortened(text: string): string {
  return text.length > 72 ? `${text.slice(0, 71).trimEnd()}…` : text;
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
  const dealtWith = new Set(run.program.parts.flatMap(({actions}) => actions.map(({item}) => item.id)));
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
  striped: 'striped',
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
