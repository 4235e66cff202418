/** `Too tight` in the prose of a step whose tag opens it for readings over their limits. Common practice, no source. */
import type {StepRef} from '../build/program.js';
import {branchState, tagsOf} from '../procedure/values.js';
import type {Check, Fit, Item, Specification} from '../spec/model.js';
import type {Span} from '../text/source.js';

/** Words of the prose that cannot go with a tag of the step. */
export interface WordDisagreement {
  /** Offsets into the prose. */
  readonly span: Span;
  readonly item: Item;
  readonly tagSpan: Span;
  readonly says: string;
}

type Side = 'over' | 'under';

/** Branches on one side of the limits, of which the prose names the other. Where it names both, nobody knows which is meant. */
export function sideDisagreements(
  {step}: StepRef,
  text: string,
  spec: Specification,
): readonly WordDisagreement[] {
  return tagsOf(step, 'if').flatMap((tag) => {
    const state = branchState(tag);
    const [target] = tag.targets;
    const item = target && spec.items.get(target.id);
    if ((state !== 'over' && state !== 'under') || (item?.kind !== 'fit' && item?.kind !== 'check'))
      return [];
    const named = sideIn(text, isClearance(item));
    if (named === undefined || named.side === state) return [];
    const {span} = named;
    const said = text.slice(span.start, span.end).replace(/\s+/g, ' ').toLowerCase();
    return [{span, item, tagSpan: tag.span, says: `${item.id}: the prose says ${said}, the tag is ${state}`}];
  });
}

const OVER =
  /\btoo\s+(?:large|big|great|high|wide|much)\b|\b(?:over|above)\s+(?:its|the|their)\s+(?:upper\s+)?limits?\b/gi;
const UNDER =
  /\btoo\s+(?:small|low|narrow|little)\b|\b(?:under|below)\s+(?:its|the|their)\s+(?:lower\s+)?limits?\b/gi;
/** Of a clearance only: what is too tight to turn reads over its limits on a wrench. */
const LOOSE = /\btoo\s+(?:loose|slack)\b/gi;
const TIGHT = /\btoo\s+tight\b/gi;

function sideIn(text: string, clearance: boolean): {readonly side: Side; readonly span: Span} | undefined {
  const first = (side: Side, patterns: readonly RegExp[]) =>
    patterns.flatMap((pattern) =>
      [...text.matchAll(pattern)].map(({0: words, index}) => ({
        side,
        span: {start: index, end: index + words.length},
      })),
    )[0];
  const over = first('over', clearance ? [OVER, LOOSE] : [OVER]);
  const under = first('under', clearance ? [UNDER, TIGHT] : [UNDER]);
  const named = over ?? under;
  if (named === undefined || (over && under)) return undefined;
  return NEGATED.test(text.slice(0, named.span.start)) ? undefined : named;
}

const NEGATED = /\b(?:not|never|no longer)\s+(?:be\s+|is\s+)?$/i;

/** A fit that is a gap: of an interference the tight one is the large one. */
function isClearance({kind, id, name}: Fit | Check): boolean {
  return (
    kind === 'fit' &&
    !/\b(?:interference|press|shrink|nip|crush|preload|height|depth)\b/i.test(`${id} ${name}`)
  );
}
