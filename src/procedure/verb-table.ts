/** What tags can say, as a table for people: made from what each verb takes, so that it never says otherwise. */
import {type ClauseSpec, type ClauseWord, type TargetKinds, tagSpec, VERBS} from './verbs.js';

/** A Markdown table: verb, what it is said of, clauses, what it says of the engine. */
export function verbTable(): string {
  const rows = VERBS.map((verb) => {
    const {targets, clauses, needs = [], says} = tagSpec(verb);
    const cells = [`\`${verb}\``, targetsSaid(targets), clausesSaid(clauses, needs), says];
    return `| ${cells.join(' | ')} |`;
  });
  return ['| verb | said of | clauses | says |', '| --- | --- | --- | --- |', ...rows].join('\n');
}

const TARGETS: Readonly<Record<Exclude<TargetKinds, readonly unknown[]>, string>> = {
  'new-id': 'a new name for the step',
  'step-id': 'the name of a step',
  option: 'options of the engine',
  finding: 'the name of a finding',
  'hazard-word': 'words for what may hurt, in a caution',
};

function targetsSaid(targets: TargetKinds): string {
  return typeof targets === 'string' ? TARGETS[targets] : targets.join(', ');
}

type Clauses = {readonly [word in ClauseWord]?: ClauseSpec};

function clausesSaid(clauses: Clauses, needs: readonly string[]): string {
  const said = Object.entries(clauses).map(
    ([word, {says}]) => `\`${word}\` ${says}${needs.includes(word) ? ' (never left out)' : ''}`,
  );
  return said.join('; ') || '–';
}
