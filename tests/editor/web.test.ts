/**
 * The server in a web worker of a real browser, with a client that hands it the files of a book from memory: no disk, no
 * Node. It finds there what the command finds on a disk.
 */
import {readFileSync} from 'node:fs';
import {join, posix} from 'node:path';
import type {Browser} from 'playwright-core';
import {afterAll, beforeAll, describe, expect, it, onTestFinished} from 'vitest';
import type {CodeAction, Hover, Location} from 'vscode-languageserver/node';
import {webServer} from '../../.config/web.mjs';
import * as webPath from '../../src/editor/web/path.js';
import {fileURLToPath, pathToFileURL, setOrigin} from '../../src/editor/web/url.js';
import {openBrowser} from '../help/browser.js';
import {startWebClient, type WebClient} from './web-client.js';

const ORIGIN = 'vscode-vfs://somewhere';
const FOLDER = `${ORIGIN}/a%20book`;
const FILE = `${FOLDER}/01-oil-pump.md`;
const README = 'https://elsewhere.invalid/README.md';
const textOf = (name: string) => readFileSync(join('src/cli/begin', name), 'utf8');
const PUMP = textOf('01-oil-pump.md');
const UNLOCKED = PUMP.replace(/^8\. .*\n(?: {3}.*\n)*/m, '');

let browser: Browser;
let script: string;

beforeAll(async () => {
  [browser, {text: script}] = await Promise.all([openBrowser(), webServer('0.0.0')]);
});

afterAll(() => browser.close());

async function clientOf(more: Readonly<Record<string, string>> = {}) {
  const names = ['shop.yaml', 'engine.yaml', '01-oil-pump.md', '02-sump.md'];
  const files = new Map([
    ...names.map((name) => [`/a book/${name}`, textOf(name)] as const),
    ...Object.entries(more),
  ]);
  const page = await browser.newPage();
  // A page of a safe origin, as that of an editor is one: elsewhere there are no digests.
  await page.route('https://editor.invalid/', (route) => route.fulfill({contentType: 'text/html', body: ''}));
  await page.goto('https://editor.invalid/');
  onTestFinished(() => page.close());
  const client = await startWebClient(page, script, {origin: ORIGIN, readme: README, files});
  return {client, files};
}

function open({connection}: WebClient, uri: string, text: string): Promise<void> {
  const textDocument = {uri, languageId: 'markdown', version: 1, text};
  return connection.sendNotification('textDocument/didOpen', {textDocument});
}

function type({connection}: WebClient, uri: string, text: string, version: number): Promise<void> {
  const params = {textDocument: {uri, version}, contentChanges: [{text}]};
  return connection.sendNotification('textDocument/didChange', params);
}

