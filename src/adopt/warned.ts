/** Which hazards the cautions of a tagged draft warn of: those that the step below brings, sure where its words say so. */
import {program} from '../build/program.js';
import {meetings} from '../findings/hazards.js';
import type {Caution, Procedure} from '../procedure/model.js';
import type {Specification} from '../spec/model.js';
import {wordsOf} from './words.js';

export interface Warning {
  readonly caution: Caution;
  readonly tag: string;
  readonly isSure: boolean;
}

/** Of cautions without a `hazard:` tag only; each hazard once, where it is first met. */
export function warningsFor(draft: Procedure, spec: Specification): readonly Warning[] {
  const {parts} = program({spec, procedures: [draft], problems: []});
  const found = new Map<Caution, string[]>();
  for (const {hazards, step} of parts.flatMap((part) => meetings(part, spec))) {
    const caution = step.step.cautions.findLast((one) => one.hazards.length === 0);
    if (caution === undefined) continue;
    found.set(caution, [...(found.get(caution) ?? []), ...hazards.map(({value}) => value)]);
  }
  return [...found].flatMap(([caution, hazards]) => {
    const stems = new Set(wordsOf(caution.text).map(({stem}) => stem));
    const said = hazards.filter((hazard) => isSaid(hazard, stems));
    const others = hazards.filter((hazard) => !said.includes(hazard));
    return [
      ...(said.length > 0 ? [{caution, tag: `hazard: ${said.join(', ')}`, isSure: true}] : []),
      ...(others.length > 0 ? [{caution, tag: `hazard: ${others.join(', ')}`, isSure: false}] : []),
    ];
  });
}

/** Every part of the word, or something that means it, stands in the caution. */
function isSaid(hazard: string, stems: ReadonlySet<string>): boolean {
  return wordsOf(hazard.replaceAll('-', ' ')).every(
    ({stem}) => stems.has(stem) || (MEANT.get(stem) ?? []).some((word) => stems.has(word)),
  );
}

const MEANT: ReadonlyMap<string, readonly string[]> = new Map([
  ['fire', ['burn', 'flame', 'spark', 'flash', 'ignite']],
  ['vapour', ['vapor', 'fume']],
  ['vapor', ['vapour', 'fume']],
  ['hot', ['heat', 'scald', 'burn']],
]);
