/** The built server with a real client of the protocol, over standard input and output. */
import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, it, onTestFinished} from 'vitest';
import {
  CancellationTokenSource,
  type CodeAction,
  type CompletionItem,
  type DocumentDiagnosticReport,
  type Hover,
  type Location,
  type TextEdit,
  WorkDoneProgress,
  WorkDoneProgressCreateRequest,
  type WorkspaceDiagnosticReport,
  type WorkspaceEdit,
} from 'vscode-languageserver/node';
import {applyEdits} from '../../src/text/edit.js';
import {offsetAt, source} from '../../src/text/source.js';
import {temporaryFolder} from '../host/temporary.js';
import {type ClientOptions, startClient} from './client.js';

const BOOK = ['shop.yaml', 'engine.yaml', '01-oil-pump.md', '02-sump.md'].map(
  (name) => [name, readFileSync(join('src/cli/begin', name), 'utf8')] as const,
);
const PUMP = BOOK[2]?.[1] ?? '';
const FILE = 'book/01-oil-pump.md';
const LOCK = /^8\. .*\n(?: {3}.*\n)*/m;
const UNLOCKED = PUMP.replace(LOCK, '');

async function clientOf(options: ClientOptions = {}, more: Readonly<Record<string, string>> = {}) {
  const files = Object.fromEntries(BOOK.map(([name, text]) => [`book/${name}`, text]));
  const folder = await temporaryFolder({...files, ...more});
  const client = await startClient(folder, options);
  onTestFinished(() => {
    client.server.kill();
  });
  return {client, folder};
}

function place(text: string, words: string, into = 1) {
  const before = text.slice(0, text.indexOf(words) + into).split('\n');
  return {line: before.length - 1, character: before.at(-1)?.length ?? 0};
}

function edited(text: string, edits: readonly TextEdit[]): string {
  const from = source('x', text);
  const at = ({line, character}: {line: number; character: number}) =>
    offsetAt(from, {line: line + 1, column: character + 1});
  const all = edits.map(({range, newText}) => ({
    span: {start: at(range.start), end: at(range.end)},
    text: newText,
  }));
  return applyEdits(text, all);
}

const RANGE = {start: {line: 0, character: 0}, end: {line: 40, character: 0}};
const AT_BOLTS = {position: place(PUMP, 'pump-bolts to')};

/** Requests about a file, each with an answer in the book. */
const ASKED = [
  ['textDocument/documentSymbol', {}],
  ['textDocument/foldingRange', {}],
  ['textDocument/semanticTokens/full', {}],
  ['textDocument/semanticTokens/range', {range: RANGE}],
  ['textDocument/inlayHint', {range: RANGE}],
  ['textDocument/codeLens', {}],
  ['textDocument/documentHighlight', AT_BOLTS],
  ['textDocument/prepareRename', AT_BOLTS],
  ['witnessMark/sheet', {}],
] as const;

const PUSHED = {textDocument: {publishDiagnostics: {relatedInformation: true}}};

const NOTHING = ['null', '[]', '{"data":[]}'];

