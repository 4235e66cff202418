/** Comma-separated values by RFC 4180, safe to open in a spreadsheet: the one writer for lists and readings. */

export type CsvField = string | number | undefined;

/** Lines end in CR LF. Texts are quoted; numbers are left alone (−0.001 is no formula), and what is undefined is empty. */
export function csvText(lines: readonly (readonly CsvField[])[]): string {
  return lines.map((fields) => `${fields.map(field).join(',')}\r\n`).join('');
}

function field(value: CsvField): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return String(value);
  return `"${noFormula(value).replaceAll('"', '""')}"`;
}

/**
 * What a spreadsheet would take for a formula gets an apostrophe before it, which shows it as text (the cure of the
 * OWASP page on CSV injection; from memory); so does what follows a semicolon, where some spreadsheets part cells.
 */
function noFormula(text: string): string {
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return safe.replace(AFTER_SEMICOLON, ";$1'");
}

/** Also behind blanks and controls, which some spreadsheets drop, and in the wide forms of East Asian keyboards. */
const FORMULA = /^[\s\p{Cc}]*[=+\-@＝＋－＠\t\r\n]/u;
const AFTER_SEMICOLON = /;([\s\p{Cc}]*)(?=[=+\-@＝＋－＠])/gu;
