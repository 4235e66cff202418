/** The forms in which `wmark check` reports, each loaded only when it is asked for. */
import {checkText} from './check-report.js';
import type {Held} from './without-known.js';

export type CheckForm = 'text' | 'json' | 'sarif' | 'annotations' | 'junit';

/** `procedures` are the names of those that were judged: a report of clean ones names them too. */
export async function rendered(
  as: CheckForm,
  {result, known}: Held,
  procedures: readonly string[],
): Promise<string> {
  switch (as) {
    case 'json':
      return `${JSON.stringify(result, null, 2)}\n`;
    case 'sarif': {
      const [{findingResult, findingRules}, {sarifLog}] = await Promise.all([
        import('./findings-sarif.js'),
        import('./sarif.js'),
      ]);
      return sarifLog(findingRules(), [
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
      return junit(result, procedures);
    }
    default:
      return checkText(result);
  }
}
