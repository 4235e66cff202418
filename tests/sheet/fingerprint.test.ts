/** The fingerprint, against published digests, and what does and does not change it. */
import {createHash} from 'node:crypto';
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {bookFingerprint, digest, normalised} from '../../src/sheet/fingerprint.js';
import {book} from '../help/example.js';

describe('digest', () => {
  /** FIPS 180-2, appendix B, examples 1 and 2; the empty message from NIST's SHA test vectors (SHA256ShortMsg.rsp). */
  const published = [
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ] as const;
  test.each(published)('of %j', async (text, hex) => {
    expect(await digest(text)).toBe(hex);
  });

  test('agrees with another implementation on any text', async () => {
    const texts = fc.string({unit: 'binary'});
    await fc.assert(
      fc.asyncProperty(texts, async (text) => {
        expect(await digest(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
      }),
    );
  });
});

const ENGINE = 'parts:\n  pump: {name: oil pump}\n';
const STEPS = '1. Fit the pump. `install: pump`\n2. Größe prüfen.\n';

async function printOf(procedures: Record<string, string>, engine = ENGINE): Promise<string> {
  return bookFingerprint(book({engine, procedures}));
}

describe('a book’s fingerprint', () => {
  test.each([
    ['line ends of another system', STEPS.replaceAll('\n', '\r\n')],
    ['a byte-order mark', `\uFEFF${STEPS}`],
    ['blanks at the ends of lines', STEPS.replaceAll('\n', ' \t\n')],
    ['blank lines at the end', `${STEPS}\n\n`],
    ['no line end at the end', STEPS.trimEnd()],
    ['letters composed otherwise', STEPS.normalize('NFD')],
  ])('is blind to %s', (_, text) => {
    expect(normalised(text)).toBe(normalised(STEPS));
  });

  test('is 64 hexadecimal digits, the same every time and under any file name', async () => {
    const print = await printOf({'a.md': STEPS}, `${ENGINE}`);
    expect(print).toMatch(/^[0-9a-f]{64}$/);
    const made = book({engine: ENGINE, procedures: {'a.md': STEPS}});
    const moved = {
      ...made,
      procedures: made.procedures.map((one) => ({...one, source: {...one.source, file: '/elsewhere/a.md'}})),
    };
    expect(await bookFingerprint(moved)).toBe(print);
  });

  test.each([
    ['a word', {'a.md': STEPS.replace('Fit', 'Drop')}, ENGINE],
    ['the order of lines', {'a.md': STEPS.split('\n').reverse().join('\n')}, ENGINE],
    ['indentation', {'a.md': STEPS.replace('2. ', '   2. ')}, ENGINE],
    ['the specification', {'a.md': STEPS}, ENGINE.replace('oil pump', 'water pump')],
    ['another procedure', {'a.md': STEPS, 'b.md': STEPS}, ENGINE],
  ])('changes with %s', async (_, procedures, engine) => {
    expect(await printOf(procedures, engine)).not.toBe(await printOf({'a.md': STEPS}));
  });

  test('changes with the order of the build', async () => {
    const made = book({engine: ENGINE, procedures: {'a.md': STEPS, 'b.md': '1. Stop.\n'}});
    const turned = {...made, procedures: [...made.procedures].reverse()};
    expect(await bookFingerprint(turned)).not.toBe(await bookFingerprint(made));
  });

  test('does not change with the order in which YAML files were read', async () => {
    const made = book({engine: ENGINE, procedures: {'a.md': STEPS}});
    const turned = {...made, spec: {...made.spec, files: new Map([...made.spec.files].reverse())}};
    expect(await bookFingerprint(turned)).toBe(await bookFingerprint(made));
  });

  test('normalising twice is normalising once', () => {
    fc.assert(
      fc.property(fc.string({unit: 'binary'}), (text) => {
        expect(normalised(normalised(text))).toBe(normalised(text));
      }),
    );
  });
});
