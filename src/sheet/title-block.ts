/** The title block of a sheet or cover and its running head, as HTML and PDF both lay them out. */
import type {Running} from '../print/running.js';
import type {Cover} from './cover-model.js';
import type {BookLists} from './list-model.js';
import type {Sheet} from './model.js';
import {fill, type Words} from './words.js';

export interface TitleBlock {
  readonly shop: string;
  /** What kind of paper this is: "Build sheet 3 of 9". */
  readonly kind: string;
  readonly title: string;
  readonly cells: readonly TitleCell[];
}

export interface TitleCell {
  readonly label: string;
  /** Empty for a cell to write in. */
  readonly text: string;
  /** Twelfths of the block's width; 3 where left out. */
  readonly width?: 4 | 6;
  /** Digits to be compared one by one. */
  readonly digits?: boolean;
  /** What a tablet writes there, where it is a cell to write in. */
  readonly write?: 'engineNumber';
}

/** What a page says of the whole that it belongs to. */
export interface Titles {
  /** The name of the document, which a window or a list of files shows. */
  readonly document: string;
  readonly block: TitleBlock;
  readonly running: Running;
  /** Paragraphs below the block. */
  readonly notes: readonly string[];
}

/** Longer ones are set smaller: two lines of the larger type hold some sixty letters. */
export function isLongTitle({title}: TitleBlock): boolean {
  return title.length > 60;
}

export function sheetTitles({head, words}: Sheet): Titles {
  const revision = fill(words.revisionShort, {revision: head.revision});
  const turn = head.turn === undefined ? '' : ` ${fill(words.turn, head.turn)}`;
  return {
    document: `${head.title} · ${revision} · ${head.engine}`,
    block: {
      shop: head.shop,
      kind: `${words.sheet}${turn}`,
      title: head.title,
      cells: [
        {label: words.engine, text: head.engine, width: 6},
        {label: words.revision, text: head.revision},
        {label: words.date, text: head.date},
        ...numberCells(head, words, 'engineNumber'),
        {label: words.author, text: head.author ?? '', width: 6},
        {label: words.approved, text: head.approved ?? '', width: 6},
      ],
    },
    running: runningOf({name: head.title, rest: ` · ${revision}`}, head),
    notes: engineNotes(head),
  };
}

export function coverTitles(cover: Cover): Titles {
  const {words} = cover;
  return {
    document: `${words.cover} · ${cover.engine}`,
    block: {
      shop: cover.shop,
      kind: words.cover,
      title: cover.engine,
      cells: numberCells(cover, words),
    },
    running: runningOf({name: cover.shop, rest: ` · ${words.cover}`}, cover),
    notes: engineNotes(cover),
  };
}

/** `all` are the books of one page: its running head is of the first of them, and each has a block of its own. */
export function listsTitles(all: readonly [BookLists, ...BookLists[]]): Omit<Titles, 'block' | 'notes'> {
  const [first] = all;
  const {words} = first;
  return {
    document: `${words.lists} · ${all.map(({engine}) => engine).join(words.and)}`,
    running: runningOf({name: first.shop, rest: ` · ${words.lists}`}, first),
  };
}

/** That of one book among those of the page. */
export function listsBlock(lists: BookLists): TitleBlock {
  const {words} = lists;
  return {shop: lists.shop, kind: words.lists, title: lists.engine, cells: numberCells(lists, words)};
}

/** By what one build is told from every other. */
interface Numbers {
  readonly engine: string;
  readonly engineNote?: string;
  readonly engineNumber?: string;
  readonly job?: string;
  readonly fingerprint: string;
}

function numberCells(numbers: Numbers, words: Words, write?: TitleCell['write']): TitleCell[] {
  const {engineNumber = '', job = '', fingerprint} = numbers;
  return [
    {label: words.engineNumber, text: engineNumber, width: 4, ...(write && {write})},
    {label: words.job, text: job, width: 4},
    {label: words.fingerprint, text: fingerprint, width: 4, digits: true},
  ];
}

function runningOf(left: Running['left'], {engine, fingerprint, engineNumber, job}: Numbers): Running {
  return {left, right: {name: engine, rest: ` · ${fingerprint}`}, engineNumber, job};
}

function engineNotes({engine, engineNote}: Numbers): string[] {
  return engineNote === undefined ? [] : [`${engine}: ${engineNote}`];
}
