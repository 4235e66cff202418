/** What the benchmark times: bare parsing, reading, checking, and for orientation two general linters, on one book. */
import {lint as lintByMarkdownlint} from 'markdownlint/promise';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import remarkPresetLintRecommended from 'remark-preset-lint-recommended';
import remarkStringify from 'remark-stringify';
import {unified} from 'unified';
import {VFile} from 'vfile';
import {check} from '../../src/findings/check.js';
import {readProcedure} from '../../src/procedure/read.js';
import {readSpecification} from '../../src/spec/resolve.js';
import {source} from '../../src/text/source.js';
import type {GeneratedBook} from './generated.js';

/** remark-parse with front matter, nothing else. */
export function parseBare({procedures}: GeneratedBook): void {
  const processor = unified().use(remarkParse).use(remarkFrontmatter);
  for (const text of procedures.values()) processor.parse(text);
}

/** All that `wmark check` does between reading its files and printing: YAML, Markdown, ledger, findings. */
export function checkWhole(book: GeneratedBook): number {
  return checkRead(readWhole(book));
}

export function readWhole({procedures, ...specification}: GeneratedBook) {
  return {
    spec: readYaml(specification),
    procedures: [...procedures].map(([file, text]) => readProcedure(source(file, text))),
    problems: [],
  };
}

export function readYaml({shop, engine, bases}: Omit<GeneratedBook, 'procedures'>) {
  return readSpecification({
    shop: source('shop.yaml', shop),
    engine: source('engine.yaml', engine),
    bases: bases.map((text, index) => source(`base-${index}.yaml`, text)),
  });
}

export function checkRead(read: ReturnType<typeof readWhole>): number {
  return check(read).findings.length;
}

/** remark-lint's recommended preset with front matter. */
export async function remarkLint({procedures}: GeneratedBook): Promise<void> {
  const processor = unified()
    .use(remarkParse)
    .use(remarkFrontmatter)
    .use(remarkPresetLintRecommended)
    .use(remarkStringify);
  for (const [path, value] of procedures) {
    const file = new VFile({path, value});
    await processor.run(processor.parse(file), file);
  }
}

/** markdownlint with all of its rules, which is how it comes. */
export async function markdownlint({procedures}: GeneratedBook): Promise<void> {
  for (const [path, text] of procedures) await lintByMarkdownlint({strings: {[path]: text}});
}
