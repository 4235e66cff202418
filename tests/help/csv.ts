/** Reads comma-separated values back, by the grammar of RFC 4180, section 2. */

/** The fields of every line; throws where the text is not of that grammar. */
export function readCsv(text: string): string[][] {
  const lines: string[][] = [];
  let rest = text;
  while (rest !== '') {
    const fields: string[] = [];
    for (let more = true; more; ) {
      const found = /^(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/.exec(rest);
      if (found === null) throw new Error(`no field begins ${JSON.stringify(rest.slice(0, 40))}`);
      const [whole, quoted, plain = '', end] = found;
      fields.push(quoted?.replaceAll('""', '"') ?? plain);
      rest = rest.slice(whole.length);
      more = end === ',';
    }
    lines.push(fields);
  }
  return lines;
}
