/**
 * What stops the tool from running at all: a path that leads nowhere, a file that is no text, a disk that is
 * full. Never a mistake in a procedure, which is a finding, and never a fault of the tool, which is thrown.
 */

export interface Failure {
  readonly ok: false;
  /** What happened, a clause without capital or full stop: "the disk is full". */
  readonly says: string;
  /** What to do about it, likewise. */
  readonly hint?: string;
  /** The file or folder that it happened to, and where in it; line and column count from 1. */
  readonly where?: {readonly file: string; readonly line?: number; readonly column?: number};
}

/** The failure as one line: `file:line:column: what happened; what to do`. */
export function failureText(failure: Failure): string {
  const {says, hint, where} = failure;
  const place = where ? [where.file, where.line, where.column].filter((part) => part !== undefined) : [];
  const lead = place.length > 0 ? `${place.join(':')}: ` : '';
  return `${lead}${says}${hint ? `; ${hint}` : ''}`;
}

/**
 * What an error of the operating system means for the user. Anything that is not one is a fault of the tool,
 * and is thrown on.
 */
export function systemFailure(error: unknown, file: string): Failure {
  const code = systemCode(error);
  if (code === undefined) throw error;
  return systemFailureOf(code, file);
}

/** `ENOENT` and its like; undefined for whatever is no error of the operating system, Node's own `ERR_…` among it. */
export function systemCode(error: unknown): string | undefined {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  return typeof code === 'string' && code.startsWith('E') && !code.startsWith('ERR_') ? code : undefined;
}

/** The same by the code of the error, as `ENOSPC`. */
export function systemFailureOf(code: string, file: string): Failure {
  const [says, hint] = MEANINGS[code] ?? [`the system refused it (${code})`, 'see that it can be used'];
  return {ok: false, says, hint, where: {file}};
}

const PERMISSION = ['there is no permission for it', 'ask its owner, or choose another'] as const;

const MEANINGS: {readonly [code: string]: readonly [says: string, hint: string]} = {
  ENOENT: ['there is no such file or folder', 'see that the name is right'],
  ENOTDIR: ['a part of its path is a file, not a folder', 'see that the name is right'],
  EEXIST: ['a file has the name of a folder that is needed', 'move the file, or choose another folder'],
  EISDIR: ['it is a folder, not a file', 'name a file'],
  EACCES: PERMISSION,
  EPERM: PERMISSION,
  EROFS: ['it is on a disk that is read-only', 'choose another folder'],
  ENOSPC: ['the disk is full', 'make room or choose another folder; what was there before is untouched'],
  EDQUOT: [
    'the quota of the disk is used up',
    'make room or choose another folder; what was there before is untouched',
  ],
  EFBIG: [
    'the file would grow past the limit that the system sets',
    'raise the limit or choose another folder; what was there before is untouched',
  ],
  ELOOP: ['its symbolic links go round in a circle', 'mend the links'],
  EMFILE: ['too many files are open', 'close other programs or raise the limit'],
  ENFILE: ['too many files are open', 'close other programs or raise the limit'],
  ENAMETOOLONG: ['its name is too long', 'choose a shorter one'],
  EBUSY: ['another program is using it', 'close that program'],
  EIO: ['the disk reports an error', 'see that the disk is sound'],
};
