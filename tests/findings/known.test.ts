/** The list of known findings, without a command line: what is matched, what is settled, and how the list is written anew. */
import {describe, expect, it} from 'vitest';
import {type Candidate, readKnown, sorted} from '../../src/findings/known.js';
import {rewritten} from '../../src/findings/known-text.js';
import {meaningOf} from '../../src/findings/meaning.js';
import {source} from '../../src/text/source.js';

const ENTRY = `  - finding: clean-first
    file: plug.md
    item: seat
    because: old text
    owner: R. Tamsin
`;
const list = (...entries: readonly string[]) => `# kept\nknown:\n${entries.join('')}`;
const read = (text: string) => readKnown(source('known.yaml', text)).known;
const SEAT: Candidate = {name: 'clean-first', message: 'seat is not clean', file: 'plug.md', item: 'seat'};
const at = (extra: Partial<Candidate>): Candidate => ({...SEAT, ...extra});
const withLine = (line: string) => `${ENTRY}    ${line}\n`;
const REASON = {because: 'done by June', owner: 'B. Quill'};

const told = ({fresh, known, settled}: ReturnType<typeof sorted<Candidate>>) => ({
  fresh: fresh.length,
  known: known.map(([finding, entry]) =>
    [finding.name, finding.place, entry.owner].filter(Boolean).join(' '),
  ),
  settled: settled.map(([{finding}, found]) => `${finding} ${found}`),
});

describe('an entry', () => {
  it.each<[string, string, readonly Candidate[], ReturnType<typeof told>]>([
    ['is found', ENTRY, [SEAT], {fresh: 0, known: ['clean-first R. Tamsin'], settled: []}],
    ['is found no more', ENTRY, [], {fresh: 0, known: [], settled: ['clean-first 0']}],
    [
      'is found once more than it says',
      ENTRY,
      [SEAT, SEAT],
      {fresh: 1, known: ['clean-first R. Tamsin'], settled: []},
    ],
    [
      'is found as often as it says',
      withLine('times: 2'),
      [SEAT, SEAT],
      {fresh: 0, known: ['clean-first R. Tamsin', 'clean-first R. Tamsin'], settled: []},
    ],
    [
      'is found less often than it says',
      withLine('times: 3'),
      [SEAT, SEAT],
      {fresh: 0, known: ['clean-first R. Tamsin', 'clean-first R. Tamsin'], settled: ['clean-first 2']},
    ],
    [
      'names a place',
      withLine('place: front'),
      [at({place: 'rear'}), at({place: 'front'})],
      {fresh: 1, known: ['clean-first front R. Tamsin'], settled: []},
    ],
    ['names no place', ENTRY, [at({place: 'front'})], {fresh: 1, known: [], settled: ['clean-first 0']}],
    ['is of another item', ENTRY, [at({item: 'bore'})], {fresh: 1, known: [], settled: ['clean-first 0']}],
    ['is of another file', ENTRY, [at({file: 'b.md'})], {fresh: 1, known: [], settled: ['clean-first 0']}],
    [
      'is about no item, whatever its step is numbered now',
      ENTRY.replace('item: seat', 'says: step 2 says nothing'),
      [{name: 'clean-first', message: 'step 7b says nothing', file: 'plug.md'}],
      {fresh: 0, known: ['clean-first R. Tamsin'], settled: []},
    ],
  ])('%s', (_, entry, findings, expected) => {
    expect(told(sorted(findings, read(list(entry))))).toEqual(expected);
  });
});

describe('an entry is read', () => {
  it.each<[title: string, text: string, entries: readonly object[]]>([
    [
      'with all that it says',
      `${ENTRY}    place: front\n    says: x\n    times: 3\n`,
      [
        {
          ...{finding: 'clean-first', file: 'plug.md', item: 'seat', place: 'front', says: 'x', times: 3},
          ...{because: 'old text', owner: 'R. Tamsin'},
        },
      ],
    ],
    [
      'with as little as can be',
      '  - finding: clean-first\n',
      [{finding: 'clean-first', file: '', times: 1, because: '', owner: ''}],
    ],
    [
      'with no finding at all',
      '  - item: seat\n',
      [{finding: '', file: '', item: 'seat', times: 1, because: '', owner: ''}],
    ],
    ['unless it is none', '  - seat\n', []],
  ])('%s', (_, text, entries) => {
    const known = read(list(text)).map(({where: _where, ...entry}) => entry);
    expect(known).toStrictEqual(entries);
  });

  it.each(['known: 3\n', '# nothing\n', 'list: []\n'])('nowhere in %j', (text) => {
    expect(read(text)).toEqual([]);
  });
});

