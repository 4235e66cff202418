/** What an edit left alone: how much of a text is the same as before at its head and at its tail. */

export interface CommonEnds {
  /** In UTF-16 units; the two never overlap, in neither text. */
  readonly head: number;
  readonly tail: number;
}

export function commonEnds(before: string, now: string): CommonEnds {
  const most = Math.min(before.length, now.length);
  let head = 0;
  while (head < most && before.charCodeAt(head) === now.charCodeAt(head)) head++;
  const [last, end] = [before.length - 1, now.length - 1];
  let tail = 0;
  while (tail < most - head && before.charCodeAt(last - tail) === now.charCodeAt(end - tail)) tail++;
  return {head, tail};
}
