/** A file without a source is told of once, and not with every value; a few values are told of one by one. */
import {describe, expect, it} from 'vitest';
import {readSpecification} from '../../src/spec/resolve.js';
import {source} from '../../src/text/source.js';

const faces = (count: number) =>
  `surfaces:\n${Array.from({length: count}, (_, n) => `  face-${n}: {on: block, assembly: clean}\n`).join('')}`;

describe('values without a source', () => {
  it('are told of one by one where they are few', () => {
    expect(told(faces(10))).toHaveLength(10);
  });

  it('are told of once where they are many', () => {
    expect(told(faces(11))).toEqual([
      '4: 11 values of face-0, face-1, face-2 and 8 other items have no source; give the whole file a source (`source: house-notes` at its head), or each value its own',
    ]);
  });

  it('have the source of the file', () => {
    expect(told(`source: notes\n${faces(11)}`)).toEqual([]);
  });
});

/** `line: what is wrong`, of the missing sources. */
function told(text: string): string[] {
  const engine = source('engine.yaml', `engine: {id: small}\nparts: {block: {given: true}}\n${text}`);
  const shop = source('shop.yaml', 'shop: {name: Small}\nsources: {notes: {title: Notes}}\n');
  return readSpecification({shop, engine, bases: []})
    .problems.filter(({name}) => name === 'source-missing')
    .map(
      ({where, says, hint}) =>
        `${engine.text.slice(0, where.span.start).split('\n').length}: ${says}; ${hint}`,
    );
}
