/** The check in a pipeline: its forms for services, and every recipe of the README run in a scratch repository. */
import {chmod, readFile, writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {parse} from 'yaml';
import {ENGINE, PROCEDURE, smallBook} from '../host/small-book.js';
import {temporaryFolder} from '../host/temporary.js';
import {type Scratch, scratch} from './git.js';
import {COMMAND, shell, wmark} from './run.js';
import {sarifFaults} from './sarif-schema.js';

const UNCLEAN = PROCEDURE.replace('1. Wipe the seat with solvent. `clean: seat with solvent`\n2.', '1.');
const SLIP = PROCEDURE.replace('clean: seat', 'clean: saet');

describe('SARIF', () => {
  test('is valid by the published schema, with rules, story and fix', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': SLIP}));
    const {code, out} = wmark(folder, 'check', '--as', 'sarif', 'book');
    const log = JSON.parse(out);
    expect(code).toBe(1);
    expect(sarifFaults(log)).toEqual([]);
    const [run] = log.runs;
    expect(run.columnKind).toBe('utf16CodeUnits');
    const result = run.results.find(({ruleId}: {ruleId: string}) => ruleId === 'unknown-item');
    expect(run.tool.driver.rules[result.ruleIndex]).toMatchObject({id: 'unknown-item'});
    expect(result.locations[0].physicalLocation).toEqual({
      artifactLocation: {uri: 'book/plug.md', uriBaseId: '%SRCROOT%'},
      region: {startLine: 8, startColumn: 40, endLine: 8, endColumn: 44},
    });
    expect(result.fixes[0].artifactChanges[0].replacements).toEqual([
      {
        deletedRegion: {startLine: 8, startColumn: 40, endLine: 8, endColumn: 44},
        insertedContent: {text: 'seat'},
      },
    ]);
  });

  test('of a clean book is valid too', async () => {
    const log = JSON.parse(wmark(await temporaryFolder(smallBook()), 'check', '--as', 'sarif').out);
    expect(sarifFaults(log)).toEqual([]);
    expect(log.runs[0].results).toEqual([]);
  });

  test('a log that is wrong is told so', () => {
    expect(sarifFaults({version: '2.1.0', runs: [{results: [{}]}]})).not.toEqual([]);
  });

  test('fingerprints are those of the meaning: they stay when lines and step numbers move', async () => {
    const prints = async (procedure: string) => {
      const {out} = wmark(
        await temporaryFolder(smallBook({'book/plug.md': procedure})),
        'check',
        '--as',
        'sarif',
      );
      return JSON.parse(out).runs[0].results.map(
        (one: {partialFingerprints: object}) => one.partialFingerprints,
      );
    };
    const first = await prints(UNCLEAN);
    expect(first).toHaveLength(1);
    expect(await prints(UNCLEAN.replace('1. Drive', 'A word.\n\n1. Breathe in.\n2. Drive'))).toEqual(first);
    expect(await prints(SLIP)).not.toEqual(first);
  });
});

describe('annotations', () => {
  test('are a workflow command a finding, with nothing in them that ends a command', async () => {
    const folder = await temporaryFolder(smallBook({'book/plug.md': UNCLEAN}));
    const {code, out} = wmark(folder, 'check', '--as', 'annotations');
    expect(code).toBe(1);
    expect(out).toBe(
      '::error file=book/plug.md,line=8,endLine=8,col=24,endColumn=55,title=clean-first::seat is not clean when plug closes it, and goes together dry\n',
    );
  });

  test('a name with signs of the command is escaped', async () => {
    const engine = ENGINE.replace('[plug.md]', '["a,b:c%0A.md"]');
    const folder = await temporaryFolder(
      smallBook({'book/engine.yaml': engine, 'book/a,b:c%0A.md': UNCLEAN}),
    );
    expect(wmark(folder, 'check', '--as', 'annotations').out).toContain(
      '::error file=book/a%2Cb%3Ac%250A.md,line=8,',
    );
  });
});

