/** Shells or other parts that do not go with the size to which a surface was ground. */
import {amountsAgree} from '../quantity/convert.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import {itemsOfKind} from '../spec/items.js';
import type {Fit, Item, Located, Part, Specification} from '../spec/model.js';
import type {FindingKind} from './model.js';
import {listed, specified} from './phrase.js';

type Undersize = Amount | 'standard';

export const undersizeMismatch: FindingKind = {
  name: 'undersize-mismatch',
  group: 'job',
  severity: 'error',
  summary: 'A part does not have the undersize to which the surface that it runs on was ground',
  why: 'Standard shells on a crankshaft ground 0.010 in under run with five times their clearance, and knock within the hour.',
  source: 'common practice, no source',
  example: {
    engine: `
parts:
  block: {given: true}
  crankshaft: {given: true}
  main-shells: {}
surfaces:
  main-journals: {on: crankshaft, assembly: clean, grinds: [0.010 in, 0.020 in]}
  shell-faces: {on: main-shells, assembly: clean}
fits:
  main-clearance: {between: [main-journals, shell-faces], limits: 0.0015–0.0030 in, using: [feeler-gauges], when: {installed: [main-shells], tight: []}}
`,
    wrong: `
1. Wipe journals and shells. \`clean: main-journals, shell-faces\`
2. Press the shells in. \`install: main-shells\`
3. Read the clearance. \`measure: main-clearance\`
`,
    right: `
1. Wipe journals and shells. \`clean: main-journals, shell-faces\`
2. Press the shells in. \`install: main-shells\`
3. Read the clearance. \`measure: main-clearance\`
`,
    job: `
grinds: {main-journals: 0.010 in}
fitted: {main-shells: {undersize: standard}}
`,
    rightJob: `
grinds: {main-journals: 0.010 in}
fitted: {main-shells: {undersize: 0.010 in}}
`,
  },
  book({book: {spec, job}, report}) {
    if (job === undefined) return;
    for (const [id, ground] of job.grinds) {
      const surface = spec.items.get(id);
      if (surface?.kind !== 'surface') continue;
      if (!allowed(ground.value, surface.grinds)) {
        report({
          where: ground.where,
          message: `${id} is ground ${said(ground.value)}, and may be ground ${listed(surface.grinds.map(({value}) => formatAmount(value)))} under`,
          item: id,
          related: [specified(surface)],
        });
      }
      for (const part of partsOn(id, spec)) {
        const fitted = job.fitted.get(part);
        // A part that the job says nothing of is the standard one.
        const has = fitted?.value ?? 'standard';
        if (agree(ground.value, has)) continue;
        report({
          where: fitted?.where ?? ground.where,
          message: `${part} is ${said(has)}, and ${id} that it runs on is ground ${said(ground.value)}`,
          item: part,
          related: [{where: ground.where, says: `${id} is ground ${said(ground.value)}`}, specified(surface)],
        });
      }
    }
  },
};

/**
 * Parts that run on this surface: those whose own surfaces share a fit with it. A part named as a whole counts only
 * where there is none, for by its side such a one only floats: a rod beside its shells.
 */
function partsOn(surface: string, spec: Specification): Set<string> {
  const beside = itemsOfKind(spec, 'fit')
    .filter((fit) => lies(fit, surface))
    .flatMap(({between}) => between.map(({value}) => spec.items.get(value)));
  const own = partUnder(spec.items.get(surface), spec);
  const runs = (item: Item | undefined): item is Part => item?.kind === 'part' && !item.given && item !== own;
  const faces = beside.map((item) => partUnder(item, spec)).filter(runs);
  const parts = faces.length > 0 ? faces : beside.filter(runs);
  return new Set(parts.map(({id}) => id));
}

/** What a surface lies on. */
function partUnder(item: Item | undefined, spec: Specification): Item | undefined {
  return item?.kind === 'surface' && item.on ? spec.items.get(item.on.value) : undefined;
}

function lies({between}: Fit, surface: string): boolean {
  return between.some(({value}) => value === surface);
}

function allowed(ground: Undersize, grinds: readonly Located<Amount>[]): boolean {
  if (ground === 'standard' || grinds.length === 0) return true;
  return grinds.some(({value}) => amountsAgree(value, ground));
}

function agree(one: Undersize, other: Undersize): boolean {
  if (one === 'standard' || other === 'standard') return one === other;
  return amountsAgree(one, other);
}

function said(undersize: Undersize): string {
  return undersize === 'standard' ? 'standard' : `${formatAmount(undersize)} under`;
}
