/** Findings as a JUnit report: a suite a file, a case a finding, for pipelines that read nothing else. */
import {printable} from '../text/printable.js';
import type {FindingJson} from './answer.js';
import type {CheckJson} from './check-shape.js';

/** Errors and warnings are failures, information is a case that passed with a word on it. */
export function junit({findings}: CheckJson, files: readonly string[]): string {
  const all = [...new Set([...files, ...findings.map(({file}) => file)])];
  const failed = findings.filter(isFailure).length;
  const suites = all.map((file) =>
    suite(
      file,
      findings.filter((one) => one.file === file),
    ),
  );
  const tests = suites.reduce((sum, one) => sum + one.tests, 0);
  const head = `name="wmark check" tests="${tests}" failures="${failed}" errors="0" skipped="0"`;
  return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites ${head}>\n${suites.map(({xml}) => xml).join('')}</testsuites>\n`;
}

function isFailure({severity}: FindingJson): boolean {
  return severity !== 'information';
}

function suite(file: string, findings: readonly FindingJson[]) {
  const failures = findings.filter(isFailure).length;
  // A suite without a case is taken for one that did not run.
  const tests = Math.max(1, findings.length);
  const head = `name="${escaped(file)}" tests="${tests}" failures="${failures}" errors="0" skipped="0"`;
  const clean = `    <testcase classname="${escaped(file)}" name="no finding"/>\n`;
  const cases = findings.length === 0 ? clean : findings.map(testCase).join('');
  return {tests, xml: `  <testsuite ${head}>\n${cases}  </testsuite>\n`};
}

function testCase(finding: FindingJson): string {
  const {file, line, column, name, message, severity, story, related} = finding;
  const head = `classname="${escaped(file)}" name="${escaped(`${line}:${column} ${name}`)}" file="${escaped(file)}" line="${line}"`;
  const told = [
    `${file}:${line}:${column}: ${severity}: ${message}`,
    ...[...story, ...related].map((one) => `    ${one.file}:${one.line}:${one.column}: ${one.message}`),
  ];
  const inner = isFailure(finding)
    ? `<failure type="${escaped(name)}" message="${escaped(message)}">${escaped(told.join('\n'))}</failure>`
    : `<system-out>${escaped(told.join('\n'))}</system-out>`;
  return `    <testcase ${head}>${inner}</testcase>\n`;
}

/** Characters that XML 1.0 forbids even as escapes, beyond the controls. */
const FORBIDDEN = /[\p{Cs}\uFFFE\uFFFF]/gu;

function escaped(text: string): string {
  return text
    .split('\n')
    .map(printable)
    .join('\n')
    .replace(FORBIDDEN, '\uFFFD')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
