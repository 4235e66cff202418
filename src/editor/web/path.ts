/** In the web in place of `node:path`, as far as the server uses that: paths with slashes. */
export const sep = '/';

export function isAbsolute(path: string): boolean {
  return path.startsWith('/');
}

/** From the right, as far as a path that begins with a slash. */
export function resolve(...paths: readonly string[]): string {
  const from = paths.findLastIndex(isAbsolute);
  return `/${plain(paths.slice(Math.max(0, from)).join('/'), true)}`;
}

export function join(...paths: readonly string[]): string {
  const path = paths.filter((one) => one !== '').join('/');
  return isAbsolute(path) ? `/${plain(path, true)}` : plain(path, false) || '.';
}

export function dirname(path: string): string {
  const cut = path.lastIndexOf('/');
  return cut < 0 ? '.' : path.slice(0, cut) || '/';
}

export function basename(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1);
}

export function extname(path: string): string {
  return /[^.](\.[^.]*)$/.exec(basename(path))?.[1] ?? '';
}

export function relative(from: string, to: string): string {
  const [here, there] = [parts(resolve(from)), parts(resolve(to))];
  let same = 0;
  while (same < here.length && same < there.length && here[same] === there[same]) same++;
  return [...here.slice(same).map(() => '..'), ...there.slice(same)].join('/');
}

function parts(path: string): string[] {
  return path.split('/').filter((one) => one !== '');
}

/** No dots and no empty names; only what is no path from the root can lead above where it begins. */
function plain(path: string, fromRoot: boolean): string {
  const kept: string[] = [];
  for (const part of parts(path)) {
    if (part === '.') continue;
    const isUp = part === '..';
    if (isUp && kept.length > 0 && kept.at(-1) !== '..') kept.pop();
    else if (!isUp || !fromRoot) kept.push(part);
  }
  return kept.join('/');
}
