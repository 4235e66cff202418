/** What may come next in engine.yaml, shop.yaml or a job: names of items, sources, options and findings. */
import {FINDINGS} from '../findings/registry.js';
import type {Specification} from '../spec/model.js';
import {KIND_SAYS} from '../spec/sections.js';
import {runBefore} from '../text/runs.js';
import type {Typing} from './completion-typing.js';
import {NAMING_FIELDS} from './mentions-in-yaml.js';
import type {Offer} from './offer.js';

/** By the line alone: the text is half typed and need not be YAML. */
export function yamlOffers(spec: Specification, {text, offset}: Typing): readonly Offer[] {
  const line = text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset);
  if (line.includes('#')) return [];
  const word = line.slice(runBefore(line, line.length, /[A-Za-z0-9-]/));
  const span = {
    start: offset - word.length,
    end: offset + (/^[A-Za-z0-9-]*/.exec(text.slice(offset))?.[0].length ?? 0),
  };
  const key = keyOf(line) ?? keyAbove(text, offset - line.length, line);
  if (key === undefined) return [];
  const offer = (id: string, detail: string): Offer => ({
    label: id,
    kind: 'item',
    insert: id,
    span,
    detail,
    rank: 0,
  });
  if (key === 'source') return [...spec.sources.values()].map(({id, title}) => offer(id, title));
  if (key === 'only' || key === 'options')
    return [...spec.options.values()].map(({id, name}) => offer(id, name));
  if (key === 'severity') return FINDINGS.map(({name, summary}) => offer(name, summary));
  const kinds = Object.hasOwn(NAMING_FIELDS, key) ? NAMING_FIELDS[key] : undefined;
  return [...spec.items.values()]
    .filter(({kind}) => kinds?.includes(kind))
    .map(({id, kind, name}) => offer(id, `${KIND_SAYS[kind]}, ${name}`));
}

/** The last key on the line before what is typed: `closes` of `x: {closes: [a, `. */
function keyOf(line: string): string | undefined {
  const keys = [...line.matchAll(/:\s/g)].flatMap(({index}) => keyBefore(line, index));
  const last = keys.at(-1);
  if (last === undefined) return undefined;
  const after = line.slice(last.end);
  // A list or map that was closed again ended what the key began.
  if (/[\]}]/.test(after)) return undefined;
  return last.name === 'value' ? keys.at(-2)?.name : last.name;
}

/** The key whose colon stands at `colon`; none where no plain word stands before it. */
function keyBefore(line: string, colon: number): readonly {readonly name: string; readonly end: number}[] {
  const end = runBefore(line, colon, /\s/);
  const name = line.slice(runBefore(line, end, /[a-z-]/), end).replace(/^-+/, '');
  return name === '' ? [] : [{name, end: colon + 1}];
}

/** The key of a list or map whose entries stand on lines of their own, above the line and less far in. */
function keyAbove(text: string, lineStart: number, line: string): string | undefined {
  if (!/^\s*(?:-\s*)?[A-Za-z0-9-]*$/.test(line)) return undefined;
  const depth = /^\s*/.exec(line)?.[0].length ?? 0;
  const above = text.slice(0, lineStart).split('\n').slice(-FAR).reverse();
  for (const one of above) {
    const found = /^(\s*)(?:-\s+)?([a-z][a-z-]*)\s*:\s*$/.exec(one);
    if (found !== null && (found[1]?.length ?? 0) <= depth) return found[2];
    if (/^\S/.test(one) && found === null) return undefined;
  }
  return undefined;
}

/** Lines above that are looked at. */
const FAR = 60;
