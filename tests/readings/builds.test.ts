/** Which records are of one build. */
import {expect, test} from 'vitest';
import {buildsOf, nameOfBuild} from '../../src/readings/builds.js';
import type {BuildRecord} from '../../src/readings/record.js';

const NONE: BuildRecord = {record: 1, engine: 'four', sheets: []};

test.each<[string, readonly Partial<BuildRecord>[], readonly string[]]>([
  ['one job', [{job: '1204'}, {job: '1204'}], ['1204']],
  ['one job, written otherwise', [{job: 'A 1204'}, {job: 'a1204'}], ['A 1204']],
  ['one job, and its engine number known later', [{job: '7'}, {job: '7', engineNumber: 'N1'}], ['7']],
  [
    'two jobs of one engine number',
    [
      {job: '1', engineNumber: 'N1'},
      {job: '2', engineNumber: 'N1'},
    ],
    ['1', '2'],
  ],
  ['one engine number without a job', [{engineNumber: 'N1'}, {engineNumber: 'n 1'}], ['N1']],
  [
    'the same number of two engines',
    [{engineNumber: 'N1'}, {engine: 'twin', engineNumber: 'N1'}],
    ['N1', 'N1'],
  ],
  ['neither job nor number', [{}, {}], ['a0', 'a1']],
  ['an empty number', [{engineNumber: ''}, {engineNumber: ''}], ['a0', 'a1']],
])('%s', (_, records, names) => {
  const builds = buildsOf(
    records.map((record, index) => ({file: `a${index}`, record: {...NONE, ...record}})),
  );
  expect(builds.map(nameOfBuild)).toEqual(names);
});
