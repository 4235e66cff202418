/** Text from a book put into Markdown that the client shows: it stays text, whatever it holds. */
import {printable} from '../text/printable.js';

/** Every character that could begin markup gets a backslash. */
export function plain(text: string): string {
  return printable(text).replace(/[\\`*_{}[\]()#+!|<>~&]/g, '\\$&');
}

/** As code, with a fence that the text does not hold. */
export function code(text: string): string {
  const longest = Math.max(0, ...[...text.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  const pad = longest > 0 ? ' ' : '';
  return `${fence}${pad}${printable(text)}${pad}${fence}`;
}