describe('JUnit', () => {
  /** Takes the whole text apart by the grammar of XML 1.0, sections 2.1 to 3.1, as far as a report needs it. */
  const cases = (xml: string) => {
    const TOKEN =
      /^(?:<\?xml [^?]*\?>|<\/([a-z-]+)>|<([a-z-]+)((?: [a-z]+="(?:[^<&"]|&(?:amp|lt|gt|quot);)*")*)(\/?)>|(?:[^<&]|&(?:amp|lt|gt|quot);)+)/;
    const open: string[] = [];
    const found: {name: string; failed: boolean}[] = [];
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that XML forbids.
    expect(xml).not.toMatch(/[\u0000-\u0008\u000B\u000C\u000E-\u001F]/);
    for (let rest = xml; rest !== ''; ) {
      const [token = '', closes, opens, attributes = '', empty] = TOKEN.exec(rest) ?? [];
      expect(token, rest.slice(0, 80)).not.toBe('');
      if (closes !== undefined) expect(open.pop()).toBe(closes);
      if (opens !== undefined && empty === '') open.push(opens);
      if (opens === 'testcase')
        found.push({
          name: /name="([^"]*)"/.exec(attributes.replace(/classname="[^"]*"/, ''))?.[1] ?? '',
          failed: false,
        });
      const last = found.at(-1);
      if (opens === 'failure' && last) found[found.length - 1] = {...last, failed: true};
      rest = rest.slice(token.length);
    }
    expect(open).toEqual([]);
    return found;
  };

  test('is well-formed XML, a case a finding', async () => {
    const odd = UNCLEAN.replace('title: Plug', 'title: "<Plug> & \\u0007 \\uD800"').replace(
      '`install: plug',
      '`install: plug, "<&\u0001"',
    );
    const folder = await temporaryFolder(smallBook({'book/plug.md': odd}));
    const {out} = wmark(folder, 'check', '--as', 'junit');
    expect(cases(out).some(({failed}) => failed)).toBe(true);
    expect(out).toMatch(
      /^<\?xml version="1\.0" encoding="UTF-8"\?>\n<testsuites name="wmark check" tests="\d+" failures="\d+"/,
    );
  });

  test('a clean procedure is a case that passed', async () => {
    const {out} = wmark(await temporaryFolder(smallBook()), 'check', '--as', 'junit');
    expect(cases(out)).toEqual([{name: 'no finding', failed: false}]);
  });
});

describe('what stops', () => {
  const warning = {
    'book/plug.md': UNCLEAN,
    'book/shop.yaml': `${smallBook()['book/shop.yaml']}severity: {clean-first: warning}\n`,
  };

  test.each([
    {words: [], code: 0},
    {words: ['--stop-on', 'error'], code: 0},
    {words: ['--stop-on', 'warning'], code: 1},
  ])('a warning with $words', async ({words, code}) => {
    expect(wmark(await temporaryFolder(smallBook(warning)), 'check', ...words).code).toBe(code);
  });

  test('--only-changed leaves out what touches no changed file', async () => {
    const repo = await scratch(smallBook({'book/plug.md': UNCLEAN}));
    const only = () => wmark(repo.folder, 'check', '--only-changed', '--since', 'HEAD');
    expect(only()).toMatchObject({code: 0});
    await repo.write({'book/plug.md': UNCLEAN.replace('Plug', 'The plug')});
    expect(only()).toMatchObject({code: 1});
    expect(wmark(repo.folder, 'check', '--only-changed').err).toContain('add --since REV');
    expect(wmark(repo.folder, 'check', '--since', 'HEAD')).toMatchObject({code: 2, out: ''});
    expect(wmark(repo.folder, 'check', '--since', 'HEAD').err).toContain('add --only-changed');
    expect(wmark(repo.folder, 'check', '--only-changed', '--since', 'nowhere').code).toBe(2);
  });
});

