/**
 * Whether a number in the prose is about a value of the step's tags, and if so whether it agrees. In doubt it is
 * about something else: a drag, a depth, the size of a wrench.
 */
import {
  agreesWithEnd,
  amountsAgree,
  dimensionOf,
  highOf,
  limitsOf,
  lowOf,
  si,
  within,
} from '../quantity/convert.js';
import type {Amount} from '../quantity/model.js';
import type {Mention} from './prose-numbers.js';
import type {StatedValue, ValueKind} from './stated-values.js';

export interface Disagreement {
  readonly mention: Mention;
  readonly value: StatedValue;
}

/** The numbers that are about one of the values and agree with none of them. */
export function disagreements(
  mentions: readonly Mention[],
  values: readonly StatedValue[],
): readonly Disagreement[] {
  return mentions.flatMap((mention, index) => {
    const near = values.filter(
      (value) =>
        dimensionOf(value.amount) === dimensionOf(mention.amount) && ABOUT[value.kind](mention, value),
    );
    const [first] = near;
    const later = mentions.slice(index + 1);
    if (first === undefined || near.some((value) => fits(mention, value, mentions, later))) return [];
    return [{mention, value: first}];
  });
}

type About = (mention: Mention, value: StatedValue) => boolean;

/** Whether a mention is about a value of this kind at all. */
const ABOUT: {readonly [kind in ValueKind]: About} = {
  torque: ({clause, after}) =>
    !LIMIT_WORDS.test(clause) &&
    !/\b(?:drag|drags|prevailing|breakaway|resistance|still turn|to turn|turning)\b/.test(clause) &&
    !/\bwrench (?:reads?|covers?|goes|ranges?|is|from)\b/.test(clause) &&
    !/^\s*(?:torque )?(?:wrench|adapter|scale)\b/.test(after),
  angle: ({sentence, clause}) =>
    /\b(?:further|another|more|plus|through|turn|tighten|angle|past|then|on)\b/.test(sentence) &&
    !/\b(?:within|square|wheel|clock|[ab]?tdc|between|apart|journal|handle)\b|\bcrank/.test(clause),
  // Nothing else takes hours in a step that leaves a joint alone, save what is named here.
  time: ({clause, after}) =>
    !/\b(?:skins?|tack|tacky|flash(?:es)?|idle|run|soaks?|drains?|warm(?:ed)? (?:it|the|them|up|to)|within|mix(?:ed)?|pot|open time|touch|stir|stirred)\b/.test(
      clause,
    ) && !/^\s*(?:timer|clock)\b/.test(after),
  volume: ({after}) => !/^\s*(?:can|jug|bottle|measure|tin|drum)s?\b/.test(after),
  limits: (mention, {item, amount}) =>
    (mention.amount.form === 'range' ||
      (isLimit(mention.clause) && isNear(mention.amount, amount)) ||
      isHeating(mention, `${item.id} ${item.name}`)) &&
    !/^\s*(?:long|wide|deep|thick|high|down|from|below|above|away|apart|off|into|of (?:bead|strip|wire|thread))\b/.test(
      mention.after,
    ) &&
    !/^\s*(?:micrometer|mike|gauge|feeler|wrench|drive|socket|drill|reamer|wire|bolt|stud|shim|drill)s?\b/.test(
      mention.after,
    ) &&
    otherThings(mention.clause, `${item.id} ${item.name}`.toLowerCase()).length === 0,
};

/** `pump up to 0.5 bar` says where to begin, and no limit; nor is it one that a bolt is brought up to its torque. */
function isLimit(clause: string): boolean {
  return LIMIT_WORDS.test(clause) || (/\bup to\b/.test(clause) && !PUMPING.test(clause));
}

const PUMPING = /\b(?:pump|blow|bring|raise|charge|inflate|pressuri[sz]e|build)(?:ed|s)?\b/;

/** A check of a temperature is about what is brought to it. */
function isHeating({amount, clause}: Mention, itemWords: string): boolean {
  if (dimensionOf(amount) !== 'temperature') return false;
  const heats = /\b(?:heat|warm|bake)(?:ed|s)?\b/.exec(clause);
  if (heats === null || !/heat|warm|temperature|hot/i.test(itemWords)) return false;
  return / to\b/.test(clause.slice(heats.index));
}

/** What has a size of its own in a step that measures something else. */
const OTHER_THINGS =
  /\b(?:taper|out[- ]of[- ]round|ridges?|scratch(?:es)?|scores?|nicks?|steps?|divisions?|run-?out|warp|flat|chamfer|wear|pits?|(?:reject(?:ion)?|service|discard) limits?)\b/g;

function otherThings(clause: string, itemWords: string): string[] {
  return [...clause.matchAll(OTHER_THINGS)].map(([word]) => word).filter((word) => !itemWords.includes(word));
}

const LIMIT_WORDS = new RegExp(
  `\\b(?:${[
    '(?:no|not|nor) (?:over|under|above|below|more|less|past|[a-z]+er)',
    'at (?:the )?(?:very )?(?:most|least|outside|best|worst)',
    '(?!long|deep|thick)[a-z]+er than',
    '(?!long|deep|thick)[a-z]+est',
    'less than|more than|over|under|above|below|beyond|past',
    'exceeds?|exceeding|max(?:imum)?|min(?:imum)?|limits?',
    'the (?:least|most)|or (?:less|more)',
  ].join('|')})\\b`,
);

function fits(
  mention: Mention,
  value: StatedValue,
  all: readonly Mention[],
  later: readonly Mention[],
): boolean {
  const {amount} = mention;
  switch (value.kind) {
    case 'torque':
      if ([value.amount, ...value.passes].some((one) => amountsAgree(amount, one))) return true;
      return value.passes.length === 0 && leadsUp(mention, later);
    case 'volume':
      return wholeIsNamed(all, value.amount);
    case 'limits':
      if (amount.form !== 'single') return amountsAgree(amount, value.amount);
      // `no more than 0.0035 in` names one end of the limits.
      if (agreesWithEnd(amount.value, value.amount)) return true;
      return (
        isHeating(mention, `${value.item.id} ${value.item.name}`) &&
        within(limitsOf(amount), limitsOf(value.amount))
      );
    default:
      return amountsAgree(amount, value.amount);
  }
}

/** A lower torque with a higher one further on is a pass on the way; one in brackets only repeats. */
function leadsUp(mention: Mention, later: readonly Mention[]): boolean {
  return later.some(
    ({repeats, amount}) =>
      !repeats &&
      dimensionOf(amount) === dimensionOf(mention.amount) &&
      limitsOf(amount).high > limitsOf(mention.amount).high,
  );
}

/** `the first 2 qt …, 7 qt in all`: a part of the whole that another number names, or what is kept ready. */
function wholeIsNamed(mentions: readonly Mention[], whole: Amount): boolean {
  return mentions.some(({amount}) => amountsAgree(amount, whole));
}

/**
 * Twenty times a limit is a length of something else; ten times may be a slip of the decimal point. To a limit of
 * nought nothing has a ratio: the other says what is near, and where there is none everything is.
 */
function isNear(amount: Amount, limits: Amount): boolean {
  const {high} = limitsOf(amount);
  const sizes = [lowOf(limits), highOf(limits)]
    .map((end) => (end === undefined ? 0 : Math.abs(si(end))))
    .filter((size) => size > 0);
  return sizes.length === 0 || sizes.some((size) => high <= size * 20 && high >= size / 20);
}
