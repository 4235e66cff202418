/** Runs the command and kills it, as the system does, at a given one of the steps in which it changes the disk. */
import {spawn} from 'node:child_process';
import {writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import {COMMAND} from './run.js';

/** Loaded before the command: counts every call that changes the disk, before it, half way through a write, and after. */
const HOOK = `
import fs from 'node:fs/promises';
import {syncBuiltinESMExports} from 'node:module';
let left = Number(process.env.KILL_AT);
const step = () => {
  if (--left > 0) return;
  process.kill(process.pid, process.env.KILL_BY);
  for (;;);
};
const halves = async (write, text, rest) => {
  step();
  if (left === 1) await write(text.slice(0, Math.floor(text.length / 2)), ...rest);
  step();
  await write(text, ...rest);
};
for (const name of ['mkdir', 'rename', 'link', 'rm', 'rmdir', 'utimes', 'symlink']) {
  const real = fs[name];
  fs[name] = async (...of) => {
    step();
    return real(...of);
  };
}
const writeFile = fs.writeFile;
fs.writeFile = (path, text, ...rest) => halves((part, ...of) => writeFile(path, part, ...of), text, rest);
const open = fs.open;
fs.open = async (path, flags, ...rest) => {
  if (typeof flags !== 'string' || flags === 'r') return open(path, flags, ...rest);
  step();
  const handle = await open(path, flags, ...rest);
  for (const name of ['chmod', 'sync']) {
    const real = handle[name].bind(handle);
    handle[name] = async (...of) => {
      step();
      return real(...of);
    };
  }
  const write = handle.writeFile.bind(handle);
  handle.writeFile = (text, ...of) => halves(write, text, of);
  return handle;
};
syncBuiltinESMExports();
`;

/** Whether the process of the command was killed, at a step that counts from 1; `false` where it ended before. */
export async function killedAt(
  step: number,
  folder: string,
  words: readonly string[],
  {by = 'SIGKILL', env = {}}: {readonly by?: NodeJS.Signals; readonly env?: NodeJS.ProcessEnv} = {},
): Promise<boolean> {
  const hook = join(folder, 'hook.mjs');
  await writeFile(hook, HOOK);
  const child = spawn(process.execPath, ['--import', hook, COMMAND, ...words], {
    cwd: folder,
    env: {...process.env, ...env, KILL_AT: String(step), KILL_BY: by},
    stdio: 'ignore',
  });
  const signal = await new Promise((resolve) => child.on('close', (_, how) => resolve(how)));
  return signal === by;
}