describe('the recipes of the README', async () => {
  const readme = await readFile(new URL('../../README.md', import.meta.url), 'utf8');
  const part = readme.slice(
    readme.indexOf('### In a pipeline'),
    readme.indexOf('### Starting with old procedures'),
  );
  const fence = (language: string) =>
    new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``).exec(part)?.[1] ?? '';

  /** `npx wmark` and a host's own command, as a pipeline would have them on its path. */
  const tools = async (repo: Scratch) => {
    const bin = await temporaryFolder({
      npx: `#!/bin/sh\nshift\nexec "${process.execPath}" "${COMMAND}" "$@"\n`,
      gh: `#!/bin/sh\necho "$@" >> "$CALLS"\ncase "$*" in *--jq*) cat "$COMMENTS";; esac\n`,
      comments: '',
      calls: '',
      summary: '',
    });
    for (const name of ['npx', 'gh']) await chmod(join(bin, name), 0o755);
    const env = `PATH="${bin}:$PATH"; export PATH CALLS="${bin}/calls" COMMENTS="${bin}/comments" GITHUB_STEP_SUMMARY="${bin}/summary" BASE=main PR=7 REPO=o/r\n`;
    return {bin, run: (script: string) => shell(repo.folder, env + script)};
  };

  interface Step {
    readonly name?: string;
    readonly run?: string;
  }

  const steps = (): Readonly<Record<string, string>> => {
    const workflow: {jobs: {engine: {steps: readonly Step[]}}} = parse(fence('yaml'));
    return Object.fromEntries(
      workflow.jobs.engine.steps.flatMap(({name, run}) =>
        name !== undefined && run !== undefined ? [[name, run]] : [],
      ),
    );
  };

  test('the workflow compares, comments once and updates that comment, checks, and stops on a weakening', async () => {
    const repo = await scratch(smallBook());
    repo.git('checkout', '--quiet', '-b', 'change');
    await repo.commit({'book/plug.md': UNCLEAN});
    const {bin, run} = await tools(repo);
    const {
      'What the change means': compare = '',
      Check: check = '',
      'Nothing weakened unseen': stop = '',
    } = steps();
    expect(run(compare)).toMatchObject({code: 0, err: ''});
    const comment = await readFile(join(repo.folder, 'compare.md'), 'utf8');
    expect(comment).toMatch(/^<!-- wmark compare -->\n[\s\S]*\*\*weakened\*\* seat: no longer cleaned/);
    expect(await readFile(join(bin, 'summary'), 'utf8')).toBe(comment);
    expect(await readFile(join(bin, 'calls'), 'utf8')).toContain(
      'api --method POST repos/o/r/issues/7/comments -F body=@compare.md',
    );
    await writeFile(join(bin, 'comments'), '42\n');
    run(compare);
    expect(await readFile(join(bin, 'calls'), 'utf8')).toContain(
      'api --method PATCH repos/o/r/issues/comments/42 -F body=@compare.md',
    );
    expect(run(check)).toMatchObject({code: 1, err: ''});
    expect(run(stop)).toMatchObject({code: 1, err: ''});
  });

  test('the workflow lets a rewording through', async () => {
    const repo = await scratch(smallBook());
    repo.git('checkout', '--quiet', '-b', 'change');
    await repo.commit({'book/plug.md': PROCEDURE.replace('Drive', 'Tap')});
    const {run} = await tools(repo);
    for (const script of Object.values(steps())) expect(run(script)).toMatchObject({code: 0, err: ''});
  });

  test('the hook stops a commit that brings an error, and the first one too', async () => {
    const repo = await scratch(smallBook());
    const {run} = await tools(repo);
    await repo.write({'.git/hooks/pre-commit': fence('sh')});
    await chmod(join(repo.folder, '.git/hooks/pre-commit'), 0o755);
    const commit = 'git -c user.name=T -c user.email=t@example.invalid commit --quiet --all --message=next';
    await repo.write({'book/plug.md': PROCEDURE.replace('Drive', 'Tap')});
    expect(run(commit).code).toBe(0);
    await repo.write({'book/plug.md': UNCLEAN});
    expect(run(commit)).toMatchObject({code: 1});
    repo.git('checkout', '--quiet', '--orphan', 'anew');
    expect(run(commit)).toMatchObject({code: 1});
  });
});
