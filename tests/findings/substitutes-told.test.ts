/** Parts of another engine that go in with or without what they need: all that is told of them. Common practice, no source. */
import {describe, expect, it} from 'vitest';
import {book} from '../help/example.js';
import {toldOf} from '../help/found.js';
import {SILENT, type Story} from '../help/stories.js';

const ENGINE = `
parts:
  block: {given: true}
  shells: {at: [upper, lower], substitutes: {twin-shells: {alterations: [grind-lip, drill-hole]}}}
  cover: {substitutes: {twin-cover: {alterations: [cut-back]}}}
alterations:
  grind-lip: {of: [shells]}
  drill-hole: {of: [shells]}
  cut-back: {of: [cover]}
`;

describe('substitutes', () => {
  it.each<Story>([
    ['that no step alters, which the job puts in', 'install: shells; install: cover', SILENT],
    [
      'that the steps alter',
      'alter: shells by grind-lip, drill-hole; install: shells; alter: cover by cut-back; install: cover',
      SILENT,
    ],
    [
      'of which one is altered',
      'alter: shells[lower] by grind-lip; install: shells; install: cover',
      `
substitute-unaltered shells[upper]: shells[upper] are twin-shells on this job, and go in without grind-lip
  story: step J1 of procedure.md: altered (alter: shells)
  see jobs/1.yaml: the job fits twin-shells
  see engine.yaml:7: twin-shells needs grind-lip`,
    ],
    [
      'of which one has had something else done to it',
      'alter: shells by drill-hole; alter: shells[upper] by grind-lip; install: shells; alter: shells[lower] by grind-lip; install: cover',
      `
substitute-unaltered shells[lower]: shells[lower] are twin-shells on this job, and go in without grind-lip
  story: step 1 of procedure.md: altered (alter: shells)
  see jobs/1.yaml: the job fits twin-shells
  see engine.yaml:7: twin-shells needs grind-lip`,
    ],
    [
      'that are renewed after it',
      'alter: shells by grind-lip, drill-hole; renew: shells[upper]; install: shells; install: cover',
      `
substitute-unaltered shells[upper]: shells[upper] are twin-shells on this job, and go in without grind-lip
  story: step 1 of procedure.md: altered (alter: shells)
  story: step 2 of procedure.md: no longer altered (renew: shells)
  see jobs/1.yaml: the job fits twin-shells
  see engine.yaml:7: twin-shells needs grind-lip
substitute-unaltered shells[upper]: shells[upper] are twin-shells on this job, and go in without drill-hole
  story: step 1 of procedure.md: altered (alter: shells)
  story: step 2 of procedure.md: no longer altered (renew: shells)
  see jobs/1.yaml: the job fits twin-shells
  see engine.yaml:7: twin-shells needs drill-hole`,
    ],
    [
      'of which one is altered too late',
      'install: shells; install: cover; alter: cover by cut-back',
      `
substitute-unaltered cover: cover is twin-cover on this job, and goes in without cut-back
  see jobs/1.yaml: the job fits twin-cover
  see engine.yaml:8: twin-cover needs cut-back`,
    ],
  ])('%s', (_, tags, lines) => {
    const steps = tags.split('; ').map((tag, at) => `${at + 1}. Do it. \`${tag}\`\n`);
    const job = 'substitutes: {shells: twin-shells, cover: twin-cover}';
    const told = toldOf(book({engine: ENGINE, job, procedures: {'procedure.md': `\n${steps.join('')}`}}));
    expect(['', ...told].join('\n').trimEnd()).toBe(lines);
  });
});
