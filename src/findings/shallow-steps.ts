/** Sub-steps of a branch that are indented, but not as far as the text of the step: Markdown takes them for its neighbours. */
import type {StepRef} from '../build/program.js';
import type {Step} from '../procedure/model.js';
import type {Fix} from '../text/edit.js';
import type {Source, Span} from '../text/source.js';

/** What was meant as the steps of a branch, where it stands, and how it becomes that. */
export interface LostSteps {
  readonly says: string;
  /** The number and its mark. */
  readonly span: Span;
  readonly fix: Fix;
}

/** Of a branch without steps, the next ones, if they are indented more than it and less than its text. */
export function shallowSteps({procedure: {source, steps}, step}: StepRef): LostSteps | undefined {
  const own = indentOf(source, step);
  const mark = /^\d{1,9}[.)] {1,4}(?=\S)/.exec(source.text.slice(step.span.start, step.span.start + 20))?.[0];
  if (own === undefined || mark === undefined) return undefined;
  const due = own + mark.length;
  const shallow: Step[] = [];
  for (const next of steps.slice(step.index + 1)) {
    const indent = indentOf(source, next);
    if (next.section !== step.section || indent === undefined || indent <= own || indent >= due) break;
    shallow.push(next);
  }
  const [first] = shallow;
  if (first === undefined) return undefined;
  const indent = indentOf(source, first) ?? 0;
  const these = shallow.length === 1 ? 'the step below it is' : 'the steps below it are';
  return {
    says: `${these} indented by ${indent} where its sub-steps want ${due}, as far as its text begins (CommonMark)`,
    span: markOf(source, first),
    fix: indented(source, shallow, due - indent),
  };
}

function markOf({text}: Source, {span: {start, end}}: Step): Span {
  return {start, end: start + text.slice(start, end).search(/[.)]/) + 1};
}

/** Spaces before the number; nothing where anything else stands there. */
function indentOf({text}: Source, {span}: Step): number | undefined {
  const line = text.slice(text.lastIndexOf('\n', span.start) + 1, span.start);
  return /^ *$/.test(line) ? line.length : undefined;
}

/** Every line of the steps moves. */
function indented({file, text}: Source, steps: readonly Step[], by: number): Fix {
  const lines = steps.flatMap(({span: {start, end}}) => {
    const others = text.slice(start, end).matchAll(/\n(?=\S| )/g);
    return [start, ...[...others].map(({index}) => start + index + 1)];
  });
  const edits = lines.map((start) => ({span: {start, end: start}, text: ' '.repeat(by)}));
  const what = steps.length === 1 ? 'it' : 'them';
  return {title: `Indent ${what} as sub-steps`, file, edits};
}
