/** Every word that a build report says by itself, in English. Another language is another object of the same shape: `german.ts`. */
import {fill} from '../text/fill.js';

export type ReportWords = typeof ENGLISH;

/** What is said of one, and of any other number. */
export interface Counted {
  readonly one: string;
  readonly many: string;
}

/** `1 sheet`, `2 sheets`. */
export function counted(count: number, {one, many}: Counted): string {
  return fill(count === 1 ? one : many, {count});
}

export const ENGLISH = {
  /** BCP 47 tag of this object's language. */
  language: 'en',

  // Head, overview and every page.
  report: 'Build report',
  reports: 'Build reports',
  reportOf: 'Build report: {title}',
  reportsOf: 'Build reports: {builds}',
  page: 'Page {number} of {of}',
  until: 'Entries until',
  build: 'Build',
  wrong: 'Wrong',
  toLookAt: 'To look at',
  engineNumber: 'Engine number',
  job: 'Job',
  boxesAnswered: 'Boxes answered',
  engineOf: 'Engine {number}',
  jobOf: 'job {number}',
  engineNumberOf: 'engine number {number}',
  nothingWrong: 'nothing wrong',
  counts: {
    sheets: {one: '{count} sheet', many: '{count} sheets'},
    builds: {one: '{count} build', many: '{count} builds'},
    errors: {one: '{count} error', many: '{count} errors'},
    accepted: {one: '{count} accepted as it is', many: '{count} accepted as they are'},
    warnings: {one: '{count} warning', many: '{count} warnings'},
  },
  key: 'In the drawings a disc is within its limits, an open diamond near one, a cross outside; small marks are earlier readings. The grey band lies between the limits. In its dark edges a reading is near a limit: by less than the gauge may be out or, where that is not known, in the last tenth of the tolerance. Readings are what was entered: a drawing is no better than the gauge.',
  table: 'Table: {heads}',

  // One build.
  size: '{judged} of {sheets} judged; {answered} boxes answered',
  answered: '{answered} of {asked}',
  from: '{size}. From {files}.',
  nothing: 'Nothing is out, missing or otherwise to be remarked on.',
  weighs: {error: 'Wrong', warning: 'Look at', information: 'To know'},
  severities: {error: 'error', warning: 'warning', information: 'information'},
  headings: {
    out: 'Out of limits, or not readable',
    accepted: 'Out of limits, and accepted',
    near: 'Near a limit',
    missing: 'Missing',
    toDo: 'Still to do',
    signatures: 'Signatures',
    history: 'How it came about',
    sheets: 'Sheets and seals',
  },
  stepOf: '{sheet}, step {step}',
  atMost: 'at most {most}',
  atLeast: 'at least {least}',
  andMore: '{list} and {count} more',

  readings: 'Readings',
  place: 'Place',
  reading: 'Reading',
  oneReading: 'reading',
  verdict: 'Verdict',
  by: 'By',
  before: 'Before',
  overwritten: '{value} ({by}, written over)',
  states: {
    out: 'out',
    unreadable: 'no reading',
    missing: 'missing',
    open: 'still open',
    near: 'near a limit',
    in: 'in',
    unjudged: 'no limits',
    'not-called-for': 'not called for',
  },
  outAccepted: 'out, accepted as it is',
  drawing: 'Drawing of the readings of {name}, which the table says in words',

  worked: 'Worked out from sizes',
  what: 'What',
  worksOutAt: 'Works out at',
  limits: 'Limits',
  workedFrom: 'From',
  lessOf: '{bores} less {journals}',
  differenceOf: 'largest less smallest of {sizes}',

  witnessed: 'Who witnessed what',
  role: 'Role',
  initials: 'Initials',
  when: 'When (UTC)',
  where: 'Where',

  waivers: 'Waivers',
  waived: 'What is waived',
  why: 'Why',
  approvedBy: 'Approved by',

  sheet: 'Sheet',
  revision: 'Revision',
  fingerprint: 'Fingerprint',
  state: 'State',
  boxes: 'Boxes',
  seals: 'Seals',
  entries: 'Entries (UTC)',
  sheetStates: {
    judged: 'judged',
    'book-changed': 'book changed since',
    unknown: 'not in the book',
    missing: 'no record',
    'not-begun': 'not begun',
  },
  broken: 'broken',
  follow: 'follow',
  span: '{from} to {to}',
  sealsBroken: 'Seals: broken in {sheets}.',
  sealsFollow: 'Seals: each follows from the one before it.',
  /** Line by line. */
  sealsSay: [
    'A seal is made over each entry and the seal before it. A broken one proves that something was changed after it was',
    'written. That all follow proves only that nobody slipped: whoever makes every later seal anew goes unnoticed, and no',
    'seal says who held the tablet. Keep exported files where they cannot be changed.',
  ],

  // Several builds.
  spread: 'Spread over the builds',
  spreadDrawing:
    'Drawing of the readings of {name} in every build, with a stroke at the mean of each place; the table says the same in figures',
  spreadText: 'n {count}, least {least}, mean {mean}, most {most}',
  spreadDeviation: 'standard deviation {deviation}',
  spreadLimits: 'limits {limits}',
  least: 'Least',
  mean: 'Mean',
  most: 'Most',
  deviation: 'Deviation',
  builds: 'Builds',

  // What is remarked.
  remarks: {
    beyond: 'limits {limits}',
    over: 'over its limits, {limits}',
    under: 'under its limits, {limits}',
    accepted: '{read}; {beyond}; accepted by {by}, {at}, because “{because}”',
    unreadable: '"{value}" is no number ({by}, {at}); read it again, or write the number alone',
    belowNought: '{value} is less than nought, which it cannot be ({by}, {at}); read it again',
    nearTenth:
      '{read} is in the last tenth of {limits}, and how far its gauge may be out is not known; read it again with a gauge that is known',
    nearDoubt:
      '{read} is within {limits} by less than the gauge may be out, ±{doubt}, so it proves nothing; read it with a finer gauge',
    reworked: 'was {before}, and {now} when read again',
    writtenOver: '{old}, which is out of its limits, was written over with {fresh}',
    gaugeDue: '{name} was read on {days} with {tool}, whose calibration ran out on {due}',
    gaugeDueUnless:
      '{name} was read on {days} with {tool}, whose calibration ran out on {due}, unless {others} read it: the record does not say',
    worksOut: 'works out at {span} ({from}); limits {limits}',
    worksOutRead: 'works out at {span} ({from}); limits {limits}, and {read} was read',
    noTime: '{label}: "{value}" is no date and time ({by}), such as 2026-03-01 17:05',
    cureShort:
      '{label}: {to} by the clock on the wall ({by}) is {left} after it started ({from}); at least {least} is asked for',
    cureBefore:
      '{label}: {to} by the clock on the wall ({by}) is which is before it started ({from}); at least {least} is asked for',
    markDiffers: '{label}: "{value}" was written down ({by}), and the job says "{expected}"',
    notAnswered: 'not answered: {labels}',
    passedOver: 'passed over, {says}',
    open: {
      one: '1 box is still to be answered',
      many: '{count} boxes are still to be answered',
    },
    openFrom: '{open} from step {step} on',
    sheetMissing: 'there is no record of this sheet',
    notBegun: 'not begun',
    sameHand: '{by} signed what {by} did {steps}; a hold point takes a second person',
    atSteps: {one: 'at step {steps}', many: 'at steps {steps}'},
    signedEarly: 'signed by {by} on {at} before everything was there {steps}',
    signedAhead: 'signed by {by} on {at} before everything was there {steps}, because “{reason}”',
    noInitials: '“{by}” stands where initials must (one to five letters, no blanks) {steps}',
    signedOver: 'signed by {by} on {at} over what is out of its limits: {readings}',
    readingAt: 'step {step} ({label})',
    readingAtPlace: 'step {step}, {place} ({label})',
    sealBroken:
      'the seal of entry {number} ({box}, {at}) does not fit: this entry, or something before it, was changed, added or taken out after it was written',
    clockBack:
      'the clock goes back {times}: entry {number} is of {at}, the one before it of {before}; times of this sheet are not to be relied on',
    times: {one: 'once', many: '{count} times'},
    outOfOrder: {
      one: 'entered out of the order of the sheet: step {steps}',
      many: 'entered out of the order of the sheet: steps {steps}',
    },
    bookChanged:
      'the book has changed since this sheet was made (sheet {then}, book now {now}); judged no further; take the book back to what it was, or say --even-if-changed',
    bookChangedAnyway:
      'the book has changed since this sheet was made (sheet {then}, book now {now}); judged by the book as it is now, as you asked',
    recordsDiffer:
      'two records of this sheet go different ways: {judged} and {other}; the fuller one, {judged}, is judged, and what only the other one says is not',
    sheetUnknown: 'the book has no procedure of this name, so its record is not judged',
    boxUnknown: 'the sheet has no box {boxes}; the record was edited, or is of another version of wmark',
  },
};
