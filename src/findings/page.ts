/** The documentation of the findings, made from the same files that find them. */
import type {Example, FindingKind} from './model.js';

/** The page of one finding as Markdown: what, why, wrong, right, how to silence it, source. */
export function findingPage({name, group, severity, summary, why, source, example}: FindingKind): string {
  const blocks = [
    `# ${name}`,
    `${summary}. (${severity}; ${group})`,
    '## Why',
    why,
    ...(example ? shown(example) : []),
    '## How to silence it',
    silence(name),
    '## Source',
    `${source}.`,
  ];
  return `${blocks.join('\n\n')}\n`;
}

function shown(example: Example): string[] {
  const {shop, engine, wrong, right, job, rightEngine, rightShop, rightJob} = example;
  return [
    ...(shop ? ['## shop.yaml of the example', fenced('yaml', shop)] : []),
    '## engine.yaml of the example',
    fenced('yaml', engine),
    ...(job ? ['## The job of the example, below its head', fenced('yaml', job)] : []),
    '## Wrong',
    fenced('markdown', wrong),
    '## Right',
    ...(rightShop ? [fenced('yaml', rightShop)] : []),
    ...(rightEngine ? [fenced('yaml', rightEngine)] : []),
    ...(rightJob ? [fenced('yaml', rightJob)] : []),
    ...(right !== wrong ? [fenced('markdown', right)] : []),
  ];
}

/** Every finding, a line each, under its group. */
export function findingList(kinds: readonly FindingKind[]): string {
  const width = Math.max(...kinds.map(({name}) => name.length));
  const groups = [...new Set(kinds.map(({group}) => group))].map((group) => {
    const lines = kinds
      .filter((kind) => kind.group === group)
      .map(({name, severity, summary}) => `  ${name.padEnd(width)}  ${severity.padEnd(11)}  ${summary}`);
    return `${group}\n${lines.join('\n')}\n`;
  });
  return groups.join('\n');
}

/** Every finding as a Markdown table, each name an anchor that a link can aim at. */
export function findingTable(kinds: readonly FindingKind[]): string {
  const rows = kinds.map(
    ({name, group, severity, summary}) =>
      `| <a id="${name}"></a>\`${name}\` | ${group} | ${severity} | ${cell(summary)} |`,
  );
  return ['| finding | group | severity | what it is |', '| --- | --- | --- | --- |', ...rows].join('\n');
}

function silence(name: string): string {
  const waiver = `\`waive: ${name} by WHO because …\``;
  return [
    `At one step, with a reason that is printed on the sheet: write ${waiver} into the step.`,
    `In the whole shop: \`severity: {${name}: off}\` in shop.yaml (or \`warning\`, \`information\`).`,
  ].join('\n');
}

/** A fence longer than any in the text. */
function fenced(language: string, text: string): string {
  const longest = Math.max(2, ...[...text.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  return `${fence}${language}\n${text.trim()}\n${fence}`;
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}
