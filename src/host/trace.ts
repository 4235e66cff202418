/**
 * Writes down what the reading of a book asked of the disk, and what the disk answered, so that a later run can tell
 * by the same questions whether anything is otherwise now.
 */
import {createHash} from 'node:crypto';
import type {Disk} from './disk.js';
import type {PictureBounds} from './pictures.js';
import type {Reader} from './reader.js';

type Question =
  | readonly ['text', path: string, shown: string, limit: number]
  | readonly ['truePath', path: string]
  | readonly ['exists', path: string]
  | readonly ['kind', path: string]
  | readonly ['names', folder: string]
  | readonly ['picture', url: string, bounds: PictureBounds];

/** Questions with the digests of their answers, each once, in the order in which they were put. */
export type Trace = readonly (readonly [question: Question, answer: string])[];

export interface Traced {
  readonly reader: Reader;
  /** What was asked so far; nothing where the disk answered the same question in two ways. */
  readonly trace: () => Trace | undefined;
}

/** A reader that writes down what is asked through it. */
export function traced(reader: Reader): Traced {
  const asked = new Map<string, readonly [Question, string]>();
  let steady = true;
  const note = <A>(question: Question, answer: A): A => {
    const key = JSON.stringify(question);
    const digest = digestOf(answer);
    const before = asked.get(key);
    // Somebody wrote meanwhile: the answer is of two states of the disk, and must not be kept for either.
    if (before !== undefined && before[1] !== digest) steady = false;
    asked.set(key, [question, digest]);
    return answer;
  };
  const {text, disk} = reader;
  const noting: Disk = {
    text: async (...of) => note(['text', ...of], await text(...of)),
    truePath: async (path) => note(['truePath', path], await disk.truePath(path)),
    exists: (path) => note(['exists', path], disk.exists(path)),
    kind: async (path) => note(['kind', path], await disk.kind(path)),
    names: async (folder) => note(['names', folder], await disk.names(folder)),
    picture: async (...of) => note(['picture', ...of], await disk.picture(...of)),
  };
  return {
    reader: {...reader, text: noting.text, disk: noting},
    trace: () => (steady ? [...asked.values()] : undefined),
  };
}

/** Whether the disk would give the same answers now. */
export async function stillHolds(trace: Trace, disk: Disk): Promise<boolean> {
  for (const [question, answer] of trace) {
    if (digestOf(await answerTo(question, disk)) !== answer) return false;
  }
  return true;
}

function answerTo(question: Question, disk: Disk): unknown {
  switch (question[0]) {
    case 'text':
      return disk.text(question[1], question[2], question[3]);
    case 'truePath':
      return disk.truePath(question[1]);
    case 'exists':
      return disk.exists(question[1]);
    case 'kind':
      return disk.kind(question[1]);
    case 'names':
      return disk.names(question[1]);
    case 'picture':
      return disk.picture(question[1], question[2]);
  }
}

/** Where the lines of a text start follows from the text. */
function digestOf(answer: unknown): string {
  const told = JSON.stringify(answer, (key, value: unknown) => (key === 'lines' ? undefined : value)) ?? '';
  return told.length <= SHORT ? told : createHash('sha256').update(told).digest('base64url');
}

/** Short answers stand for themselves; one that is as long as a digest must not read as one. */
const SHORT = 40;