describe('the server in a web worker', () => {
  it('shows a mistake while it is typed and mends it, and leads to the documentation of the extension', async () => {
    const {client} = await clientOf();
    await open(client, FILE, PUMP);
    await client.until(FILE, (all) => all.length === 0);
    await type(client, FILE, UNLOCKED, 2);
    const found = await client.until(FILE, (all) => all.length > 0);
    expect(found.map(({code}) => code)).toEqual(['left-unlocked']);
    expect(found[0]?.codeDescription?.href).toBe(`${README}#left-unlocked`);
    expect(found[0]?.relatedInformation?.map(({location}) => location.uri)).toContain(
      `${FOLDER}/engine.yaml`,
    );
    const actions: CodeAction[] = await client.connection.sendRequest('textDocument/codeAction', {
      textDocument: {uri: FILE},
      range: found[0]?.range,
      context: {diagnostics: []},
    });
    expect(actions[0]?.title).toBe('Write the missing step: lock pump-bolts');
    await type(client, FILE, PUMP, 3);
    expect(await client.until(FILE, (all) => all.length === 0)).toEqual([]);
  });

  it('answers about names and lays the sheet', async () => {
    const {client} = await clientOf();
    await open(client, FILE, PUMP);
    const lines = PUMP.slice(0, PUMP.indexOf('pump-bolts to') + 1).split('\n');
    const position = {line: lines.length - 1, character: (lines.at(-1)?.length ?? 1) - 1};
    const asked = {textDocument: {uri: FILE}, position};
    const hover: Hover = await client.connection.sendRequest('textDocument/hover', asked);
    expect(JSON.stringify(hover.contents)).toContain('18 lbf·ft');
    const [given]: Location[] = await client.connection.sendRequest('textDocument/definition', asked);
    expect(given?.uri).toBe(`${FOLDER}/engine.yaml`);
    const sheet: {html: string} = await client.connection.sendRequest('witnessMark/sheet', asked);
    expect(sheet.html).toContain('<html');
  });

  it('reads a file again when it is told that it changed, and none twice', async () => {
    const {client, files} = await clientOf();
    await open(client, FILE, PUMP);
    await client.until(FILE, (all) => all.length === 0);
    const sump = `${FOLDER}/02-sump.md`;
    files.set('/a book/02-sump.md', textOf('02-sump.md').replace('`', '`x'));
    await client.connection.sendNotification('witnessMark/files', {files: [{uri: sump, is: 'file'}]});
    expect((await client.until(sump, (all) => all.length > 0)).length).toBeGreaterThan(0);
    expect([...client.reads.values()].sort()).toEqual([1, 1, 2]);
    await client.connection.sendNotification('witnessMark/files', {files: [{uri: sump, is: 'gone'}]});
    const engine = `${FOLDER}/engine.yaml`;
    const gone = await client.until(engine, (all) => all.length > 0);
    expect(gone.map(({code}) => code)).toContain('file-unreadable');
  });

  it.each([
    'untitled:Untitled-1',
    'file:///a%20book/01-oil-pump.md',
    'vscode-vfs://elsewhere/a%20book/01-oil-pump.md',
    'not a uri',
    `${ORIGIN}/%ff.md`,
  ])('says nothing of %s', async (uri) => {
    const {client} = await clientOf();
    await open(client, uri, UNLOCKED);
    await open(client, FILE, UNLOCKED);
    await client.until(FILE, (all) => all.length > 0);
    const asked = {textDocument: {uri}, position: {line: 5, character: 5}};
    expect(await client.connection.sendRequest('textDocument/hover', asked)).toBeNull();
  });

  it('takes what a client says of files for what it is', async () => {
    const {client} = await clientOf();
    for (const told of [
      null,
      3,
      {files: 'all'},
      {files: [{uri: 5, is: 'file'}]},
      {files: [{uri: 'x', is: 'file'}]},
    ])
      await client.connection.sendNotification('witnessMark/files', told);
    await open(client, FILE, UNLOCKED);
    expect(await client.until(FILE, (all) => all.length > 0)).toHaveLength(1);
  });
});

/** Held against Node's own for systems with slashes. */
describe('paths in the web', () => {
  const PATHS = [
    '/',
    '/a',
    '/a/',
    '/a/b.md',
    'a/b',
    '../x',
    './x.yaml',
    '/a/../b',
    '',
    '.',
    '/.git',
    'a.b.c',
    '/a b/ä.md',
  ];
  const pairs = PATHS.flatMap((one) => PATHS.map((other) => [one, other] as const));

  it.each(pairs)('are those of a system with slashes: %j and %j', (one, other) => {
    expect(webPath.resolve('/w', one, other)).toBe(posix.resolve('/w', one, other));
    const ends = (path: string) => path.replace(/(?<=.)\/+$/, '');
    expect(webPath.join(one, other)).toBe(ends(posix.join(one, other)));
    expect(webPath.relative(`/w/${one}`, `/w/${other}`)).toBe(posix.relative(`/w/${one}`, `/w/${other}`));
    expect(webPath.isAbsolute(one)).toBe(posix.isAbsolute(one));
  });

  it.each(['/', '/a', '/a/b.md', 'a/b', '.git', 'a.b.c', '/a.b/c', 'x.', '/.git/a'])(
    'has the parts of %j',
    (path) => {
      expect(webPath.dirname(path)).toBe(posix.dirname(path));
      expect(webPath.basename(path)).toBe(posix.basename(path));
      expect(webPath.extname(path)).toBe(posix.extname(path));
    },
  );

  it.each(['/', '/a', '/a b/ä#?.md', '/%41'])('go to an address and back: %j', (path) => {
    setOrigin(`${ORIGIN}/`);
    expect(fileURLToPath(pathToFileURL(path).href)).toBe(path);
  });
});
