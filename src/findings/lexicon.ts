/**
 * The words in which shop prose commands an action, and the verb of a tag that each stands for. Common practice, no
 * source; held to precision and recall by a corpus in the tests.
 */
import type {Verb} from '../procedure/verbs.js';

/** One word that can open a command. */
export interface Entry {
  /** The word is also a noun or an adjective: `oil`, `clean`, `lock`. */
  readonly noun: boolean;
  /** The first that fits what follows the word says which verb it commands; nothing fits: no command of ours. */
  readonly rules: readonly Rule[];
}

export interface Rule {
  readonly verb: Verb | 'none';
  /** What must stand in the rest of the clause, which is in lower case. */
  readonly where?: RegExp;
}

/** The entry of a word, in lower case. */
export function entryOf(word: string): Entry | undefined {
  return LEXICON.get(word);
}

/** Verbs whose tags make good a command in prose, apart from the verb itself. */
export function fitting(verb: Verb, clause: string): readonly Verb[] {
  const more = FITS[verb] ?? [];
  const bySubject = SUBJECT_FITS.filter(([of, where]) => of === verb && where.test(clause));
  return [verb, ...more, ...bySubject.flatMap(([, , verbs]) => verbs)];
}

/**
 * Prose is looser than tags: a reading is written down by the tag that takes it, and `put the gasket on` is said of
 * a joint as well as of a part.
 */
const FITS: {readonly [verb in Verb]?: readonly Verb[]} = {
  inspect: ['check', 'measure'],
  measure: ['check', 'record'],
  check: ['inspect', 'measure', 'witness', 'record'],
  record: ['measure', 'check', 'witness'],
  seal: ['install'],
  install: ['renew'],
  renew: ['install'],
  remove: ['renew'],
  turn: ['check', 'inspect'],
  witness: ['check'],
  loosen: ['remove'],
};

const FASTENERS = 'bolts?|nuts?|(?:cap|set)?screws?|studs?|fasteners?';
const LUBES = 'oil|lube|lubricant|grease|moly|paste|jelly|anti-?seize';
const SEALERS =
  'sealants?|sealers?|sealing|silicone|epoxy|varnish|jointing|liquid gasket|gasket compound|packing|bead';
const LOCKERS = 'threadlocker|thread[- ]lock(?:er|ing)?|locking compound';
const PINS = '(?:cotter|split) pins?|cotters?|(?:lock|locking|safety) wire|tab washers?|locking tabs?';
/** What is used or kept in the shop and is no part of an engine. */
const SHOP_THINGS =
  'hands?|bench(?:es)?|rags?|floor|spills?|tools?|wrench(?:es)?|sockets?|tray|gloves|glasses|feelers?|vice|shop';
const SHEETS = 'sheets?|cards?|forms?|pages?|sections?|notes?|steps?|cautions?|books?|manual';
const TORQUE =
  '\\d[\\d.,/]*\\s*(?:lbf?|lbs?|ft|foot|in|n|nm|kgf)\\b[-·.⋅ ]*(?:lb|ft|in|m|pound)?|figure|torque|snug';
const TIME = '\\d+\\s*(?:h|hours?|hrs?|min|minutes?|days?)\\b|overnight|\\bday\\b';
const VOLUMES = '\\d+ (?:us )?(?:qt|quarts?|pt|pints?|gal|gallons?|l|litres?|liters?)';
const OUT = /\b(?:out|off|away|old|apart|clear)\b/;
const INTO = /\b(?:in|into|on|onto|home|over|down|through|back|up)\b/;

const PEOPLE = 'lead|mechanic|fitter|foreman|inspector|witness|chief|second person|supervisor';

