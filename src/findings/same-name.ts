/**
 * One wrong name is one mistake, however often it is written: all its uses in a file become one problem, mended at once.
 * Where every use says one name and only the definition another, the slip is the definition's.
 */
import type {Book} from '../build/book.js';
import type {Item} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {grouped} from '../text/grouped.js';
import type {Problem, ProblemName} from '../text/problem.js';
import {sourcesOf} from './found-fault.js';

/** A problem whose fix writes a name in the place of another. */
type Misnamed = Problem & {readonly fix: Fix};

const OF_NAMES: ReadonlySet<ProblemName> = new Set(['unknown-item', 'tool-not-in-shop']);

/**
 * The problems, in their order, with those of one wrong name joined at its first use in the file, or at the definition.
 * What is waived stays apart: its waiver is for that step alone.
 */
export function joinedByName(
  problems: readonly Problem[],
  book: Book,
  isWaived: (problem: Problem) => boolean,
): readonly Problem[] {
  const ofNames = problems.filter(
    (one): one is Misnamed => OF_NAMES.has(one.name) && one.fix !== undefined && !isWaived(one),
  );
  const joined = new Map<Problem, Problem | undefined>();
  for (const [near, uses] of grouped(ofNames, nameIn)) {
    const [first, ...others] = uses;
    if (first === undefined || others.length === 0) continue;
    const item = book.spec.items.get(near);
    const written = new Set(uses.map((use) => writtenAt(use, book)));
    const [only] = written;
    const isSlip = item !== undefined && written.size === 1 && only !== undefined && isNamedOnce(item, book);
    if (isSlip) {
      for (const use of uses) joined.set(use, undefined);
      joined.set(first, slip(item, only, [first, ...others]));
    } else for (const [, same] of grouped(uses, saidIn)) join(same, joined);
  }
  return problems.flatMap((problem) => (joined.has(problem) ? (joined.get(problem) ?? []) : problem));
}

/** The name that the fix writes. */
function nameIn({fix}: Misnamed): string {
  return fix.edits.map(({text}) => text).join();
}

/** The name as it stands at a use, or at its definition. */
export function writtenAt({where: {file, span}}: Pick<Problem, 'where'>, book: Book): string | undefined {
  return sourcesOf(book).get(file)?.text.slice(span.start, span.end);
}

/** What is said, and of which file. */
function saidIn({name, where, says, hint}: Problem): string {
  return JSON.stringify([name, where.file, says, hint]);
}

function join([first, ...others]: readonly Misnamed[], joined: Map<Problem, Problem | undefined>): void {
  if (first === undefined || others.length === 0) return;
  for (const other of others) joined.set(other, undefined);
  const count = others.length + 1;
  const edits = [first, ...others].flatMap(({fix}) => fix.edits);
  joined.set(first, {
    ...first,
    related: [...(first.related ?? []), ...others.map(({where}) => ({where, says: 'here too'}))],
    fix: {
      title: `${first.fix.title} at all ${count} places`,
      file: first.fix.file,
      edits: edits.sort((one, other) => one.span.start - other.span.start),
    },
  });
}

/** Whether nothing in the book but its definition says the name. */
function isNamedOnce(item: Item, book: Book): boolean {
  const {id} = item;
  const texts = [...book.spec.files.values(), ...book.procedures.map(({source}) => source)];
  return writtenAt(item, book) === id && texts.reduce((sum, {text}) => sum + timesSaid(id, text), 0) === 1;
}

function timesSaid(id: string, text: string): number {
  let times = 0;
  for (let at = text.indexOf(id); at >= 0; at = text.indexOf(id, at + id.length)) {
    const isWhole = !/[\w-]/.test(text[at - 1] ?? '') && !/[\w-]/.test(text[at + id.length] ?? '');
    if (isWhole) times++;
  }
  return times;
}

/** The message says no number, for it is the same finding on a job that has fewer of the steps. */
function slip({id, where}: Item, written: string, uses: readonly [Problem, ...Problem[]]): Problem {
  return {
    name: uses[0].name,
    where,
    says: `${id} is named nowhere, and every place that means it says ${written}`,
    hint: `did you mean ${written} here?`,
    item: written,
    related: uses.map((use) => ({where: use.where, says: `${written} is named here`})),
    fix: {
      title: `Write ${written} here, as the ${uses.length} places do`,
      file: where.file,
      edits: [{span: where.span, text: written}],
    },
  };
}
