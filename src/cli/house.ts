/** `--house FILE`: rules of the house as commands take them. */
import type {Failure} from '../host/failure.js';
import {type House, loadHouse} from '../host/house.js';
import type {AskedOptions} from './asked-answers.js';

export interface HouseOptions {
  /** Modules with rules of the house. */
  readonly house?: readonly string[];
}

const NONE: House = {ok: true, findings: [], files: new Map()};

/** Runs the code of the modules that were named; none where none were. */
export async function askedHouse({house}: HouseOptions): Promise<House | Failure> {
  return house === undefined ? NONE : loadHouse(house, process.cwd());
}

/** As the check takes them: left out where there are none, so that answers can be kept. */
export function rulesOf({findings}: House): Pick<AskedOptions, 'rules'> {
  return findings.length === 0 ? {} : {rules: findings};
}
