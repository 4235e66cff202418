/** `wmark figure`: the list, the page of a subject, a figure with all it takes to judge it, and slips of the keyboard. */
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {figure} from '../../src/cli/figure.js';
import {exampleText} from '../../src/cli/figure-report.js';
import {figureWords} from '../../src/cli/figure-words.js';
import {FIGURES} from '../../src/trade/figures/registry.js';
import {temporaryFolder} from '../host/temporary.js';
import {wmark} from './run.js';

/** The words of a printed call, as a shell would take them apart. */
function words(call: string): string[] {
  return [...call.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '').slice(2);
}

async function ran(...given: readonly string[]): Promise<{code: number; out: string; err: string}> {
  let [out, err] = ['', ''];
  const code = await figure(given, {
    report: (text) => {
      out += text;
    },
    aside: (text) => {
      err += text;
    },
  });
  return {code, out, err};
}

test('the list has every subject with an example, and every example runs as it is printed', async () => {
  const {code, out, err} = await ran();
  expect({code, err}).toEqual({code: 0, err: ''});
  const calls = out.split('\n').filter((line) => line.startsWith('    wmark figure '));
  expect(calls).toHaveLength(FIGURES.length);
  for (const call of calls) {
    const done = await ran(...words(call.trim()));
    expect({call, code: done.code, err: done.err}).toEqual({call, code: 0, err: ''});
    for (const heading of ['Result', 'Formula', 'Inputs as understood', 'Band', 'Source'])
      expect(done.out).toContain(`\n${heading}\n  `);
  }
});

test.each(FIGURES.map((one) => ({name: one.name, one})))('the page of $name', async ({name, one}) => {
  const {code, out, err} = await ran(name);
  expect({code, err}).toEqual({code: 0, err: ''});
  for (const option of one.options.keys()) expect(out).toContain(`\n  --${option}`);
  expect(out).toContain(exampleText(one));
  expect((await ran(name, '--help')).out).toBe(out);
});

