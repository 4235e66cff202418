/** The coverage of a book: what is counted, what is temporary, and what cannot be judged. */
import {describe, expect, it} from 'vitest';
import {coverage, temporaries} from '../../src/build/coverage.js';
import {ledger} from '../../src/build/ledger.js';
import {coverageHtml} from '../../src/cli/coverage-html.js';
import {coverageMarkdown} from '../../src/cli/coverage-markdown.js';
import {coverageJson, coverageText} from '../../src/cli/coverage-report.js';
import {book} from '../help/example.js';

const ENGINE = `
parts:
  block: {given: true}
  cap: {}
  pin: {temporary: true}
  plate: {temporary: true}
fasteners:
  plate-bolts: {holds: [plate], torque: 30 lbf·ft, threads: dry, lock: {value: none, because: for a while}}
`;

const STEPS = `
1. In. \`install: pin\`
2. On. \`install: cap\`
3. Out. \`remove: pin\`
`;

function tableOf(engine: string, steps = STEPS, unread: readonly string[] = []) {
  const made = book({engine, procedures: {'p.md': steps}});
  const where = made.spec.engine.where;
  const whole = {...made, unread: unread.map((value) => ({value, where}))};
  const run = ledger(whole);
  return coverageJson('engine.yaml', whole, {rows: coverage(run), temporary: temporaries(run)});
}

describe('the coverage of a book', () => {
  it('names what is temporary, and counts none of it', () => {
    const table = tableOf(ENGINE);
    expect([table.due, table.missing]).toEqual([1, 0]);
    expect(table.temporary).toEqual([
      {item: 'pin', name: 'pin', in: ['1.1'], out: ['1.3']},
      {item: 'plate', name: 'plate', in: [], out: []},
      {item: 'plate-bolts', name: 'plate bolts', in: [], out: []},
    ]);
    const says =
      'Temporary, and not counted: pin (in at 1.1, out at 1.3), plate (never in), plate-bolts (never in)';
    for (const form of [coverageText(table), coverageMarkdown([table]), coverageHtml([table])])
      expect(form).toContain(says);
  });

  it('counts what is temporary as on while it is in or tight, whatever else is done to it', () => {
    const steps = [
      'install: plate',
      'torque: plate-bolts to 30 lbf·ft',
      'clean: plate',
      'inspect: plate',
      'lock: plate-bolts',
      'loosen: plate-bolts',
      'remove: plate',
    ];
    const text = steps.map((tag, at) => `${at + 1}. Do it. \`${tag}\``).join('\n');
    expect(tableOf(ENGINE, `\n${text}\n`).temporary.slice(1)).toEqual([
      {item: 'plate', name: 'plate', in: ['1.1'], out: ['1.7']},
      {item: 'plate-bolts', name: 'plate bolts', in: ['1.2'], out: ['1.6']},
    ]);
  });

  it('says nothing of what is temporary where nothing is', () => {
    expect(coverageText(tableOf('parts: {cap: {}}\n'))).not.toContain('emporary');
  });

  it.each([
    ['a specification that cannot be read whole', `${ENGINE}marks [number]\n`, []],
    ['a procedure that cannot be read', ENGINE, ['q.md']],
  ])('of %s is not judged: nothing is done or missing', (_, engine, unread) => {
    const table = tableOf(engine, '\n1. Do it.\n', unread);
    expect(table).toMatchObject({judged: false, due: 0, missing: 0});
    expect(coverageText(table)).not.toContain('MISSING');
    expect(coverageText(table)).toContain('Not judged: a file of this book cannot be read whole');
    expect(coverageText(tableOf(ENGINE, '\n1. Do it.\n'))).toContain('MISSING');
  });
});
