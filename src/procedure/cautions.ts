/** Reads a block quote that opens with a signal word of ANSI Z535.6 as one or more cautions. */
import type {BlockContent, Blockquote, DefinitionContent, Nodes, Paragraph, PhrasingContent} from 'mdast';
import type {Span} from '../text/source.js';
import {misplaced, tagsUnder} from './code-spans.js';
import type {Caution, Signal} from './model.js';
import {liftProse, plainText, spanOf} from './prose.js';
import type {Reading} from './reading.js';

/**
 * The cautions of a block quote, each from its signal word to the next; none where it does not open with one. The word
 * may be in capitals, the colon in or after the strong text; without strong text the colon is needed.
 */
export function cautionsOf(quote: Blockquote, reading: Reading): Caution[] {
  if (!opensCaution(quote)) return [];
  const starts = quote.children.flatMap((child, index) => (signalOf(child) ? [index] : []));
  return starts.map((start, index) => {
    const next = starts[index + 1];
    const end = next === undefined ? spanOf(quote).end : spanOf(quote.children[next - 1] ?? quote).end;
    const from = spanOf(index === 0 ? quote : (quote.children[start] ?? quote)).start;
    return cautionOf(quote.children.slice(start, next), {start: from, end}, reading);
  });
}

/** Whether a block quote opens with a signal word. */
export function opensCaution(quote: Blockquote): boolean {
  const [first] = quote.children;
  return first !== undefined && signalOf(first) !== undefined;
}

type Content = BlockContent | DefinitionContent;

function cautionOf(blocks: readonly Content[], span: Span, reading: Reading): Caution {
  const [first, ...rest] = blocks;
  const opening = first && signalOf(first);
  const {tags, nodes} = tagsUnder(blocks, reading);
  const kept = tags.filter((tag) => tag.verb === 'hazard');
  for (const tag of tags) if (tag.verb !== 'hazard') misplaced(reading, tag, 'a caution');
  const paragraphs = [opening?.rest ?? [], ...rest.flatMap(paragraphsOf)];
  const lifting = {tags: nodes, definitions: reading.definitions, keepPictures: true} as const;
  const lifted = paragraphs
    .map((paragraph) => liftProse(paragraph, lifting).inline)
    .filter(({length}) => length > 0);
  const inline = lifted.flatMap((paragraph, index) => (index === 0 ? paragraph : [BREAK, ...paragraph]));
  return {
    signal: opening?.signal ?? 'notice',
    span,
    text: plainText(inline),
    inline,
    hazards: kept.flatMap(({targets}) => targets.map(({id, span}) => ({word: id, span}))),
    tags: kept,
  };
}

/** Paragraphs, also those of lists, become lines of one text. */
const BREAK: PhrasingContent = {type: 'break'};

function paragraphsOf(node: Nodes): PhrasingContent[][] {
  if (node.type === 'paragraph' || node.type === 'heading') return [node.children];
  if (node.type === 'code') return [[{type: 'text', value: node.value}]];
  return 'children' in node ? node.children.flatMap(paragraphsOf) : [];
}

interface Opening {
  readonly signal: Signal;
  /** What follows the signal word. */
  readonly rest: PhrasingContent[];
}

function signalOf(block: Content): Opening | undefined {
  if (block.type !== 'paragraph') return undefined;
  const [first, ...rest] = block.children;
  if (first?.type === 'text') return plainOpening(first.value, /^(danger|warning|caution|notice):\s*/i, rest);
  if (first?.type !== 'strong') return undefined;
  const [inner, ...others] = first.children;
  if (inner?.type !== 'text') return undefined;
  const alone =
    others.length === 0 &&
    plainOpening(inner.value, /^(danger|warning|caution|notice)\s*(?:[:!.]\s*)?$/i, []);
  if (alone) return {...alone, rest: withoutColon(rest)};
  const longer = plainOpening(inner.value, /^(danger|warning|caution|notice)\s*:\s*/i, others);
  return longer && {...longer, rest: [{...first, children: longer.rest}, ...rest]};
}

function plainOpening(text: string, pattern: RegExp, rest: Paragraph['children']): Opening | undefined {
  const match = pattern.exec(text);
  const signal = SIGNALS.find((word) => word === match?.[1]?.toLowerCase());
  if (match === null || signal === undefined) return undefined;
  return {signal, rest: [{type: 'text', value: text.slice(match[0].length)}, ...rest]};
}

const SIGNALS: readonly Signal[] = ['danger', 'warning', 'caution', 'notice'];

function withoutColon(nodes: readonly PhrasingContent[]): PhrasingContent[] {
  const [first, ...rest] = nodes;
  return first?.type === 'text'
    ? [{...first, value: first.value.replace(/^\s*:\s*/, '')}, ...rest]
    : [...nodes];
}
