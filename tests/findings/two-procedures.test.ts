/** What one procedure leaves and another does: all that is told of a book of two. Common practice, no source. */
import {expect, it} from 'vitest';
import {book} from '../help/example.js';
import {toldOf} from '../help/found.js';

const ENGINE = `
parts:
  block: {given: true}
  cover: {}
  wheel: {}
  plate: {}
fasteners:
  nut: {holds: [cover], torque: 10 lbf·ft, threads: dry, lock: {value: none, because: stretch}}
fits:
  play: {between: [block], limits: 0.001–0.003 in, using: [feeler-gauges], disturbed-by: [plate], when: {installed: [wheel]}}
systems:
  water: {joints: [], closed-by: [cover], with: [coolant]}
alterations:
  lap: {of: [wheel]}
  drill: {of: [wheel]}
`;

type TwoStory = readonly [title: string, first: string, second: string, lines: string];

it.each<TwoStory>([
  [
    'fills in the first, and tightens in the second',
    'alter: wheel by lap, drill; install: wheel; install: cover; fill: water with coolant',
    'torque: nut; install: plate; measure: play',
    `
left-filled-open water: water is filled while nut, which holds cover, is slack
  see engine.yaml:11: nut is specified here`,
  ],
  [
    'misses a reading in the first, and moves something in the second',
    'alter: wheel by lap; alter: wheel by drill; install: wheel; install: cover; torque: nut; fill: water with coolant',
    'install: plate',
    `
left-unmeasured play: play is never measured
  see engine.yaml:13: play is specified with limits`,
  ],
  [
    'makes one alteration of two',
    'alter: wheel by lap; install: wheel; install: cover; torque: nut; fill: water with coolant',
    'install: plate; measure: play',
    `
spec-silent drill: drill is an alteration of wheel that nothing asks for and no step makes; write alterations: [drill] beside wheel or a substitute of it, or take it out
  see engine.yaml:8: wheel is specified here`,
  ],
])('%s', (_, first, second, lines) => {
  const body = (tags: string) =>
    `\n${tags
      .split('; ')
      .map((tag, index) => `${index + 1}. Do it. \`${tag}\``)
      .join('\n')}\n`;
  const told = toldOf(book({engine: ENGINE, procedures: {'a.md': body(first), 'b.md': body(second)}}));
  expect(['', ...told].join('\n').trimEnd()).toBe(lines);
});
