/**
 * A comparison as Markdown for a pull request: the sums and what was weakened first, the rest folded away, in an order
 * that does not change from run to run, under a mark by which a comment is found again and updated in place.
 */
import type {BlockContent, List, ListItem, PhrasingContent, RootContent} from 'mdast';
import {EFFECTS} from '../compare/model.js';
import {LOST_WORD} from '../compare/words.js';
import {
  bullets,
  heading,
  listItem,
  listLine,
  markdownOf,
  paragraph,
  strong,
  text,
} from '../print/markdown.js';
import {printable} from '../text/printable.js';
import type {BookJson, ChangeJson} from './compare-report.js';
import type {CompareJson} from './compare-shape.js';
import {sidesAndSums} from './compare-sides.js';
import {hasWords, requiredText, sums, unseenText} from './compare-text.js';

/** A comment with this line in it is the tool's own. */
const MARK = '<!-- wmark compare -->';

/** Hosts refuse longer comments (65,536 characters where the limit is known); room is left for their own. */
const LONGEST = 60_000;

/** Short enough for a comment: where it is not, the longest lists are cut, and say how much is left out. */
export function compareMarkdown(json: CompareJson): string {
  for (const most of [Number.POSITIVE_INFINITY, 200, 50, 10]) {
    const text = written(json, most);
    if (text.length <= LONGEST) return text;
  }
  return written(json, 0);
}

/** With at most so many changes of an effect in each book. */
function written(json: CompareJson, most: number): string {
  return markdownOf([
    {type: 'html', value: MARK},
    ...json.unseen.map((one) => paragraph([strong('Not seen: '), text(unseenText(one))])),
    ...json.books.flatMap((book) => bookNodes(book, json, most)),
    ...(json.books.length > 1 ? [paragraph(sums(json.summary))] : []),
  ]);
}

function bookNodes(book: BookJson, json: CompareJson, most: number): RootContent[] {
  if (book.changes.length + book.brought.length + book.settled.length === 0)
    return [paragraph(`${printable(book.engine)}: both sides are the same.`)];
  const of = (effect: ChangeJson['effect']) => book.changes.filter((one) => one.effect === effect);
  const weakened = of('weakened');
  const lost = of('reworded').filter(({aspect}) => aspect === LOST_WORD);
  return [
    heading(3, printable(book.engine)),
    paragraph(`${sidesAndSums(book, json)}.`),
    ...(weakened.length === 0
      ? [paragraph('Nothing is weakened.')]
      : [
          shortened(weakened, most, (one) =>
            listItem([paragraph([strong('weakened'), text(` ${printable(one.message)} `), place(one)])]),
          ),
        ]),
    ...(lost.length === 0 ? [] : [shortened(lost, most, lostWord)]),
    ...EFFECTS.flatMap((effect) => folded(effect, of(effect), most)),
    ...findings('Findings that it brings', book.brought, most),
    ...findings('Findings that it settles', book.settled, most),
  ];
}

const TITLES: {readonly [effect in Exclude<ChangeJson['effect'], 'weakened'>]: string} = {
  strengthened: 'strengthened',
  changed: 'changed',
  reworded: 'reworded: no tag or value changed, so read the words',
};

function folded(effect: ChangeJson['effect'], changes: readonly ChangeJson[], most: number): RootContent[] {
  if (changes.length === 0) return [];
  const title = effect === 'weakened' ? 'What is weakened, in detail' : `${changes.length} ${TITLES[effect]}`;
  return fold(
    title,
    shortened(changes, most, (one) => (hasWords(one) ? detailed(one) : brief(one))),
  );
}

/** Nothing but a reader can tell whether it matters: both wordings are shown at once. */
function lostWord(change: ChangeJson): ListItem {
  const sides = (['before', 'now'] as const).flatMap((side) =>
    change[side].at.map((one) => listLine(`${side}: ${printable(one.message)}`)),
  );
  const head = paragraph([strong('words lost'), text(` ${printable(change.message)} `), place(change)]);
  return listItem([head, bullets(sides)]);
}

function brief(change: ChangeJson): ListItem {
  return listItem([paragraph([text(`${printable(change.message)} `), place(change)])]);
}

function detailed(change: ChangeJson): ListItem {
  const sides = (['before', 'now'] as const).flatMap((side) =>
    change[side].at.map((one) =>
      listItem([
        paragraph([text(`${side}: `), code(`${one.file}:${one.line}`), text(` ${printable(one.message)}`)]),
      ]),
    ),
  );
  const asked = change.item === null ? [] : [listLine(`required ${printable(requiredText(change))}`)];
  const brings = change.brings.map((one) => listLine(`brings ${one.name}: ${printable(one.message)}`));
  const below = [...asked, ...sides, ...brings];
  return listItem([paragraph(printable(change.message)), ...(below.length === 0 ? [] : [bullets(below)])]);
}

function findings(title: string, found: BookJson['brought'], most: number): RootContent[] {
  if (found.length === 0) return [];
  const line = (one: BookJson['brought'][number]) =>
    listItem([
      paragraph([
        code(`${one.file}:${one.line}`),
        text(` ${one.severity}: ${printable(one.message)} (${one.name})`),
      ]),
    ]);
  return fold(`${title}: ${found.length}`, shortened(found, most, line));
}

/** The lines of HTML stand apart, so that what is between them is read as Markdown. */
function fold(title: string, content: BlockContent): RootContent[] {
  return [
    {type: 'html', value: `<details><summary>${title}</summary>`},
    content,
    {type: 'html', value: '</details>'},
  ];
}

function shortened<T>(all: readonly T[], most: number, line: (one: T) => ListItem): List {
  const left = all.length - Math.min(all.length, most);
  const more = left === 0 ? [] : [listLine(`and ${left} more; run wmark compare to see them`)];
  return bullets([...all.slice(0, all.length - left).map(line), ...more]);
}

function place({before, now}: ChangeJson): PhrasingContent {
  const at = now.at[0] ?? before.at[0];
  return at === undefined ? text('') : code(`${at.file}:${at.line}`);
}

function code(value: string): PhrasingContent {
  return {type: 'inlineCode', value: printable(value)};
}
