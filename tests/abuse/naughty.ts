/**
 * A book, its later edition, a job and a record that hold every text of a published list: The Big List of Naughty
 * Strings by Max Woolf and others (MIT licence; the package `big-list-of-naughty-strings`, 461 strings, of which 221
 * hold marks of HTML). Each of them stands wherever a person may write: in titles, names, notes, captions, prose,
 * cautions, marks, readings, initials and numbers.
 */
import published from 'big-list-of-naughty-strings/blns.json' with {type: 'json'};
import {quoted} from './hostile-files.js';

export const NAUGHTY: readonly string[] = published;

/** How many of them one procedure holds. */
const SHARE = 60;

const SHARES: readonly (readonly string[])[] = Array.from(
  {length: Math.ceil(NAUGHTY.length / SHARE)},
  (_, at) => NAUGHTY.slice(at * SHARE, (at + 1) * SHARE),
);

/** As a name, which must not be blank. */
function named(text: string): string {
  return quoted(text.trim() === '' ? `blank ${text}` : text);
}

function list(of: (text: string, at: number) => string): string {
  return NAUGHTY.map(of).join('\n');
}

const SHOP = `
shop: {name: ${named(NAUGHTY.join(' ').slice(0, 3000))}}
sources:
  notes: {title: Notes, note: invented}
${list((text, at) => `  source-${at}: {title: ${named(text)}, note: ${named(text)}}`)}
tools:
${list((text, at) => `  tool-${at}: {name: ${named(text)}, serial: ${named(text)}}`)}
consumables:
${list((text, at) => `  lube-${at}: {use: lubricant, name: ${named(text)}, hazards: [${named(text)}]}`)}
`;

const ENGINE = `engine: {id: naughty, name: ${named(NAUGHTY.slice(-40).join(' '))}, note: ${named(NAUGHTY.join(' '))}}
source: notes
parts:
${list((text, at) => `  part-${at}: {name: ${named(text)}, note: ${named(text)}, using: [tool-${at}]}`)}
surfaces:
${list((text, at) => `  face-${at}: {on: part-${at}, name: ${named(text)}, assembly: lubed, lubricants: [lube-${at}]}`)}
marks:
${list((text, at) => `  mark-${at}: {name: ${named(text)}, stamped: ${named(text)}}`)}
hold-points:
${list((text, at) => `  hold-${at}: {name: ${named(text)}, by: ${named(text)}}`)}
`;

/** Markdown that stands in one line, as it was found. */
function inLine(text: string): string {
  return text.replace(/[\r\n]/g, ' ');
}

function step(text: string, at: number, number: number): string {
  const line = inLine(text);
  return `> **Warning:** ${line}

${number}. \`lube: face-${at} with lube-${at}\` \`install: part-${at} using tool-${at}\`
   \`witness: hold-${at}\` \`waive: install-order because ${line.replaceAll('`', "'")}\` ${line}

   ![${line}](${number}.png "${line.replaceAll('"', "'")}")

   - ${line}
`;
}

function procedure(share: readonly string[], first: number): string {
  const joined = quoted(share.join(' ').slice(0, 2000));
  return `---
title: ${joined}
revision: ${named(share[0] ?? '')}
date: 2026-01-15
author: ${joined}
approved: ${joined}
---

## ${inLine(share.join(' '))}

${share.map((text, at) => step(text, first + at, at + 1)).join('\n')}
`;
}

/** The book in `folder`. */
export function naughtyFiles(folder: string): {readonly [path: string]: string} {
  const files: {[path: string]: string} = {
    [`${folder}/shop.yaml`]: SHOP,
    [`${folder}/engine.yaml`]: `${ENGINE}build: [${SHARES.map((_, at) => `${at}.md`).join(', ')}]\n`,
    [`${folder}/jobs/1.yaml`]: JOB,
  };
  for (const [at, share] of SHARES.entries()) files[`${folder}/${at}.md`] = procedure(share, at * SHARE);
  return files;
}

const JOB = `job: {number: ${named(NAUGHTY.slice(230, 240).join(' '))}, engine: naughty, note: ${named(NAUGHTY.join(' '))}}
marks: {${NAUGHTY.map((text, at) => `mark-${at}: ${named(text)}`).join(', ')}}
`;

/** A book whose ids are the strings, where it takes any at all. */
export function naughtyIds(folder: string): {readonly [path: string]: string} {
  const ids = (of: (text: string) => string) => NAUGHTY.map((text) => `  ${quoted(text)}: ${of(text)}`);
  return {
    [`${folder}/shop.yaml`]: `shop: {name: Ids}\ntools:\n${ids(() => '{}').join('\n')}\n`,
    [`${folder}/engine.yaml`]: `engine: {id: ${quoted(NAUGHTY[161] ?? '')}, name: Ids}
parts:
  plug: {at: [${NAUGHTY.map(quoted).join(', ')}]}
${ids((text) => `{using: [${quoted(text)}]}`).join('\n')}
build: [one.md, ${NAUGHTY.map((text) => quoted(`${text}.md`)).join(', ')}]
`,
    [`${folder}/one.md`]: `---\ntitle: Ids\nrevision: A\ndate: 2026-01-15\n---\n
${NAUGHTY.map((text, at) => `${at + 1}. Do. \`${inLine(text).replaceAll('`', "'")}: plug\` \`install: ${inLine(text).replaceAll('`', "'")}\` \`install: plug[${inLine(text).replaceAll('`', "'")}]\``).join('\n')}
`,
  };
}

/** All of them in one procedure of short steps: as the names of a mark and a fit, their notes, prose and a caption. */
export function leanFiles(folder: string, turn = 0): {readonly [path: string]: string} {
  const {engine, procedure} = leanTexts(turn);
  return {
    [`${folder}/shop.yaml`]: 'shop: {name: Lean}\nsources:\n  house: {title: Notes, note: invented}\n',
    [`${folder}/engine.yaml`]: `engine: {id: lean, name: Lean}\nsource: house\nbuild: [lean.md]\n${engine}`,
    [`${folder}/lean.md`]: procedure,
  };
}

function leanTexts(turn: number): {readonly engine: string; readonly procedure: string} {
  const steps = NAUGHTY.map((_, at) => {
    const line = inLine(NAUGHTY[(at + turn) % NAUGHTY.length] ?? '');
    const caption = at % 10 === 0 ? `\n\n   ![${line}](x.png)\n` : '';
    return `${at + 1}. \`record: mark-${at}\` \`measure: fit-${at}\` ${line}${caption}\n`;
  });
  return {
    engine: `marks:
${list((text, at) => `  mark-${at}: {name: ${named(text)}, stamped: ${named(text)}}`)}
parts:
  block: {given: true}
fits:
${list((text, at) => `  fit-${at}: {between: [block], name: ${named(text)}, limits: 1.0–2.0 mm}`)}
`,
    procedure: `---
title: ${named(NAUGHTY.slice(-40 - turn).join(' '))}
revision: A
date: 2026-01-15
---

${steps.join('\n')}`,
  };
}
