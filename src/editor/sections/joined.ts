/** The parts of a procedure as one: counted on, and with the cautions that wait at the end of one given to the next step. */
import type {Caution, Procedure, Section, Step} from '../../procedure/model.js';
import {addAll} from '../../text/add-all.js';
import type {Problem} from '../../text/problem.js';
import type {Source} from '../../text/source.js';
import {type Part, placedAt} from './part.js';

/** Undefined where what one part says of its steps another changes: the text is then read as a whole. */
export function joined(source: Source, parts: readonly Part[]): Procedure | undefined {
  const [opening] = parts;
  const last = parts.findLastIndex(({steps}) => steps.length > 0);
  if (opening === undefined || last < 0 || namesMeet(parts)) return undefined;
  const sections: Section[] = [];
  const steps: Step[] = [];
  const problems: Problem[] = [];
  let waiting: readonly Caution[] = [];
  let at = {offset: 0, line: 0, index: 0, count: 0};
  for (const [index, part] of parts.entries()) {
    let read: Steps = placedAt(part, at);
    addAll(problems, part.place?.read.problems ?? []);
    const first = read.steps[0];
    if (first !== undefined && waiting.length > 0) {
      read = withCautions(read, first, waiting);
      waiting = [];
    }
    if (index < last) {
      waiting = [...waiting, ...read.sections.flatMap(cautionsIn)];
      read = {...read, sections: read.sections.map(withoutCautions)};
    }
    for (const section of read.sections) sections.push(section);
    for (const step of read.steps) steps.push(step);
    at = {
      offset: at.offset + part.length,
      line: at.line + part.lines,
      index: at.index + part.steps.length,
      count: at.count + outermost(part),
    };
  }
  return {source, front: opening.front, sections, steps, problems};
}

type Steps = Pick<Procedure, 'sections' | 'steps'>;

/** Two steps of one name are a problem of the later one. */
function namesMeet(parts: readonly Part[]): boolean {
  const names = new Set<string>();
  for (const {steps} of parts) {
    for (const {id} of steps) {
      if (id === undefined) continue;
      if (names.has(id)) return true;
      names.add(id);
    }
  }
  return false;
}

function outermost({sections}: Part): number {
  return sections.reduce((sum, {content}) => sum + content.filter(({type}) => type === 'step').length, 0);
}

/** Cautions stand in a section's content only where no step of the part follows. */
function cautionsIn({content}: Section): Caution[] {
  return content.flatMap((block) => (block.type === 'caution' ? [block.caution] : []));
}

function withoutCautions(section: Section): Section {
  const content = section.content.filter(({type}) => type !== 'caution');
  return content.length === section.content.length ? section : {...section, content};
}

function withCautions({sections, steps}: Steps, first: Step, cautions: readonly Caution[]): Steps {
  const step = {...first, cautions: [...cautions, ...first.cautions]};
  return {
    steps: [step, ...steps.slice(1)],
    sections: sections.map((section) => ({
      ...section,
      content: section.content.map((block) =>
        block.type === 'step' && block.step === first ? {type: 'step', step} : block,
      ),
    })),
  };
}
