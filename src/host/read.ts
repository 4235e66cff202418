/** Reads one file that should be text, whatever it turns out to be: too large, a device, binary, another encoding. */
import {type BigIntStats, constants} from 'node:fs';
import {type FileHandle, open} from 'node:fs/promises';
import {type Source, source} from '../text/source.js';
import {type Failure, systemFailure} from './failure.js';

/**
 * The most bytes that are read of a file. A hundred-step procedure takes about 12 KB and the largest
 * specification that the tests know 60 KB, so these leave room for a hundred times as much, while a file that
 * was named by mistake (a photograph, a disk image) is refused at once.
 */
export const LIMITS = {
  procedure: 4 * 1024 * 1024,
  specification: 1024 * 1024,
  /** An entry of a record takes some 200 bytes, a whole build some 300 KB. */
  record: 16 * 1024 * 1024,
  /** A finding takes about 1 KB of a report. */
  report: 128 * 1024 * 1024,
} as const;

export type ReadText = {readonly ok: true; readonly source: Source} | Failure;

/** A text file, wrapped under the name that people know it by; or why it can't be read. */
export async function readText(path: string, shown: string, limit: number): Promise<ReadText> {
  try {
    const bytes = await readSteady(path, shown, limit);
    return bytes instanceof Uint8Array ? decode(bytes, shown) : bytes;
  } catch (error) {
    return systemFailure(error, shown);
  }
}

/** A file that is written in place, while it is read, may be half old and half new; so it is read once more. */
async function readSteady(path: string, shown: string, limit: number): Promise<Uint8Array | Failure> {
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const bytes = await readBytes(path, shown, limit);
    if (bytes !== undefined) return bytes;
  }
  return refuse(shown, 'somebody is writing it', 'run the command again when it is saved');
}

const ATTEMPTS = 5;

async function isAsBefore(handle: FileHandle, {size, mtimeNs}: BigIntStats): Promise<boolean> {
  const now = await handle.stat({bigint: true});
  return now.size === size && now.mtimeNs === mtimeNs;
}

/** Nothing where it changed meanwhile. */
async function readBytes(
  path: string,
  shown: string,
  limit: number,
): Promise<Uint8Array | Failure | undefined> {
  // Without O_NONBLOCK the mere opening of a named pipe waits for somebody to write into it.
  const handle = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    const about = await handle.stat({bigint: true});
    if (about.isDirectory()) return refuse(shown, 'it is a folder, not a file', 'name a file');
    if (!about.isFile()) return refuse(shown, 'it is a device or a pipe, not a file', 'name a text file');
    if (about.size > limit) return tooLarge(shown, Number(about.size), limit);
    const bytes = await readUpTo(handle, limit + 1);
    if (bytes.length > limit) return tooLarge(shown, bytes.length, limit);
    return (await isAsBefore(handle, about)) ? bytes : undefined;
  } finally {
    await handle.close();
  }
}

/** Reads to the end, but never past `most`: the file may be growing meanwhile. */
async function readUpTo(handle: FileHandle, most: number): Promise<Uint8Array> {
  const {size} = await handle.stat();
  let buffer = new Uint8Array(Math.min(size + 1, most));
  let filled = 0;
  for (;;) {
    const {bytesRead} = await handle.read(buffer, filled, buffer.length - filled, null);
    filled += bytesRead;
    if (bytesRead === 0 || filled === most) return buffer.subarray(0, filled);
    if (filled === buffer.length) {
      const larger = new Uint8Array(Math.min(buffer.length * 2, most));
      larger.set(buffer);
      buffer = larger;
    }
  }
}

/** A text that somebody is writing, as `readText` would take it once it is saved. */
export function unsavedText(text: string, shown: string, limit: number): ReadText {
  const bytes = new TextEncoder().encode(text);
  return bytes.length > limit ? tooLarge(shown, bytes.length, limit) : decode(bytes, shown);
}

function decode(bytes: Uint8Array, shown: string): ReadText {
  if (isUtf16(bytes)) return refuse(shown, 'it is written in UTF-16', 'save it as UTF-8');
  const zero = bytes.indexOf(0);
  if (zero !== -1) {
    return refuse(shown, 'it is binary, not text', 'name a text file', lineOf(bytes, zero));
  }
  try {
    const text = new TextDecoder('utf-8', {fatal: true, ignoreBOM: true}).decode(bytes);
    if (text.trim() === '') return refuse(shown, 'it is empty', 'write it, or take its name out');
    return {ok: true, source: source(shown, text)};
  } catch {
    return refuse(shown, 'it is not written in UTF-8', 'save it as UTF-8', firstBadLine(bytes));
  }
}

function isUtf16(bytes: Uint8Array): boolean {
  const [first, second] = bytes;
  return (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff);
}

const LINE_FEED = 10;

function lineOf(bytes: Uint8Array, offset: number): number {
  let line = 1;
  for (let at = bytes.indexOf(LINE_FEED); at !== -1 && at < offset; at = bytes.indexOf(LINE_FEED, at + 1))
    line++;
  return line;
}

/** No byte of a longer UTF-8 sequence is a line feed, so lines can be tried one by one. */
function firstBadLine(bytes: Uint8Array): number {
  const decoder = new TextDecoder('utf-8', {fatal: true});
  let line = 1;
  for (let start = 0; ; line++) {
    const end = bytes.indexOf(LINE_FEED, start);
    try {
      decoder.decode(bytes.subarray(start, end === -1 ? bytes.length : end));
    } catch {
      return line;
    }
    if (end === -1) return line;
    start = end + 1;
  }
}

function tooLarge(shown: string, size: number, limit: number): Failure {
  const says = `it is too large: ${megabytes(size)}, and ${megabytes(limit)} is the most`;
  return refuse(shown, says, 'split it, or see that it is the right file');
}

/** Rounded up, so that what is over the limit never reads as the limit. */
function megabytes(bytes: number): string {
  return `${Math.ceil((bytes / 1024 / 1024) * 10) / 10} MiB`;
}

function refuse(file: string, says: string, hint: string, line?: number): Failure {
  return {ok: false, says, hint, where: line === undefined ? {file} : {file, line}};
}
