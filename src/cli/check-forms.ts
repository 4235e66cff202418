/** The forms in which `wmark check` reports, each loaded only when it is asked for. */
import type {HouseFinding} from '../findings/house.js';
import type {LoadedBook} from '../host/load.js';
import {checkText} from './check-report.js';
import type {Held} from './without-known.js';

export type CheckForm = 'text' | 'json' | 'sarif' | 'annotations' | 'junit';

export async function rendered(
  as: CheckForm,
  {result, known}: Held,
  books: readonly LoadedBook[],
  house: readonly HouseFinding[],
): Promise<string> {
  switch (as) {
    case 'json':
      return `${JSON.stringify(result, null, 2)}\n`;
    case 'sarif': {
      const [{findingResult, findingRules}, {sarifLog}] = await Promise.all([
        import('./findings-sarif.js'),
        import('./sarif.js'),
      ]);
      return sarifLog(findingRules(house), [
        ...result.findings.map((finding) => findingResult(finding)),
        ...known.map(([finding, because]) => findingResult(finding, because)),
      ]);
    }
    case 'annotations': {
      const {annotations} = await import('./findings-annotations.js');
      return annotations(result.findings);
    }
    case 'junit': {
      const {junit} = await import('./findings-junit.js');
      return junit(
        result,
        books.flatMap(({book}) => book.procedures.map(({source}) => source.file)),
      );
    }
    default:
      return checkText(result);
  }
}
