/**
 * Findings on texts as they were, put where they stand in the texts as they are now: what is shown of jobs until they
 * have been checked again.
 */
import type {Remark} from '../build/found.js';
import type {Finding} from '../findings/model.js';
import type {Source, Span, Where} from '../text/source.js';
import {commonEnds} from './common-ends.js';

type Texts = ReadonlyMap<string, Source>;

/** What the edit touched, and what is about a text that is gone, is left out. */
export function carried(findings: readonly Finding[], before: Texts, now: Texts): Finding[] {
  const moves = new Map<string, Move | undefined>();
  const moved = ({file, span}: Where): Where | undefined => {
    if (!moves.has(file)) moves.set(file, moveOf(before.get(file)?.text, now.get(file)?.text));
    const there = moves.get(file)?.(span);
    return there && {file, span: there};
  };
  const kept = (remarks: readonly Remark[]) =>
    remarks.flatMap((remark) => {
      const where = moved(remark.where);
      return where ? [{...remark, where}] : [];
    });
  return findings.flatMap(({fix: _, ...finding}) => {
    const where = moved(finding.where);
    return where ? [{...finding, where, story: kept(finding.story), related: kept(finding.related)}] : [];
  });
}

type Move = (span: Span) => Span | undefined;

/** What stands before the first difference stays, what stands behind the last goes along. */
function moveOf(before: string | undefined, now: string | undefined): Move | undefined {
  if (before === undefined || now === undefined) return undefined;
  if (before === now) return (span) => span;
  const {head, tail} = commonEnds(before, now);
  const by = now.length - before.length;
  return ({start, end}) => {
    if (end <= head) return {start, end};
    return start >= before.length - tail ? {start: start + by, end: end + by} : undefined;
  };
}
