/**
 * Reads a book's YAML into a specification: files joined with what they extend, practice filled in, every name
 * looked up, and the specification held against itself. Always gives what could be understood, and the problems.
 */
import {addAll} from '../text/add-all.js';
import type {Problem} from '../text/problem.js';
import type {Source} from '../text/source.js';
import {barsOf} from './bars.js';
import {contradictions} from './contradictions.js';
import type {Gathered} from './fields.js';
import {type BookFile, bookFile} from './file.js';
import {buildOf, engineOf, shopOf, sourcesOf} from './heads.js';
import {engineItems, plainItems} from './merge.js';
import type {Item, Located, Specification} from './model.js';
import {optionProblems, optionsOf} from './options.js';
import {practiceOf, withPractice} from './practice.js';
import type {RawItem} from './raw.js';
import {itemOf} from './read-items.js';
import {referenceProblems, sourceProblems} from './references.js';
import {SHOP_SECTIONS} from './sections.js';
import {engineFile, shopFile} from './shapes/files.js';
import {silences} from './silence.js';
import {entryOf, isScalar, textOf} from './tree.js';
import {unsourcedOnce} from './unsourced.js';
import {writtenOver} from './written-over.js';
import {readYaml} from './yaml.js';

/** The texts of a specification; each text's name is what findings call its file. */
export interface BookTexts {
  /** Without it nothing of the shop is known: no tools, no consumables, no practice. */
  readonly shop?: Source;
  readonly engine: Source;
  /** What the engine extends, and what that extends, nearest first. */
  readonly bases: readonly Source[];
}

/** Reads the YAML of a book. Never throws on a text: what can't be understood is left out, and is among the problems. */
export function readSpecification({shop, engine, bases}: BookTexts): Specification {
  const shopRead = shop && bookFile(shop, shopFile);
  const chain = chainOf(engine, bases).map((from) => bookFile(from, engineFile));
  const files = [...chain, ...(shopRead ? [shopRead] : [])];
  const gathered: Gathered = {problems: [], references: [], sources: [], options: []};
  const nowhere = {file: engine.file, span: {start: 0, end: 0}};
  const sources = sourcesOf(shopRead, chain, gathered.problems);
  const read = {
    shop: shopOf(shopRead, nowhere),
    engine: engineOf(chain, nowhere),
    items: itemsOf(shopRead, chain, gathered),
    sources,
    bars: barsOf(chain, gathered),
    options: optionsOf(chain, gathered.problems),
    build: buildOf(chain),
    files: new Map(files.map(({from}) => [from.file, from])),
  };
  noteFileSources(files, gathered);
  const over = writtenOver(files);
  // Only now, when every name is known, can it be said which of them name nothing.
  addAll(gathered.problems, referenceProblems(gathered.references, read.items, over));
  addAll(gathered.problems, sourceProblems(gathered.sources, sources));
  addAll(gathered.problems, optionProblems(gathered.options, read.options));
  addAll(gathered.problems, contradictions(read));
  const problems = shownProblems(files, gathered.problems);
  return {
    ...read,
    problems,
    ...(over.length > 0 && {writtenOver: over}),
    ...(files.some(({broken}) => broken) && {broken: true}),
  };
}

/** What an engine.yaml extends, as written. */
export function extendsOf(engine: Source): Located<string> | undefined {
  const value = entryOf(readYaml(engine).tree, 'extends')?.value;
  const named = textOf(value);
  return value && isScalar(value) && named !== undefined ? {value: named, where: value.where} : undefined;
}

/**
 * A file that comes up again further down the chain has said everything the first time. The host lets no circle come so
 * far; texts that a program hands in may.
 */
function chainOf(engine: Source, bases: readonly Source[]): Source[] {
  const byName = new Map<string, Source>();
  for (const from of [engine, ...bases]) if (!byName.has(from.file)) byName.set(from.file, from);
  return [...byName.values()];
}

function itemsOf(
  shop: BookFile | undefined,
  chain: readonly BookFile[],
  gathered: Gathered,
): ReadonlyMap<string, Item> {
  const ofShop = Object.entries(SHOP_SECTIONS).flatMap(([section, kind]) =>
    shop ? plainItems(shop, section, kind) : [],
  );
  const raws = unique([...engineItems(chain, gathered.problems), ...ofShop], gathered.problems);
  const practice = shop ? practiceOf(shop, gathered.sources) : new Map();
  const items = new Map<string, Item>();
  for (const one of raws) {
    const raw = withPractice(one, practice, gathered.problems);
    addAll(gathered.problems, silences(raw));
    items.set(raw.id, itemOf({...gathered, raw}));
  }
  return items;
}

/** A name means one item in the whole book; the first to bear it keeps it. */
function unique(raws: readonly RawItem[], problems: Problem[]): RawItem[] {
  const byId = new Map<string, RawItem>();
  for (const raw of raws) {
    const first = byId.get(raw.id);
    if (first === undefined) byId.set(raw.id, raw);
    else {
      problems.push({
        name: 'spec-contradiction',
        where: raw.where,
        says: `${raw.id} is the name of two items`,
        hint: 'give one of the two another name',
        item: raw.id,
        related: [{where: first.where, says: 'it is first here'}],
      });
    }
  }
  return [...byId.values()];
}

function noteFileSources(files: readonly BookFile[], gathered: Gathered): void {
  for (const {tree} of files) {
    const node = entryOf(tree, 'source')?.value;
    const id = textOf(node);
    if (node && id !== undefined) gathered.sources.push({id, where: node.where});
  }
}

/** The first fault of a text that is not YAML: the others are mostly its echo, and show themselves when it is mended. */
function causes({problems}: BookFile): readonly Problem[] {
  return problems.slice(0, 1).map((problem) => {
    const says = 'until this is mended, the book is not judged: what stands below it cannot be read for sure';
    return {...problem, related: [...(problem.related ?? []), {where: problem.where, says}]};
  });
}

/**
 * The problems in the order of the files and of their texts, each once: what practice states is read again for
 * every item. Where a file is not YAML, what follows from its half-read tree would only drown the cause.
 */
function shownProblems(files: readonly BookFile[], found: readonly Problem[]): readonly Problem[] {
  const broken = files.filter((file) => file.broken);
  const all =
    broken.length > 0 ? broken.flatMap(causes) : [...files.flatMap((file) => file.problems), ...found];
  const rank = new Map(files.map(({from}, index) => [from.file, index]));
  const once = new Map(
    all.map((one) => [`${one.where.file}\n${one.where.span.start}\n${one.name}\n${one.says}`, one]),
  );
  const sorted = [...once.values()].sort(
    (a, b) =>
      (rank.get(a.where.file) ?? 0) - (rank.get(b.where.file) ?? 0) ||
      a.where.span.start - b.where.span.start,
  );
  return unsourcedOnce(files, sorted);
}
