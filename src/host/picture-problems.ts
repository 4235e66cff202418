/** Looks whether the pictures that procedures show are there: a problem for each that a sheet could not show. */
import {resolve} from 'node:path';
import type {Block, Picture, Procedure} from '../procedure/model.js';
import type {Problem} from '../text/problem.js';
import type {Disk} from './disk.js';

/** In the order of the texts. */
export async function pictureProblems(
  procedures: readonly Procedure[],
  {
    shopFolder,
    cwd,
    disk,
  }: {readonly shopFolder: string; readonly cwd: string; readonly disk: Pick<Disk, 'picture'>},
): Promise<Problem[]> {
  const problems: Problem[] = [];
  for (const {source, sections, steps} of procedures) {
    const bounds = {procedure: resolve(cwd, source.file), shopFolder};
    const inSections = sections.flatMap(({content}) => content.flatMap(pictureOf));
    const inSteps = steps.flatMap(({pictures, more}) => [...pictures, ...more.flatMap(pictureOf)]);
    for (const {url, span} of inTextOrder([...inSections, ...inSteps])) {
      const found = await disk.picture(url, bounds);
      if (found.ok) continue;
      const {says, hint} = found;
      problems.push({name: 'picture-missing', where: {file: source.file, span}, says, hint});
    }
  }
  return problems;
}

function pictureOf(block: Block): Picture[] {
  return block.type === 'picture' ? [block.picture] : [];
}

/** Each once, whichever way it was come upon. */
function inTextOrder(pictures: readonly Picture[]): Picture[] {
  const byPlace = new Map(pictures.map((picture) => [picture.span.start, picture]));
  return [...byPlace.values()].sort((one, other) => one.span.start - other.span.start);
}
