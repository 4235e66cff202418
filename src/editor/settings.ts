/** What a user may set, and what the client says of itself when it starts the server. */
import * as z from 'zod';

/** The section of the client's configuration. */
export const SECTION = 'witnessMark';

const shape = z.object({
  inlayHints: z.boolean().catch(true).default(true),
  codeLens: z.boolean().catch(true).default(true),
});

export type Settings = z.infer<typeof shape>;

/** Whatever the client sends: what cannot be understood stays as it is by default. */
export function settingsOf(sent: unknown): Settings {
  const read = shape.safeParse(sent ?? {});
  return read.success ? read.data : {inlayHints: true, codeLens: true};
}

const startShape = z.object({
  /** `pull` for a client that asks for diagnostics and shows those that are sent to it as well. */
  diagnostics: z.enum(['push', 'pull']).optional().catch(undefined),
  /** The client's own command that shows what is left undone. */
  undoneCommand: z.string().optional().catch(undefined),
  /** Milliseconds of reading after which it is shown that the server works. */
  progressAfter: z.number().min(0).max(60_000).optional().catch(undefined),
});

export type Start = z.infer<typeof startShape>;

export function startOf(sent: unknown): Start {
  const read = startShape.safeParse(sent ?? {});
  return read.success ? read.data : {};
}
