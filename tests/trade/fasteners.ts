/** Threads and grades for tests by their names; each stops the test with the reason where there is none. */
import {type Grade, gradeOf} from '../../src/trade/grade.js';
import {readThread, type Thread} from '../../src/trade/thread.js';

export function thread(text: string): Thread {
  const reading = readThread(text);
  if (!reading.ok) throw new Error(`${text}: ${reading.says}`);
  return reading.thread;
}

export function grade(text: string, of: Thread): Grade {
  const reading = gradeOf(text, of);
  if (!reading.ok) throw new Error(`${text}: ${reading.says}`);
  return reading.grade;
}