const SUBJECT_FITS: readonly (readonly [Verb, RegExp, readonly Verb[]])[] = [
  ['install', words(FASTENERS), ['torque']],
  ['install', words(`${PINS}|pins?|wire|${LOCKERS}`), ['lock']],
  ['install', words(`gaskets?|seals?|o-rings?|${SEALERS}`), ['seal']],
  ['install', words('strips?'), ['lay']],
  ['renew', words(`${PINS}|pins?|wire`), ['lock']],
  ['renew', words('gaskets?|seals?|o-rings?'), ['seal']],
  ['remove', words('strips?|gaskets?'), ['clean', 'measure']],
  ['remove', words(FASTENERS), ['loosen']],
  // A ring is pushed down an empty bore to read its gap, and comes out again.
  ['install', /^(?:[a-z]+ ){0,3}rings?\b.*\b(?:bores?|cylinders?|liners?|sleeves?|barrels?)\b/, ['measure']],
  [
    'turn',
    new RegExp(`^(?:it|them|each|(?:[a-z]+ ){0,3}(?:${FASTENERS}))\\b.*clockwise\\b`),
    ['torque', 'loosen'],
  ],
  ['torque', /clockwise\b/, ['loosen']],
  ['check', words('torque|tight'), ['torque']],
  ['check', words('turns?|spins?|free|freely'), ['turn']],
  ['clean', words('strips?'), ['remove']],
  ['clean', words('spots?|blue|linings?'), ['alter']],
  ['lube', words('joint(?:ing)? (?:paste|compound)'), ['seal']],
  // The first part of such a noun is crossed out before clauses are read, lest it be taken for a command.
  ['torque', words('x{4}[ -]?nuts?'), ['lock']],
  ['cure', words('stand'), ['check']],
  ['fill', words('saddles?|linings?|bearings?|metal'), ['install']],
];

function words(alternatives: string): RegExp {
  return new RegExp(`\\b(?:${alternatives})\\b`);
}

/** The bench is cleaned, not a thing cleaned on the bench or with a rag. */
const untracked: Rule = {
  verb: 'none',
  where: new RegExp(`^(?!(?:with|on|in|by|using) )(?:[a-z]+ ){0,2}(?:${SHOP_THINGS})\\b`),
};
const onSheet: Rule = {verb: 'none', where: new RegExp(`^(?:[a-z]+ ){0,2}(?:${SHEETS})\\b`)};
const withLocker: Rule = {verb: 'lock', where: words(LOCKERS)};
const withSealer: Rule = {verb: 'seal', where: words(SEALERS)};
const withLube: Rule = {verb: 'lube', where: words(LUBES)};
const spreading = [withLocker, withSealer, withLube];
const withPin: Rule = {verb: 'lock', where: words(PINS)};
const withStripe: Rule = {
  verb: 'stripe',
  where: words('stripes?|witness marks?|paint (?:pen|marker|line|mark)|(?:line|dash|dab|spot) of paint'),
};
const withStrip: Rule = {verb: 'lay', where: words('strips?')};
const withGasket: Rule = {verb: 'seal', where: words('gaskets?')};
const out: Rule = {verb: 'remove', where: OUT};
const into: Rule = {verb: 'install', where: INTO};
const curing: Rule = {verb: 'cure', where: words('cure|set|harden|stand')};
const notCuring: Rule = {
  verb: 'none',
  where: words('engine|motor|idle|idling|run|cool|soak|drain|flash|tacky|warm up|slack'),
};
const fasteners: Rule = {verb: 'torque', where: words(FASTENERS)};
const toTorque: Rule = {verb: 'torque', where: new RegExp(TORQUE)};
const written: Rule = {
  verb: 'record',
  where: words('numbers?|readings?|sizes?|values?|figures?|grinds?|thickness|serial|measurements?|down'),
};
const outNew: Rule = {verb: 'renew', where: /^out .*\bnew\b/};
const anyThat: Rule = {verb: 'none', where: /^any\b/};
const signing: Rule = {
  verb: 'witness',
  where: words('signs?|signed|signature|witness|countersigns?|initials?'),
};

/** `plain` words are verbs only; `mixed` ones are nouns or adjectives too. */
function plain(heads: string, ...rules: readonly (Rule | Verb)[]): [string, Entry][] {
  return entries(heads, false, rules);
}

function mixed(heads: string, ...rules: readonly (Rule | Verb)[]): [string, Entry][] {
  return entries(heads, true, rules);
}

function entries(heads: string, noun: boolean, rules: readonly (Rule | Verb)[]): [string, Entry][] {
  const entry = {noun, rules: rules.map((rule) => (typeof rule === 'string' ? {verb: rule} : rule))};
  return heads.split(' ').map((head) => [head, entry]);
}

