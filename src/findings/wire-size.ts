/** Safety wire that does not go through the hole of its fastener, or is too thin for it. */
import type {Amount, Quantity} from '../quantity/model.js';
import type {Fastener, Specification} from '../spec/model.js';
import {wireFor, wireSuits} from '../trade/safety-wire.js';
import {isLockedWith, type SizedLock, specifiedLock, usedLocks} from './lock-sizes.js';
import type {Context, FindingKind} from './model.js';
import {specified} from './phrase.js';
import {widestNeighbours} from './spacing.js';
import {aimedAt, told} from './worked-figures.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  wire-051: {use: lock, lock: safety-wire, size: {value: 0.051 in, source: house}}
  wire-032: {use: lock, lock: safety-wire, size: {value: 0.032 in, source: house}}
`;

export const wireSize: FindingKind = {
  name: 'wire-size',
  group: 'engineering',
  severity: 'error',
  summary: 'A safety wire is too thick or too thin for the hole that it goes through',
  why: 'A wire that is forced is nicked and breaks; one that is lost in its hole saws itself through. Where the maker names a wire, that outranks the table.',
  source: 'FAA AC 43.13-1B, 7-124; TM 1-1500-204-23-6, p. 2-77 and 2-79; wire sizes of MS20995 (from memory)',
  example: {
    shop: SHOP,
    engine: `
parts:
  block: {given: true}
  oil-pump: {}
fasteners:
  pump-bolts: {holds: [oil-pump], torque: 22 lbf·ft, threads: dry, hole: 0.047 in, lock: safety-wire}
`,
    wrong: `
1. Offer the pump up. \`install: oil-pump\`
2. Bring the bolts up. \`torque: pump-bolts to 22 lbf·ft\`
3. Wire the bolts. \`lock: pump-bolts with wire-051\`
`,
    right: `
1. Offer the pump up. \`install: oil-pump\`
2. Bring the bolts up. \`torque: pump-bolts to 22 lbf·ft\`
3. Wire the bolts. \`lock: pump-bolts with wire-032\`
`,
  },
  specification({spec, relations, report}) {
    for (const fastener of relations.fasteners) {
      if (fastener.hole === undefined) continue;
      const hole = aimedAt(fastener.hole.value);
      if (hole === undefined) continue;
      if (!isLockedWith(fastener, 'safety-wire', spec)) continue;
      const choice = choiceFor(fastener, hole);
      if (!choice.ok)
        report({
          where: fastener.hole.where,
          message: `${fastener.id}: ${choice.says} (${RULE}); ${choice.hint}`,
          item: fastener.id,
        });
      for (const wire of specifiedLock(fastener, 'safety-wire', spec)) judge(fastener, wire, spec, report);
    }
  },
  before: {
    lock(action, {book: {spec}, report}) {
      for (const wire of usedLocks(action, 'safety-wire', spec)) judge(action.item, wire, spec, report);
    },
  },
};

const RULE = 'wire by hole, AC 43.13-1B 7-124';

function choiceFor(fastener: Fastener, hole: Quantity) {
  const apart = widestNeighbours(fastener)?.apart;
  return wireFor({hole, ...(apart !== undefined && {spacing: apart})});
}

function judge(
  fastener: Fastener,
  {name, size, where}: SizedLock,
  spec: Specification,
  report: Context['report'],
) {
  const hole = fastener.hole && aimedAt(fastener.hole.value);
  if (hole === undefined) return;
  const choice = choiceFor(fastener, hole);
  if (!choice.ok) return;
  const suits = wireSuits(size, choice.result);
  if (suits === 'suits') return;
  const {least, most} = choice.result;
  const takes: Amount = {form: 'range', low: least, high: most};
  report({
    where,
    message: `${fastener.id}: ${name} of ${told(size, spec)} is ${suits} for a hole of ${told(hole, spec)}, which takes ${told(takes, spec)} (${RULE})`,
    item: fastener.id,
    related: [specified(fastener)],
  });
}
