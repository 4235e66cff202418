/** The verbs of a tag and the words that open a clause. */

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
  'turn',
  'cure',
  'fill',
  'check',
  'record',
  'witness',
  'hazard',
  'step',
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

export type ClauseWord = (typeof CLAUSE_WORDS)[number];
