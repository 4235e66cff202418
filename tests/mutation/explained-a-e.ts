/** Mutants of findings from a to e that no test can kill, by file and reason. */
import {type Explained, explained} from './explained-form.js';

export const FINDINGS_A_TO_E: readonly Explained[] = [
  ...explained(
    'src/findings/alone.ts',
    'a check names what is lacking by an item that there is, and of all kinds a surface alone is on something',
    {
      "return item?.kind === 'surface' && item.on !== undefined ? [id, item.on.value] : [id];": [
        ["item?.kind === 'surface'", 'true'],
        ['item?.kind', 'item.kind'],
        ['item.on !== undefined', 'true'],
      ],
    },
  ),
  ...explained(
    'src/findings/alter-first.ts',
    'an alteration that holds has its name with it; the questions are for the compiler',
    {
      'return !fact.holds || fact.detail?.ids?.includes(value) !== true;': [
        ['fact.detail?.ids?.includes', 'fact.detail?.ids.includes'],
        ['fact.detail?.ids', 'fact.detail.ids'],
      ],
    },
  ),
  ...explained(
    'src/findings/alter-first.ts',
    'reported of no place it lasts nowhere, so that only the work is saved',
    {
      'if (bad.length === 0) continue;': [['bad.length === 0', 'false']],
    },
  ),
  ...explained(
    'src/findings/barred-material.ts',
    'a `with` names ids in every tag that is judged; the question is for the compiler',
    {
      "if (clause.word !== 'with' || clause.value.type !== 'ids') continue;": [
        ["clause.value.type !== 'ids'", 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/calibration-due.ts',
    'nothing of that name is a tool, so that it is passed over',
    {
      "if (item.kind !== 'fit' && item.kind !== 'check' && item.kind !== 'part') return [];": [
        ['[]', '["Stryker was here"]'],
      ],
      'return only === undefined || second !== undefined ? [] : [{id: only.value}];': [
        ['[]', '["Stryker was here"]'],
      ],
    },
  ),
  ...explained(
    'src/findings/caution-late.ts',
    'what is found farther on in its place is an empty text, or the same',
    {
      "const gap = rest.length - rest.replace(/^(?:[ \\t]*(?:\\r\\n|\\n|\\r)){0,2}/, '').length;": [
        ['/^(?:[ \\t]*(?:\\r\\n|\\n|\\r)){0,2}/', '/(?:[ \\t]*(?:\\r\\n|\\n|\\r)){0,2}/'],
      ],
    },
  ),
  ...explained(
    'src/findings/clean-first.ts',
    'a joint has no assembly, and no alteration leaves swarf on it; the question is for the compiler',
    {
      "if (surface.kind !== 'surface') continue;": [
        ["surface.kind !== 'surface'", 'false'],
        ["surface.kind !== 'surface'", 'false'],
      ],
    },
  ),
  ...explained('src/findings/commands.ts', 'no word is both a command and the beginning of a condition', {
    'const asked = this.#conditions().map((at) => found.findLast(({slot}) => slot < at) ?? found[0]);': [
      ['slot < at', 'slot <= at'],
    ],
  }),
  ...explained('src/findings/commands.ts', 'a word has no digit behind a letter', {
    "if (word === 'then' && !/^(?:\\d|to$)/.test(next)) return end;": [['/^(?:\\d|to$)/', '/(?:\\d|to$)/']],
    "if (word === ',' && !/^\\d/.test(next)) return end;": [['/^\\d/', '/\\d/']],
  }),
  ...explained(
    'src/findings/commands.ts',
    'what stands before and behind opens nothing, or leads to the same word again',
    {
      'for (let index = start + 1; index < this.#words.length; index++) {': [
        ['start + 1', 'start - 1'],
        ['index < this.#words.length', 'index <= this.#words.length'],
      ],
    },
  ),
  ...explained(
    'src/findings/commands.ts',
    'a word that begins otherwise is a number, a mark or a unit such as °F, which opens no command',
    {
      'return !DETERMINERS.has(word) && /^[a-z]/.test(word) && DETERMINERS.has(this.#word(start + 1));': [
        ['/^[a-z]/', '/[a-z]/'],
      ],
    },
  ),
  ...explained(
    'src/findings/commands.ts',
    'beyond the end there is no entry; the question is for the compiler',
    {
      'if (at === undefined || entry === undefined || (entry.noun && !this.#isVerb(index))) return undefined;':
        [['at === undefined', 'false']],
    },
  ),
  ...explained('src/findings/commands.ts', 'beyond the end no word ends a clause', {
    'for (let end = index + 1; end < this.#words.length; end++) {': [
      ['end < this.#words.length', 'end <= this.#words.length'],
    ],
  }),
  ...explained(
    'src/findings/cotter-size.ts',
    'the margin takes up the last figures of a conversion; no pin stands on its end',
    {
      'if (si(pin) <= si(hole) + slack) return undefined;': [
        ['si(pin) <= si(hole) + slack', 'si(pin) < si(hole) + slack'],
      ],
    },
  ),
  ...explained('src/findings/curing.ts', 'no consumable is called so, so that it is passed over', {
    "const used = fact.detail?.ids ?? (typeof asked === 'object' ? asked : []);": [
      ['[]', '["Stryker was here"]'],
    ],
  }),
  ...explained(
    'src/findings/date-bound.ts',
    'before none at all comes nothing, and the day itself is the same either way',
    {
      'return first !== undefined && first < today ? today : first;': [
        ['first !== undefined', 'true'],
        ['first < today', 'first <= today'],
      ],
    },
  ),
  ...explained(
    'src/findings/date-bound.ts',
    'nothing but a tool has a day by which it is due; the question is for the compiler',
    {
      "const dues = [...items.values()].flatMap((item) => (item.kind === 'tool' ? (item.due?.value ?? []) : []));":
        [["item.kind === 'tool'", 'true']],
    },
  ),
  ...explained('src/findings/done-anywhere.ts', 'it is at no place, so that nobody asks for it', {
    'const own = done.get(item.id) ?? {deeds: new Set(), locks: []};': [['[]', '["Stryker was here"]']],
  }),
  ...explained(
    'src/findings/endless-repeat.ts',
    'only steps with a repeat are given; the question is for the compiler',
    {
      'if (node.repeat === undefined) return;': [['node.repeat === undefined', 'false']],
    },
  ),
];
