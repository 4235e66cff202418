/** Builds a book from texts, as the examples in `src/findings` give them. */
import type {Book} from '../../src/build/book.js';
import type {Example} from '../../src/findings/model.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readJob} from '../../src/spec/job.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {source} from '../../src/text/source.js';

/** What every example may name; an example that needs more brings a shop of its own. */
export const EXAMPLE_SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
tools:
  soft-mallet: soft-faced mallet
  steel-hammer: steel hammer
  feeler-gauges: {name: feeler gauges, gauge: true}
consumables:
  solvent: {use: cleaner}
  assembly-lube: {use: lubricant}
  engine-oil: {use: lubricant}
  paper-gasket: {use: gasket}
  silicone-sealant: {use: sealant}
  liquid-gasket: {use: sealant, cure: {value: 24 h, source: house}}
  wire-032: {use: lock, lock: safety-wire}
  cotter-pins: {use: lock, lock: cotter-pin}
  strip-green: {use: strip, range: {value: 0.001–0.003 in, source: house}}
  coolant: {use: fluid}
`;

const FRONT = `---
title: Example
revision: A
date: 2026-03-01
---

`;

const JOB = 'job: {number: 1, engine: example}\n';

/** The example's book, wrong or right. */
export function exampleBook(example: Example, side: 'wrong' | 'right'): Book {
  const right = side === 'right';
  return book({
    shop: (right ? example.rightShop : undefined) ?? example.shop ?? EXAMPLE_SHOP,
    engine: (right ? example.rightEngine : undefined) ?? example.engine,
    procedures: {'procedure.md': right ? example.right : example.wrong},
    job: (right ? example.rightJob : undefined) ?? example.job,
  });
}

/** A book of texts: procedures by file name, front matter added where there is none. */
export function book(texts: {
  readonly shop?: string;
  readonly engine: string;
  readonly procedures: Readonly<Record<string, string>>;
  /** What a job says below its head. */
  readonly job?: string | undefined;
}): Book {
  const head = `engine: {id: example, name: Example engine}\nsource: house\nbuild: [${Object.keys(texts.procedures).join(', ')}]\n`;
  const spec = readSpecification({
    shop: source('shop.yaml', texts.shop ?? EXAMPLE_SHOP),
    engine: source('engine.yaml', head + texts.engine),
    bases: [],
  });
  const procedures = Object.entries(texts.procedures).map(([file, text]) =>
    readProcedure(source(file, text.startsWith('---') ? text : FRONT + text.replace(/^\n/, ''))),
  );
  const job = texts.job === undefined ? undefined : readJob(source('jobs/1.yaml', JOB + texts.job), spec);
  return {spec, procedures, problems: [], ...(job && {job})};
}
