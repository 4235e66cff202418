/** What is told of a rule of the house that went wrong. */
import type {HouseFault} from '../findings/house.js';
import {failureText} from '../host/failure.js';
import type {House} from '../host/house.js';
import {placeOf} from '../host/places.js';
import {printable} from '../text/printable.js';
import type {Source} from '../text/source.js';
import type {Streams} from './streams.js';

/** A fault of a rule with the line and column that it was looking at; plain data. */
export interface HouseFaultJson extends Omit<HouseFault, 'where'> {
  readonly at?: {readonly file: string; readonly line: number; readonly column: number};
}

export function faultJson({where, ...rest}: HouseFault, texts: ReadonlyMap<string, Source>): HouseFaultJson {
  if (where === undefined) return rest;
  const {file, line, column} = placeOf(where, texts);
  return {...rest, at: {file, line, column}};
}

/** Says of each rule that went wrong what it was looking at, and where in its module. A rule is told of once. */
export function tellFaults(
  faults: readonly HouseFaultJson[],
  {files}: House,
  {aside}: Pick<Streams, 'aside'>,
): void {
  const told = new Set<string>();
  for (const {name, during, at, says, stack} of faults) {
    if (told.has(name)) continue;
    told.add(name);
    const where = at === undefined ? '' : ` at ${at.file}:${at.line}:${at.column}`;
    const [line = ''] = says.split('\n');
    const lines = [
      failureText({
        ok: false,
        where: {file: files.get(name) ?? name},
        says: `${name} went wrong (${during})${where}: ${line}`,
        hint: 'what it would have found may be missing; everything else stands',
      }),
      ...frameOf(stack),
    ];
    for (const one of lines) aside(`wmark: ${printable(one)}\n`);
  }
}

/** The line of the stack nearest to the fault that is not the tool's own. */
function frameOf(stack: string | undefined): string[] {
  const frames = stack?.split('\n').filter((line) => /^\s+at /.test(line)) ?? [];
  const [first] = frames.filter((line) => !line.includes('/command/') && !line.includes('(node:'));
  return first === undefined ? [] : [`  ${first.trim()}`];
}
