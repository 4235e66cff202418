/** What of a side could not be taken into account: files in the middle of a merge, specifications that are not YAML. */
import {readYaml} from '../spec/yaml.js';
import {positionAt, type Source} from '../text/source.js';
import type {LoadedBook} from './load.js';
import {textsOf} from './places.js';

/** Something of one side that the comparison could not take into account, as a clause. */
export interface Unseen {
  readonly side: 'before' | 'now';
  readonly says: string;
  readonly where?: {readonly file: string; readonly line: number};
}

/** In the order: files in a merge, files that are not YAML, files that can't be read. */
export function unseenOf({book, jobs}: LoadedBook, side: Unseen['side']): Unseen[] {
  const texts = [...textsOf(book, jobs).values()];
  const marked = texts.flatMap((text): Unseen[] => {
    const line = mergeMarker(text);
    return line === undefined
      ? []
      : [
          {
            side,
            says: 'it holds the markers of a merge that was never settled; settle it first',
            where: {file: text.file, line},
          },
        ];
  });
  const inMerge = new Set(marked.flatMap(({where}) => where?.file ?? []));
  const broken = brokenFiles({book}).filter(({file}) => !inMerge.has(file));
  const unread = book.problems.filter(({name}) => name === 'file-unreadable');
  return [
    ...marked,
    ...broken.map(
      ({file, line}): Unseen => ({
        side,
        says: 'it is not YAML, so what it asks for could not be seen',
        where: {file, line},
      }),
    ),
    ...unread.map(({says, where}): Unseen => {
      const text = texts.find(({file}) => file === where.file);
      return {
        side,
        says,
        where: {file: where.file, line: text ? positionAt(text, where.span.start).line : 1},
      };
    }),
  ];
}

/** Files of a specification that are not YAML, and the line (from 1) where they stop to be. */
export function brokenFiles({
  book,
}: Pick<LoadedBook, 'book'>): {readonly file: string; readonly line: number}[] {
  return [...book.spec.files.values()].flatMap((from) => {
    const {broken, problems} = readYaml(from);
    const start = problems[0]?.where.span.start ?? 0;
    return broken ? [{file: from.file, line: positionAt(from, start).line}] : [];
  });
}

/** Line of the first of the three marks that git leaves, where all three are there. */
function mergeMarker({text, lines}: Source): number | undefined {
  const marks = [/^<{7}(?: |$)/, /^={7}$/, /^>{7}(?: |$)/];
  let next = 0;
  let first: number | undefined;
  for (const [index, start] of lines.entries()) {
    const line = text.slice(start, start + LONGEST_MARK).split(/[\r\n]/)[0] ?? '';
    if (!marks[next]?.test(line)) continue;
    first ??= index + 1;
    next++;
    if (next === marks.length) return first;
  }
  return undefined;
}

/** A marker is seven signs and the name of a branch. */
const LONGEST_MARK = 200;
