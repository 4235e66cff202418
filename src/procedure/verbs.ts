/** The verbs of a tag, the words that open a clause, and what each verb takes: the table of the design as data. */
import type {Dimension} from '../quantity/model.js';
import type {ItemKind} from '../spec/model.js';

/** In the order in which help and completion list them: about that of the work. */
export const VERBS = [
  'clean',
  'inspect',
  'measure',
  'lay',
  'lube',
  'seal',
  'alter',
  'renew',
  'install',
  'remove',
  'torque',
  'loosen',
  'lock',
  'stripe',
  'turn',
  'cure',
  'fill',
  'drain',
  'check',
  'record',
  'witness',
  'hazard',
  'step',
  'only',
  'if',
  'repeat',
  'waive',
] as const;

export type Verb = (typeof VERBS)[number];

export const CLAUSE_WORDS = [
  'with',
  'using',
  'to',
  'in',
  'within',
  'for',
  'turn',
  'by',
  'is',
  'because',
] as const;

/** How a reading stands to its limits, where steps are done only then. `out` is over or under. */
export const BRANCH_STATES = ['out', 'over', 'under', 'in'] as const;

export type BranchState = (typeof BRANCH_STATES)[number];

export type ClauseWord = (typeof CLAUSE_WORDS)[number];

/** What the targets of a verb name: items of these kinds, or what the one word says. */
export type TargetKinds = readonly ItemKind[] | 'new-id' | 'step-id' | 'option' | 'finding' | 'hazard-word';

/** What the value of a clause is, and so how its text is read. `says` is one line for help and hover. */
export type ClauseSpec =
  /** Ids apart by commas, each with free words after it: `safety-wire 0.041 in`. */
  | {readonly type: 'ids'; readonly kinds: readonly NamedKind[]; readonly says: string}
  /** One amount of the dimension `due`, or of any; or one of `words` instead; or, with `orText`, free text. */
  | {
      readonly type: 'amount';
      readonly due?: Dimension;
      readonly words?: readonly string[];
      readonly orText?: true;
      readonly says: string;
    }
  /** Amounts apart by commas; one without a unit takes its neighbour's, or else that of the `to` clause. */
  | {readonly type: 'amounts'; readonly due: Dimension; readonly says: string}
  /** One of `words`. */
  | {readonly type: 'word'; readonly words: readonly string[]; readonly says: string}
  /** Free text. */
  | {readonly type: 'text'; readonly says: string};

/** What an id of a clause may name; a lock may be named by its kind as well as by a consumable. */
export type NamedKind = ItemKind | 'lock-kind';

export interface VerbSpec {
  /** What a tag with this verb says the step does: one line of shop English, without capital or full stop. */
  readonly says: string;
  readonly targets: TargetKinds;
  /** The tag takes exactly one target. */
  readonly single?: true;
  readonly clauses: {readonly [word in ClauseWord]?: ClauseSpec};
  /** Clauses without which the tag says nothing. */
  readonly needs?: readonly ClauseWord[];
}

/** The kinds of item that the verb is said of; none where its targets are no items. */
export type TargetOf<V extends Verb> = Extract<(typeof SPECS)[V]['targets'][number], ItemKind>;

/** Everything that holds for the tags of a verb. */
export function tagSpec(verb: Verb): VerbSpec {
  return SPECS[verb];
}

/** What the ids may name that stand in the clause; nothing where it takes none. */
export function namedKinds(verb: Verb, word: ClauseWord): readonly NamedKind[] {
  const spec = tagSpec(verb).clauses[word];
  return spec?.type === 'ids' ? spec.kinds : [];
}

/** True for a word that is a verb as it stands. */
export function isVerb(word: string): word is Verb {
  return Object.hasOwn(SPECS, word);
}

/** Whether the order in which a tag names places says something: fasteners go up, and are slackened, one after another. */
export function saysOrder(verb: Verb): boolean {
  return verb === 'torque' || verb === 'loosen';
}

/** True for a word that opens a clause as it stands. */
export function isClauseWord(word: string): word is ClauseWord {
  return CLAUSES.has(word);
}

const CLAUSES: ReadonlySet<string> = new Set(CLAUSE_WORDS);

const tools = ids(['tool', 'consumable'], 'the tool it is done with');
const reason: ClauseSpec = {type: 'text', says: 'the reason, to the end of the tag'};
const person: ClauseSpec = {type: 'text', says: 'who does it, by role or name'};
const limits = {type: 'amount', says: 'the limits that the reading must lie within'} as const;
const defects: ClauseSpec = {type: 'text', says: 'what to look for'};

function ids(kinds: readonly NamedKind[], says: string): ClauseSpec {
  return {type: 'ids', kinds, says};
}

function materials(says: string): ClauseSpec {
  return ids(['consumable'], says);
}

