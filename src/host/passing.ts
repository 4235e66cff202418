/**
 * Names of files and folders that are there only while the tool works, and the sweeping of those that a run left
 * behind because it was killed. A name says whose it is, so that nobody's work under way is taken away.
 */
import {createHash, randomUUID} from 'node:crypto';
import {readdir, rm, stat} from 'node:fs/promises';
import {hostname} from 'node:os';
import {join} from 'node:path';
import {systemCode} from './failure.js';

/** A new name for this process; hidden where names with a dot are. */
export function passingName(): string {
  return `.wmark-${machine()}-${process.pid}-${randomUUID().slice(0, 8)}.tmp`;
}

const PASSING = /^\.wmark-([0-9a-f]{8})-([1-9]\d{0,9})-[0-9a-f]{8}\.tmp$/;

/** No write takes a day. Nobody can ask after a process on another machine. */
const LONGEST = 24 * 60 * 60 * 1000;

/** Takes away what killed runs left in a folder; nothing that may still be worked on. */
export async function sweepPassing(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names) {
    const [, host, pid] = PASSING.exec(name) ?? [];
    if (host === undefined || pid === undefined) continue;
    const path = join(folder, name);
    const isOver = host === machine() ? !isRunning(Number(pid)) || (await isOld(path)) : await isOld(path);
    if (isOver) await rm(path, {recursive: true, force: true}).catch(() => undefined);
  }
}

/** Folders on a network are shared by machines, each with process numbers of its own. */
function machine(): string {
  return createHash('sha256').update(hostname()).digest('hex').slice(0, 8);
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // It is there, and somebody else's.
    return systemCode(error) === 'EPERM';
  }
}

async function isOld(path: string): Promise<boolean> {
  try {
    return Math.abs(Date.now() - (await stat(path)).mtimeMs) > LONGEST;
  } catch {
    return false;
  }
}
