/** A fit that ends the build unmeasured, or that was changed after it was measured. */
import {moves} from '../build/disturbed.js';
import type {StepRef} from '../build/program.js';
import {meetingPlaces} from '../build/relations.js';
import type {Fit, Located} from '../spec/model.js';
import type {Fix} from '../text/edit.js';
import {tightAsAsked} from './done.js';
import {reportUndone} from './left-undone.js';
import {factsAt, isAnswered, stepAfter} from './missing-place.js';
import {stepBehind, titleOf} from './missing-step.js';
import type {Context, FindingKind} from './model.js';
import {inNumber, itemAt} from './phrase.js';

export const leftUnmeasured: FindingKind = {
  name: 'left-unmeasured',
  group: 'left undone',
  severity: 'error',
  summary: 'A fit ends the build unmeasured, or changed since it was measured',
  why: 'A clearance that nobody read is a guess, and one read before the shells were changed is a reading of another engine.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  crankshaft: {}
fits:
  end-play: {between: [block, crankshaft], limits: 0.003–0.009 in, using: [feeler-gauges], when: {installed: [crankshaft], tight: []}}
`,
    wrong: `
1. Lower the crankshaft in. \`install: crankshaft\`
`,
    right: `
1. Lower the crankshaft in. \`install: crankshaft\`
2. Pry the crankshaft to and fro and read its end play. \`measure: end-play using feeler-gauges\`
`,
  },
  end(context) {
    for (const fit of context.relations.fits) {
      reportUndone(
        fit,
        {
          fact: 'measured',
          never: '[is|are] never measured',
          again: '[was|were] measured before [it was|they were] changed',
          asked: `${fit.id} ${inNumber(fit, '[is|are]')} specified with limits`,
          fix: (places) => fixOf(fit, places, context),
        },
        context,
      );
    }
  },
};

/** As soon as all is in place and tight that it is read under; a strip must be laid and crushed first. */
function fixOf(fit: Fit, places: readonly string[], context: Context): Fix | undefined {
  const {when} = fit;
  if (fit.by === 'strip' || when === undefined) return undefined;
  if (fit.rework && !isAnswered(fit, context)) return undefined;
  const needs = (place: string) => [
    ...underneath(fit, place, when.installed, context),
    ...underneath(fit, place, when.tight, context),
  ];
  const step = stepAfter({item: fit, kind: 'measured', places}, needs, context);
  if (step !== undefined && isDisturbedAfter(fit, step, context)) return undefined;
  const [gauge, other] = fit.using;
  const using = gauge !== undefined && other === undefined ? ` using ${gauge.value}` : '';
  const tag = `measure: ${itemAt(fit, places)}${using}`;
  return step && stepBehind(step, {says: `Measure the ${fit.name}.`, tag}, titleOf('measure', fit));
}

/** Whether a later step moves what the reading is disturbed by: a reading behind this one would count for nothing. */
function isDisturbedAfter({disturbedBy}: Fit, {order}: StepRef, {program}: Context): boolean {
  return program.parts.some(({actions}) =>
    actions.some(
      ({item, step, verb}) =>
        step.order > order && moves(verb) && disturbedBy.some(({value}) => value === item.id),
    ),
  );
}

function underneath(fit: Fit, place: string, ids: readonly Located<string>[], context: Context) {
  return ids.flatMap(({value}) => {
    const item = context.book.spec.items.get(value);
    if (item?.kind === 'part') return item.given ? [] : factsAt('installed', item, fit, place, context);
    if (item?.kind !== 'fastener') return [];
    const facts = factsAt('tight', item, fit, place, context);
    // A fastener below its torque holds up the reading.
    return meetingPlaces(fit, [place], item).every((at) => tightAsAsked(item, at, context.state))
      ? facts
      : facts.map((fact) => ({...fact, holds: false}));
  });
}
