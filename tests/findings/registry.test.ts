/** The registry, the folder and the documentation say the same: one file a finding, named after it, with every part of its page. */
import {readdirSync, readFileSync} from 'node:fs';
import {describe, expect, it} from 'vitest';
import {findingList, findingPage, findingTable} from '../../src/findings/page.js';
import {FINDINGS} from '../../src/findings/registry.js';

const FOLDER = new URL('../../src/findings/', import.meta.url);

/** Files that define a finding: one exported constant of that type. */
function defined(): {file: string; name: string | undefined; constant: string}[] {
  return readdirSync(FOLDER)
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => {
      const text = readFileSync(new URL(file, FOLDER), 'utf8');
      return [...text.matchAll(/^export const (\w+): FindingKind = \{/gm)].map(([, constant = '']) => ({
        file,
        constant,
        name: /^ {2}name: '([^']*)',$/m.exec(text)?.[1],
      }));
    });
}

describe('the registry', () => {
  it('holds what the folder defines, each once', () => {
    const names = FINDINGS.map(({name}) => name);
    expect([...names].sort()).toEqual(
      defined()
        .map(({name}) => name)
        .sort(),
    );
    expect(new Set(names).size).toBe(names.length);
  });

  it('finds each finding in the file, and under the constant, of its name', () => {
    for (const {file, name = '', constant} of defined()) {
      expect(file).toBe(`${name}.ts`);
      expect(constant).toBe(name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase()));
    }
  });

  it('has a finding for every problem that a reader may report', () => {
    const text = readFileSync(new URL('../../src/text/problem.ts', import.meta.url), 'utf8');
    const union = /export type ProblemName =([^;]*);/.exec(text)?.[1] ?? '';
    const problems = [...union.matchAll(/'([^']*)'/g)].map(([, name]) => name);
    expect(problems.length).toBeGreaterThan(10);
    const reported = FINDINGS.filter(({fromReading}) => fromReading).map(({name}) => name);
    expect([...reported].sort()).toEqual([...problems].sort());
  });
});

describe.each(FINDINGS.map((kind) => [kind.name, kind] as const))('%s', (name, kind) => {
  it('has a kebab-case name', () => {
    expect(name).toMatch(/^[a-z]+(?:-[a-z]+)*$/);
  });

  it('says what, why and from where in plain sentences', () => {
    expect(kind.summary).toMatch(/^[A-Z].*[^.]$/);
    expect(kind.summary.length).toBeLessThanOrEqual(120);
    expect(kind.why).toMatch(/^[A-Z].*\.$/s);
    expect(kind.source).toMatch(/\S.*[^.]$/);
  });

  it('has a page with every part', () => {
    const page = findingPage(kind);
    const headings = [...page.matchAll(/^#+ .*$/gm)].map(([heading]) => heading);
    const example = kind.example
      ? [
          ...(kind.example.shop ? ['## shop.yaml of the example'] : []),
          '## engine.yaml of the example',
          ...(kind.example.job ? ['## The job of the example, below its head'] : []),
          '## Wrong',
          '## Right',
        ]
      : [];
    expect(headings).toEqual([`# ${name}`, '## Why', ...example, '## How to silence it', '## Source']);
    for (const part of [kind.summary, kind.why, kind.source, kind.severity, `waive: ${name}`]) {
      expect(page).toContain(part);
    }
    if (kind.example) expect(page).toContain(kind.example.wrong.trim());
  });
});

describe('the list and the table', () => {
  it('name every finding', () => {
    for (const {name} of FINDINGS) {
      expect(findingList(FINDINGS)).toContain(`  ${name} `);
      expect(findingTable(FINDINGS)).toContain(`\`${name}\``);
    }
  });
});
