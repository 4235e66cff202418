/** An engine with options, substitutes and grinds, its book as it holds for a job, and what the steps of that are. */
import type {Book} from '../../src/build/book.js';
import {forJob} from '../../src/build/for-job.js';
import type {Block, Step} from '../../src/procedure/model.js';
import {book} from '../help/example.js';

export const ENGINE = `
options: {raw-water: raw-water cooling, keel: {}}
parts:
  block: {given: true}
  crankshaft: {given: true}
  sea-pump: {only: raw-water}
  pump: {}
  impeller: {only: raw-water, substitutes: {brass: {alterations: [drill-hole]}}}
  shells:
    at: [front, rear]
    substitutes:
      twins: {name: shells of the twin, alterations: [grind-lip, drill-hole], note: they came in a blue box}
      plain: {alterations: {value: none, because: the works used both}}
surfaces:
  journals: {on: crankshaft, at: [front, rear], assembly: clean, size: 2.500 in, grinds: [0.010 in]}
  faces: {on: shells, at: [front, rear], assembly: clean, sizes: {front: 2.502 in, rear: 2.5025 in}}
  backs: {on: shells, assembly: clean, size: 2.750 in}
fits:
  clearance: {at: [front, rear], between: [journals, faces], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [shells]}}
  drive: {between: [pump], limits: 0.001–0.003 in}
  sea-gap: {only: raw-water, between: [sea-pump], limits: 0.001–0.003 in, using: [feeler-gauges], when: {installed: [sea-pump]}}
alterations:
  grind-lip: {of: [shells], does: grind the lip flush, using: [steel-hammer], hazards: [sparks], note: dip it often}
  drill-hole: {of: [shells], does: drill the oil hole through}
`;

export function made(procedure: string, job: string): Book {
  return forJob(book({engine: ENGINE, procedures: {'procedure.md': procedure}, job}));
}

/** Each step as its number and tags, indented by depth; gaps as they are said. */
export function outline({procedures}: Book): string[] {
  const ofStep = (step: Step, depth: string): string[] => [
    `${depth}${step.number} ${step.tags.map(({raw}) => raw).join(' ')}`.trimEnd(),
    ...step.more.flatMap((block) => (block.type === 'left-out' ? ofBlock(block, `${depth}  `) : [])),
    ...step.steps.flatMap((sub) => ofStep(sub, `${depth}  `)),
  ];
  const ofBlock = (block: Block, depth: string): string[] => {
    if (block.type === 'step') return ofStep(block.step, depth);
    return block.type === 'left-out' ? [`${depth}(${block.steps} for ${block.options})`] : [];
  };
  return procedures.flatMap(({sections}) =>
    sections.flatMap(({title, content}) => [
      ...(title === '' ? [] : [`# ${title}`]),
      ...content.flatMap((block) => ofBlock(block, '')),
    ]),
  );
}
