/** Where answers are kept, as the command line asks: in the user's folder for such things, in one of its own, or nowhere. */
import {join, resolve} from 'node:path';
import {type Cache, cacheIn, NO_CACHE} from '../host/cache.js';
import {cacheFolder} from '../host/cache-folder.js';
import {build} from './version.js';

export interface CacheOptions {
  /** A folder; `false` for none. */
  readonly cache?: string | boolean | undefined;
}

export function cacheFor({cache = true}: CacheOptions): Cache {
  // Code that was not built has no digest by which its answers could be told from those of other code.
  if (cache === false || build === 'unbuilt') return NO_CACHE;
  const folder = typeof cache === 'string' ? resolve(cache) : cacheFolder();
  return folder === undefined ? NO_CACHE : cacheIn(join(folder, 'answers'));
}
