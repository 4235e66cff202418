/** How hard a fastener pulls at its torque, worked out: the figure behind the value that the procedure states. */
import {aimedAt, OUTRANKED, onThreads, strengthOf, threadOf, told} from '../findings/worked-figures.js';
import type {Fastener, Specification} from '../spec/model.js';
import {type Preload, preloadOf} from '../trade/preload.js';
import {plain} from './markdown.js';

/** One line for each thing that may be on the threads; none where too little is known of the fastener. */
export function preloadLines(fastener: Fastener, spec: Specification): string[] {
  const torque = fastener.torque?.value;
  const aimed = typeof torque === 'object' ? aimedAt(torque) : undefined;
  const thread = threadOf(fastener);
  if (aimed === undefined || thread === undefined) return [];
  const grade = strengthOf(fastener, thread);
  const worked = onThreads(fastener, spec).flatMap(({what, friction}) => {
    const found = preloadOf({thread, torque: aimed, friction, ...(grade && {grade})});
    return found.ok ? [lineOf(what, found.result, found.formula, spec)] : [];
  });
  return worked.length === 0 ? [] : [[...worked, `- ${plain(OUTRANKED)}`].join('\n')];
}

function lineOf(
  what: string,
  {force, low, high, ofProof, friction}: Preload,
  formula: string,
  spec: Specification,
) {
  const band = `${told(low, spec)} to ${told(high, spec)}`;
  const share = ofProof === undefined ? '' : `, about ${Math.round(ofProof.likely)} % of proof`;
  const k = friction.nutFactor.toFixed(2);
  return `- preload: **${plain(told(force, spec))}**${share}; ${plain(band)} with the scatter of a torque wrench; ${plain(formula)}, K = ${k} (${plain(what)})`;
}