const SPECS = {
  clean: {
    says: 'it is clean and dry now',
    targets: ['surface', 'part', 'joint'],
    clauses: {with: materials('the cleaner'), using: tools},
  },
  inspect: {
    says: 'it has been looked at for the defects named',
    targets: ['part', 'surface'],
    clauses: {with: materials('dye, marking blue or the like'), using: tools, for: defects},
  },
  measure: {
    says: 'the fit has been read with a gauge, against its limits',
    targets: ['fit'],
    clauses: {with: materials('the gauging strip'), using: tools, within: {...limits, due: 'length'}},
  },
  lay: {
    says: 'a gauging strip lies in the fit, dry',
    targets: ['fit'],
    clauses: {with: materials('the gauging strip'), using: tools},
  },
  lube: {
    says: 'it is coated with a lubricant',
    targets: ['surface', 'part', 'fastener'],
    clauses: {with: materials('the lubricant'), using: tools},
  },
  seal: {
    says: 'the joint is made up with a sealant or gasket',
    targets: ['joint'],
    clauses: {with: ids(['consumable', 'part'], 'the sealant or gasket'), using: tools},
  },
  alter: {
    says: 'the part is changed by an alteration of the specification',
    targets: ['part'],
    clauses: {
      with: materials('coolant, abrasive or the like'),
      using: tools,
      by: ids(['alteration'], 'the alteration'),
    },
  },
  renew: {
    says: 'a new one takes the place of the old one',
    targets: ['part', 'fastener'],
    clauses: {using: tools},
  },
  install: {
    says: 'the part is in place',
    targets: ['part'],
    clauses: {with: materials('what goes in with it'), using: tools},
  },
  remove: {says: 'the part is out again', targets: ['part'], clauses: {using: tools}},
  torque: {
    says: 'the fastener is tightened to a torque, or snug',
    targets: ['fastener'],
    clauses: {
      using: tools,
      to: {type: 'amount', due: 'torque', words: ['snug'], says: 'the torque, or snug'},
      in: {type: 'amounts', due: 'torque', says: 'the passes, rising, in the unit of the torque'},
      turn: {type: 'amount', due: 'angle', says: 'the angle to turn on after the torque'},
    },
  },
  loosen: {says: 'the fastener is slack again', targets: ['fastener'], clauses: {using: tools}},
  lock: {
    says: 'the fastener is secured against working loose',
    targets: ['fastener'],
    clauses: {
      with: ids(['consumable', 'lock-kind'], 'the lock, by its kind or as a consumable'),
      using: tools,
    },
  },
  stripe: {
    says: 'a stripe of paint across the tightened fastener shows whether it moves',
    targets: ['fastener'],
    clauses: {with: materials('the paint'), using: tools},
  },
  turn: {
    says: 'the part has been rotated',
    targets: ['part'],
    clauses: {using: tools, for: {type: 'text', says: 'what to feel or look for'}},
  },
  cure: {
    says: 'it is left alone until it has set',
    targets: ['joint', 'consumable'],
    clauses: {for: {type: 'amount', due: 'time', says: 'how long it is left alone'}},
  },
  fill: {
    says: 'the system holds its fluid, and its joints are under load',
    targets: ['system'],
    clauses: {
      with: materials('the fluid'),
      using: tools,
      to: {type: 'amount', due: 'volume', orText: true, says: 'the volume, or the level in words'},
    },
  },
  drain: {says: 'the system is empty again', targets: ['system'], clauses: {using: tools}},
  check: {
    says: 'a functional check has been made, against its limits',
    targets: ['check'],
    clauses: {using: tools, within: limits, for: defects, by: person},
  },
  record: {says: 'a stamped number is written down', targets: ['mark'], clauses: {}},
  witness: {says: 'a second person signs', targets: ['hold-point'], clauses: {by: person}},
  hazard: {says: 'what the caution warns of', targets: 'hazard-word', clauses: {}},
  step: {
    says: 'names the step, so that others can refer to it',
    targets: 'new-id',
    single: true,
    clauses: {},
  },
  only: {
    says: 'done only on an engine that has one of these options',
    targets: 'option',
    clauses: {},
  },
  if: {
    says: 'the sub-steps are followed only then',
    targets: ['fit', 'check'],
    single: true,
    clauses: {
      is: {type: 'word', words: BRANCH_STATES, says: 'out of its limits, over or under them, or in them'},
    },
    needs: ['is'],
  },
  repeat: {says: 'go back to that step', targets: 'step-id', single: true, clauses: {}},
  waive: {
    says: 'a deviation from the specification, with its reason',
    targets: 'finding',
    single: true,
    clauses: {by: person, because: reason},
  },
} as const satisfies {readonly [verb in Verb]: VerbSpec};
