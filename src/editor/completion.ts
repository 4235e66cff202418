/** What may come next in a procedure: in its tags, and in its front matter. */
import {FINDINGS} from '../findings/registry.js';
import type {NamedKind} from '../procedure/verbs.js';
import {type ClauseSpec, type ClauseWord, tagSpec, VERBS, type Verb} from '../procedure/verbs.js';
import type {Use} from '../sheet/context.js';
import {LOCK_KINDS} from '../spec/locks.js';
import type {Item, ItemKind, Specification} from '../spec/model.js';
import {KIND_SAYS} from '../spec/sections.js';
import type {Span} from '../text/source.js';
import type {BookView} from './book-view.js';
import type {Typing} from './completion-typing.js';
import {doneSoFar} from './done-so-far.js';
import {frontMatterOffers} from './front-matter-offers.js';
import {suppliedBy} from './inlay-hints.js';
import type {Offer} from './offer.js';
import {type Typed, typedAt} from './tag-typed.js';

export function procedureOffers(view: BookView, typing: Typing): readonly Offer[] {
  const typed = typedAt(typing.text, typing.offset);
  if (typed === undefined) return frontMatterOffers(view.spec, typing);
  switch (typed.slot) {
    case 'verb':
      return VERBS.map((verb) => verbOffer(verb, typed.span, typing));
    case 'target':
      return targetOffers(view, typed, typing);
    case 'place':
      return placeOffers(view.spec, typed);
    case 'clause':
      return clauseOffers(view.spec, typed);
    case 'value':
      return valueOffers(view.spec, typed);
  }
}

type TypedOf<S extends Typed['slot']> = Extract<Typed, {slot: S}>;

function verbOffer(verb: Verb, span: Span, {text}: Typing): Offer {
  const colon = text[span.end] === ':' ? '' : ': ';
  return {label: verb, kind: 'verb', insert: verb + colon, span, detail: tagSpec(verb).says, rank: 0};
}

function targetOffers(view: BookView, {verb, span, taken}: TypedOf<'target'>, typing: Typing): Offer[] {
  const {targets} = tagSpec(verb);
  const plain = (label: string, detail: string): Offer => ({
    label,
    kind: 'word',
    insert: label,
    span,
    detail,
    rank: 0,
  });
  switch (targets) {
    case 'new-id':
      return [];
    case 'finding':
      return FINDINGS.map(({name, summary}) => plain(name, summary));
    case 'option':
      return [...view.spec.options.values()].map(({id, name}) => plain(id, name));
    case 'step-id':
      return (view.procedure(typing.file)?.steps ?? []).flatMap(({id, number}) =>
        id === undefined ? [] : [plain(id, `step ${number}`)],
      );
    case 'hazard-word':
      return hazardWords(view.spec).map((word) => plain(word, 'a hazard that the specification names'));
    default: {
      const rank = doneSoFar(view, verb, typing);
      return itemsOf(view.spec, targets)
        .filter(({id}) => !taken.includes(id))
        .map((item) => itemOffer(item, span, rank(item.id)));
    }
  }
}

function itemsOf(spec: Specification, kinds: readonly ItemKind[]): Item[] {
  return [...spec.items.values()].filter((item) => kinds.includes(item.kind) && !isGiven(item));
}

/** What is there from the start is never put in. */
function isGiven(item: Item): boolean {
  return item.kind === 'part' && item.given;
}

function itemOffer(item: Item, span: Span, rank: number): Offer {
  const {id, kind, name} = item;
  return {label: id, kind: 'item', insert: id, span, detail: `${KIND_SAYS[kind]}, ${name}`, rank};
}

function hazardWords(spec: Specification): string[] {
  const words = [...spec.items.values()].flatMap((item) => ('hazards' in item ? item.hazards : []));
  return [...new Set(words.map(({value}) => value))].sort();
}

function placeOffers(spec: Specification, {span, id, taken}: TypedOf<'place'>): Offer[] {
  const places = spec.items.get(id)?.at ?? [];
  return places
    .filter((place) => !taken.includes(place))
    .map((place) => ({label: place, kind: 'place', insert: place, span, rank: 0}));
}

/** A clause that the specification has the value of is offered whole, first. */
function clauseOffers(spec: Specification, {verb, span, taken, targets}: TypedOf<'clause'>): Offer[] {
  const open = Object.entries(tagSpec(verb).clauses).flatMap(([word, clause]) =>
    isAmong(word, taken) ? [] : [{word, clause}],
  );
  return open.flatMap(({word, clause}): Offer[] => {
    const value = specifiedFor(spec, verb, word, targets);
    const bare: Offer = {label: word, kind: 'clause', insert: `${word} `, span, detail: clause.says, rank: 1};
    if (value === undefined) return [bare];
    const whole = `${word} ${value}`;
    const detail = `as ${targets.join(', ')} is specified`;
    return [{label: whole, kind: 'value', insert: whole, span, detail, rank: 0}, bare];
  });
}

function isAmong(word: string, taken: readonly ClauseWord[]): boolean {
  return taken.some((one) => one === word);
}

/** As it would be written; nothing where two items are named, or more than one would do. */
function specifiedFor(
  spec: Specification,
  verb: Verb,
  word: string,
  [id, other]: readonly string[],
): string | undefined {
  if (id === undefined || other !== undefined) return undefined;
  // What the specification says is asked as of a tag, and this one is not written yet.
  const span = {start: 0, end: 0};
  const target = {id, span, places: []};
  const tag = {span, raw: '', verb, verbSpan: span, targets: [target], clauses: []};
  const use: Use = {tag, target, item: spec.items.get(id)};
  const clause = Object.keys(tagSpec(verb).clauses).find((one): one is ClauseWord => one === word);
  return clause && suppliedBy(use, clause, spec)?.insert;
}

function valueOffers(spec: Specification, {verb, span, word, targets}: TypedOf<'value'>): Offer[] {
  const clause = tagSpec(verb).clauses[word];
  if (clause === undefined) return [];
  const specified = specifiedFor(spec, verb, word, targets);
  const first: Offer[] =
    specified === undefined
      ? []
      : [
          {
            label: specified,
            kind: 'value',
            insert: specified,
            span,
            detail: `as ${targets.join(', ')} is specified`,
            rank: 0,
          },
        ];
  const others = possible(spec, clause, span).filter(({label}) => label !== specified);
  return [...first, ...others];
}

function possible(spec: Specification, clause: ClauseSpec, span: Span): Offer[] {
  const words = 'words' in clause ? (clause.words ?? []) : [];
  if (clause.type !== 'ids') {
    return words.map((word) => ({label: word, kind: 'word', insert: word, span, rank: 1}));
  }
  const kinds = clause.kinds.filter((kind): kind is Exclude<NamedKind, 'lock-kind'> => kind !== 'lock-kind');
  const locks = clause.kinds.includes('lock-kind') ? Object.entries(LOCK_KINDS) : [];
  return [
    ...itemsOf(spec, kinds).map((item) => itemOffer(item, span, 1)),
    ...locks.map(
      ([id, {says}]): Offer => ({
        label: id,
        kind: 'word',
        insert: id,
        span,
        detail: `a kind of lock: ${says}`,
        rank: 2,
      }),
    ),
  ];
}
