/** Books that are hard to print: as long, as many and as hostile as a shop, or somebody who is none, could make them. */
import type {Book} from '../../src/build/book.js';
import {book} from '../help/example.js';

const MANY = Array.from({length: 24}, (_, at) => `hole-${at + 1}`);

const ENGINE = `
parts:
  donaudampfschifffahrtsgesellschaftskapitaenskajuetentuerschluessel: {note: ${'long '.repeat(60)}}
  wheel: {}
surfaces:
  holes: {at: [${MANY.join(', ')}], assembly: dry}
fasteners:
  studs:
    at: [${MANY.join(', ')}]
    torque: 40 lbf·ft
    passes: [10 lbf·ft, 20 lbf·ft, 30 lbf·ft, 40 lbf·ft]
    threads: dry
    lock: spring-washer
    layout:
      unit: in
${MANY.map((id, at) => `      ${id}: [${(Math.cos((at * Math.PI) / 12) * 6).toFixed(3)}, ${(Math.sin((at * Math.PI) / 12) * 6).toFixed(3)}]`).join('\n')}
    order: [${MANY.join(', ')}]
fits:
  depth: {at: [${MANY.join(', ')}], limits: 0.500–0.510 in}
checks:
  spins: {expect: it spins}
hold-points:
  looked-at: {asks: [depth, studs, spins], by: somebody who was not there when it was done}
`;

/** Words by which a test finds the beginning and the end of a step on paper. */
function marked(number: number, text: string): string {
  return `${number}. first${number}x ${text} last${number}x`;
}

const LONG = 'Hold the wheel with both hands and turn it slowly, listening for the bearing all the while. ';

function longSection(): string {
  const steps = Array.from({length: 40}, (_, at) => {
    const caution = at % 5 === 0 ? `> **Warning:** warn${at + 1}x ${LONG.repeat(1 + (at % 3))}\n\n` : '';
    return `${caution}${marked(at + 1, LONG.repeat(at % 4))} \`clean: holes[hole-${(at % 24) + 1}] with solvent\``;
  });
  return steps.join('\n\n');
}

export const HARD_PROCEDURE = `---
title: ${'Crankshaft and everything that hangs on it '.repeat(4).trim()}
revision: A
date: 2026-02-03
---

## Forty steps

${longSection()}

## Many places

${marked(41, 'Torque the studs.')} \`torque: studs\`
${marked(42, 'Clean the holes.')} \`clean: holes with solvent\`
${marked(43, 'Measure the holes.')} \`measure: depth\`
${marked(44, 'Call.')} \`witness: looked-at\` \`check: spins\`

## ${'Unbrechbarerabschnittsname'.repeat(6)}

> **Danger:** warn45x ${LONG.repeat(9)}

${marked(45, 'x'.repeat(300))} \`install: donaudampfschifffahrtsgesellschaftskapitaenskajuetentuerschluessel\`
${marked(46, 'No tag at all.')}

    1. first46ax Sub-step. last46ax
    2. Another.

       Further words.

       - a bullet
         - inside a bullet

       \`\`\`
       typed   as    it is
       \`\`\`
`;

export const hardBook: Book = book({engine: ENGINE, procedures: {'hard.md': HARD_PROCEDURE}});

/** Ways of getting a script to run, of the kinds that OWASP's cheat sheet on script injection lists (from memory). */
export const ATTACKS = [
  '<script>window.hit=1</script>',
  '<img src=x onerror="window.hit=1">',
  '<svg onload=window.hit=1>',
  '"><script>window.hit=1</script>',
  `' onmouseover='window.hit=1`,
  '</style><script>window.hit=1</script>',
  '</title><script>window.hit=1</script>',
  '--><script>window.hit=1</script>',
  '<iframe srcdoc="<script>parent.hit=1</script>"></iframe>',
  '<style>@import "http://attack.example/x.css";</style>',
  '<base href="http://attack.example/">',
  '<meta http-equiv=refresh content="0;url=http://attack.example/">',
  '\\3c script\\3e window.hit=1',
  '{{constructor.constructor("window.hit=1")()}}',
  '<a href="javascript:window.hit=1">x</a>',
] as const;

/** The same as Markdown that makes a link or a picture. */
const LINKS = [
  '[click](javascript:window.hit=1)',
  '[click](<java\tscript:window.hit=1>)',
  '[click](&#106;avascript:window.hit=1)',
  '[click](data:text/html;base64,PHNjcmlwdD4=)',
  '[click](vbscript:hit)',
  '![seen](http://attack.example/pixel.png)',
  '![seen](//attack.example/pixel.png)',
  '![seen](data:image/svg+xml;base64,PHN2ZyBvbmxvYWQ9YWxlcnQoMSk+)',
  '![" onerror="window.hit=1](x)',
  '[fine](https://example.org/manual)',
] as const;

function yaml(text: string): string {
  return JSON.stringify(text);
}

function hostileProcedure(): string {
  const steps = [...ATTACKS, ...LINKS].map(
    (attack, at) =>
      `> **Warning:** ${attack}\n\n${at + 1}. Say ${attack} \`install: part-${at % ATTACKS.length}\`\n\n   ${attack}\n`,
  );
  return `---
title: ${yaml(ATTACKS.join(' '))}
revision: ${yaml(ATTACKS[3])}
date: 2026-02-03
author: ${yaml(ATTACKS[1])}
approved: ${yaml(ATTACKS[2])}
---

## ${ATTACKS[0]}

${steps.join('\n')}
${steps.length + 1}. Waive. \`waive: install-order because ${ATTACKS[0]}\` \`witness: hold\`
`;
}

export const hostileBook: Book = book({
  shop: `
shop: {name: ${yaml(ATTACKS[5])}}
sources:
  house: {title: ${yaml(ATTACKS[0])}, note: ${yaml(ATTACKS[1])}}
`,
  engine: `
parts:
${ATTACKS.map((attack, at) => `  part-${at}: {name: ${yaml(attack)}, note: ${yaml(attack)}}`).join('\n')}
hold-points:
  hold: {name: ${yaml(ATTACKS[0])}, by: ${yaml(ATTACKS[6])}}
`,
  procedures: {'"><img src=x onerror="window.hit=1">.md': hostileProcedure()},
});