describe('a session', () => {
  it('shows a mistake while it is typed, mends it, and ends when told', async () => {
    const {client} = await clientOf();
    await client.open(FILE, PUMP);
    await client.until(FILE, (all) => all.length === 0);
    await client.type(FILE, UNLOCKED);
    const found = await client.until(FILE, (all) => all.length > 0);
    expect(found.map(({code}) => code)).toEqual(['left-unlocked']);
    const textDocument = {uri: client.uri(FILE)};
    const range = found[0]?.range;
    const actions = await client.request<CodeAction[]>('textDocument/codeAction', {
      textDocument,
      range,
      context: {diagnostics: found},
    });
    const edits = actions[0]?.edit?.changes?.[client.uri(FILE)] ?? [];
    await client.type(FILE, edited(UNLOCKED, edits));
    expect(await client.until(FILE, (all) => all.length === 0)).toEqual([]);
    expect(await client.stop()).toBe(0);
  });

  it('answers about names, words and texts', async () => {
    const {client} = await clientOf();
    await client.open(FILE, PUMP);
    const textDocument = {uri: client.uri(FILE)};
    const position = place(PUMP, 'pump-bolts to');
    const hover = await client.request<Hover>('textDocument/hover', {textDocument, position});
    expect(JSON.stringify(hover.contents)).toContain('18 lbf·ft');
    const [given] = await client.request<Location[]>('textDocument/definition', {textDocument, position});
    expect(given?.uri).toBe(client.uri('book/engine.yaml'));
    const used = await client.request<Location[]>('textDocument/references', {
      textDocument,
      position,
      context: {includeDeclaration: false},
    });
    expect(used.length).toBeGreaterThan(1);
    const renamed = await client.request<WorkspaceEdit>('textDocument/rename', {
      textDocument,
      position,
      newName: 'pump-screws',
    });
    expect(Object.keys(renamed.changes ?? {}).sort()).toEqual([
      client.uri(FILE),
      client.uri('book/engine.yaml'),
    ]);
    await expect(
      client.request('textDocument/rename', {textDocument, position, newName: 'No Name'}),
    ).rejects.toThrow('not a name');
  });

  it('answers in a book, and says nothing outside of one', async () => {
    const {client} = await clientOf({}, {'else/notes.md': '1. Wash. `clean: x`\n'});
    await client.open(FILE, PUMP);
    await client.open('else/notes.md', '1. Wash. `clean: x`\n');
    for (const [method, params] of ASKED) {
      const ask = (file: string) =>
        client.request(method, {textDocument: {uri: client.uri(file)}, ...params});
      const inBook = JSON.stringify(await ask(FILE));
      expect(NOTHING, method).not.toContain(inBook);
      expect(NOTHING, method).toContain(JSON.stringify(await ask('else/notes.md')));
    }
    expect(client.diagnostics('else/notes.md')).toEqual([]);
  });

  it('formats as wmark tidy does', async () => {
    const {client} = await clientOf();
    const untidy = PUMP.replace('`lock: pump-bolts with wire-032`', '`lock:   pump-bolts   with wire-032`');
    await client.open(FILE, untidy);
    const edits = await client.request<TextEdit[]>('textDocument/formatting', {
      textDocument: {uri: client.uri(FILE)},
      options: {tabSize: 2, insertSpaces: true},
    });
    expect(edited(untidy, edits)).toBe(PUMP);
  });

  it('offers what comes next in the words typed a moment ago', async () => {
    const {client} = await clientOf();
    await client.open(FILE, PUMP);
    const now = `${PUMP}9. Wire. \`lock: `;
    await client.type(FILE, now);
    const offers = await client.request<CompletionItem[]>('textDocument/completion', {
      textDocument: {uri: client.uri(FILE)},
      position: place(now, '9. Wire. `lock: ', '9. Wire. `lock: '.length),
    });
    expect(offers.map(({label}) => label)).toContain('pump-bolts');
  });
});

describe('the whole book', () => {
  it('is checked as any of its files changes, saved or not', async () => {
    const {client} = await clientOf();
    await client.open(FILE, PUMP);
    await client.until(FILE, (all) => all.length === 0);
    const engine = BOOK[1]?.[1] ?? '';
    await client.open('book/engine.yaml', engine.replace('torque: {value: 18', 'torque: {value: 20'));
    const found = await client.until(FILE, (all) => all.length > 0);
    expect(found.map(({code}) => code)).toContain('value-disagrees');
    await client.connection.sendNotification('textDocument/didClose', {
      textDocument: {uri: client.uri('book/engine.yaml')},
    });
    expect(await client.until(FILE, (all) => all.length === 0)).toEqual([]);
  });

  it('is read again when a file changes on disk, and shows what stands in files that are not open', async () => {
    const {client, folder} = await clientOf();
    await client.open(FILE, PUMP);
    await client.until(FILE, (all) => all.length === 0);
    const sump = BOOK[3]?.[1] ?? '';
    writeFileSync(join(folder, 'book/02-sump.md'), sump.replace('`', '`x'));
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{uri: client.uri('book/02-sump.md'), type: 2}],
    });
    expect((await client.until('book/02-sump.md', (all) => all.length > 0)).length).toBeGreaterThan(0);
  });
});

