/** `wmark why`: the list of findings, or the page of one. */
import {HOUSE_PREFIX} from '../findings/house.js';
import {houseKind} from '../findings/house-kind.js';
import type {FindingKind} from '../findings/model.js';
import {findingList, findingPage} from '../findings/page.js';
import {FINDINGS} from '../findings/registry.js';
import {nearest} from '../text/nearest.js';
import {printable} from '../text/printable.js';
import {unable} from './complain.js';
import {EXIT, type Exit} from './exit.js';
import {askedHouse, type HouseOptions} from './house.js';
import type {Streams} from './streams.js';

export async function why(
  name: string | undefined,
  options: HouseOptions,
  {report, aside}: Streams,
): Promise<Exit> {
  const house = await askedHouse(options);
  if (!house.ok) return unable({aside}, house);
  // Nothing is run here, so there is nothing that could go wrong.
  const kinds = [...FINDINGS, ...house.findings.map((rule) => houseKind(rule, () => undefined))];
  if (name === undefined) {
    report(findingList(kinds));
    return EXIT.clean;
  }
  const kind = kinds.find((one) => one.name === name);
  if (kind) {
    report(findingPage(kind));
    return EXIT.clean;
  }
  aside(`wmark: no finding is called ${printable(name)}; ${hintFor(name, kinds)}\n`);
  return EXIT.unable;
}

function hintFor(name: string, kinds: readonly FindingKind[]): string {
  const meant = nearest(
    name,
    kinds.map((one) => one.name),
  );
  if (meant !== undefined) return `did you mean ${meant}?`;
  if (name.startsWith(HOUSE_PREFIX)) return 'name the module of the house that has it: --house FILE';
  return '`wmark why` lists them all';
}
