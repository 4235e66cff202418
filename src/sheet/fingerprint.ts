/**
 * The fingerprint that ties a printed sheet to the texts it was made from: SHA-256 over the texts, blind to what an
 * editor or a version-control system changes by itself.
 */
import type {Book} from '../build/book.js';

/**
 * 64 hexadecimal digits over the procedures in build order and the YAML files, that of the job among them, whatever
 * their names. It holds for the texts alone: moving the book to another folder leaves it as it is.
 */
export async function bookFingerprint({
  spec,
  procedures,
  job,
}: Pick<Book, 'spec' | 'procedures' | 'job'>): Promise<string> {
  const ordered = await Promise.all(procedures.map(({source}) => digest(normalised(source.text))));
  const files = await Promise.all([...spec.files.values()].map(({text}) => digest(normalised(text))));
  // The order in which YAML files were read says nothing; the order of the build does.
  const lines = [...ordered, '', ...files.sort()];
  return digest((job ? [...lines, '', await digest(normalised(job.source.text))] : lines).join('\n'));
}

/** The text with LF line ends, in Unicode NFC, without byte-order mark, trailing blanks or blank lines at its end. */
export function normalised(text: string): string {
  const lines = text
    .replace(/^\uFEFF/, '')
    .normalize('NFC')
    .split(/\r\n|\r|\n/);
  const trimmed = lines.map((line) => line.trimEnd());
  while (trimmed.at(-1) === '') trimmed.pop();
  return `${trimmed.join('\n')}\n`;
}

/** SHA-256 of a text in UTF-8, as 64 hexadecimal digits (FIPS 180-4). */
export async function digest(text: string): Promise<string> {
  const bytes = await globalThis.crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
