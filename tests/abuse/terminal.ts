/** What no report may hold, since a terminal would act on it or its reader be misled. */

/** What a terminal acts on, and what turns text round; line ends and tabs are what reports are made of. */
export const ARMED =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be found.
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]|\r(?!\n)/;

/** In a report for people nothing unseen is left at all; the joiners belong to words. */
export const UNSEEN = /[\p{Bidi_Control}\p{Zl}\p{Zp}\u200B\u2060\uFEFF\u00AD\u{E0000}-\u{E007F}]/u;
