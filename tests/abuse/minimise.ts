/** Makes a text that shows a fault as short as it can be while it still shows it. */

/** Takes ever smaller pieces out, as in delta debugging (A. Zeller, R. Hildebrandt, IEEE TSE 28 (2002) 183). */
export async function minimised(
  text: string,
  shows: (text: string) => Promise<boolean>,
  most = 2_000,
): Promise<string> {
  let now = text;
  let tries = 0;
  for (let size = Math.ceil(now.length / 2); size >= 1; size = size === 1 ? 0 : Math.ceil(size / 2)) {
    for (let at = 0; at < now.length && tries < most; ) {
      const shorter = now.slice(0, at) + now.slice(at + size);
      tries++;
      if (await shows(shorter)) now = shorter;
      else at += size;
    }
  }
  return now;
}
