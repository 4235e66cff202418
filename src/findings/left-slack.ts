/** A fastener that ends the build below its specified torque: never tightened, or slackened and never made good. */
import {stepName} from '../build/tell.js';
import {amountsAgree} from '../quantity/convert.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import {placesOf} from '../spec/items.js';
import type {Fastener} from '../spec/model.js';
import {isTemporary} from '../spec/temporary.js';
import {lastPlace} from './last-place.js';
import {torqueFix} from './missing-torque.js';
import type {Context, FindingKind} from './model.js';
import {about, agreeing, itemAt, specified, storyOf} from './phrase.js';

export const leftSlack: FindingKind = {
  name: 'left-slack',
  group: 'left undone',
  severity: 'error',
  summary: 'A fastener ends the build below its specified torque',
  why: 'A bolt that was slackened for one more look and only nipped up again lets go under load.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  main-caps: {}
fasteners:
  main-cap-bolts: {holds: [main-caps], torque: 85 lbf·ft, threads: dry, lock: {value: none, because: stretch holds them}}
`,
    wrong: `
1. Set the caps in place. \`install: main-caps\`
2. Run the bolts down by hand. \`torque: main-cap-bolts to snug\`
`,
    right: `
1. Set the caps in place. \`install: main-caps\`
2. Run the bolts down by hand. \`torque: main-cap-bolts to snug\`
3. Bring the bolts up. \`torque: main-cap-bolts to 85 lbf·ft\`
`,
  },
  end(context) {
    for (const fastener of context.relations.fasteners) {
      if (!isTemporary(fastener, context.spec)) judge(fastener, context);
    }
  },
};

function judge(fastener: Fastener, context: Context): void {
  const {state, relations, report} = context;
  const asked = fastener.torque?.value;
  if (asked === undefined || asked === 'none' || asked === 'unknown') return;
  const slack = placesOf(fastener).filter(
    (place) =>
      state.get('tight', fastener.id, place).detail?.final !== true ||
      !state.holds('tight', fastener.id, place),
  );
  if (slack.length === 0) return;
  const facts = slack.map((place) => state.get('tight', fastener.id, place));
  const where = lastPlace(fastener, slack, ['tight'], state, relations);
  const fix = torqueFix(fastener, asked, slack, context);
  report({
    where,
    message: `${itemAt(fastener, slack)} ${agreeing(fastener, 'ends', 'end')} the build slack: ${cause(facts, fastener)}`,
    ...about(fastener, slack),
    story: storyOf(facts),
    related: [specified(fastener, `${fastener.id} must be torqued`)],
    ...(fix && {fix}),
  });
}

function cause(facts: readonly ReturnType<Context['state']['get']>[], fastener: Fastener): string {
  const them = agreeing(fastener, 'it', 'them');
  const their = agreeing(fastener, 'its', 'their');
  const undone = facts.find((fact) => fact.undone !== undefined);
  if (undone?.undone !== undefined && undone.by !== undefined) {
    const {verb, item, step} = undone.undone;
    return `the torque at ${stepName(undone.by.step, step)} was undone at ${stepName(step)} (${verb}: ${item.id}) and never made good`;
  }
  const short = facts.find(({holds}) => holds);
  if (short?.by !== undefined && lacksTurn(short.detail?.torque, fastener)) {
    const angle = fastener.angle ? ` by ${formatAmount(fastener.angle.value)}` : '';
    return `${stepName(short.by.step)} brings ${them} to ${short.detail?.torque ? `${their} torque` : 'snug'}, and no step turns ${them} on${angle}`;
  }
  if (short?.by !== undefined) return `${stepName(short.by.step)} leaves ${them} below the specified torque`;
  return `no step torques ${them}`;
}

/** Whether all that is missing is the angle after the torque. */
function lacksTurn(reached: Amount | undefined, {angle, torque}: Fastener): boolean {
  if (angle === undefined) return false;
  const asked = torque?.value;
  return typeof asked === 'object' ? reached !== undefined && amountsAgree(reached, asked) : asked === 'snug';
}
