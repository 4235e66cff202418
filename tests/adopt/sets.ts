/** The texts that the adopt benchmark runs on: one set to mend the rules by, and those that they were not written from. */
import {proposalsFor} from '../../src/adopt/proposals.js';
import {FINDINGS} from '../../src/findings/registry.js';
import {loadBooks} from '../../src/host/load.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readTag} from '../../src/procedure/tag.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {source} from '../../src/text/source.js';
import {exampleBook} from '../help/example.js';
import {HELD_OUT, type Labelled} from './held-out.js';
import {HELD_OUT_ENGINE, HELD_OUT_SHOP} from './held-out-engine.js';
import {emptyScore, type Score, scoreProcedure, scoreStep} from './score.js';

/** The right examples of the findings, and the starting book: the rules may be mended by these, and only these. */
export async function developmentScore(): Promise<Score> {
  const score = emptyScore();
  for (const {example} of FINDINGS) {
    if (example === undefined) continue;
    const {procedures, spec} = exampleBook(example, 'right');
    for (const procedure of procedures) scoreProcedure(procedure, spec, score);
  }
  await addBooks(['src/cli/begin'], score);
  return score;
}

/** The procedures of the demonstration books with their tags taken out. */
export async function bookScore(folder: string): Promise<Score> {
  const score = emptyScore();
  await addBooks([folder], score);
  return score;
}

async function addBooks(paths: readonly string[], score: Score): Promise<void> {
  const {books} = await loadBooks(paths);
  for (const {book} of books)
    for (const procedure of book.procedures) scoreProcedure(procedure, book.spec, score);
}

export function heldOutSpec(shop = HELD_OUT_SHOP) {
  const head = 'engine: {id: skerry-twin, name: Skerry Twin}\nsource: house\nbuild: []\n';
  return readSpecification({
    shop: source('shop.yaml', shop),
    engine: source('engine.yaml', head + HELD_OUT_ENGINE),
    bases: [],
  });
}

/** Each sentence a procedure of its own: no sentence can lean on another. */
export function heldOutScore(sentences: readonly Labelled[] = HELD_OUT): Score {
  const score = emptyScore();
  const spec = heldOutSpec();
  for (const [says, ...tags] of sentences) {
    const procedure = readProcedure(source('step.md', `1. ${says}\n`));
    const due = tags.flatMap((text) => readTag(text, 0, 'step.md').tag ?? []);
    scoreStep(says, due, proposalsFor(procedure, spec), score);
  }
  return score;
}
