/** What the figures of fasteners have in common: the thread, what is on it, and the grade. */
import {clipped} from '../text/clipped.js';
import {nearest} from '../text/nearest.js';
import {type Option, type Read, text} from './figure-options.js';
import type {ThreadCondition, TighteningMethod} from './nut-factors.js';
import {readThread, type Thread} from './thread.js';
import {refused} from './worked.js';

export function threadOption(): Option<Thread> {
  return text('a designation: 7/16-20 UNF, M10×1.5', 'the thread', '7/16-20 UNF', (given) => {
    const read = readThread(given);
    return read.ok ? {ok: true, value: read.thread} : read;
  });
}

/** The text alone: a grade is read together with its thread. */
export function gradeOption(): Option<string> {
  return text('SAE 5, 8.8, or yield 36 ksi', 'grade of the bolt, or its strength', 'SAE 5', (given) =>
    given.trim() === ''
      ? refused('the grade is missing', 'write SAE 5, 8.8 or yield 36 ksi')
      : {ok: true, value: given},
  );
}

/** A condition of the threads, or the shop's own nut factor. */
export function frictionOption(): Option<number | ThreadCondition> {
  const takes = `one of ${CONDITIONS.join(', ')}, or a nut factor such as 0.18`;
  return text(takes, 'what is on the threads', 'oiled', readFriction);
}

export const METHODS: readonly TighteningMethod[] = [
  'feel',
  'torque wrench',
  'turn of nut',
  'indicating washer',
  'bolt stretch',
  'ultrasonic',
];

const CONDITIONS: readonly ThreadCondition[] = [
  'dry',
  'oiled',
  'zinc-plated',
  'cadmium-plated',
  'anti-seize',
  'not stated',
];

function readFriction(given: string): Read<number | ThreadCondition> {
  const plain = given.trim().toLowerCase();
  const condition = CONDITIONS.find((one) => one === plain);
  if (condition) return {ok: true, value: condition};
  const factor = plain.replace(/^k\s*=?\s*/, '');
  if (/^0?\.\d+$/.test(factor)) return {ok: true, value: Number(factor)};
  const meant = /^(?:oil|lub|greas)/.test(plain) ? 'oiled' : nearest(plain, CONDITIONS);
  const hint = meant
    ? `did you mean ${meant}?`
    : `write one of ${CONDITIONS.join(', ')}, or a nut factor such as 0.18`;
  return refused(`"${clipped(given.trim(), 30)}" is no condition of threads`, hint);
}
