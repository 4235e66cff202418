/** In the web in place of `src/host/package.ts`: the extension lies at an address. */
let readme = '';

export function setReadme(uri: string): void {
  readme = uri;
}

/** Where the documentation of a finding stands: its row in the README of the extension. */
export function findingAddress(name: string): string {
  return `${readme}#${name}`;
}
