/**
 * Prose that turns a fastener the wrong way for its thread: a left-hand one clockwise to tighten it, a right-hand one
 * anticlockwise. Common practice, no source. Judged only where the specification states the thread.
 */
import type {StepRef} from '../build/program.js';
import type {Fastener, Specification} from '../spec/model.js';
import {isLeftHand} from '../trade/thread.js';
import type {WordDisagreement} from './prose-sides.js';

/** With fasteners of both hands, or both verbs, in one step nobody knows which is meant. */
export function handDisagreements(
  {step}: StepRef,
  text: string,
  spec: Specification,
): readonly WordDisagreement[] {
  if (!TURN.test(text)) return [];
  const turned = step.tags.flatMap((tag) => {
    if (tag.verb !== 'torque' && tag.verb !== 'loosen') return [];
    return tag.targets.flatMap(({id}) => {
      const item = spec.items.get(id);
      return item?.kind === 'fastener'
        ? [{item, tag, clockwise: isClockwise(item, tag.verb === 'torque')}]
        : [];
    });
  });
  const [first] = turned;
  if (first?.clockwise === undefined) return [];
  const {item, tag, clockwise} = first;
  if (turned.some((one) => one.clockwise !== clockwise)) return [];
  const tightened = tag.verb === 'torque';
  const says = `a ${clockwise === tightened ? 'right-hand' : 'left-hand'} thread is ${tightened ? 'tightened' : 'slackened'} ${clockwise ? 'clockwise' : 'anticlockwise'}`;
  return turnsIn(text)
    .filter((turn) => turn.clockwise !== clockwise)
    .map(({span, said}) => ({
      span,
      item,
      tagSpan: tag.span,
      says: `${item.id}: the prose says ${said}, and ${says}`,
    }));
}

/** Undefined where the specification does not say what thread it is. */
function isClockwise({thread}: Fastener, tightened: boolean): boolean | undefined {
  if (thread === undefined || thread.value === 'unknown') return undefined;
  return isLeftHand(thread.value) !== tightened;
}

const TURN = /\b(?:anti-?|counter-?)?clockwise\b/i;
const TURNS = /\b(?:anti-?|counter-?)?clockwise\b/gi;
/** Something else is turned, or gone round, that way. */
const ELSE =
  /\b(?:crank|crankshaft|camshaft|shaft|engine|motor|flywheel|pulley|wheel|gears?|order|pattern|sequence|round|row|spiral|seen|angle|scale|dial|adjuster)\b/i;

function turnsIn(text: string) {
  return [...text.matchAll(/[^.;:!?]+/g)].flatMap(({0: sentence, index}) => {
    if (ELSE.test(sentence)) return [];
    return [...sentence.matchAll(TURNS)].map(({0: word, index: at}) => ({
      said: word.toLowerCase(),
      clockwise: /^clock/i.test(word),
      span: {start: index + at, end: index + at + word.length},
    }));
  });
}