test('no line of a result is wider than a terminal, and all in both systems', async () => {
  for (const one of FIGURES) {
    const {out} = await ran(...words(exampleText(one)));
    for (const line of out.split('\n').slice(1)) expect(line.length).toBeLessThanOrEqual(100);
    expect(out).not.toMatch(/NaN|undefined|Infinity|\[object/);
  }
});

describe('in a shell', () => {
  // TM 9-2350-261-20-1, p. 2-29 (read): 40 lbf·ft wanted, 12 in wrench, 4 in adapter: 30 lbf·ft.
  test('the example of the manual, from end to end', async () => {
    const call = ['figure', 'adapter', '--torque', '40 lbf·ft', '--wrench', '12 in', '--adapter', '4 in'];
    expect(wmark(await temporaryFolder(), ...call)).toEqual({
      code: 0,
      err: '',
      out: `adapter: what to dial on a torque wrench that has an adapter on

Result
  setting: 30.0 lbf·ft (40.7 N·m)
Formula
  S = T · L / (L + E · cos a)
Inputs as understood
  torque wanted: 40 lbf·ft (54 N·m)
  wrench, grip to drive (L): 12 in (304.8 mm)
  adapter, drive to fastener (E): 4 in (101.6 mm)
  angle (a): in line
Band
  none of its own: as good as what was put in
Source
  NAVEDTRA 14315 fig. 3-44 and TM 9-2350-261-20-1 p. 2-29 (in line); TM 55-1945-205-24-4 p.
    247-1 (folded back); TM 9-254 fig. 4-6 (at an angle)
Mind
  Holds only where the hand pulls at the centre of the grip; never slip a pipe over the handle.
    A straight socket extension on the drive takes no correction.
`,
    });
  });

  test('an estimate says so, who outranks it and who approves it', async () => {
    const {out} = wmark(await temporaryFolder(), 'figure', 'ring-gap', '--bore', '100 mm');
    expect(out).toContain('least gap: 0.300–0.400 mm (0.01182–0.01574 in)');
    expect(out.replace(/\s+/g, ' ')).toContain(
      "The maker's figure outranks this one. Where there is none, this is an estimate, which the shop lead must approve",
    );
  });

  test.each([
    {name: 'the list', call: [], out: 'wmark figure ring-gap --bore "4.000 in"'},
    {name: 'without quotes', call: ['ring-gap', '--bore', '4.000', 'in'], out: '0.0120–0.0160 in'},
    {name: 'with a sign', call: ['ring-gap', '--bore=4.000 in'], out: '0.0120–0.0160 in'},
    {
      name: 'a negative value',
      call: ['chamber', '--bore', '4 in', '--stroke', '3.48 in', '--ratio', '9.5', '--dish', '-5 cc'],
      out: '89.3 cc',
    },
    {name: 'help of a subject', call: ['adapter', '-h'], out: '--angle (may be left out)'},
  ])('$name', async ({call, out}) => {
    const done = wmark(await temporaryFolder(), 'figure', ...call);
    expect({code: done.code, err: done.err}).toEqual({code: 0, err: ''});
    expect(done.out).toContain(out);
  });

  test.each([
    {call: ['ringgap', '--bore', '4 in'], err: 'no figure is called ringgap; did you mean ring-gap?'},
    {call: ['xyzzy'], err: 'no figure is called xyzzy; `wmark figure` lists them all'},
    {call: ['ring-gap', '--boer', '4 in'], err: 'ring-gap: there is no option --boer; did you mean --bore?'},
    {call: ['ring-gap', '--boer'], err: 'ring-gap: there is no option --boer; did you mean --bore?'},
    {call: ['ring-gap', '--bore'], err: 'ring-gap: --bore has no value; write --bore "4.000 in"'},
    {
      call: ['ring-gap', '--bore', '4.000'],
      err: 'ring-gap: --bore: 4.000 has no unit where a length is due; write it in in or mm',
    },
    {call: ['ring-gap', '4.000 in'], err: 'ring-gap: "4.000 in" stands behind no option; it takes --bore'},
    {
      call: ['ring-gap', '-bore', '4 in'],
      err: 'ring-gap: "-bore" stands behind no option; did you mean --bore?',
    },
    {call: ['--bore', '4 in'], err: 'figure needs a subject before its options; `wmark figure` lists them'},
    {
      call: ['adapter', '--torque', '85 lbf·ft'],
      err: 'adapter: --wrench is missing: from the middle of the grip to the drive; write --wrench "18 in"',
    },
    {
      call: ['ring-gap', '--bore', '4 lb'],
      err: 'ring-gap: --bore: lb is a mass where a length is due; write in or mm',
    },
    {call: ['\u001B[31m'], err: 'no figure is called \\u001b[31m; `wmark figure` lists them all'},
    {
      call: ['ring-gap', '--bore', '\u001B[31m'],
      err: 'ring-gap: --bore: "\\u001b[31m" does not start with a number; write a value as 85 lbf·ft, 0.0015–0.0025 in, 2.4995 ±0.0005 in, +0.001/-0.000 or max 5 lbf·ft',
    },
  ])('$err', async ({call, err}) => {
    expect(wmark(await temporaryFolder(), 'figure', ...call)).toEqual({
      code: 2,
      out: '',
      err: `wmark: ${err}\n`,
    });
  });

  test('help says how it is used', async () => {
    const {code, out} = wmark(await temporaryFolder(), 'help', 'figure');
    expect(code).toBe(0);
    expect(out).toContain('wmark figure adapter --torque');
  });
});

describe('words', () => {
  const name = fc.stringMatching(/^[a-z][a-z-]{0,12}$/).filter((one) => one !== 'help');
  const value = fc.stringMatching(/^[0-9.]{1,6} [a-z]{1,5}$/);

  test('however a value is written, quoted, in parts or with a sign, it is the same', () => {
    fc.assert(
      fc.property(name, fc.array(fc.tuple(name, value), {maxLength: 5}), (subject, pairs) => {
        const quoted = figureWords([subject, ...pairs.flatMap(([option, text]) => [`--${option}`, text])]);
        const parts = figureWords([
          subject,
          ...pairs.flatMap(([option, text]) => [`--${option}`, ...text.split(' ')]),
        ]);
        const signs = figureWords([subject, ...pairs.map(([option, text]) => `--${option}=${text}`)]);
        expect(parts).toEqual(quoted);
        expect(signs).toEqual(quoted);
        expect(quoted.subject).toBe(subject);
        const total = [...quoted.given.values()].reduce((sum, texts) => sum + texts.length, 0);
        expect(total).toBe(pairs.length);
      }),
    );
  });

  test('any words at all are answered without a throw', async () => {
    const some = fc.oneof(
      fc.string(),
      fc.constantFrom('--bore', '--help', '--', '--=', '-', 'ring-gap', 'adapter', '4 in'),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(some, {maxLength: 6}), async (given) => {
        const {code, out, err} = await ran(...given);
        expect([0, 2]).toContain(code);
        expect(code === 0 ? err : out).toBe('');
      }),
    );
  });
});
