/** The outline of a file: sections and steps of a procedure, sections and items of a specification. */
import type {DocumentSymbol, WorkspaceSymbol} from 'vscode-languageserver';
import type {Procedure, Section, Step} from '../procedure/model.js';
import type {ItemKind} from '../spec/model.js';
import {entryOf, type MapNode} from '../spec/tree.js';
import {readYaml} from '../spec/yaml.js';
import type {Source, Span} from '../text/source.js';
import type {BookView} from './book-view.js';
import {type Addresses, locationOf, rangeOf} from './convert.js';

/** Kinds of symbol in the protocol. */
const SYMBOL = {
  file: 1,
  module: 2,
  namespace: 3,
  property: 7,
  field: 8,
  function: 12,
  string: 15,
  event: 24,
} as const;

/** Sections within sections, and steps within those and each other. */
export function procedureOutline(procedure: Procedure): DocumentSymbol[] {
  const from = procedure.source;
  const open: {readonly depth: number; readonly symbol: DocumentSymbol & {children: DocumentSymbol[]}}[] = [];
  const top: DocumentSymbol[] = [];
  procedure.sections.forEach((section, index) => {
    const steps = section.content.flatMap((block) =>
      block.type === 'step' ? [stepSymbol(block.step, from)] : [],
    );
    if (section.title === '') {
      top.push(...steps);
      return;
    }
    while ((open.at(-1)?.depth ?? -1) >= section.depth) open.pop();
    const symbol = {...sectionSymbol(section, sectionEnd(procedure, index), from), children: steps};
    (open.at(-1)?.symbol.children ?? top).push(symbol);
    open.push({depth: section.depth, symbol});
  });
  return top;
}

/** A section ends where the next of its depth or above begins. */
export function sectionEnd({sections, source}: Procedure, index: number): number {
  const depth = sections[index]?.depth ?? 0;
  const next = sections.slice(index + 1).find((section) => section.depth <= depth);
  return next?.span.start ?? source.text.length;
}

function sectionSymbol({title, span}: Section, end: number, from: Source): DocumentSymbol {
  const line = from.text.slice(span.start).search(/[\r\n]|$/);
  return {
    name: title,
    kind: SYMBOL.namespace,
    range: rangeOf(from, {start: span.start, end}),
    selectionRange: rangeOf(from, {start: span.start, end: span.start + line}),
  };
}

function stepSymbol(step: Step, from: Source): DocumentSymbol {
  const {number, text, span, headSpan, steps} = step;
  const verbs = step.tags.map(({verb, targets}) => `${verb}: ${targets.map(({id}) => id).join(', ')}`);
  return {
    name: `${number}. ${shortened(text)}`,
    detail: verbs.join('; '),
    kind: SYMBOL.function,
    range: rangeOf(from, span),
    selectionRange: rangeOf(from, within(headSpan, span)),
    children: steps.map((sub) => stepSymbol(sub, from)),
  };
}

/** Clients refuse a selection that reaches out of its range. */
function within(inner: Span, outer: Span): Span {
  const start = Math.min(Math.max(inner.start, outer.start), outer.end);
  return {start, end: Math.min(Math.max(inner.end, start), outer.end)};
}

const LONGEST = 72;

function shortened(text: string): string {
  if (text === '') return '…';
  return text.length <= LONGEST ? text : `${text.slice(0, LONGEST - 1)}…`;
}

/** The keys of a YAML file, two levels of them. */
export function yamlOutline(from: Source): DocumentSymbol[] {
  const {tree} = readYaml(from);
  return tree?.type === 'map' ? entriesOf(tree, from, 1) : [];
}

function entriesOf(map: MapNode, from: Source, deeper: number): DocumentSymbol[] {
  return map.entries.map(({key, keyWhere, value}) => ({
    name: key === '' ? '…' : key,
    detail: value.type === 'map' ? nameIn(value) : '',
    kind: deeper > 0 ? SYMBOL.module : SYMBOL.property,
    range: rangeOf(from, {
      start: keyWhere.span.start,
      end: Math.max(keyWhere.span.end, value.where.span.end),
    }),
    selectionRange: rangeOf(from, keyWhere.span),
    children: deeper > 0 && value.type === 'map' ? entriesOf(value, from, deeper - 1) : [],
  }));
}

function nameIn(map: MapNode): string {
  const name = entryOf(map, 'name')?.value;
  return name !== undefined && 'text' in name ? name.text : '';
}

const ITEM_SYMBOL: {readonly [kind in ItemKind]?: WorkspaceSymbol['kind']} = {
  check: SYMBOL.event,
  'hold-point': SYMBOL.event,
  mark: SYMBOL.string,
};

/** Items and procedures of the books whose name or title holds the letters of the query in their order. */
export function workspaceSymbols(
  views: readonly BookView[],
  query: string,
  addresses: Addresses,
): WorkspaceSymbol[] {
  const found = new Map<string, WorkspaceSymbol>();
  for (const view of views) {
    for (const {id, kind, where} of view.spec.items.values()) {
      if (!holdsLetters(id, query)) continue;
      const location = locationOf(where, view.texts, addresses);
      const symbol = {name: id, kind: ITEM_SYMBOL[kind] ?? SYMBOL.field, containerName: kind, location};
      found.set(`${where.file} ${where.span.start}`, symbol);
    }
    for (const {front, source} of view.loaded.book.procedures) {
      if (front.title === '' || !holdsLetters(front.title, query)) continue;
      const location = locationOf({file: source.file, span: {start: 0, end: 0}}, view.texts, addresses);
      found.set(source.file, {name: front.title, kind: SYMBOL.file, location});
    }
  }
  return [...found.values()].slice(0, MOST_FOUND);
}

const MOST_FOUND = 500;

function holdsLetters(text: string, query: string): boolean {
  let at = 0;
  const letters = text.toLowerCase();
  for (const letter of query.toLowerCase().replace(/\s/g, '')) {
    const next = letters.indexOf(letter, at);
    if (next === -1) return false;
    at = next + 1;
  }
  return true;
}
