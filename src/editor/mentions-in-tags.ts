/** The names in the tags and the front matter of a procedure. */
import type {Procedure, Tag} from '../procedure/model.js';
import {tagsOfProcedure} from '../procedure/tidy/tags.js';
import {type TargetKinds, tagSpec} from '../procedure/verbs.js';
import type {Mention, MentionKind} from './mention.js';

export function procedureMentions(procedure: Procedure): Mention[] {
  const {file} = procedure.source;
  const only = (procedure.front.only ?? []).map(
    ({id, span}): Mention => ({kind: 'option', id, where: {file, span}, gives: false}),
  );
  return [...only, ...tagsIn(procedure).flatMap((tag) => tagMentions(tag, file))];
}

/** Every tag that was read, in the order of the text: those of headings, of steps and of cautions. */
export function tagsIn(procedure: Procedure): readonly Tag[] {
  return [...tagsOfProcedure(procedure)].sort((one, other) => one.span.start - other.span.start);
}

function tagMentions(tag: Tag, file: string): Mention[] {
  const {targets} = tagSpec(tag.verb);
  const named = tag.targets.map(
    ({id, span}): Mention => ({
      kind: kindOf(targets),
      id,
      where: {file, span},
      gives: targets === 'new-id',
    }),
  );
  const inClauses = tag.clauses.flatMap(({value}) =>
    value.type === 'ids'
      ? value.ids.map(({id, span}): Mention => ({kind: 'item', id, where: {file, span}, gives: false}))
      : [],
  );
  return [...named, ...inClauses];
}

function kindOf(targets: TargetKinds): MentionKind {
  switch (targets) {
    case 'new-id':
    case 'step-id':
      return 'step';
    case 'option':
      return 'option';
    case 'finding':
      return 'finding';
    case 'hazard-word':
      return 'hazard';
    default:
      return 'item';
  }
}
