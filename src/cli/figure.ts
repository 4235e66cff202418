/** `wmark figure`: the trade's arithmetic for the person at the bench, from the descriptions in `src/trade/figures`. */
import {nearest} from '../text/nearest.js';
import {printable} from '../text/printable.js';
import {type Figure, optionHint} from '../trade/figure.js';
import {FIGURES} from '../trade/figures/registry.js';
import {EXIT, type Exit} from './exit.js';
import {figureList, figurePage, figureText} from './figure-report.js';
import {type FigureWords, figureWords} from './figure-words.js';
import type {Streams} from './streams.js';

/** Without a subject the list of them; with nothing behind it the page of one; else the figure itself. */
export async function figure(
  words: readonly string[],
  {report, aside}: Pick<Streams, 'report' | 'aside'>,
): Promise<Exit> {
  const read = figureWords(words);
  const complain = (text: string): Exit => {
    aside(`wmark: ${printable(text)}\n`);
    return EXIT.unable;
  };
  if (read.subject === undefined) {
    if (read.given.size > 0 || read.empty.length > 0)
      return complain('figure needs a subject before its options; `wmark figure` lists them');
    report(figureList(FIGURES));
    return EXIT.clean;
  }
  const found = FIGURES.find(({name}) => name === read.subject);
  if (found === undefined) return complain(unknownSubject(read.subject));
  if (read.help || words.length === 1) {
    report(figurePage(found));
    return EXIT.clean;
  }
  const slip = slipIn(read, found);
  if (slip !== undefined) return complain(slip);
  const worked = found.work(read.given);
  if (!worked.ok) return complain(`${found.name}: ${worked.says}; ${worked.hint}`);
  report(printableLines(figureText(found, worked)));
  return EXIT.clean;
}

function unknownSubject(subject: string): string {
  const meant = nearest(
    subject,
    FIGURES.map(({name}) => name),
  );
  return `no figure is called ${subject}; ${meant ? `did you mean ${meant}?` : '`wmark figure` lists them all'}`;
}

/** A word that belongs to no option, or an option with nothing behind it. */
function slipIn({stray, empty}: FigureWords, {name, options}: Figure): string | undefined {
  const [word] = stray;
  if (word !== undefined)
    return `${name}: "${word}" stands behind no option; ${optionHint(options, word.replace(/^-+/, ''))}`;
  const [option] = empty;
  if (option === undefined) return undefined;
  const known = options.get(option);
  if (known === undefined) return `${name}: there is no option --${option}; ${optionHint(options, option)}`;
  return `${name}: --${option} has no value; write --${option} "${known.examples[0] ?? ''}"`;
}

/** The report holds the user's own words, which may hold anything. */
function printableLines(text: string): string {
  return text.split('\n').map(printable).join('\n');
}
