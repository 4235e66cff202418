/** The files of the extension that are made from the code: the grammar, and the table of findings of its README. */
import {findingTable} from '../../findings/page.js';
import {FINDINGS} from '../../findings/registry.js';
import {tagGrammar} from './grammar.js';

/** By name; the README is what a person wrote, with the table at its end. */
export function contents(readme: string): Readonly<Record<string, string>> {
  return {
    'grammar.json': `${JSON.stringify(tagGrammar(), null, 1)}\n`,
    'README.md': `${readme.trimEnd()}\n\n## Findings\n\n${findingTable(FINDINGS)}\n`,
  };
}
