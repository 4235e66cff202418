/** What several findings work out from the same step, procedure or fastener: each once a check, whoever asks first. */

import type {Part, StepRef} from '../build/program.js';
import type {Specification} from '../spec/model.js';
import {type GradeReading, gradeOf} from '../trade/grade.js';
import {readThread, type Thread, type ThreadReading} from '../trade/thread.js';
import {type Command, commandsIn} from './commands.js';
import {type Meeting, meetings} from './hazards.js';
import {type Mention, numbersIn} from './prose-numbers.js';
import {type StatedValue, valuesOf} from './stated-values.js';
import {type Prose, proseOf} from './step-prose.js';

export interface Workings {
  readonly prose: (step: StepRef) => Prose;
  readonly values: (step: StepRef) => readonly StatedValue[];
  readonly meetings: (part: Part) => readonly Meeting[];
  /** Of the words of a step. */
  readonly commands: (text: string) => readonly Command[];
  readonly numbers: (text: string) => readonly Mention[];
  /** Of the words that a specification has for a thread, or for the grade of a bolt of that thread. */
  readonly thread: (text: string) => ThreadReading;
  readonly grade: (text: string, thread: Thread) => GradeReading;
}

/** What is read from words alone may be remembered for longer than one check. */
export type Words = Pick<Workings, 'commands' | 'numbers'>;

export function workings(
  spec: Specification,
  words: Words = {commands: commandsIn, numbers: numbersIn},
): Workings {
  const grades = once((thread: Thread) => once((text: string) => gradeOf(text, thread)));
  return {
    prose: once(proseOf),
    values: once(({step}: StepRef) => valuesOf(step, spec)),
    meetings: once((part: Part) => meetings(part, spec)),
    commands: words.commands,
    numbers: words.numbers,
    thread: once(readThread),
    grade: (text, thread) => grades(thread)(text),
  };
}

function once<K, V extends object>(make: (key: K) => V): (key: K) => V {
  const made = new Map<K, V>();
  return (key) => {
    const before = made.get(key);
    if (before !== undefined) return before;
    const now = make(key);
    made.set(key, now);
    return now;
  };
}
