/** The list of explained mutants stays true to the code that it speaks of. */
import {readFileSync} from 'node:fs';
import {expect, test} from 'vitest';
import {EXPLAINED} from './explained.js';

test.each(EXPLAINED.map((one) => [`${one.file}: ${one.line} with ${one.becomes}`, one] as const))(
  '%s',
  (_, one) => {
    const lines = readFileSync(one.file, 'utf8').split('\n');
    expect(lines.map((line) => line.trim())).toContain(one.line);
    expect(one.line).toContain(one.code.split('\n')[0]);
    expect(one.becomes).not.toBe(one.code);
    expect(one.because).toMatch(/\S+ \S+ \S+/);
  },
);
