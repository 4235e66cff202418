/** Where a user's programs keep what they can make again: by the XDG Base Directory Specification, and its like elsewhere. */
import {homedir} from 'node:os';
import {isAbsolute, join} from 'node:path';

/** The folder for this tool; nothing where the user has no home. */
export function cacheFolder(
  env: NodeJS.ProcessEnv = process.env,
  platform: NodeJS.Platform = process.platform,
): string | undefined {
  const base = absolute(env.XDG_CACHE_HOME) ?? ofPlatform(env, platform);
  return base === undefined ? undefined : join(base, 'witness-mark');
}

function ofPlatform(env: NodeJS.ProcessEnv, platform: NodeJS.Platform): string | undefined {
  if (platform === 'win32') return absolute(env.LOCALAPPDATA);
  const home = absolute(env.HOME) ?? homeFolder();
  if (home === undefined) return undefined;
  return platform === 'darwin' ? join(home, 'Library', 'Caches') : join(home, '.cache');
}

/** The specification says of a path that is not absolute: ignore it. */
function absolute(path: string | undefined): string | undefined {
  return path !== undefined && isAbsolute(path) ? path : undefined;
}

function homeFolder(): string | undefined {
  try {
    return absolute(homedir());
  } catch {
    return undefined;
  }
}
