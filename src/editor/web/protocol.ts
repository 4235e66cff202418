/** What a server in a web worker and its client say to each other beyond the protocol: which files there are, and their bytes. */
import * as z from 'zod';

/** The server asks for the bytes of `uri`. */
export const READ = 'witnessMark/read';

/** The client tells what came, changed or went since. */
export const TOLD = 'witnessMark/files';

const change = z.object({uri: z.string(), is: z.enum(['file', 'folder', 'gone'])});

export type Change = z.infer<typeof change>;

const changes = z.object({files: z.array(change)});

export function isChanges(value: unknown): value is z.infer<typeof changes> {
  return changes.safeParse(value).success;
}

const start = z.object({
  /** An address of the file system of the workspace. */
  origin: z.string(),
  /** The address of the README of the extension. */
  readme: z.string(),
  files: z.array(change),
});

export type Start = z.infer<typeof start>;

const NOTHING: Start = {origin: '', readme: '', files: []};

/** A client that says nothing of files has none. */
export function startOf(options: unknown): Start {
  const read = start.safeParse(options);
  return read.success ? read.data : NOTHING;
}
