/** Edits that ask, do, check or warn of more. */
import type {Book} from '../../src/build/book.js';
import type {Procedure} from '../../src/procedure/model.js';
import {clauseOf} from '../../src/procedure/values.js';
import {formatAmount} from '../../src/quantity/format.js';
import type {Edit} from '../../src/text/edit.js';
import {type Review, withEdits} from './edited.js';
import {weaker} from './weaker.js';

/** The other way round, a weakening of one thing is a strengthening; and some that only add. */
export function stronger(book: Book): Review[] {
  return book.procedures.flatMap((procedure) => [...additions(book, procedure)]);
}

/** Classes of weakening that are a pure loss, so that going back is a pure gain. */
const TWO_WAY = new Set([
  'drop a hold point',
  'drop a caution',
  'drop a torque pass',
  'lift a bar',
  'lower a severity',
  'add a waiver',
  'widen a limit everywhere',
  'state a limit with a reason',
  'shorten a cure in the shop',
]);

/** Pairs of books of which the first is the weaker: compared from it to the clean one. */
export function reversed(book: Book): Review[] {
  return weaker(book)
    .filter(({kind}) => TWO_WAY.has(kind))
    .map((review) => ({...review, kind: `undo: ${review.kind}`, expected: 'strengthened'}));
}

function additions(book: Book, procedure: Procedure): Review[] {
  const {file} = procedure.source;
  const review = (kind: string, edits: readonly Edit[], at: string): Review => ({
    kind,
    expected: 'strengthened',
    at: `${file}: ${at}`,
    after: () => withEdits(book, new Map([[file, edits]])),
  });
  return procedure.steps.flatMap((step) =>
    step.tags.flatMap((tag) => {
      const passes = clauseOf(tag, 'in');
      const [first, second] = passes?.value.type === 'amounts' ? passes.value.amounts : [];
      if (passes?.value.type === 'amounts' && first?.form === 'single' && second?.form === 'single') {
        const value = Math.round((first.value.value + second.value.value) / 2);
        const between = {...first, value: {...first.value, value}};
        const text = [first, between, ...passes.value.amounts.slice(1)].map(formatAmount).join(', ');
        return [review('add a torque pass', [{span: passes.valueSpan, text}], tag.raw)];
      }
      if (tag.verb !== 'inspect') return [];
      const at = tag.span.end + 1;
      const again = tag.targets.map(({id}) => id).join(', ');
      return [
        review(
          'inspect once more',
          [{span: {start: at, end: at}, text: ` \`inspect: ${again} for chips\``}],
          tag.raw,
        ),
      ];
    }),
  );
}
