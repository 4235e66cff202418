/** The life of an item, as plain data and as lines that an editor can follow. */
import type {Book} from '../build/book.js';
import {whereIn} from '../build/program.js';
import type {Life} from '../build/story.js';
import {factWords, tell} from '../build/tell.js';
import {type Place, placeOf, textsOf} from '../host/places.js';
import {placesOf} from '../spec/items.js';
import {isTemporary} from '../spec/temporary.js';
import {printable} from '../text/printable.js';
import {placeText} from './place-text.js';

/** One item of one book. The JSON of `wmark story` is a list of these. */
export interface StoryJson {
  readonly item: string;
  readonly name: string;
  readonly kind: string;
  readonly specified: Place;
  readonly turns: readonly (Place & {
    readonly fact: string;
    readonly holds: boolean;
    /** Empty where it is about every place of the item. */
    readonly places: readonly string[];
    readonly message: string;
  })[];
  /** What holds when the build is done, by place; '' for an item in one place only. */
  readonly end: readonly {readonly place: string; readonly facts: readonly string[]}[];
  /** It is on the engine for a while only, and must be off when the build is done. */
  readonly temporary: boolean;
}

export function storyJson({item, turns, end}: Life, book: Book): StoryJson {
  const texts = textsOf(book);
  const all = placesOf(item);
  return {
    item: item.id,
    name: item.name,
    kind: item.kind,
    specified: placeOf(item.where, texts),
    turns: turns.map(({kind, holds, places, action}) => ({
      ...placeOf(whereIn(action.step, action.tag.span), texts),
      fact: kind,
      holds,
      places: places.length === all.length ? [] : places,
      message: tell(kind, holds, action),
    })),
    temporary: isTemporary(item, book.spec),
    end: all.map((place) => ({place, facts: end.get(place)?.map((kind) => factWords(kind, true)) ?? []})),
  };
}

export function storyText({item, name, kind, specified, turns, end, temporary}: StoryJson): string {
  const lines = [
    `${item}: ${name} (${kind})`,
    `    ${placeText(specified)}: specified here`,
    ...turns.map((turn) => `    ${placeText(turn)}: ${turn.message}${atPlaces(turn.places)}`),
    ...(turns.length === 0 ? ['    no step deals with it'] : []),
    ...endLines(end, temporary && turns.length > 0),
  ];
  return lines.map((line) => `${printable(line)}\n`).join('');
}

/** Places that end the same are told together. */
function endLines(end: StoryJson['end'], mustBeOff: boolean): string[] {
  const byFacts = new Map<string, string[]>();
  for (const {place, facts} of end) {
    const none = mustBeOff ? 'out again, as it must be' : 'nothing done';
    const told = facts.length === 0 ? none : facts.join(', ');
    byFacts.set(told, [...(byFacts.get(told) ?? []), place]);
  }
  const alike = byFacts.size === 1;
  return [...byFacts].map(([told, places]) => `  at the end${alike ? '' : atPlaces(places)}: ${told}`);
}

function atPlaces(places: readonly string[]): string {
  return places.length === 0 ? '' : ` [${places.join(', ')}]`;
}
