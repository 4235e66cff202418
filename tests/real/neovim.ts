/** A real terminal editor with its own client of the protocol, without a terminal: neovim 0.7 or later. */
import {spawnSync} from 'node:child_process';
import {cp, mkdtemp, readFile, rm, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {join, resolve} from 'node:path';

const FILE = 'ottermouth-four/04-crankshaft.md';

/** Throws where it isn't there and can't be had, or where something is not as it should be. */
export async function tryNeovim(): Promise<void> {
  ensureNeovim();
  const folder = await mkdtemp(join(tmpdir(), 'wmark-neovim-'));
  try {
    await cp('procedures', folder, {recursive: true});
    await writeFile(join(folder, 'try.lua'), await script());
    const words = ['--headless', '-u', 'NONE', '-i', 'NONE', '-l', 'try.lua'];
    const older = ['--headless', '-u', 'NONE', '-i', 'NONE', '-c', 'luafile try.lua'];
    const said = nvim(hasLuaFlag() ? words : older, folder);
    for (const line of said.split(/\r?\n/)) if (line.trim() !== '') console.log(`  neovim: ${line.trim()}`);
    if (!said.includes('all well')) throw new Error('neovim did not come to the end');
  } finally {
    await rm(folder, {recursive: true, force: true});
  }
}

async function script(): Promise<string> {
  const lua = await readFile('tests/real/neovim.lua', 'utf8');
  return lua
    .replaceAll('@NODE@', process.execPath)
    .replaceAll('@WMARK@', resolve('dist/wmark.js'))
    .replaceAll('@FILE@', FILE);
}

function hasLuaFlag(): boolean {
  const version = /NVIM v(\d+)\.(\d+)/.exec(nvim(['--version'], '.'));
  return Number(version?.[1] ?? 0) > 0 || Number(version?.[2] ?? 0) >= 9;
}

function nvim(words: readonly string[], cwd: string): string {
  const {stdout, stderr, error} = spawnSync('nvim', words, {cwd, encoding: 'utf8', timeout: 120_000});
  if (error) throw error;
  return `${stdout}\n${stderr}`;
}

function ensureNeovim(): void {
  if (spawnSync('nvim', ['--version']).status === 0) return;
  const root = process.getuid?.() === 0;
  const apt = spawnSync('apt-get', ['--version']).status === 0;
  if (!root || !apt) throw new Error('neovim is not on this machine: install it, and run this again');
  console.log('  neovim: installing it from the packages of the system');
  spawnSync('apt-get', ['update'], {stdio: 'ignore'});
  const {status} = spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'neovim'], {
    stdio: 'ignore',
  });
  if (status !== 0) throw new Error('neovim could not be installed from the packages of the system');
}
