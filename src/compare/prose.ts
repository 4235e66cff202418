/** The prose of a book as plain text: of a step with all that stands in its item, and of what stands outside steps. */
import type {Book} from '../build/book.js';
import type {Block, Picture, Procedure, Step} from '../procedure/model.js';
import type {Span} from '../text/source.js';

/** A step's words with the paragraphs, lists and pictures below them, its cautions left out. */
export function wordsOfStep({text, more, pictures}: Step): string {
  return [text, ...more.flatMap(wordsOfBlock), ...pictures.map(pictureSays)]
    .filter((one) => one !== '')
    .join(' ');
}

/** What a reader meets between the steps: a heading, a paragraph, a list, a picture. */
export interface Passage {
  readonly procedure: Procedure;
  /** Of the section that it stands in; '' before the first heading. */
  readonly under: string;
  readonly isTitle: boolean;
  readonly text: string;
  readonly span: Span;
}

/** In the order of the text. */
export function passagesOf(procedure: Procedure): Passage[] {
  return procedure.sections.flatMap(({title, span, content}) => {
    const head = title === '' ? [] : [{procedure, under: title, isTitle: true, text: title, span}];
    return [
      ...head,
      ...content.flatMap((block): Passage[] =>
        wordsOfBlock(block).map((text) => ({
          procedure,
          under: title,
          isTitle: false,
          text,
          span: block.type === 'picture' ? block.picture.span : 'span' in block ? block.span : span,
        })),
      ),
    ];
  });
}

/** Every text of a book that somebody reads. */
export function proseOf({procedures}: Book): string[] {
  return procedures.flatMap((procedure) => [
    ...procedure.steps.flatMap((step) => [wordsOfStep(step), ...step.cautions.map(({text}) => text)]),
    ...passagesOf(procedure).map(({text}) => text),
  ]);
}

function wordsOfBlock(block: Block): string[] {
  if (block.type === 'prose' || block.type === 'other') return block.text === '' ? [] : [folded(block.text)];
  return block.type === 'picture' ? [pictureSays(block.picture)] : [];
}

function pictureSays({alt, url}: Picture): string {
  return `picture ${alt === '' ? url : `${alt} (${url})`}`;
}

function folded(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
