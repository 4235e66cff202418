/** A book as files, with a job, pictures and a record, in which every text that a person may write is hostile. */
import {readFile} from 'node:fs/promises';
import {join} from 'node:path';

/** Drives a terminal, turns text round, hides, breaks lines, or breaks out of a form of report. */
export const HOSTILE = [
  '\u001B[31mred\u001B[2J\u001B]0;title\u0007',
  '\u001B]8;;http://attack.example/\u001B\\link\u001B]8;;\u001B\\',
  '\u009B31mC1\u009D0;title\u009C\u0090q\u009C',
  '\u202Edrawkcab\u202C\u2066x\u2069\u200F\u061C',
  'zero\u200Bwidth\u2060\uFEFF\u00AD\u{E0041}',
  'line\u2028para\u2029end\u0085\u000B\u000C',
  'bell\u0007del\u007Fback\u0008nul-\u0001',
  '"><script>hit()</script>&amp;<![CDATA[ ]]> --> */',
  '::error file=x,line=1::gotcha%0A##vso[task.setvariable]x\u0000'.replaceAll('\u0000', ''),
  '=HYPERLINK("http://attack.example/","x")',
  '| a | b |`` `code` <!-- x --> [l](javascript:hit) ![p](http://attack.example/p.png) #{panic()} $x$ #import "x"',
  '\u{1F469}\u200D\u{1F527}\u{10FFFF}\u{1D518}\uFFFE\u0E33\u0301\u0301\u0301',
] as const;

/** All of them, the one of this number first. */
export function hostile(at: number): string {
  const first = at % HOSTILE.length;
  return [...HOSTILE.slice(first), ...HOSTILE.slice(0, first)].join(' ');
}

/** A flow scalar of YAML that holds any text. */
export function quoted(text: string): string {
  return JSON.stringify(text).replace(
    /[\u007F-\uFFFF]/g,
    (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** Without what a Markdown line or a code span cannot hold. */
function inLine(at: number): string {
  return hostile(at).replaceAll('`', "'").replaceAll('\r', '').replaceAll('\n', '');
}

/** The book of `folder`, hostile throughout; by the small book's shape, so that most of it is understood. */
export function hostileFiles(folder = 'book'): {readonly [path: string]: string} {
  const text = (at: number) => quoted(hostile(at));
  const shop = `shop: {name: ${text(0)}}
sources: {notes: {title: ${text(1)}, note: ${text(2)}}}
tools: {mallet: {name: ${text(3)}}, wrench: {name: ${text(4)}, range: ${text(5)}, calibrated: ${text(6)}}}
consumables: {solvent: {use: cleaner, name: ${text(7)}, hazards: [${text(8)}]}, oil: {use: lubricant, name: ${text(9)}}}
severity: {${text(10)}: ${text(11)}}
${text(0)}: ${text(1)}
`;
  const engine = `engine: {id: small, name: ${text(2)}}
source: notes
parts:
  block: {given: true, name: ${text(3)}, note: ${text(4)}}
  plug: {closes: [seat], name: ${text(5)}, bars: [${text(6)}]}
  ${text(7)}: {name: ${text(8)}}
surfaces:
  seat: {on: block, assembly: dry, name: ${text(9)}, at: [front, rear]}
fasteners:
  bolts: {holds: [plug], torque: ${text(10)}, threads: ${text(11)}, lock: ${text(0)}, count: 2, name: ${text(1)}}
fits:
  gap: {limits: 1–2 mm, name: ${text(2)}, measured: {}}
marks:
  number: {name: ${text(3)}, on: block}
checks:
  turns: {expect: ${text(4)}, name: ${text(5)}}
hold-points:
  hold: {asks: [turns], by: ${text(6)}, name: ${text(7)}}
options: {${text(8)}: ${text(9)}}
${text(10)}: x
build: [plug.md, ${text(11)}]
`;
  const procedure = `---
title: ${text(0)}
revision: ${text(1)}
date: 2026-01-15
author: ${text(2)}
approved: ${text(3)}
${text(4)}: ${text(5)}
---

## ${inLine(6)}

${inLine(7)}

> **Warning:** ${inLine(8)} \`hazard: ${inLine(9)}\`

1. ${inLine(10)} \`clean: seat with solvent\` \`${inLine(11)}: x\` \`clean: ${inLine(0)}\`
2. Drive in 85 lbf·ft. \`install: plug using mallet\` \`install: plug using ${inLine(1)}\` \`torque: bolts to ${inLine(2)}\`
3. Tighten. \`torque: bolts to 12 N·m\` \`lock: bolts with ${inLine(3)}\` \`measure: gap\` \`step: ${inLine(4)}\`
4. See. \`check: turns\` \`record: number\` \`witness: hold\` \`waive: left-slack because ${inLine(5)}\`
   ![${inLine(6)}](${encodeURI(HOSTILE[0])}.png)
   - ${inLine(7)}
`;
  const job = `job: {number: ${text(0)}, engine: small, for: ${text(1)}, lead: ${text(2)}, note: ${text(3)}}
marks: {number: ${text(4)}, ${text(5)}: ${text(6)}}
substitutes: {plug: ${text(7)}}
options: [${text(8)}]
`;
  return {
    [`${folder}/shop.yaml`]: shop,
    [`${folder}/engine.yaml`]: engine,
    [`${folder}/plug.md`]: procedure,
    [`${folder}/jobs/1.yaml`]: job,
  };
}

/** A record of the starting book with hostile readings, initials and numbers; the seals are broken. */
export async function hostileRecord(fingerprint: string): Promise<string> {
  const entry = (at: number) => ({
    at: '2026-03-02T08:00:00Z',
    by: hostile(at).slice(0, 40),
    box: at % 2 ? '1:done' : hostile(at),
    value: hostile(at),
    seal: '0'.repeat(64),
  });
  return JSON.stringify({
    record: 1,
    engine: 'my-engine',
    job: hostile(1),
    engineNumber: hostile(2),
    sheets: [
      {
        procedure: '01-oil-pump',
        title: hostile(3),
        revision: hostile(4),
        fingerprint,
        entries: Array.from({length: 12}, (_, at) => entry(at)),
      },
      {procedure: hostile(5), title: hostile(6), revision: '', fingerprint, entries: [entry(7)]},
    ],
  });
}

/** The starting book of `wmark begin`, as files below `folder`. */
export async function startingFiles(folder: string): Promise<{[path: string]: string}> {
  const files: {[path: string]: string} = {};
  for (const name of ['shop.yaml', 'engine.yaml', '01-oil-pump.md', '02-sump.md'])
    files[`${folder}/${name}`] = await readFile(join('src/cli/begin', name), 'utf8');
  return files;
}
