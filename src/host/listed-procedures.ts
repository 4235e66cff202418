/** The procedures that a specification lists, as files on disk. */
import {dirname} from 'node:path';
import {proceduresNamed} from './build-paths.js';
import type {Reader} from './reader.js';
import type {ReadSpecification} from './specification.js';

/** In build order; a name may stand in engine.yaml or in a file that it extends, and counts from there. */
export function proceduresOf({spec, shopFolder, paths}: ReadSpecification, disk: Reader['disk']) {
  const boundsOf = (name: {readonly where: {readonly file: string}}) => ({
    folder: dirname(paths.get(name.where.file) ?? shopFolder),
    shopFolder,
  });
  return proceduresNamed(spec.build, {boundsOf, specification: new Set(paths.values()), disk});
}
