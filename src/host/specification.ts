/** Reads a book's YAML from disk: engine.yaml, the files that it extends, and its shop.yaml. */
import {dirname} from 'node:path';
import type {Specification} from '../spec/model.js';
import {positionAt, type Source, type Where} from '../text/source.js';
import {type Bounds, fileNamed} from './build-paths.js';
import type {Failure} from './failure.js';
import {shopFileFor} from './find.js';
import {liesBelow, shownName} from './names.js';
import {LIMITS} from './read.js';
import {FRESH, type Reader} from './reader.js';

export interface ReadSpecification {
  readonly ok: true;
  readonly spec: Specification;
  /** True path of the folder of shop.yaml; without one, of engine.yaml. */
  readonly shopFolder: string;
  /** True paths of the YAML files by the names under which they are shown. */
  readonly paths: ReadonlyMap<string, string>;
}

/** The specification of the engine.yaml at a true path. */
export async function specificationAt(
  engineFile: string,
  cwd: string,
  reader: Reader = FRESH,
): Promise<ReadSpecification | Failure> {
  const {disk} = reader;
  const shopFile = shopFileFor(dirname(engineFile), disk);
  const shopFolder = shopFile === undefined ? dirname(engineFile) : await folderOfShop(shopFile, disk);
  if (shopFile !== undefined && shopFolder === undefined) return leadsOutside(shopFile, cwd);
  if (shopFolder === undefined || !liesBelow((await disk.truePath(engineFile)) ?? engineFile, shopFolder))
    return leadsOutside(engineFile, cwd);
  const chain = await readChain(engineFile, shopFolder, {cwd, reader});
  if (!chain.ok) return chain;
  const [engine, ...bases] = chain.links;
  const shop = shopFile
    ? await reader.text(shopFile, shownName(shopFile, cwd), LIMITS.specification)
    : undefined;
  if (shop && !shop.ok) return shop;
  const spec = reader.specification({
    ...(shop && {shop: shop.source}),
    engine: engine.source,
    bases: bases.map((base) => base.source),
  });
  const paths = chain.links.map((link) => [link.source.file, link.path] as const);
  if (shop && shopFile) paths.push([shop.source.file, (await disk.truePath(shopFile)) ?? shopFile]);
  return {ok: true, spec, shopFolder, paths: new Map(paths)};
}

/**
 * The true folder of a shop.yaml. A link would move the bounds of all that the book may read, so it may lead only to
 * what lies below its own folder, or to a shop.yaml that would be found from here without it.
 */
async function folderOfShop(shopFile: string, disk: Reader['disk']): Promise<string | undefined> {
  const [real, home] = [await disk.truePath(shopFile), await disk.truePath(dirname(shopFile))];
  if (real === undefined || home === undefined) return undefined;
  if (liesBelow(real, home)) return home;
  const above = shopFileFor(dirname(home), disk);
  return above !== undefined && (await disk.truePath(above)) === real ? dirname(real) : undefined;
}

function leadsOutside(file: string, cwd: string): Failure {
  const says = "it leads outside the shop's folder";
  return {ok: false, says, hint: 'put the file itself there', where: {file: shownName(file, cwd)}};
}

interface Link {
  readonly path: string;
  readonly source: Source;
}

interface Chain {
  readonly ok: true;
  /** The engine.yaml itself, then what it extends, and so on. */
  readonly links: readonly [Link, ...Link[]];
}

/** A chain of bases this long is more likely a mistake than a plan. */
const LONGEST_CHAIN = 16;

/** How files are read, and the working folder to which their names are relative. */
interface Way {
  readonly cwd: string;
  readonly reader: Reader;
}

async function readChain(engineFile: string, shopFolder: string, way: Way): Promise<Chain | Failure> {
  const first = await readLink(engineFile, way);
  if (!first.ok) return first;
  const links: [Link, ...Link[]] = [first.link];
  for (let last: Link = first.link; ; ) {
    const name = way.reader.extendsOf(last.source);
    if (name === undefined) return {ok: true, links};
    const bounds: Bounds = {folder: dirname(last.path), shopFolder};
    const found = await fileNamed(name, bounds, way.reader.disk);
    if (typeof found !== 'string') return failureAt(last.source, name.where, found.says, found.hint);
    if (links.some(({path}) => path === found)) {
      return failureAt(last.source, name.where, `${name.value} extends this file in turn`, CIRCLE_HINT);
    }
    if (links.length === LONGEST_CHAIN) {
      return failureAt(
        last.source,
        name.where,
        `more than ${LONGEST_CHAIN} files extend each other`,
        'join some',
      );
    }
    const next = await readLink(found, way);
    if (!next.ok) return next;
    last = next.link;
    links.push(last);
  }
}

const CIRCLE_HINT = 'a chain of files must end at one that extends nothing';

async function readLink(
  path: string,
  {cwd, reader}: Way,
): Promise<{readonly ok: true; readonly link: Link} | Failure> {
  const read = await reader.text(path, shownName(path, cwd), LIMITS.specification);
  return read.ok ? {ok: true, link: {path, source: read.source}} : read;
}

function failureAt(from: Source, where: Where, says: string, hint: string | undefined): Failure {
  const {line, column} = positionAt(from, where.span.start);
  return {ok: false, says, ...(hint && {hint}), where: {file: from.file, line, column}};
}
