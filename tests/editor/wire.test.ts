/** What no client should send, over standard input to the built server: it answers the next that does. */
import {readFileSync} from 'node:fs';
import {join} from 'node:path';
import {pathToFileURL} from 'node:url';
import {describe, expect, it, onTestFinished} from 'vitest';
import {seeded} from '../help/random.js';
import {temporaryFolder} from '../host/temporary.js';
import {madeUp, openPipe, type Pipe} from './wire.js';

const NAMES = ['shop.yaml', 'engine.yaml', '01-oil-pump.md', '02-sump.md'];
const BOOK = Object.fromEntries(
  NAMES.map((name) => [name, readFileSync(join('src/cli/begin', name), 'utf8')]),
);
const PUMP = BOOK['01-oil-pump.md'] ?? '';

async function begun(begin = true): Promise<{pipe: Pipe; uriOf: (name: string) => string}> {
  const folder = await temporaryFolder(BOOK);
  const pipe = openPipe(folder);
  onTestFinished(() => void pipe.server.kill());
  const uriOf = (name: string) => pathToFileURL(join(folder, name)).href;
  if (begin) {
    await pipe.ask('initialize', {processId: null, rootUri: pathToFileURL(folder).href, capabilities: {}});
    pipe.send(JSON.stringify({jsonrpc: '2.0', method: 'initialized', params: {}}));
  }
  return {pipe, uriOf};
}

/** Opens the procedure anew and asks after the fastener in it. */
async function hoverOf(pipe: Pipe, uri: string): Promise<string> {
  const folder = uri.slice(0, uri.lastIndexOf('/') + 1);
  const tell = (method: string, textDocument: object) =>
    pipe.send(JSON.stringify({jsonrpc: '2.0', method, params: {textDocument}}));
  // What a message left lying over the files of the book is taken off.
  for (const name of NAMES) tell('textDocument/didClose', {uri: folder + name});
  tell('textDocument/didOpen', {uri, languageId: 'markdown', version: 1, text: PUMP});
  const lines = PUMP.slice(0, PUMP.indexOf('pump-bolts to') + 1).split('\n');
  const position = {line: lines.length - 1, character: (lines.at(-1)?.length ?? 1) - 1};
  return JSON.stringify(await pipe.ask('textDocument/hover', {textDocument: {uri}, position}));
}

describe('the server', () => {
  it.each([1, 2])('lives through 150 messages made up by seed %i', async (seed) => {
    const {pipe, uriOf} = await begun();
    const random = seeded(seed);
    const files = NAMES.map(uriOf);
    for (let sent = 0; sent < 150; sent++) pipe.send(madeUp(random, files));
    expect(await hoverOf(pipe, uriOf('01-oil-pump.md')), pipe.said()).toContain('18 lbf·ft');
    expect(pipe.server.exitCode).toBeNull();
  });

  it('refuses a second start, and ends when told', async () => {
    const {pipe, uriOf} = await begun();
    const second = await pipe.ask('initialize', {processId: null, rootUri: 'file:///', capabilities: {}});
    expect(second?.error).toMatchObject({code: -32600, message: 'the server has been initialized'});
    expect(await hoverOf(pipe, uriOf('01-oil-pump.md'))).toContain('18 lbf·ft');
    await pipe.ask('shutdown', null);
    pipe.send('{"jsonrpc":"2.0","method":"exit"}');
    expect(await pipe.ended).toBe(0);
  });

  it('refuses what comes before the start', async () => {
    const {pipe} = await begun(false);
    const early = await pipe.ask('textDocument/hover', {});
    // The codes are those of the Language Server Protocol 3.17, "Base Types" and "Initialize Request".
    expect(early?.error?.code).toBe(-32002);
    await pipe.ask('initialize', {processId: null, rootUri: null, capabilities: {}});
    expect((await pipe.ask('textDocument/hover', {}))?.error?.code).not.toBe(-32002);
    expect((await pipe.ask('made/up', {}))?.error?.code).toBe(-32601);
  });

  it.each([
    ['a length that is none', 'Content-Length: x\r\n\r\n{}'],
    ['a length below nothing', 'Content-Length: -5\r\n\r\n{}'],
    ['a length below nothing, and silence', 'Content-Length: -1\r\n\r\n'],
    ['no length', 'Content-Type: x\r\n\r\n{}'],
    ['no header at all', '{"jsonrpc":"2.0","method":"x"}\r\n\r\n'],
  ])('says so and ends after %s', async (_, bytes) => {
    const {pipe} = await begun();
    pipe.raw(bytes);
    expect(await pipe.ended).toBe(1);
    expect(pipe.said()).toContain('wmark: what came is no message of the protocol');
  });
});
