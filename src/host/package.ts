/** Where this package itself lies on the disk: its schemas and its documentation are shipped beside its code. */
import {existsSync} from 'node:fs';
import {dirname, join, relative, sep} from 'node:path';
import {fileURLToPath, pathToFileURL} from 'node:url';

/** The folder with the package.json of this package. */
export function packageFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) folder = dirname(folder);
  return folder;
}

/**
 * The address of `schemas/` as a file in this folder would write it: relative where the package is installed in
 * a project around the folder, so that the project can move; as a URL otherwise.
 */
export function schemaAddress(folder: string): string {
  const schemas = join(packageFolder(), 'schemas');
  const installed = schemas.split(`${sep}node_modules${sep}`);
  const project = installed[0] ?? '';
  const around = installed.length > 1 && (folder === project || folder.startsWith(project + sep));
  return around ? relative(folder, schemas).split(sep).join('/') : pathToFileURL(schemas).href;
}

/** Where the documentation of a finding stands: its row in the README of this package. */
export function findingAddress(name: string): string {
  return `${pathToFileURL(join(packageFolder(), 'README.md')).href}#${name}`;
}
