/** The books on the desk: which there are for an open file, and that nothing is read or worked out twice. */
import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, it} from 'vitest';
import {Desk, type Shelf} from '../../src/editor/desk.js';
import {rename} from '../../src/editor/rename.js';
import {temporaryFolder} from '../host/temporary.js';

const SHOP = 'shop: {name: Works}\nconsumables:\n  solvent: {use: cleaner}\n';

function engine(id: string, build: string, more = ''): string {
  return `engine: {id: ${id}, name: ${id}}\n${more}parts:\n  block: {given: true}\n  pump: {}\nbuild: [${build}]\n`;
}

function procedure(steps: string): string {
  return `---\ntitle: Pump\nrevision: A\ndate: 2026-03-01\n---\n\n${steps}`;
}

const SHARED = procedure('1. Wash it. `clean: block with solvent`\n2. Offer it up. `install: pump`\n');

/** Two engines that share a procedure, and one that nothing lists. */
async function shop(): Promise<string> {
  return temporaryFolder({
    'shop.yaml': SHOP,
    'one/engine.yaml': engine('one', '../shared/pump.md'),
    'two/engine.yaml': engine('two', '../shared/pump.md'),
    'shared/pump.md': SHARED,
    'one/loose.md': procedure('1. Offer it up. `install: pump`\n'),
    'one/README.md': '# About\n\n1. Read this.\n',
  });
}

async function opened(folder: string, file: string): Promise<{desk: Desk; shelf: Shelf}> {
  const desk = new Desk({cwd: folder});
  desk.open(join(folder, file), readFileSync(join(folder, file), 'utf8'));
  return {desk, shelf: await desk.settled()};
}

function files({views}: Shelf): string[] {
  return views.map(({loaded}) => (loaded.alone ? `${loaded.file} alone` : loaded.file));
}

describe('a file that is opened', () => {
  it.each([
    ['shared/pump.md', ['one/engine.yaml', 'two/engine.yaml']],
    ['shop.yaml', ['one/engine.yaml', 'two/engine.yaml']],
    ['two/engine.yaml', ['one/engine.yaml', 'two/engine.yaml']],
    ['one/loose.md', ['one/engine.yaml', 'two/engine.yaml', 'one/engine.yaml alone']],
    ['one/README.md', ['one/engine.yaml', 'two/engine.yaml']],
  ])('%s brings the books of its shop', async (file, expected) => {
    const {shelf} = await opened(await shop(), file);
    expect(files(shelf)).toEqual(expected);
    expect(shelf.failures).toEqual([]);
  });

  it('of a base shows in what extends it, and not as a book', async () => {
    const folder = await temporaryFolder({
      'shop.yaml': SHOP,
      'base/engine.yaml': 'parts:\n  pump: {}\n',
      'blown/engine.yaml':
        'engine: {id: blown, name: blown}\nextends: ../base/engine.yaml\nbuild: [pump.md]\n',
      'blown/pump.md': SHARED,
    });
    const {shelf} = await opened(folder, 'base/engine.yaml');
    expect(files(shelf)).toEqual(['blown/engine.yaml']);
  });

  it('of an engine that builds nothing yet has nothing left undone', async () => {
    const folder = await temporaryFolder({
      'engine.yaml': 'engine: {id: new, name: new}\nparts:\n  pump: {closes: [x]}\n',
    });
    const {shelf} = await opened(folder, 'engine.yaml');
    expect(shelf.views[0]?.findings.map(({name}) => name)).toEqual(['unknown-item']);
  });

  it('brings a failure where its book cannot be read', async () => {
    const folder = await temporaryFolder({'engine.yaml': 'extends: nowhere.yaml\n'});
    const {shelf} = await opened(folder, 'engine.yaml');
    expect(shelf.failures).toMatchObject([{where: {file: 'engine.yaml', line: 1}}]);
  });
});

describe('a change', () => {
  it('reads no file again, and leaves the books alone that it does not touch', async () => {
    const folder = await shop();
    const {desk, shelf} = await opened(folder, 'one/loose.md');
    const {reads} = desk.texts;
    expect(reads).toBeGreaterThan(0);
    const text = readFileSync(join(folder, 'one/loose.md'), 'utf8');
    for (const more of ['2', '2.', '2. Turn it. '])
      desk.change(join(folder, 'one/loose.md'), `${text}${more}`);
    const now = await desk.settled();
    expect(desk.texts.reads).toBe(reads);
    expect(now.views[0]).toBe(shelf.views[0]);
    expect(now.views[1]).toBe(shelf.views[1]);
    expect(now.views[2]).not.toBe(shelf.views[2]);
  });

  it('of nothing keeps what was worked out', async () => {
    const {desk, shelf} = await opened(await shop(), 'shared/pump.md');
    desk.look();
    const now = await desk.settled();
    expect(now.views).toEqual(shelf.views);
    expect(now.views[0]).toBe(shelf.views[0]);
  });

  it('on disk is seen when one looks', async () => {
    const folder = await shop();
    const {desk} = await opened(folder, 'one/engine.yaml');
    writeFileSync(join(folder, 'shared/pump.md'), procedure('1. Wash it. `clean: block with solvent`\n'));
    desk.look();
    const {views} = await desk.settled();
    expect(views[0]?.findings.map(({name}) => name)).toContain('left-out');
  });

  it('that is not saved counts until the file is closed', async () => {
    const folder = await shop();
    const {desk} = await opened(folder, 'shared/pump.md');
    const path = join(folder, 'shared/pump.md');
    desk.change(path, procedure('1. Wash it. `clean: block with solvent`\n'));
    expect((await desk.settled()).views[0]?.findings.map(({name}) => name)).toContain('left-out');
    desk.open(join(folder, 'one/engine.yaml'), engine('one', '../shared/pump.md'));
    desk.close(path);
    expect((await desk.settled()).views[0]?.findings.map(({name}) => name)).not.toContain('left-out');
  });
});

it('a name of the shop is renamed in every book of it, one of an engine in its own', async () => {
  const folder = await shop();
  const {desk} = await opened(folder, 'shared/pump.md');
  desk.open(join(folder, 'one/engine.yaml'), engine('one', '../shared/pump.md'));
  const {views} = await desk.settled();
  const [one] = views;
  if (one === undefined) throw new Error('there is no book');
  const at = (words: string, file: string) => ({file, offset: one.texts.get(file)?.text.indexOf(words) ?? 0});
  const ofShop = rename(one, views, at('solvent', 'shop.yaml'), 'spirit');
  expect(ofShop.ok && [...ofShop.edits.keys()].sort()).toEqual(['shared/pump.md', 'shop.yaml']);
  const ofEngine = rename(one, views, at('pump:', 'one/engine.yaml'), 'oil-pump');
  expect(ofEngine.ok && [...ofEngine.edits.keys()].sort()).toEqual(['one/engine.yaml', 'shared/pump.md']);
});
