/** Messages that no client should send, made up by a seed; and a plain pipe to the built server to send them by. */
import {type ChildProcessWithoutNullStreams, spawn} from 'node:child_process';
import {resolve} from 'node:path';
import type {Random} from '../help/random.js';

export interface Pipe {
  readonly server: ChildProcessWithoutNullStreams;
  /** What it has written to its standard error. */
  readonly said: () => string;
  readonly ended: Promise<number | null>;
  /** As it is, after a header that fits it. */
  send(body: string): void;
  raw(bytes: string): void;
  /** Sends a request and waits for its answer, whatever else comes; nothing where the server ends before. */
  ask(method: string, params: unknown): Promise<Answer | undefined>;
}

export interface Answer {
  readonly id: unknown;
  readonly result?: unknown;
  readonly error?: {readonly code: number; readonly message: string};
}

export function openPipe(folder: string): Pipe {
  const server = spawn(process.execPath, [resolve('dist/wmark.js'), 'editor'], {cwd: folder});
  const waiting = new Map<unknown, (answer: Answer | undefined) => void>();
  let said = '';
  let asked = 0;
  server.stderr.on('data', (part: Buffer) => {
    said += part;
  });
  // A server that has ended takes no more.
  server.stdin.on('error', () => undefined);
  const ended = new Promise<number | null>((done) => server.once('exit', done)).then((code) => {
    for (const done of waiting.values()) done(undefined);
    return code;
  });
  readMessages(server, (message) => {
    if (typeof message !== 'object' || message === null || !('id' in message) || 'method' in message) return;
    waiting.get(message.id)?.(message);
    waiting.delete(message.id);
  });
  const raw = (bytes: string) => void server.stdin.write(bytes);
  const send = (body: string) => raw(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  return {
    server,
    said: () => said,
    ended,
    send,
    raw,
    ask(method, params) {
      const id = `asked ${asked++}`;
      send(JSON.stringify({jsonrpc: '2.0', id, method, params}));
      return server.exitCode === null
        ? new Promise((done) => waiting.set(id, done))
        : Promise.resolve(undefined);
    },
  };
}

function readMessages({stdout}: ChildProcessWithoutNullStreams, take: (message: unknown) => void): void {
  let bytes = Buffer.alloc(0);
  stdout.on('data', (part: Buffer) => {
    bytes = Buffer.concat([bytes, part]);
    for (;;) {
      const end = bytes.indexOf('\r\n\r\n');
      const length = Number(/Content-Length: (\d+)/.exec(bytes.subarray(0, end).toString())?.[1]);
      if (end < 0 || bytes.length < end + 4 + length) return;
      take(JSON.parse(bytes.subarray(end + 4, end + 4 + length).toString()));
      bytes = bytes.subarray(end + 4 + length);
    }
  });
}

/** Bodies with a right header; none tells the server to end. */
export function madeUp(random: Random, files: readonly string[]): string {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const number = () =>
    pick([0, 1, 5, -1, 2 ** 31, 1e21, 0.5, 40, Number.MAX_SAFE_INTEGER, Math.floor(random() * 60)]);
  const uri = () =>
    pick([...files, ...files, 'untitled:1', 'file:///', 'file:///no/such.md', '', 'not a uri', 'file://%zz']);
  const position = () => maybe({line: number(), character: number()});
  const range = () => maybe({start: position(), end: position()});
  const text = () => pick(TEXTS);
  const value = (): unknown =>
    pick<() => unknown>([
      () => null,
      number,
      text,
      () => [],
      () => ({}),
      () => [value()],
      () => ({textDocument: value()}),
      uri,
      position,
    ])();
  /** Now and then something else in its place. */
  function maybe<T>(one: T): unknown {
    return random() < 0.12 ? value() : one;
  }
  const textDocument = () =>
    maybe({uri: maybe(uri()), version: maybe(number()), languageId: maybe('markdown'), text: maybe(text())});
  const params = () =>
    maybe({
      textDocument: textDocument(),
      position: position(),
      range: range(),
      context: maybe({diagnostics: maybe([]), only: pick([undefined, ['quickfix'], [''], value()])}),
      contentChanges: maybe([{range: range(), text: maybe(text())}, maybe({text: text()})]),
      newName: maybe(pick(['a-name', '', '../x', 'A Name'])),
      query: maybe(text()),
      command: maybe('wmark.undone'),
      arguments: maybe([uri()]),
      options: maybe({tabSize: number(), insertSpaces: true}),
      changes: maybe([{uri: uri(), type: number()}]),
      settings: value(),
      value: value(),
      token: value(),
      id: number(),
      previousResultIds: maybe([{uri: uri(), value: text()}]),
    });
  const method = pick(random() < 0.9 ? METHODS : ODD);
  const asks = random() < 0.6 && !method.startsWith('textDocument/did');
  const message = {
    jsonrpc: maybe('2.0'),
    ...(asks && {id: pick([number(), text(), null, 'x'])}),
    method: maybe(method),
    params: params(),
  };
  return pick([
    () => JSON.stringify(message),
    () => JSON.stringify(message),
    () => JSON.stringify(message),
    () => JSON.stringify(message),
    () => JSON.stringify(message).slice(0, Math.floor(random() * 200)),
    () => JSON.stringify(value()),
    () => JSON.stringify([message, message]),
    () => JSON.stringify({jsonrpc: '2.0', id: number(), result: value()}),
    () => JSON.stringify({jsonrpc: '2.0', id: value(), error: value()}),
    () => `${'['.repeat(5_000)}${']'.repeat(5_000)}`,
  ])();
}

const TEXTS = [
  '',
  'x',
  '1. Wash. `clean: ',
  '\u0000\ud800\r\r\n',
  '---\ntitle: [\n---\n\n1. Do. `lock: pump-bolts with',
  '`torque: x to 1 lbf·ft`\n'.repeat(500),
  'x'.repeat(50_000),
  '> '.repeat(3_000),
];

const METHODS = [
  ...[
    'didOpen',
    'didOpen',
    'didChange',
    'didChange',
    'didChange',
    'didClose',
    'didSave',
    'willSave',
    'completion',
  ],
  ...['hover', 'definition', 'references', 'documentHighlight', 'rename', 'prepareRename', 'documentSymbol'],
  ...[
    'codeAction',
    'semanticTokens/full',
    'semanticTokens/range',
    'inlayHint',
    'formatting',
    'rangeFormatting',
  ],
  ...['foldingRange', 'codeLens', 'diagnostic', 'signatureHelp'],
].map((name) => `textDocument/${name}`);

const ODD = [
  'initialize',
  'initialized',
  '$/cancelRequest',
  '$/setTrace',
  '$/progress',
  '$/made/up',
  'made/up',
  '',
  'constructor',
  '__proto__',
  'workspace/didChangeConfiguration',
  'workspace/didChangeWatchedFiles',
  'workspace/didChangeWorkspaceFolders',
  'workspace/symbol',
  'workspace/executeCommand',
  'workspace/diagnostic',
  'window/workDoneProgress/cancel',
  'witnessMark/sheet',
  'witnessMark/files',
];