const LEXICON: ReadonlyMap<string, Entry> = new Map([
  ...mixed('clean dry wash flush rinse', untracked, {verb: 'none', where: /^up\b/}, 'clean'),
  ...plain('degrease scrub scour swab scrape', untracked, 'clean'),
  ...plain(
    'wipe',
    {verb: 'none', where: words(`${SHOP_THINGS}|up|excess|surplus|squeezed`)},
    {verb: 'lube', where: new RegExp(`^(?:[a-z]+ ){0,4}(?:${LUBES}) (?:on|onto|over|into)\\b`)},
    'clean',
  ),
  ...mixed('blow', {verb: 'clean', where: words('out|through|off|dry|clean|down')}),
  ...mixed('brush', ...spreading, {verb: 'clean', where: words('clean|off|out|solvent')}),

  ...plain('inspect examine', untracked, 'inspect'),
  ...mixed('look', {verb: 'inspect', where: /^(?:over|at|for|closely|into|through|along)\b/}),
  ...plain('sight', 'inspect'),
  ...mixed('measure gauge mike mic', untracked, 'measure'),
  ...plain('compare', {verb: 'measure', where: words('strips?|scale|gauge')}),
  ...mixed('read', onSheet, {
    verb: 'measure',
    where: words(
      'strips?|gauge|dial|play|clearance|gap|backlash|width|micrometer|scale|run-?out|off|pressure|temperature',
    ),
  }),

  ...mixed('oil lube grease', 'lube'),
  ...plain('lubricate', 'lube'),
  ...mixed('coat', ...spreading, 'lube'),
  ...plain('apply smear dab wet', withStripe, ...spreading),
  ...mixed('paint', withStripe, ...spreading),
  ...mixed('flood pack dip', ...spreading),
  ...plain('spread', ...spreading, {verb: 'lock', where: words('legs?|pins?')}),
  ...mixed('seal', untracked, 'seal'),
  ...mixed('squeeze roll', withSealer),
  ...plain('work', {verb: 'lube', where: new RegExp(`\\b(?:${LUBES}) (?:in|into)\\b`)}),
  ...mixed('stick', withGasket),
  ...plain('lay', outNew, withStrip, withGasket, withSealer),

  ...mixed('grind file hone ream chamfer dress drill machine lap bore', onSheet, 'alter'),
  ...plain('deburr', 'alter'),
  ...plain('renew replace', anyThat, untracked, 'renew'),
  ...plain('unwrap unpack', 'renew'),

  ...plain('install reinstall refit insert', withPin, 'install'),
  ...plain('assemble', 'install'),
  ...mixed('mount', onSheet, 'install'),
  ...mixed('fit', withPin, 'install'),
  ...mixed('slide slip drop drive push press tap', out, into),
  ...mixed('lower', {verb: 'none', where: words('hoist|stand|jack')}, 'install'),
  ...mixed('seat', 'install'),
  ...mixed('hang', {verb: 'install', where: INTO}),
  ...mixed('thread feed', {verb: 'lock', where: words('wire')}, into),
  ...mixed('screw', {verb: 'torque', where: words('finger-?tight|snug|fingers?')}, into),
  ...mixed(
    'set',
    toTorque,
    {verb: 'none', where: words('lines?|marks?|pointer|dial|gauge|timing|gap|lash|points|clearance|aside')},
    {verb: 'install', where: /\b(?:down|on|into|onto|over|in place|in its|in their)\b/},
  ),
  ...plain('offer', {verb: 'install', where: /\bup\b/}),
  ...mixed(
    'put place',
    {verb: 'none', where: words(`${SHOP_THINGS}|stand|aside|away|shelf`)},
    withStripe,
    withStrip,
    withLocker,
    withPin,
    withGasket,
    withSealer,
    withLube,
    into,
  ),

  ...plain(
    'remove withdraw detach disconnect unbolt unscrew extract',
    {verb: 'clean', where: words('traces?|dirt|swarf|rust|carbon|residue|deposits?|old sealant')},
    'remove',
  ),
  ...mixed('lift', out, into),
  ...plain('take', {verb: 'measure', where: words('readings?')}, {verb: 'none', where: /^care\b/}, out),
  ...mixed('pull', {verb: 'remove', where: /\b(?:out|off|old)\b/}, toTorque, {
    verb: 'torque',
    where: /\bdown\b/,
  }),
  ...mixed('draw', withStripe, withSealer, {verb: 'torque', where: /\bdown\b/}, out, into),
  ...plain('pry prise knock drift lever', out, into),
  ...mixed('strip', out),

  ...plain('tighten retighten re-tighten re-torque retorque', 'torque'),
  ...mixed('torque snug', 'torque'),
  ...plain('nip', {verb: 'torque', where: /\bup\b/}),
  ...plain('do', {verb: 'torque', where: /\bup\b/}),
  ...plain(
    'bring',
    {verb: 'none', where: words('engine|heat|lamp|light|temperature')},
    {verb: 'torque', where: new RegExp(`\\b(?:up|down|to)\\b.*(?:${TORQUE}|${FASTENERS})`)},
    {verb: 'torque', where: new RegExp(`(?:${FASTENERS}|caps?|all|them|each)\\b.*\\b(?:up|down)\\b`)},
    toTorque,
  ),
  ...mixed(
    'run',
    ...spreading,
    {verb: 'torque', where: new RegExp(`(?:${FASTENERS}|them|finger).*\\b(?:down|in|up|on)\\b`)},
    {verb: 'torque', where: words('finger-?tight|fingers?')},
  ),

  ...plain('loosen slacken undo', 'loosen'),
  ...mixed('slack back', {verb: 'loosen', where: /\boff\b/}),
  ...mixed('ease release', {verb: 'loosen', where: words(FASTENERS)}),

  ...mixed(
    'turn',
    {verb: 'none', where: new RegExp(`^(?:to|by)\\b|\\b(?:${SHEETS}|table|lamp|heater)\\b`)},
    {verb: 'lock', where: words('tabs?')},
    fasteners,
    {verb: 'torque', where: /^(?:them|each)\b.*\b(?:on|through|further|another|more)\b/},
    'turn',
  ),
  ...plain('rotate', 'turn'),
  ...mixed('swing', {verb: 'turn', where: words('turns?|crank|crankshaft|shaft|round')}),
  ...mixed('spin', 'turn'),
  ...mixed('bar', {verb: 'turn', where: words('round|over|around')}),

  ...mixed('lock wire stake', 'lock'),
  ...plain('safety-wire lockwire wire-lock peen', 'lock'),
  ...mixed('bend', {verb: 'lock', where: words('tabs?|tangs?|legs?|ends?|pins?|washers?')}),
  ...mixed('twist', {verb: 'lock', where: words('wires?|ends?|it')}),
  ...plain('secure', {verb: 'lock', where: words(`${PINS}|pins?|wire|tabs?|locks?`)}),

  ...mixed('stripe', 'stripe'),

  ...mixed('cure', 'cure'),
  ...mixed('leave', notCuring, curing, {verb: 'cure', where: new RegExp(`${TIME}|\\balone\\b`)}),
  ...plain('let allow', notCuring, curing),
  ...plain('give', {verb: 'cure', where: new RegExp(TIME)}),

  ...mixed(
    'fill charge',
    {verb: 'none', where: new RegExp(`^out\\b|\\b(?:${SHEETS})\\b`)},
    {verb: 'seal', where: words(`pits?|grooves?|gaps?|seams?|${SEALERS}`)},
    'fill',
  ),
  ...mixed('drain', {
    verb: 'drain',
    where: words(`${LUBES}|coolant|water|fluid|antifreeze|systems?|sump|crankcase|gearbox|radiator|jackets?`),
  }),
  ...plain('pour', 'fill'),
  ...mixed('top', {verb: 'fill', where: /\bup\b/}),
  ...plain('add', {verb: 'fill', where: words(`${LUBES}|coolant|water|fluid|antifreeze|${VOLUMES}`)}),

  ...mixed('check', untracked, 'check'),
  ...plain('recheck re-check double-check verify confirm', 'check'),
  ...plain('feel', {verb: 'check', where: /^for\b/}),

  ...mixed('record log stamp', 'record'),
  ...plain('write enter', written),
  ...mixed('copy', {
    verb: 'record',
    where: words('numbers?|marks?|sizes?|undersizes?|readings?|figures?|serial'),
  }),
  ...mixed('note', {verb: 'none', where: /^that\b/}, written),

  ...plain('sign countersign', {verb: 'none', where: /^of\b/}, 'witness'),
  ...mixed('initial', 'witness'),
  ...plain('have get', signing),
  ...plain('call', signing, {verb: 'witness', where: words(PEOPLE)}),
  ...plain('ask', signing, {
    verb: 'witness',
    where: new RegExp(`(?:${PEOPLE})\\b.* (?:look|go|check|see|read|try)\\b`),
  }),
]);
