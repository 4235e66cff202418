/** Writes the list of known findings anew: settled ones struck off, new ones added, what people wrote beside the others kept. */
import {type Document, isMap, isSeq, parseDocument, type YAMLMap} from 'yaml';
import {type Candidate, type Known, sorted} from './known.js';

export interface Reason {
  readonly because: string;
  readonly owner: string;
}

export interface Rewritten {
  readonly text: string;
  readonly added: number;
  readonly struck: number;
}

/** `isSeen` says of an entry whether this run looked at its file: what was not looked at is not struck off. */
export function rewritten(
  text: string | undefined,
  entries: readonly Known[],
  findings: readonly Candidate[],
  {reason, isSeen}: {readonly reason: Reason; readonly isSeen: (entry: Known) => boolean},
): Rewritten {
  const document: Document = parseDocument(text ?? HEAD);
  const list = document.get('known');
  const {fresh, settled} = sorted(findings, entries);
  const struck = settled.filter(([entry]) => isSeen(entry));
  if (isSeq(list)) {
    const maps = list.items.filter(isMap);
    const gone = new Set(
      struck.filter(([, found]) => found === 0).map(([entry]) => maps[entries.indexOf(entry)]),
    );
    for (const [entry, found] of struck) setTimes(maps[entries.indexOf(entry)], found);
    list.items = list.items.filter((node) => !isMap(node) || !gone.has(node));
    list.flow = false;
    for (const one of grouped(fresh, reason)) list.add(document.createNode(one));
  }
  return {text: document.toString({lineWidth: 110}), added: fresh.length, struck: struck.length};
}

const HEAD = `# Findings that this shop knows of and lets stand for now. \`wmark check --known\` fails on others only;
# \`wmark known\` strikes off what is settled.
known: []
`;

function setTimes(map: YAMLMap | undefined, found: number): void {
  if (found === 1) map?.delete('times');
  else map?.set('times', found);
}

/** The same finding several times over is one entry. */
function grouped(findings: readonly Candidate[], {because, owner}: Reason): object[] {
  const byKey = new Map<string, {entry: object; times: number}>();
  for (const {name, file, item, place, message} of findings) {
    const entry = {
      finding: name,
      file,
      ...(item === undefined ? {says: message} : {item}),
      place,
    };
    const key = JSON.stringify(entry);
    const known = byKey.get(key);
    if (known === undefined) byKey.set(key, {entry, times: 1});
    else known.times++;
  }
  return [...byKey.values()].map(({entry, times}) => ({...entry, ...(times > 1 && {times}), because, owner}));
}
