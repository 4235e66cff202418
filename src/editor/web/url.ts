/** In the web in place of `node:url`, as far as the server uses that: addresses of the workspace's own file system. */

/** Scheme and authority of the workspace: `vscode-vfs://somewhere`. */
let origin = '';

export function setOrigin(uri: string): void {
  origin = originOf(uri);
}

/** Throws for an address of another file system, as for one that is no address. */
export function fileURLToPath(uri: string): string {
  if (origin === '' || originOf(uri) !== origin) throw new Error(`${uri} is no file of the workspace`);
  const path = decodeURIComponent(uri.slice(origin.length).replace(/[?#].*$/s, ''));
  let end = path.length;
  while (end > 1 && path[end - 1] === '/') end--;
  return path.slice(0, end);
}

/** Nothing for what is no file of the workspace. */
export function pathOrNothing(uri: string): string | undefined {
  try {
    return fileURLToPath(uri);
  } catch {
    return undefined;
  }
}

export function pathToFileURL(path: string): {readonly href: string} {
  return {href: origin + path.split('/').map(encodeURIComponent).join('/')};
}

function originOf(uri: string): string {
  return /^[a-z][a-z0-9+.-]*:\/\/[^/?#]*(?=\/)/i.exec(uri)?.[0] ?? '';
}
