/** A finding as plain data, with lines and columns. */
import type {Finding} from '../findings/model.js';
import {placeOf} from '../host/places.js';
import type {Source} from '../text/source.js';
import type {FindingJson} from './answer.js';

export function findingJson(finding: Finding, texts: ReadonlyMap<string, Source>): FindingJson {
  const {name, severity, where, message, item = null, place = null, story, related, fix} = finding;
  const remark = (one: Finding['story'][number]) => ({...placeOf(one.where, texts), message: one.says});
  return {
    name,
    severity,
    ...placeOf(where, texts),
    message,
    item,
    place,
    story: story.map(remark),
    related: related.map(remark),
    fix: fix ? fixJson(fix, texts) : null,
  };
}

function fixJson({title, file, edits}: NonNullable<Finding['fix']>, texts: ReadonlyMap<string, Source>) {
  return {title, edits: edits.map(({span, text}) => ({...placeOf({file, span}, texts), text}))};
}
