/**
 * Loads a house's own rules from modules that were named on the command line. Their code runs with every right of
 * whoever runs the check, so no module is ever loaded because a book says so.
 */
import {stat} from 'node:fs/promises';
import {resolve} from 'node:path';
import {pathToFileURL} from 'node:url';
import type {HouseFinding} from '../findings/house.js';
import {readHouse} from '../findings/house-form.js';
import {type Failure, systemFailure} from './failure.js';
import {shownName} from './names.js';

export interface House {
  readonly ok: true;
  readonly findings: readonly HouseFinding[];
  /** By the name of a finding, the module that it comes from, as people know it. */
  readonly files: ReadonlyMap<string, string>;
}

/** Every rule of the modules, in their order; a name may be there once only. */
export async function loadHouse(paths: readonly string[], cwd: string): Promise<House | Failure> {
  const findings: HouseFinding[] = [];
  const files = new Map<string, string>();
  for (const path of paths) {
    const file = shownName(resolve(cwd, path), cwd);
    const read = await rulesIn(resolve(cwd, path), file);
    if (!read.ok) return read;
    for (const finding of read.findings) {
      const before = files.get(finding.name);
      if (before !== undefined) {
        const says = `${finding.name} is in ${before} already`;
        return {ok: false, says, hint: 'give each rule a name of its own', where: {file}};
      }
      files.set(finding.name, file);
      findings.push(finding);
    }
  }
  return {ok: true, findings, files};
}

async function rulesIn(path: string, file: string): Promise<Omit<House, 'files'> | Failure> {
  const loaded = await loadModule(path, file);
  if (!loaded.ok) return loaded;
  const {findings} = loaded.module;
  if (findings === undefined) {
    const says = 'it exports no `findings`';
    return {ok: false, says, hint: 'write `export const findings = [ … ]`', where: {file}};
  }
  const read = readHouse(findings);
  if (read.ok) return read;
  return {ok: false, says: `its \`findings\` can't be used: ${read.says}`, where: {file}};
}

async function loadModule(
  path: string,
  file: string,
): Promise<{readonly ok: true; readonly module: {readonly findings?: unknown}} | Failure> {
  try {
    await stat(path);
  } catch (error) {
    return systemFailure(error, file);
  }
  try {
    return {ok: true, module: await import(pathToFileURL(path).href)};
  } catch (error) {
    // Whatever its code throws while it is loaded, the first line of it; the rest is of no use to most.
    const [line = ''] = String(error).split('\n');
    const hint = 'see that it is an ES module (.mjs) and that what it imports is installed beside it';
    return {ok: false, says: `it can't be loaded: ${line}`, hint, where: {file}};
  }
}
