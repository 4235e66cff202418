/** `wmark why`: the list of findings, or the page of one. */
import {findingList, findingPage} from '../findings/page.js';
import {FINDINGS} from '../findings/registry.js';
import {nearest} from '../text/nearest.js';
import {printable} from '../text/printable.js';
import {EXIT, type Exit} from './exit.js';
import type {Streams} from './streams.js';

export async function why(name: string | undefined, {report, aside}: Streams): Promise<Exit> {
  if (name === undefined) {
    report(findingList(FINDINGS));
    return EXIT.clean;
  }
  const kind = FINDINGS.find((one) => one.name === name);
  if (kind) {
    report(findingPage(kind));
    return EXIT.clean;
  }
  const meant = nearest(
    name,
    FINDINGS.map((one) => one.name),
  );
  const hint = meant ? `did you mean ${meant}?` : '`wmark why` lists them all';
  aside(`wmark: no finding is called ${printable(name)}; ${hint}\n`);
  return EXIT.unable;
}
