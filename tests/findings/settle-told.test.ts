/** What becomes of what a check raises: waived or told, once, in order of file and place. Every engine and rule is invented. */
import {expect, it} from 'vitest';
import {whereIn} from '../../src/build/program.js';
import {check} from '../../src/findings/check.js';
import {sourcesOf} from '../../src/findings/found-fault.js';
import type {HouseFinding} from '../../src/findings/house.js';
import {book} from '../help/example.js';

const ENGINE = 'parts:\n  block: {given: true}\n  house-lid: {given: true}\n';
const LED = 'by A. Lead because it is new';

type Name = HouseFinding['name'];

const ruleOf = (name: Name, looks: Pick<HouseFinding, 'book' | 'step' | 'group'>): HouseFinding => ({
  name,
  severity: 'warning',
  summary: 'Invented',
  why: 'Invented.',
  ...looks,
});

/** A rule that speaks of each of the words, where they stand first in the texts. */
const ofWords = (name: Name, words: readonly string[], group?: 'job') =>
  ruleOf(name, {
    ...(group && {group}),
    book({book: whole, report}) {
      for (const word of words) {
        for (const {file, text} of sourcesOf(whole).values()) {
          const start = text.indexOf(word);
          if (start < 0) continue;
          report({where: {file, span: {start, end: start + word.length}}, message: 'see here'});
          break;
        }
      }
    },
  });

/** A rule that speaks of every step, as a whole. */
const OF_STEPS = ruleOf('house-lid', {
  step: (step, {report}) => report({where: whereIn(step, step.step.span), message: 'see here'}),
});

/** Every finding as `name: "words"`, with what its fix writes. */
function lines(steps: string, house: readonly HouseFinding[], job?: string): string[] {
  const whole = book({engine: ENGINE, procedures: {'a.md': steps}, job});
  const sources = sourcesOf(whole);
  return check(whole, {house}).findings.map(({name, where, fix}) => {
    const words = sources.get(where.file)?.text.slice(where.span.start, where.span.end);
    return `${name}: ${words}${fix === undefined ? '' : `; ${fix.title}`}`;
  });
}

it.each<
  [title: string, steps: string, house: readonly HouseFinding[], lines: readonly string[], job?: string]
>([
  [
    'a step as a whole is in the step',
    `1. a \`clean: block\` \`waive: house-lid ${LED}\`\n2. b\n`,
    [OF_STEPS],
    ['house-lid: 2. b'],
  ],
  [
    'what stands below the last step is not in it',
    `1. a \`waive: house-lid ${LED}\`\n\n## Then\n\nAll is done.\n`,
    [ofWords('house-lid', ['is done'])],
    ['waiver-stale: house-lid; Take the waiver out', 'house-lid: is done'],
  ],
  [
    'what ends where its step ends is in it',
    `1. a \`waive: house-lid ${LED}\` at last\n`,
    [ofWords('house-lid', ['at last'])],
    [],
  ],
  [
    'a reason in a tag that takes none waives nothing',
    `1. a \`clean: house-lid because it is new\`\n`,
    [OF_STEPS],
    ['house-lid: 1. a `clean: house-lid because it is new`', 'clause-not-taken: because it is new'],
  ],
  [
    'what is said twice of a place is told once',
    '1. a and b\n',
    [ofWords('house-lid', ['b', 'a and', 'a and'])],
    ['house-lid: b', 'house-lid: a and'],
  ],
  [
    'the job comes first, then the engine, the shop and the procedure',
    '1. Go on.\n',
    [ofWords('house-lid', ['Go on', 'block', 'hop: {name', 'number: 1'])],
    ['house-lid: number: 1', 'house-lid: block', 'house-lid: hop: {name', 'house-lid: Go on'],
    '',
  ],
  [
    'findings of one place come by their names',
    '1. Go on.\n',
    [ofWords('house-c', ['Go on']), ofWords('house-a', ['Go on']), ofWords('house-b', ['Go on'])],
    ['house-a: Go on', 'house-b: Go on', 'house-c: Go on'],
  ],
  [
    'a waiver without a reason is not waived',
    `1. a \`waive: house-lid by A. Lead\` \`waive: waiver-without-reason ${LED}\`\n`,
    [OF_STEPS],
    [
      `house-lid: 1. a \`waive: house-lid by A. Lead\` \`waive: waiver-without-reason ${LED}\``,
      'waiver-without-reason: waive: house-lid by A. Lead',
      'waiver-stale: waiver-without-reason; Take the waiver out',
    ],
  ],
  [
    'a waiver of nearly a waiver is not mended to one',
    `1. a \`waive: waiver-stal ${LED}\`\n`,
    [],
    ['waiver-stale: waiver-stal; Take the waiver out'],
  ],
  [
    'a waiver of nearly a finding of its step is mended to it, though other steps have others',
    `1. a\n2. b \`waive: house-lip ${LED}\`\n`,
    [OF_STEPS, ofWords('house-c', ['1. a'])],
    [
      'house-c: 1. a',
      'house-lid: 1. a',
      `house-lid: 2. b \`waive: house-lip ${LED}\``,
      'waiver-stale: house-lip; Write house-lid',
    ],
  ],
  [
    'a waiver of what only a job can have is stale in a job',
    `1. a \`waive: house-c ${LED}\`\n`,
    [ofWords('house-c', [], 'job')],
    ['waiver-stale: house-c; Take the waiver out'],
    '',
  ],
  [
    'a waiver of what only a job can have is not judged without one',
    `1. a \`waive: house-c ${LED}\`\n`,
    [ofWords('house-c', [], 'job')],
    [],
  ],
])('%s', (_, steps, house, said, job) => {
  expect(lines(steps, house, job)).toEqual(said);
});

it('a finding on no item has no key for one', () => {
  const {findings} = check(book({engine: ENGINE, procedures: {'a.md': '1. a\n'}}), {house: [OF_STEPS]});
  expect(findings.map((one) => Object.keys(one))).toEqual([
    ['name', 'severity', 'where', 'message', 'story', 'related'],
  ]);
});
