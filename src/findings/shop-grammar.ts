/**
 * As much grammar as it takes to tell `Oil the threads` from `Oil on the threads raises the preload`: whether words
 * that follow one which may be noun or verb make a statement of it.
 */

/** Words that open an object. */
export const DETERMINERS: ReadonlySet<string> = new Set(
  `the a an each every both all any some this that these those its their it them new one two three four five six
  seven eight nine ten either another half your his her no only`.split(/\s+/),
);

/** True when the rest of a sentence, after a word that may be noun or verb, holds the verb of a statement. */
export function declares(rest: readonly string[]): boolean {
  for (const [index, word] of rest.entries()) {
    const before = rest[index - 1];
    // `of that size` goes on, `that runs dry` does not.
    if (STOPS.has(word) && !(word === 'that' && before !== undefined && BEFORE_NOUN.test(before)))
      return false;
    const after = rest[index + 1];
    if (FINITE.has(word)) return true;
    if (PLAIN.has(word) && before !== undefined && isPlural(before)) return true;
    if (thirdPerson(word, before, after)) return true;
  }
  return false;
}

/** What follows one of these says nothing of the words before it. */
const STOPS = new Set(
  ', that which who so until when while as if because before after where since than'.split(' '),
);

const FINITE = new Set(
  `is are was were has have had does did will must can cannot may might should shall would isn't aren't won't can't
  doesn't`.split(/\s+/),
);

/** Verbs that shop prose says of several things. */
const PLAIN = new Set(
  `go take need stay live hang face come hold make give let leave run line point fit carry sit lie read show bind
  seal leak break turn stop start want lose keep work stand belong`.split(/\s+/),
);

/** Plurals of the engine, which end like a verb of the third person. */
const PARTS = new Set(
  `threads bolts nuts studs screws capscrews bores journals bearings shells caps rings seals lobes lifters tappets
  pushrods rockers valves guides pistons pins rods gears faces surfaces holes seats plugs galleries oilways passages
  flanges gaskets springs washers dowels keys parts heads ports tabs wires ends edges lips lands grooves sleeves
  liners bushes bushings collars hoses clamps readings numbers marks joints rails saddles cups covers links teeth
  sides corners points places times turns pairs shims races rollers balls blocks pads ears flats rags brushes sheets
  fits plates levels legs heels lines pipes tubes bosses webs skirts crowns decks`.split(/\s+/),
);

/** A plural of the engine: `threads`, `journals`. */
export function isPart(word: string): boolean {
  return PARTS.has(word);
}

/** A word before which nothing but a noun can stand. */
const BEFORE_NOUN =
  /^(?:the|a|an|of|in|on|at|by|to|with|from|for|all|both|each|every|its|their|no|\d.*|two|three|four|five|six|eight|ten|old|new|clean|dry)$/;

const ADVERBS = /(?:wards|ways|wise|times|plus|across|besides|thus|its|yes)$/;

function isPlural(word: string): boolean {
  return /[^s]s$/.test(word);
}

/** `raises`, `breaks`: ends in s, is no part of an engine, and stands where a noun would not. */
function thirdPerson(word: string, before: string | undefined, after: string | undefined): boolean {
  if (!/^[a-z]{2,}[^s]s$/.test(word) || PARTS.has(word) || ADVERBS.test(word)) return false;
  if (before !== undefined && BEFORE_NOUN.test(before)) return false;
  return after !== undefined;
}
