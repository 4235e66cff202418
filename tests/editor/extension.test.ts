/** What the extension declares, held against its code; and the page of the live sheet. */
import {existsSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, it} from 'vitest';
import {settingsOf} from '../../src/editor/settings.js';
import {SCOPE} from '../../src/editor/vscode/grammar.js';
import {pageWithScript, stepAtLine} from '../../src/editor/vscode/sheet-page.js';
import {compileSheet} from '../../src/sheet/compile.js';
import {sheetHtml} from '../../src/sheet/html.js';
import {FILE, LAST_STEP, STEPS, viewOf} from './view.js';

const FOLDER = 'src/editor/vscode';
const manifest = JSON.parse(readFileSync(join(FOLDER, 'manifest.json'), 'utf8'));
const client = readFileSync(join(FOLDER, 'extension.ts'), 'utf8');

describe('the manifest', () => {
  it('declares the commands that the client registers, and no other', () => {
    const declared = manifest.contributes.commands.map(({command}: {command: string}) => command);
    const registered = [...client.matchAll(/registerCommand\('([^']+)'/g)].map(([, name]) => name);
    expect(declared.sort()).toEqual(registered.sort());
  });

  it('has the settings of the server at their defaults', () => {
    for (const [name, value] of Object.entries(settingsOf(undefined))) {
      expect(manifest.contributes.configuration.properties[`witnessMark.${name}`].default).toBe(value);
    }
  });

  it('names files that are there', () => {
    expect(manifest.contributes.grammars[0].scopeName).toBe(SCOPE);
    const {walkthroughs, snippets} = manifest.contributes;
    const media = walkthroughs[0].steps.map(({media}: {media: {markdown: string}}) => media.markdown);
    for (const name of [...media, snippets[0].path]) expect(existsSync(join(FOLDER, name)), name).toBe(true);
  });

  it('reads the lines of wmark check', () => {
    const {regexp} = manifest.contributes.problemMatchers[0].pattern;
    const line = 'book/01.md:26:24: error: bolts are never locked; wire them  [left-unlocked]';
    expect(new RegExp(regexp).exec(line)?.slice(1)).toEqual([
      'book/01.md',
      '26',
      '24',
      'error',
      'bolts are never locked; wire them',
      'left-unlocked',
    ]);
  });
});

describe('the page of the live sheet', () => {
  const view = viewOf(`${STEPS}${LAST_STEP}8. Take all of it: $& $1.\n`);
  const procedure = view.procedure(FILE);
  if (procedure === undefined) throw new Error('the book has lost its procedure');
  const html = sheetHtml(compileSheet(view.loaded.book, procedure, {fingerprint: '0'.repeat(64)}));

  it('lets in its own script and nothing else', () => {
    const page = pageWithScript(html, '3b');
    const nonce = /content="script-src 'nonce-([0-9a-f-]+)'; default-src/.exec(page)?.[1];
    expect(page).toContain(`<script nonce="${nonce}">`);
    expect(page.match(/<script/g)).toHaveLength(1);
    expect(page).toContain('mark("3b")');
    expect(page).toMatch(/Take all of it: \$&[^ ]* \$1\./);
  });

  it('cannot be broken out of by the number of a step', () => {
    expect(pageWithScript(html, '</script>')).not.toContain('mark("</script>');
  });

  it.each([
    [0, ''],
    [5, '1'],
    [7, '2a'],
    [9, '2'],
    [12, '2a'],
  ])('line %i belongs to step %j', (line, number) => {
    const steps = [
      {number: '1', line: 4, endLine: 5},
      {number: '2', line: 6, endLine: 9},
      {number: '2a', line: 7, endLine: 8},
    ];
    expect(stepAtLine(steps, line)).toBe(number);
  });
});
