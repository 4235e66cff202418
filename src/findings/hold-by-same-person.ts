/** The second signature of a hold point is given by somebody who cannot give it: the one whose work or words it is to check. */
import {type Action, whereIn} from '../build/program.js';
import {clauseOf, wordsOf} from '../procedure/values.js';
import type {HoldPoint} from '../spec/model.js';
import type {Context, FindingKind} from './model.js';
import {tagWhere} from './phrase.js';

export const holdBySamePerson: FindingKind = {
  name: 'hold-by-same-person',
  group: 'people',
  severity: 'error',
  summary: 'A hold point is signed by the one who did the work, or who wrote or approved the procedure',
  why: 'A second signature is a second pair of eyes. Who made the slip reads over it again. A role that several may hold (`by shop lead`) is taken for another person, a name for the person.',
  source: '14 CFR 121.371(c): nobody performs a required inspection of an item that he worked on',
  example: {
    engine: `
parts:
  block: {given: true}
  crankshaft: {}
checks:
  crank-turns: {expect: turns freely by hand}
hold-points:
  bottom-end-closed: {asks: [crank-turns], by: shop lead}
`,
    wrong: `
1. Set the crankshaft down. \`install: crankshaft\`
2. Check that it turns freely. \`check: crank-turns by A. Penrose\`
3. Sign for the bottom end. \`witness: bottom-end-closed by A. Penrose\`
`,
    right: `
1. Set the crankshaft down. \`install: crankshaft\`
2. Check that it turns freely. \`check: crank-turns by A. Penrose\`
3. Sign for the bottom end. \`witness: bottom-end-closed by shop lead\`
`,
  },
  book(context) {
    const done = new Map<string, Action>();
    for (const {actions} of context.program.parts) {
      for (const action of actions) {
        if (action.verb === 'check' && clauseOf(action.tag, 'by')) done.set(action.item.id, action);
        if (action.item.kind === 'hold-point') judge(action, action.item, done, context);
      }
    }
  },
};

function judge(action: Action, point: HoldPoint, done: ReadonlyMap<string, Action>, {report}: Context): void {
  const signer = wordsOf(action.tag, 'by') ?? point.by;
  const clause = clauseOf(action.tag, 'by');
  if (signer === undefined) return;
  const where = clause ? whereIn(action.step, clause.valueSpan) : tagWhere(action);
  const found = (what: string, related: Action | undefined) =>
    report({
      where,
      message: `${point.id} is signed by ${signer}, who ${what}`,
      item: point.id,
      step: action.step,
      ...(related && {related: [{where: tagWhere(related), says: `${signer} did this`}]}),
    });
  const own = point.asks
    .flatMap(({value}) => done.get(value) ?? [])
    .find(({tag}) => isSame(wordsOf(tag, 'by'), signer));
  if (own !== undefined) found(`did what is to be looked at (${own.item.id})`, own);
  else if (clause === undefined) return;
  else if (isNamed(action.step.procedure.front.author, signer)) found('wrote the procedure', undefined);
  else if (isNamed(action.step.procedure.front.approved, signer)) found('approved the procedure', undefined);
}

function isSame(one: string | undefined, other: string): boolean {
  return one !== undefined && plain(one) === plain(other);
}

/** `R. Tamsin, shop lead` is meant whole or by the name alone; the role alone may be anybody's. */
function isNamed(person: string | undefined, signer: string): boolean {
  return isSame(person, signer) || isSame(person?.split(',')[0], signer);
}

function plain(words: string): string {
  return words
    .toLowerCase()
    .replace(/[\s.]+/g, ' ')
    .trim();
}
