/** A cotter pin that does not go through the hole or slot of its fastener, or is thinner than its thread asks for. */

import {si} from '../quantity/convert.js';
import type {Quantity} from '../quantity/model.js';
import type {Fastener, Specification} from '../spec/model.js';
import {type CotterChoice, cotterPinFor, cotterSuits} from '../trade/cotter-pin.js';
import {isLockedWith, type SizedLock, specifiedLock, usedLocks} from './lock-sizes.js';
import type {Context, FindingKind} from './model.js';
import {specified} from './phrase.js';
import {aimedAt, threadOf, told} from './worked-figures.js';

const SHOP = `
shop: {name: Example Works}
sources:
  house: {title: Example house notes, note: invented}
consumables:
  pin-1-8: {use: lock, lock: cotter-pin, size: {value: 1/8 in, source: house}}
  pin-3-32: {use: lock, lock: cotter-pin, size: {value: 3/32 in, source: house}}
`;

export const cotterSize: FindingKind = {
  name: 'cotter-size',
  group: 'engineering',
  severity: 'error',
  summary: 'A cotter pin is too thick for its hole or slot, or too thin for its thread',
  why: 'A pin that is driven in is half sheared before the engine runs; a thin one chafes through. Where the maker names a pin, that outranks the table.',
  source:
    'ASME B18.8.1 (holes); least pin by thread, AN310 castle nuts with AN380 pins (from memory); ASME B18.2.2 (slots); pins in mm, ISO 1234 (from memory)',
  example: {
    shop: SHOP,
    engine: `
parts:
  block: {given: true}
  rod-caps: {}
fasteners:
  rod-nuts: {holds: [rod-caps], thread: 3/8-24 UNF, torque: 35 lbf·ft, threads: dry, hole: 0.109 in, lock: cotter-pin}
`,
    wrong: `
1. Set the caps on the rods. \`install: rod-caps\`
2. Bring the nuts up. \`torque: rod-nuts to 35 lbf·ft\`
3. Pin every nut. \`lock: rod-nuts with pin-1-8\`
`,
    right: `
1. Set the caps on the rods. \`install: rod-caps\`
2. Bring the nuts up. \`torque: rod-nuts to 35 lbf·ft\`
3. Pin every nut. \`lock: rod-nuts with pin-3-32\`
`,
  },
  specification({spec, relations, report}) {
    for (const fastener of relations.fasteners) {
      if (!isLockedWith(fastener, 'cotter-pin', spec)) continue;
      const {id, hole} = fastener;
      const choice = choiceFor(fastener);
      if (!choice.ok && hole)
        report({where: hole.where, message: `${id}: ${choice.says} (${RULE}); ${choice.hint}`, item: id});
      for (const pin of specifiedLock(fastener, 'cotter-pin', spec)) judge(fastener, pin, spec, report);
    }
  },
  before: {
    lock(action, {book: {spec}, report}) {
      for (const pin of usedLocks(action, 'cotter-pin', spec)) judge(action.item, pin, spec, report);
    },
  },
};

const RULE = 'pin by hole and thread, ASME B18.8.1';

function holeOf({hole}: Fastener): Quantity | undefined {
  return hole && aimedAt(hole.value);
}

function choiceFor(fastener: Fastener) {
  const [thread, hole] = [threadOf(fastener), holeOf(fastener)];
  return cotterPinFor({...(thread && {thread}), ...(hole && {hole})});
}

function judge(fastener: Fastener, pin: SizedLock, spec: Specification, report: Context['report']): void {
  const limit = limitFor(pin.size, fastener, spec);
  if (limit === undefined) return;
  report({
    where: pin.where,
    message: `${fastener.id}: ${pin.name} of ${told(pin.size, spec)} is ${limit}`,
    item: fastener.id,
    related: [specified(fastener)],
  });
}

function limitFor(pin: Quantity, fastener: Fastener, spec: Specification): string | undefined {
  const hole = holeOf(fastener);
  if (pin.unit.system === 'metric') return hole && limitByHole(pin, hole, spec);
  const choice = choiceFor(fastener);
  if (!choice.ok) return undefined;
  const suits = cotterSuits(pin, choice.result);
  return suits === 'suits'
    ? undefined
    : `${suits} for ${what(fastener, hole, spec)}, which takes ${takes(choice.result, spec)} (${RULE})`;
}

/** A pin stated in mm is named after its hole (ISO 1234), so that it goes into a hole of that size. */
function limitByHole(pin: Quantity, hole: Quantity, spec: Specification): string | undefined {
  const slack = 5e-5;
  if (si(pin) <= si(hole) + slack) return undefined;
  return `too thick for a hole of ${told(hole, spec)} (pins in mm are named after their hole, ISO 1234)`;
}

function what(fastener: Fastener, hole: Quantity | undefined, spec: Specification): string {
  const through = hole && `a hole of ${told(hole, spec)}`;
  return [through, threadOf(fastener)?.name].filter(Boolean).join(' on ');
}

function takes({least, most, take}: CotterChoice, spec: Specification): string {
  if (least && most && si(least) < si(most)) return `${told(least, spec)} to ${told(most, spec)}`;
  return told(take, spec);
}
