/**
 * What is so on one engine on the stand and not on all of its kind: what a mark must read, to what size a surface
 * was ground, and which parts go in instead of its own.
 */
import {measuredSize, undersizeOf} from '../build/job-specification.js';
import {formatAmount} from '../quantity/format.js';
import type {Amount} from '../quantity/model.js';
import type {Job} from '../spec/job.js';
import {expectedReading} from '../spec/job-marks.js';
import type {Fit, Part, Specification, Substitute, Surface} from '../spec/model.js';
import {type Context, nameOf, spaced, type Use} from './context.js';
import type {Fact} from './model.js';
import {printed} from './value.js';
import {fill, type Words} from './words.js';

/** What stands beside a tag because of the job; nothing on a sheet that is for every engine. */
export function jobFacts({item, tag}: Use, context: Context): Fact[] {
  const {job, spec, words} = context;
  if (job === undefined || item === undefined) return [];
  if (item.kind === 'mark' && tag.verb === 'record') {
    const text = expectedReading(item, job, spec);
    return text === undefined ? [] : [{label: words.mustRead, text}];
  }
  if (item.kind === 'fit' && tag.verb === 'measure') return sizesAt(item, context);
  if (item.kind !== 'part' || !['renew', 'inspect', 'install'].includes(tag.verb)) return [];
  const text = fittedAs(item, job, words);
  const note = substituteOf(item, job)?.note;
  return text === undefined ? [] : [{label: words.onThisJob, text, ...(note !== undefined && {note})}];
}

/** What goes in on this job: "main shells of the Six, 0.010 in under"; undefined where it is the part's own kind. */
export function fittedAs(part: Part, job: Job, words: Words): string | undefined {
  const undersize = job.fitted.get(part.id)?.value;
  const said = [
    substituteOf(part, job)?.name,
    undersize === undefined ? undefined : under(undersize, words),
  ].filter((one) => one !== undefined);
  return said.length === 0 ? undefined : said.join(words.and);
}

/** `0.010 in under`, or `standard size`. */
export function under(undersize: Amount | 'standard', words: Words): string {
  return undersize === 'standard' ? words.standardSize : fill(words.under, {size: formatAmount(undersize)});
}

function substituteOf({id, substitutes}: Part, job: Job): Substitute | undefined {
  return substitutes.get(job.substitutes.get(id)?.value ?? '');
}

/** The surfaces that a fit lies between, as large as they are on this engine, where the job says how far they were ground. */
function sizesAt(fit: Fit, context: Context): Fact[] {
  const {job, spec, words} = context;
  // The taper of a journal has nothing to do with its size.
  if (fit.between.length === 1 && measuredSize(fit, spec) === undefined) return [];
  return fit.between.flatMap(({value}): Fact[] => {
    const surface = spec.items.get(value);
    if (job === undefined || surface?.kind !== 'surface' || surface.sizes.size === 0) return [];
    const by = saidOf(surface, job, spec);
    if (by === undefined) return [];
    const sizes = [...surface.sizes].map(([place, size]) => ({
      place,
      ...printed(size.value, context),
    }));
    const text = sizes.map(({place, text, also}) =>
      [spaced(place), text, also && `(${also})`].filter(Boolean).join(' '),
    );
    return [{label: nameOf(value, context), text: text.join(words.and), note: under(by, words)}];
  });
}

function saidOf(surface: Surface, job: Job, spec: Specification): Amount | 'standard' | undefined {
  return undersizeOf(surface, job, spec) ?? (job.grinds.has(surface.id) ? 'standard' : undefined);
}
