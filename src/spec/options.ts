/** Options of an engine: what some of the engines of its kind have and others have not. */
import type {Problem} from '../text/problem.js';
import type {Where} from '../text/source.js';
import {defined} from './defined.js';
import type {BookFile} from './file.js';
import {mergedSection} from './merge.js';
import type {EngineOption} from './model.js';
import {nearName} from './near.js';
import {textOf, valueAt} from './tree.js';

/** The name of an option where it is written. */
export interface OptionReference {
  readonly id: string;
  readonly where: Where;
  /** The item that names it, where one does. */
  readonly item?: string;
}

/** What the engine and those that it extends list under `options:`. */
export function optionsOf(
  chain: readonly BookFile[],
  problems: Problem[],
): ReadonlyMap<string, EngineOption> {
  return new Map(
    mergedSection(chain, 'options', problems).map(({entry: {key: id, keyWhere: where, value}}) => {
      const name = textOf(valueAt(value, 'name')) ?? textOf(value) ?? id.replaceAll('-', ' ');
      return [id, {id, name, ...defined({note: textOf(valueAt(value, 'note'))}), where}];
    }),
  );
}

/** References to options that the engine does not list. */
export function optionProblems(
  references: readonly OptionReference[],
  options: ReadonlyMap<string, EngineOption>,
): Problem[] {
  return references
    .filter(({id}) => !options.has(id))
    .map(({id, where, item}, before): Problem => {
      const near = nearName(id, options.keys(), before);
      const hint = near === undefined ? 'list it under options: of engine.yaml' : `did you mean ${near}?`;
      const says = `${id} is not an option of this engine`;
      return {name: 'unknown-item', where, says, hint, ...(item !== undefined && {item})};
    });
}
