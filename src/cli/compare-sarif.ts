/** A comparison as SARIF: every change that means something to the engine is a result, and so is every finding that it brings. */
import type {Effect} from '../compare/model.js';
import type {ChangeJson} from './compare-report.js';
import type {CompareJson} from './compare-shape.js';
import {requiredText, unseenText} from './compare-text.js';
import {findingResult, findingRules} from './findings-sarif.js';
import {type Level, type SarifResult, type SarifRule, sarifLog} from './sarif.js';

export function compareSarif(json: CompareJson): string {
  const changes = json.books.flatMap(({changes: all}) => all.flatMap(changeResult));
  const brought = json.books.flatMap((book) => book.brought.map((finding) => findingResult(finding)));
  return sarifLog([...RULES, ...findingRules()], [...changes, ...brought], json.unseen.map(unseenText));
}

type Told = Exclude<Effect, 'reworded'>;

const LEVEL: {readonly [effect in Told]: Level} = {
  weakened: 'warning',
  strengthened: 'note',
  changed: 'note',
};

const SAYS: {readonly [effect in Told]: string} = {
  weakened: 'Less is asked, done, checked or warned of than before',
  strengthened: 'More is asked, done, checked or warned of than before',
  changed: 'Something is asked or done otherwise than before',
};

const RULES: readonly SarifRule[] = (['weakened', 'strengthened', 'changed'] as const).map((id) => ({
  id,
  says: SAYS[id],
  why: 'A reviewer should know what a change means for the engine, and not only which lines moved.',
  level: LEVEL[id],
}));

/** A rewording is no result: no tag or value changed, and the words are for the reviewer to read. */
function changeResult(change: ChangeJson): SarifResult[] {
  const {effect, message, aspect, before, now, fingerprint, item} = change;
  const place = now.at[0] ?? headOf(before.at[0]);
  if (effect === 'reworded' || place === undefined) return [];
  const asked = item === null ? '' : ` (required ${requiredText(change)})`;
  return [
    {
      ruleId: effect,
      level: LEVEL[effect],
      message: `${message}${asked}`,
      place,
      related: [
        ...before.at.map((one) => ({...one, message: `before: ${one.message}`})),
        ...now.at.map((one) => ({...one, message: `now: ${one.message}`})),
      ],
      fingerprint,
      properties: {aspect, ...(item !== null && {item})},
    },
  ];
}

/** What is gone stands at no line of the new file: its head is pointed at, and the old line is told beside it. */
function headOf(old: ChangeJson['now']['at'][number] | undefined) {
  return old && {...old, line: 1, column: 1, endLine: 1, endColumn: 1};
}