it.each<[given: Parameters<typeof meaningOf>, meaning: string]>([
  [
    [{name: 'tag-form', message: 'step 12a says nothing, and step 3 neither'}, 'a.md'],
    'step says nothing, and step neither',
  ],
  [[{name: 'tag-form', message: 'footstep 3'}, 'a.md'], 'footstep 3'],
  [[{name: 'tag-form', message: 'x', item: 'seat'}, 'a.md'], 'seat'],
  [[{name: 'tag-form', message: 'x', item: 'seat'}, 'a.md', 'bore'], 'bore'],
])('a finding means the same wherever it stands: %j', (given, meaning) => {
  expect(JSON.parse(meaningOf(...given))).toEqual(['tag-form', 'a.md', meaning, '']);
  const [{name, message}, file] = given;
  expect(JSON.parse(meaningOf({name, message, item: 'seat', place: 'front'}, file))[3]).toBe('front');
});

describe('the list, written anew,', () => {
  const anew = (text: string | undefined, findings: readonly Candidate[], isSeen = true) =>
    rewritten(text, text === undefined ? [] : read(text), findings, {reason: REASON, isSeen: () => isSeen});

  const NEW = '    because: done by June\n    owner: B. Quill\n';

  it('begins with a head of its own', () => {
    const {text, added, struck} = anew(undefined, [SEAT]);
    expect({added, struck}).toEqual({added: 1, struck: 0});
    expect(text).toMatch(/^# Findings that this shop knows of/);
    expect(text.slice(text.indexOf('known:'))).toBe(
      `known:\n  - finding: clean-first\n    file: plug.md\n    item: seat\n${NEW}`,
    );
  });

  it.each<[string, string, readonly Candidate[], boolean, [text: string, added: number, struck: number]]>([
    ['keeps what is found', list(ENTRY), [SEAT], true, [list(ENTRY), 0, 0]],
    ['strikes off what is settled', list(ENTRY), [], true, ['# kept\nknown:\n  []\n', 0, 1]],
    ['keeps what was not looked at', list(ENTRY), [], false, [list(ENTRY), 0, 0]],
    ['leaves what is no entry', list('  - seat\n', ENTRY), [], true, [list('  - seat\n'), 0, 1]],
    ['leaves what is no list', 'known: 3\n', [], true, ['known: 3\n', 0, 0]],
    [
      'keeps a line whole up to 110 characters',
      list(ENTRY.replace('old text', 'word '.repeat(18).trim())),
      [SEAT],
      true,
      [list(ENTRY.replace('old text', 'word '.repeat(18).trim())), 0, 0],
    ],
    [
      'counts down to two',
      list(withLine('times: 3')),
      [SEAT, SEAT],
      true,
      [list(withLine('times: 2')), 0, 1],
    ],
    [
      'counts down to one, and says so no more',
      list(withLine('times: 2')),
      [SEAT],
      true,
      [list(ENTRY), 0, 1],
    ],
    [
      'adds the same twice over as one entry',
      list(ENTRY),
      [SEAT, at({place: 'rear'}), at({place: 'rear'})],
      true,
      [
        list(
          ENTRY,
          `  - finding: clean-first\n    file: plug.md\n    item: seat\n    place: rear\n    times: 2\n${NEW}`,
        ),
        2,
        0,
      ],
    ],
    [
      'adds by its message what is about no item',
      list(ENTRY),
      [SEAT, {name: 'tag-form', message: 'no verb', file: 'a.md'}],
      true,
      [list(ENTRY, `  - finding: tag-form\n    file: a.md\n    says: no verb\n${NEW}`), 1, 0],
    ],
  ])('%s', (_, before, findings, isSeen, [text, added, struck]) => {
    expect(anew(before, findings, isSeen)).toEqual({text, added, struck});
  });
});
