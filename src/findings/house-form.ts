/** The form of what comes from a house's module: its rules, and what they report. A stranger's code may give anything. */
import * as z from 'zod';
import type {Found} from '../build/found.js';
import {tagSpec, VERBS} from '../procedure/verbs.js';
import type {Source} from '../text/source.js';
import type {HouseFinding} from './house.js';

export type HouseRead =
  | {readonly ok: true; readonly findings: readonly HouseFinding[]}
  /** What is wrong, a clause without capital or full stop. */
  | {readonly ok: false; readonly says: string};

/** Takes a value that a module exported for a list of rules, or says why it is none. */
export function readHouse(value: unknown): HouseRead {
  const read = rules.safeParse(value);
  if (!read.success) return {ok: false, says: ruleFault(value, read.error)};
  // The rules themselves and no copies of them, for they may call on themselves.
  const findings = value as readonly HouseFinding[];
  const names = findings.map(({name}) => name);
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  return twice === undefined ? {ok: true, findings} : {ok: false, says: `${twice} is there twice`};
}

/** What is wrong with the form of a report, as the end of a sentence; nothing where all is well. */
export function formFault(value: unknown): string | undefined {
  const [issue] = report.safeParse(value).error?.issues ?? [];
  if (issue === undefined) return undefined;
  return `is no report: ${[issue.path.join('.'), issue.message].filter(Boolean).join(': ')}`;
}

/** A file that a report points into and the book does not have. */
export function strangeFile(
  {where, story = [], related = [], fix}: Found,
  sources: ReadonlyMap<string, Source>,
): string | undefined {
  const places = [where, ...[...story, ...related].map((one) => one.where)].map(({file}) => file);
  return [...places, ...(fix ? [fix.file] : [])].find((file) => !sources.has(file));
}

/** What is wrong with the first rule that is none. */
function ruleFault(value: unknown, {issues}: z.ZodError): string {
  const {path: of, message} = issues[0] ?? NOTHING;
  const [index, ...path] = of;
  const name: unknown = Array.isArray(value) ? value[Number(index)]?.name : undefined;
  const which = typeof name === 'string' ? name : typeof index === 'number' ? `rule ${index + 1}` : '';
  return [which, path.join('.'), message].filter(Boolean).join(': ');
}

const NOTHING = {path: [], message: 'it has no form'};

const line = z.string().regex(/^[^\r\n]+$/, 'one line of text is due here');
const hook = z.custom((given) => typeof given === 'function', 'a function is due here').optional();
const deeds = VERBS.filter((verb) => Array.isArray(tagSpec(verb).targets));

const rules = z
  .array(
    z.strictObject({
      name: z
        .string()
        .regex(/^house(?:-[a-z0-9]+)+$/, 'lower case with hyphens that begins with house- is due here'),
      severity: z.enum(['error', 'warning', 'information']),
      group: z
        .enum(['order', 'left undone', 'materials and tools', 'engineering', 'people', 'job', 'house'])
        .optional(),
      summary: line,
      why: z.string().min(1),
      source: line.optional(),
      example: z
        .strictObject({
          ...{engine: z.string(), wrong: z.string(), right: z.string()},
          ...Object.fromEntries(
            ['shop', 'job', 'rightEngine', 'rightShop', 'rightJob'].map((key) => [
              key,
              z.string().optional(),
            ]),
          ),
        })
        .optional(),
      ...{book: hook, step: hook, end: hook},
      before: z.strictObject(Object.fromEntries(deeds.map((verb) => [verb, hook]))).optional(),
    }),
  )
  .min(1, 'at least one rule is due here');

const offset = z.int().min(0);
const span = z.object({start: offset, end: offset});
const where = z.object({file: z.string(), span});
const remarks = z.array(z.object({where, says: line})).optional();

const report = z.strictObject({
  where,
  message: line,
  ...{item: line.optional(), place: z.string().optional(), story: remarks, related: remarks},
  fix: z
    .object({title: line, file: z.string(), edits: z.array(z.object({span, text: z.string()})).min(1)})
    .optional(),
  lacks: z.object({item: z.string(), verbs: z.array(z.enum(VERBS))}).optional(),
  step: z.object({step: z.object({}), procedure: z.object({})}).optional(),
});
