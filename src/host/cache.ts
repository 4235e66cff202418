/**
 * Keeps texts that can be made again, each in a file of its own under the digest of its key. Whatever is wrong with
 * the folder or with an entry (damaged, of another program, half there) only means that the text is made again.
 */
import {createHash, randomUUID} from 'node:crypto';
import {mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile} from 'node:fs/promises';
import {join} from 'node:path';

/** Keeps texts from one run to the next. What it lost or never had is undefined, and no failure. */
export interface Cache {
  readonly get: (key: string) => Promise<string | undefined>;
  readonly put: (key: string, text: string) => Promise<void>;
  /** Takes away what nobody asked for in a long time and what is too much, at most once a day. Call it at the end. */
  readonly sweep: () => Promise<void>;
}

/** Without a folder nothing is kept. */
export const NO_CACHE: Cache = {
  get: async () => undefined,
  put: async () => undefined,
  sweep: async () => undefined,
};

export interface CacheBounds {
  /** All entries together; the oldest go first. */
  readonly bytes: number;
  readonly days: number;
}

const BOUNDS: CacheBounds = {bytes: 256 * 1024 * 1024, days: 30};

const DAY = 24 * 60 * 60 * 1000;

/** A write takes a moment; what is older than this was left by a run that was killed. */
const STALE_WRITE = 60 * 60 * 1000;

const ENTRY = /^[0-9a-f]{64}\.entry$/;
const WRITE = /^[0-9a-f-]{36}\.tmp$/;

/** Made by the first write. Several processes may use one folder at once. */
export function cacheIn(folder: string, bounds: CacheBounds = BOUNDS): Cache {
  let [wrote, refused] = [false, false];
  return {
    get: (key) => entryAt(join(folder, nameOf(key)), key),
    async put(key, text) {
      if (refused) return;
      refused = !(await written(folder, nameOf(key), sealed(key, text)));
      wrote ||= !refused;
    },
    async sweep() {
      if (wrote) await sweepOnceADay(folder, bounds).catch(() => undefined);
    },
  };
}

function nameOf(key: string): string {
  return `${digest(key)}.entry`;
}

function digest(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/** The key stands in it too: a file may have been given another name. */
function sealed(key: string, text: string): string {
  const body = `${digest(key)}\n${text}`;
  return `${digest(body)}\n${body}`;
}

function unsealed(entry: string, key: string): string | undefined {
  const seal = entry.slice(0, SEAL);
  const body = entry.slice(SEAL + 1);
  if (digest(body) !== seal || body.slice(0, SEAL) !== digest(key)) return undefined;
  return body.slice(SEAL + 1);
}

/** Length of a digest in hexadecimal digits. */
const SEAL = 64;

async function entryAt(path: string, key: string): Promise<string | undefined> {
  try {
    const {mtimeMs} = await stat(path);
    const text = unsealed(await readFile(path, 'utf8'), key);
    const now = Date.now();
    // Its age is counted from the last day on which somebody asked for it.
    if (text !== undefined && Math.abs(now - mtimeMs) > DAY) await utimes(path, now / 1000, now / 1000);
    return text;
  } catch {
    return undefined;
  }
}

/** Whether it could be kept. Nobody but its owner has any business in it. */
async function written(folder: string, name: string, entry: string): Promise<boolean> {
  const temporary = join(folder, `${randomUUID()}.tmp`);
  try {
    await mkdir(folder, {recursive: true, mode: 0o700});
    await writeFile(temporary, entry, {flag: 'wx', mode: 0o600});
    await rename(temporary, join(folder, name));
    return true;
  } catch {
    await rm(temporary, {force: true}).catch(() => undefined);
    return false;
  }
}

async function sweepOnceADay(folder: string, bounds: CacheBounds): Promise<void> {
  const mark = join(folder, 'swept');
  const now = Date.now();
  const last = await stat(mark).then(
    ({mtimeMs}) => mtimeMs,
    () => 0,
  );
  // A mark of the future was set by a clock that has been put back since.
  if (Math.abs(now - last) < DAY) return;
  await writeFile(mark, '');
  await utimes(mark, now / 1000, now / 1000);
  await sweepNow(folder, bounds, now);
}

interface Entry {
  readonly path: string;
  readonly bytes: number;
  /** Milliseconds. */
  readonly age: number;
}

async function sweepNow(folder: string, bounds: CacheBounds, now: number): Promise<void> {
  const names = await readdir(folder);
  const entries: Entry[] = [];
  for (const name of names) {
    const path = join(folder, name);
    const [isEntry, isWrite] = [ENTRY.test(name), WRITE.test(name)];
    const about = isEntry || isWrite ? await stat(path).catch(() => undefined) : undefined;
    if (about === undefined) continue;
    const age = Math.abs(now - about.mtimeMs);
    if (age > (isWrite ? STALE_WRITE : bounds.days * DAY)) await rm(path, {force: true});
    else if (isEntry) entries.push({path, bytes: about.size, age});
  }
  await keepNewest(entries, bounds.bytes);
}

async function keepNewest(entries: readonly Entry[], most: number): Promise<void> {
  let bytes = 0;
  for (const entry of [...entries].sort((one, other) => one.age - other.age)) {
    bytes += entry.bytes;
    if (bytes > most) await rm(entry.path, {force: true});
  }
}
