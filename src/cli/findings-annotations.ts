/** Findings as workflow commands, which a pipeline shows beside the lines of a pull request. */
import type {FindingJson} from './answer.js';

const COMMAND: {readonly [severity in FindingJson['severity']]: string} = {
  error: 'error',
  warning: 'warning',
  information: 'notice',
};

export function annotations(findings: readonly FindingJson[]): string {
  return findings.map(annotation).join('');
}

function annotation({
  severity,
  file,
  line,
  column,
  endLine,
  endColumn,
  name,
  message,
  story,
}: FindingJson): string {
  // Columns are taken within one line only.
  const columns = endLine === line ? `,col=${column},endColumn=${endColumn}` : '';
  const told = [message, ...story.map((one) => `${one.file}:${one.line}: ${one.message}`)].join('\n');
  const head = `file=${property(file)},line=${line},endLine=${endLine}${columns},title=${property(name)}`;
  return `::${COMMAND[severity]} ${head}::${data(told)}\n`;
}

/** A line feed would end the command, and what follows might be read as another. */
function data(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
}

function property(text: string): string {
  return data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
