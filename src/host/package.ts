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
 * The address of `schemas/` as a file in this folder would write it: relative where a project around the folder has
 * this package in its `node_modules`, so that the project can move and be shared; as a URL of this package otherwise.
 */
export function schemaAddress(folder: string): string {
  for (let around = folder; ; around = dirname(around)) {
    const schemas = join(around, 'node_modules', NAME, 'schemas');
    if (existsSync(schemas)) return relative(folder, schemas).split(sep).join('/');
    if (dirname(around) === around) return pathToFileURL(join(packageFolder(), 'schemas')).href;
  }
}

/** As a project names it in its dependencies. */
const NAME = 'witness-mark';

/** Where the documentation of a finding stands: its row in the README of this package. */
export function findingAddress(name: string): string {
  return `${pathToFileURL(join(packageFolder(), 'README.md')).href}#${name}`;
}
