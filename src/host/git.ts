/** Asks the git program, which is the only one that reads a repository here: without a shell, a prompt or a lock. */
import {spawn} from 'node:child_process';
import {type Failure, systemCode, systemFailure} from './failure.js';

export interface Answer {
  readonly ok: true;
  readonly out: Buffer;
}

/** Git's words where it went but did not do it; a failure where it could not be asked. */
export interface Refusal {
  readonly ok: false;
  /** The first line that it said. */
  readonly refused: string;
}

/** Runs git in a folder. Never throws on what git says. */
export async function git(
  folder: string,
  words: readonly string[],
  input = '',
): Promise<Answer | Refusal | Failure> {
  return new Promise((resolve) => {
    const child = spawn('git', ['-C', folder, ...PLAIN, ...words], {env: quietly(process.env)});
    const out: Buffer[] = [];
    const err: Buffer[] = [];
    child.stdout.on('data', (bytes: Buffer) => out.push(bytes));
    child.stderr.on('data', (bytes: Buffer) => err.push(bytes));
    // Git may end before it has read everything; what it says then is the answer.
    child.stdin.on('error', () => undefined);
    child.on('error', (error) => resolve(unable(error, folder)));
    child.on('close', (code) => {
      const said = Buffer.concat(err).toString('utf8').split('\n')[0] ?? '';
      resolve(
        code === 0 ? {ok: true, out: Buffer.concat(out)} : {ok: false, refused: said.replace(/^fatal: /, '')},
      );
    });
    child.stdin.end(input);
  });
}

/** The answer as text without its last line feed, or why there is none. */
export async function gitText(folder: string, words: readonly string[]): Promise<string | Refusal | Failure> {
  const answer = await git(folder, words);
  return answer.ok ? answer.out.toString('utf8').replace(/\n$/, '') : answer;
}

/** Why git gave no answer, as a failure at the folder where it was asked. */
export function gitFailure(answer: Refusal | Failure, folder: string): Failure {
  if (!isRefusal(answer)) return answer;
  const hint = 'see what `git status` says there, or compare two folders: wmark compare OLD NEW';
  return {ok: false, says: `git says: ${answer.refused}`, hint, where: {file: folder}};
}

/** Tells a no of git's own from a git that could not be asked at all. */
export function isRefusal(answer: Refusal | Failure): answer is Refusal {
  return 'refused' in answer;
}

/** A repository may name a program that watches its files; none is run to read it. */
const PLAIN = ['-c', 'core.fsmonitor=false'];

/** A hook of git says in these which repository and index it is about, by paths that count from another folder. */
const OF_HOOKS = new Set([
  'GIT_DIR',
  'GIT_WORK_TREE',
  'GIT_INDEX_FILE',
  'GIT_PREFIX',
  'GIT_OBJECT_DIRECTORY',
]);

function quietly(env: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  return {...Object.fromEntries(Object.entries(env).filter(([name]) => !OF_HOOKS.has(name))), ...QUIET};
}

/** Words that do not hang on the user's language, no question on the terminal, no lock on the index. */
const QUIET = {LC_ALL: 'C', GIT_TERMINAL_PROMPT: '0', GIT_OPTIONAL_LOCKS: '0'};

function unable(error: Error, folder: string): Failure {
  if (systemCode(error) === 'ENOENT') {
    const hint = 'install git, or compare two folders: wmark compare OLD NEW';
    return {ok: false, says: 'there is no git on this machine, so no revision can be read', hint};
  }
  return systemFailure(error, folder);
}
