/** A name that leads nowhere only because another item is called what it should be: told at that item, and there alone. */
import type {Book} from '../build/book.js';
import type {Problem} from '../text/problem.js';
import {writtenAt} from './same-name.js';

/** So many places are told at which the name stands. */
const SHOWN = 3;

/** The problems without those that have their cause among them; the cause says which name is wanted, where it is plain. */
export function toldByCause(problems: readonly Problem[], book: Book): readonly Problem[] {
  if (!problems.some(({cause}) => cause)) return problems;
  const first = problems.filter(({cause}) => cause === undefined);
  return first.map((problem) => {
    const wanted = problems.filter(({cause}) => cause === problem.where);
    const [name, other] = new Set(wanted.map((one) => writtenAt(one, book)));
    if (name === undefined) return problem;
    const related = wanted.slice(0, SHOWN).map(({where, says}) => ({where, says}));
    const told = {...problem, related: [...(problem.related ?? []), ...related]};
    if (other !== undefined) return told;
    const edits = [{span: problem.where.span, text: name}];
    const fix = {title: `Write ${name} here`, file: problem.where.file, edits};
    return {...told, hint: `did you mean ${name} here?`, fix};
  });
}
