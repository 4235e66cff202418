/** How a demand reads that the specification no longer makes, or makes now. */
import type {Demand} from './demand.js';
import {valueSays} from './values.js';

/** "no longer asks for main-cap-bolts", "lock safety-wire is no longer asked for". */
export function goneWords(demand: Demand): string {
  const {about = ''} = demand;
  const words = WORDS[stemOf(demand)];
  return words === undefined ? `${asked(demand)} is no longer asked for` : `${words.gone} ${about}`.trim();
}

/** "asks for main-cap-bolts now", "lock safety-wire is asked for now". */
export function comeWords(demand: Demand): string {
  const {about = ''} = demand;
  const words = WORDS[stemOf(demand)];
  return words === undefined ? `${asked(demand)} is asked for now` : `now ${words.come} ${about}`.trim();
}

/** The aspect without the item that it names: `ask` of `ask main-caps`. */
export function stemOf({aspect, about}: Demand): string {
  return about === undefined ? aspect : aspect.slice(0, -about.length).trim();
}

function asked({aspect, value}: Demand): string {
  return value.type === 'there' ? aspect : `${aspect} ${valueSays(value)}`;
}

const WORDS: Readonly<Record<string, {readonly gone: string; readonly come: string}>> = {
  ask: {gone: 'no longer asks for', come: 'asks for'},
  blocks: {gone: 'no longer said to block', come: 'said to block'},
  closes: {gone: 'no longer said to close', come: 'said to close'},
  after: {gone: 'need no longer come after', come: 'must come after'},
  alter: {gone: 'no longer needs the alteration', come: 'needs the alteration'},
  hazard: {gone: 'no longer said to bring the hazard', come: 'said to bring the hazard'},
  'closed by': {gone: 'no longer said to be closed by', come: 'said to be closed by'},
  'disturbed by': {gone: 'no longer said to be disturbed by', come: 'said to be disturbed by'},
  holds: {gone: 'no longer said to hold', come: 'said to hold'},
  between: {gone: 'no longer said to lie at', come: 'said to lie at'},
  installed: {gone: 'need no longer be measured with this in:', come: 'to be measured with this in:'},
  tight: {gone: 'need no longer be measured with this tight:', come: 'to be measured with this tight:'},
  install: {gone: 'need no longer be installed', come: 'must be installed'},
  remove: {gone: 'need no longer come out again', come: 'must come out again'},
  renew: {gone: 'need no longer be renewed', come: 'must be renewed'},
  inspect: {gone: 'need no longer be inspected', come: 'must be inspected'},
  stripe: {gone: 'need no longer be striped', come: 'must be striped'},
  turn: {gone: 'need no longer be turned as it goes in', come: 'must be turned as it goes in'},
  rework: {
    gone: 'the steps need no longer say what to do about its reading',
    come: 'the steps must say what to do about its reading',
  },
};
