/** An untagged procedure as a tagged draft: tags where they are sure, offers where a person must say, and what is left. */
import type {Procedure} from '../procedure/model.js';
import {readProcedure} from '../procedure/read.js';
import type {Specification} from '../spec/model.js';
import {applyEdits, type Edit} from '../text/edit.js';
import {grouped} from '../text/grouped.js';
import {runBefore} from '../text/runs.js';
import {source} from '../text/source.js';
import {type Proposal, readingFor, SURE} from './proposals.js';
import {type Left, leftOver} from './remaining.js';
import {type Warning, warningsFor} from './warned.js';

export interface DraftOptions {
  readonly spec: Specification;
  /** The other procedures of the book, in build order. */
  readonly others: readonly Procedure[];
  /** ISO 8601; the date of front matter that is made. */
  readonly today: string;
  /** Stands in for the title where the text has neither front matter nor a heading. */
  readonly name: string;
}

/** The new text, with the sums that are told beside it. */
export interface Draft {
  /** The author's text with nothing taken away, without a byte-order mark. */
  readonly text: string;
  /** How many tags were written, and how many are offered behind a question mark. */
  readonly tags: number;
  readonly offers: number;
  /** How many things the specification asks for and no text says. */
  readonly left: number;
}

/** Nothing of the original is lost: tags and questions are put behind its words. */
export function draftOf(procedure: Procedure, options: DraftOptions): Draft {
  const {file, text} = procedure.source;
  const ending = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
  const {proposals, unfound} = readingFor(procedure, options.spec);
  const edits = [...frontEdits(procedure, options), ...tagEdits(procedure, proposals)];
  const tagged = edited(text, edits, ending);
  const warnings = warningsFor(readProcedure(source(file, tagged)), options.spec);
  const warned = edited(tagged, warningEdits(tagged, warnings), ending);
  const left = leftOver(readProcedure(source(file, warned)), {...options, unfound});
  const offers = [...proposals.map(isSure), ...warnings.map((one) => one.isSure)].filter(
    (sure) => !sure,
  ).length;
  const end = endOf(left, offers);
  return {
    text: end === '' ? warned : `${warned.trimEnd()}${`\n\n${end}`.replaceAll('\n', ending)}`,
    tags: proposals.length + warnings.length - offers,
    offers,
    left: left.untold.length + left.unfinished.length + left.unsaid.length,
  };
}

function edited(text: string, edits: readonly Edit[], ending: string): string {
  return applyEdits(
    text,
    edits.map((edit) => ({...edit, text: edit.text.replaceAll('\n', ending)})),
  );
}

function isSure({confidence}: Proposal): boolean {
  return confidence >= SURE;
}

/** All spans for one paragraph are one edit, in the order of the text. */
function tagEdits({source: {text}}: Procedure, proposals: readonly Proposal[]): Edit[] {
  return [...grouped(proposals, ({at}) => at)]
    .sort(([one], [other]) => one - other)
    .map(([at, all]) => {
      const indent = contentIndent(text, all[0]?.step.span.start ?? at);
      const spans = all.map((one) => spanOfTag(one.tag, isSure(one)));
      return {span: {start: at, end: at}, text: placed(text, at, indent, spans)};
    });
}

/** Behind the last words of each caution. */
function warningEdits(text: string, warnings: readonly Warning[]): Edit[] {
  const cautions = [...new Set(warnings.map(({caution}) => caution))];
  return cautions
    .sort((one, other) => one.span.start - other.span.start)
    .map((caution) => {
      const {start, end} = caution.span;
      const at = Math.max(start, runBefore(text, end, /[\s>]/));
      const prefix = /^[ \t>]*/.exec(text.slice(lineStart(text, at), at))?.[0] ?? '';
      const spans = warnings
        .filter((one) => one.caution === caution)
        .map(({tag, isSure: sure}) => spanOfTag(tag, sure));
      return {span: {start: at, end: at}, text: placed(text, at, prefix, spans)};
    });
}

/** What is no tag to any reader, and shows as one that is asked about: a code span that opens with a question mark. */
function spanOfTag(tag: string, sure: boolean): string {
  return sure ? `\`${tag}\`` : `\`? ${tag}\``;
}

/** Behind the paragraph, on lines of their own, which open with `prefix`, where the last one is full. */
function placed(text: string, at: number, prefix: string, spans: readonly string[]): string {
  let column = at - lineStart(text, at);
  let result = '';
  for (const span of spans) {
    const fits = column + 1 + span.length <= WIDTH;
    result += `${fits ? ' ' : `\n${prefix}`}${span}`;
    column = (fits ? column + 1 : prefix.length) + span.length;
  }
  return result;
}

const WIDTH = 120;

/** As many blanks as the content of the step stands in from the margin. */
function contentIndent(text: string, start: number): string {
  const marker = /^\d{1,9}[.)][ \t]?/.exec(text.slice(start, start + 12))?.[0].length ?? 0;
  return ' '.repeat(start - lineStart(text, start) + marker);
}

function lineStart(text: string, offset: number): number {
  let start = offset;
  while (start > 0 && text[start - 1] !== '\n' && text[start - 1] !== '\r') start--;
  return start;
}

/** Front matter is made where there is none; what it lacks where there is some, the check says. */
function frontEdits({front, sections}: Procedure, {today, name}: DraftOptions): Edit[] {
  if (front.span.end > 0) return [];
  const title = sections.find(({depth, title: own}) => depth === 1 && own !== '')?.title ?? name;
  const lines = ['---', `title: ${yamlText(title)}`, 'revision: A', `date: ${today}`, '---', '', ''];
  return [{span: {start: 0, end: 0}, text: lines.join('\n')}];
}

/** In quotes where YAML could take it for anything but text. */
function yamlText(text: string): string {
  return /^[A-Za-z][\w ,()/-]*$/.test(text) && !/^(?:true|false|null|yes|no|on|off)$/i.test(text)
    ? text
    : JSON.stringify(text);
}

/** The section at the end; empty where nothing is left. */
function endOf({untold, unfinished, unsaid}: Left, offers: number): string {
  const parts = [
    ...(offers > 0
      ? [
          `${offers === 1 ? 'A tag stands' : `${offers} tags stand`} behind a question mark. Take the question mark away where the tag is right, and the tag where it is not.`,
        ]
      : []),
    ...listed('For these no tag was found:', untold),
    ...listed('The specification asks for more of what these steps deal with:', unfinished),
    ...listed('The specification asks for these, and no step says anything of them:', unsaid),
  ];
  if (parts.length === 0) return '';
  return `## Left to settle\n\nTake this section out when it is done.\n\n${parts.join('\n\n')}\n`;
}

function listed(opening: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [`${opening}\n\n${lines.map((line) => `- ${line}`).join('\n')}`];
}
