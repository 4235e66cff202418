/** The spread of each fit over several builds of one engine. */
import {nameOfBuild} from './builds.js';
import type {BuildReport, ReadingLine, Spread} from './report.js';
import {statistics} from './statistics.js';

/** For each fit, place and unit that two builds or more have a reading of, in the order of the first of them. */
export function spreadOf(builds: readonly BuildReport[]): Spread[] {
  const groups = new Map<string, Group>();
  for (const build of builds) {
    for (const line of lastOfEach(build.readings)) {
      const key = JSON.stringify([build.engine, line.item, line.place, line.unit]);
      const group = groups.get(key) ?? {engine: build.engine, line, values: []};
      groups.set(key, group);
      const value = line.rounds.at(-1)?.number;
      if (value !== undefined) group.values.push({build: nameOfBuild(build), value});
    }
  }
  return [...groups.values()].filter(({values}) => values.length > 1).flatMap(ofGroup);
}

interface Group {
  readonly engine: string;
  readonly line: ReadingLine;
  readonly values: Spread['values'];
}

/** A fit that is read in several steps counts as it was read last. */
function lastOfEach(lines: readonly ReadingLine[]): ReadingLine[] {
  const last = new Map<string, ReadingLine>();
  for (const line of lines) {
    const key = JSON.stringify([line.item, line.place]);
    if (line.rounds.length > 0 || !last.has(key)) last.set(key, line);
  }
  return [...last.values()];
}

function ofGroup({engine, line, values}: Group): Spread[] {
  const found = statistics(values.map(({value}) => value));
  if (found === undefined) return [];
  const {item, name, place, unit, least, most, figures, doubt} = line;
  const {smallest, mean, largest, deviation} = found;
  return [
    {
      ...{engine, item, name, place, unit, values, mean, smallest, largest},
      ...(least !== undefined && {least}),
      ...(most !== undefined && {most}),
      ...(figures !== undefined && {figures}),
      ...(doubt !== undefined && {doubt}),
      ...(deviation !== undefined && {deviation}),
    },
  ];
}
