/** Every name in a book: where it is given and where it is used. What is looked up, coloured and renamed starts here. */
import type {Book} from '../build/book.js';
import type {Job} from '../spec/job.js';
import {isLockKind} from '../spec/locks.js';
import type {Where} from '../text/source.js';
import type {Mention} from './mention.js';
import {procedureMentions} from './mentions-in-tags.js';
import {yamlMentions} from './mentions-in-yaml.js';

export function mentionsOf(book: Book, jobs: readonly Job[]): readonly Mention[] {
  const all = [
    ...[...book.spec.files.values()].flatMap((source) => yamlMentions(source)),
    ...book.procedures.flatMap(procedureMentions),
    ...jobs.flatMap(({source}) => yamlMentions(source)),
  ];
  return all.map((mention) => {
    // A kind of lock stands where a consumable may, and gives way to a consumable of that name.
    const isLock = mention.kind === 'item' && isLockKind(mention.id) && !book.spec.items.has(mention.id);
    return isLock ? {...mention, kind: 'lock-kind'} : mention;
  });
}

/** The name at an offset of a file; one that ends there counts. */
export function mentionAt(mentions: readonly Mention[], {file, span}: Where): Mention | undefined {
  return mentions.find(
    ({where}) => where.file === file && where.span.start <= span.start && span.start <= where.span.end,
  );
}