describe('a client that asks for diagnostics', () => {
  const pulling: ClientOptions = {capabilities: {textDocument: {diagnostic: {}}}};

  it('gets them for a file and for the book, and no second time while they stay', async () => {
    const {client} = await clientOf(pulling);
    await client.open(FILE, UNLOCKED);
    const textDocument = {uri: client.uri(FILE)};
    const first = await client.request<DocumentDiagnosticReport>('textDocument/diagnostic', {textDocument});
    if (first.kind !== 'full') throw new Error('the first report is not whole');
    expect(first.items.map(({code}) => code)).toEqual(['left-unlocked']);
    const second = await client.request<DocumentDiagnosticReport>('textDocument/diagnostic', {
      textDocument,
      previousResultId: first.resultId,
    });
    expect(second).toEqual({kind: 'unchanged', resultId: first.resultId});
    const {items} = await client.request<WorkspaceDiagnosticReport>('workspace/diagnostic', {
      previousResultIds: [],
    });
    expect(items).toHaveLength(BOOK.length);
    expect(client.diagnostics(FILE)).toEqual([]);
  });
});

describe('whatever comes', () => {
  it('survives messages that are none', async () => {
    const {client} = await clientOf();
    for (const body of [
      '{',
      '[]',
      '{"jsonrpc":"2.0"}',
      '{"jsonrpc":"2.0","method":"no/such","params":3}',
      'null',
    ]) {
      client.server.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
    }
    await expect(client.request('no/such/request', {})).rejects.toThrow();
    expect(await client.request('textDocument/hover', {textDocument: 5})).toBeNull();
    await client.open(FILE, UNLOCKED);
    expect(await client.until(FILE, (all) => all.length > 0)).toHaveLength(1);
  });

  it.each([
    ['untitled:Untitled-1', 'an unsaved file'],
    ['git:/a/b.md?x', 'a file that is not on disk'],
    ['file://elsewhere/share/a.md', 'a file of another machine'],
    ['not a uri', 'no address'],
    ['file:///no/such/folder/a.md', 'a file that is not there'],
  ])('takes %s for %s', async (uri) => {
    const {client} = await clientOf();
    const textDocument = {uri, languageId: 'markdown', version: 1, text: '1. `clean: x`\n'};
    await client.connection.sendNotification('textDocument/didOpen', {textDocument});
    const position = {line: 0, character: 5};
    expect(await client.request('textDocument/hover', {textDocument: {uri}, position})).toBeNull();
    await client.connection.sendNotification('textDocument/didClose', {textDocument: {uri}});
  });

  it('serves a client that refuses what it said it could do', async () => {
    const workspace = {
      configuration: true,
      didChangeConfiguration: {dynamicRegistration: true},
      didChangeWatchedFiles: {dynamicRegistration: true},
      codeLens: {refreshSupport: true},
      inlayHint: {refreshSupport: true},
    };
    const {client} = await clientOf({capabilities: {workspace, window: {workDoneProgress: true}}});
    await client.open(FILE, UNLOCKED);
    expect(await client.until(FILE, (all) => all.length > 0)).toHaveLength(1);
    await client.connection.sendNotification('workspace/didChangeConfiguration', {settings: 3});
    await client.type(FILE, PUMP);
    expect(await client.until(FILE, (all) => all.length === 0)).toEqual([]);
  });

  it('does as its settings say', async () => {
    const {client} = await clientOf();
    await client.open(FILE, PUMP);
    const textDocument = {uri: client.uri(FILE)};
    const settings = {witnessMark: {codeLens: false, inlayHints: 'perhaps'}};
    await client.connection.sendNotification('workspace/didChangeConfiguration', {settings});
    expect(await client.request('textDocument/codeLens', {textDocument})).toEqual([]);
    const hints = await client.request('textDocument/inlayHint', {textDocument, range: RANGE});
    expect(NOTHING).not.toContain(JSON.stringify(hints));
  });

  it('keeps up with quick edits: what stands at the end is right', async () => {
    const {client} = await clientOf();
    await client.open(FILE, PUMP);
    for (let end = 0; end < PUMP.length; end += 7) await client.type(FILE, PUMP.slice(0, end));
    await client.type(FILE, UNLOCKED);
    const found = await client.until(FILE, (all) => all.length === 1 && all[0]?.code === 'left-unlocked');
    expect(found).toHaveLength(1);
    await client.type(FILE, PUMP);
    expect(await client.until(FILE, (all) => all.length === 0)).toEqual([]);
  });

  it('places outside of the text and edits outside of it are taken to its ends', async () => {
    const {client} = await clientOf();
    await client.open(FILE, PUMP);
    const textDocument = {uri: client.uri(FILE)};
    const position = {line: 100_000, character: 100_000};
    expect(await client.request('textDocument/hover', {textDocument, position})).toBeNull();
    await client.connection.sendNotification('textDocument/didChange', {
      textDocument: {...textDocument, version: 9},
      contentChanges: [{range: {start: position, end: position}, text: '\n'}],
    });
    expect(await client.request('textDocument/completion', {textDocument, position})).toEqual([]);
  });

  it('a request that is cancelled is answered as such, and the next one well', async () => {
    const {client} = await clientOf();
    await client.open(FILE, PUMP);
    const textDocument = {uri: client.uri(FILE)};
    const cancel = new CancellationTokenSource();
    const method = 'textDocument/documentSymbol';
    const cancelled = client.connection.sendRequest(method, {textDocument}, cancel.token);
    cancel.cancel();
    await expect(cancelled).rejects.toMatchObject({code: -32800});
    expect(await client.request(method, {textDocument})).not.toBeNull();
  });

  it('shows that it works while a book is read, once, and says when it is done', async () => {
    const {client} = await clientOf({
      capabilities: {...PUSHED, window: {workDoneProgress: true}},
      initializationOptions: {progressAfter: 0},
    });
    const told: string[] = [];
    const ended = new Promise<void>((done) => {
      client.connection.onRequest(WorkDoneProgressCreateRequest.type, ({token}) => {
        client.connection.onProgress(WorkDoneProgress.type, token, (progress) => {
          told.push(progress.kind === 'begin' ? `${progress.title}: ${progress.message}` : progress.kind);
          if (progress.kind === 'end') done();
        });
      });
    });
    await client.open(FILE, UNLOCKED);
    const asked = Array.from({length: 5}, () =>
      client.request('textDocument/documentSymbol', {textDocument: {uri: client.uri(FILE)}}),
    );
    await Promise.all([...asked, ended]);
    expect(told).toEqual(['Witness Mark: reading the books', 'end']);
  });

  it('tells a client that shows no progress nothing of it', async () => {
    const {client} = await clientOf({initializationOptions: {progressAfter: 0}});
    let told = 0;
    client.connection.onRequest(WorkDoneProgressCreateRequest.type, () => {
      told++;
    });
    await client.open(FILE, UNLOCKED);
    await client.until(FILE, (all) => all.length > 0);
    expect(told).toBe(0);
  });

  it('requests that are cancelled while a large book is read first are answered as such, and the last one well', async () => {
    const names = Array.from({length: 60}, (_, number) => `more-${number}.md`);
    const engine = (BOOK[1]?.[1] ?? '').replace(
      /^build:\n(?: {2}- .*\n)*/m,
      (all) => `${all.trimEnd()}\n${names.map((name) => `  - ${name}`).join('\n')}\n`,
    );
    const files = Object.fromEntries(names.map((name) => [`book/${name}`, PUMP]));
    const {client} = await clientOf({}, {...files, 'book/engine.yaml': engine});
    await client.open(FILE, PUMP);
    const textDocument = {uri: client.uri(FILE)};
    const cancel = new CancellationTokenSource();
    const asked = ASKED.slice(0, 7).map(([method, params]) =>
      client.connection.sendRequest(method, {textDocument, ...params}, cancel.token),
    );
    cancel.cancel();
    for (const answer of await Promise.allSettled(asked)) {
      expect(answer).toMatchObject({status: 'rejected', reason: {code: -32800}});
    }
    expect(await client.request('textDocument/documentSymbol', {textDocument})).not.toBeNull();
  });

  it('ends when the client goes away', async () => {
    const {client} = await clientOf();
    const ended = new Promise((done) => client.server.once('exit', done));
    client.server.stdin.end();
    expect(await ended).toBe(1);
  });
});
