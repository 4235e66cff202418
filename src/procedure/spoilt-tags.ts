/** Finds in prose what was meant as a tag, but is no code span: a backtick that is never closed, or other quotes. */
import type {Nodes, Text} from 'mdast';
import {spanOf} from './prose.js';
import {type Reading, report} from './reading.js';
import {isVerb} from './verbs.js';

/** Reports every one under some nodes. Code spans themselves are read elsewhere. */
export function reportSpoiltTags(nodes: readonly Nodes[], reading: Reading): void {
  for (const node of nodes) {
    if (node.type === 'text') inText(node, reading);
    else if ('children' in node) reportSpoiltTags(node.children, reading);
  }
}

/** A quote or none, a word with a colon, and what looks like the name after it. */
const TAG_LIKE = /(['"‘“`]?)\b([a-z]+): ?[a-z0-9][a-z0-9-]*/g;

function inText(node: Text, reading: Reading): void {
  const {start, end} = spanOf(node);
  const raw = reading.source.text.slice(start, end);
  if (!raw.includes(':')) return;
  const stray = raw.includes('`');
  for (const match of raw.matchAll(TAG_LIKE)) {
    const [whole, quote = '', verb = ''] = match;
    if (!isVerb(verb) || (quote === '' && !stray)) continue;
    const from = start + match.index + quote.length;
    const isQuoted = quote !== '' && quote !== '`';
    report(
      reading,
      'tag-form',
      {start: from, end: start + match.index + whole.length},
      isQuoted
        ? {says: `\`${verb}:\` in quotes is no tag`, hint: 'put the tag between backticks (`)'}
        : {says: `\`${verb}:\` lacks a backtick`, hint: 'a tag opens and closes with a backtick (`)'},
    );
    return;
  }
}
