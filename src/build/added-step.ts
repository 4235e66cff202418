/** A step that no procedure holds: an alteration of a substituted part, asked for by a job. */
import type {PlainBlock, Step, Tag} from '../procedure/model.js';
import type {Alteration, Part} from '../spec/model.js';
import type {Span, Where} from '../text/source.js';

export interface Adding {
  /** As printed. */
  readonly number: string;
  readonly part: Part;
  /** Empty for all of its places. */
  readonly places: readonly string[];
  readonly alteration: Alteration;
  /** Where in the procedure's text it would stand. */
  readonly at: number;
  /** Where the job asks for it. */
  readonly where: Where;
  readonly notes: readonly (string | undefined)[];
}

export function addedStep(adding: Adding): Step {
  const {number, alteration, at, where, notes} = adding;
  const span = {start: at, end: at};
  const text = sentence(alteration.does ?? alteration.name);
  const hazards = alteration.hazards.map(({value}) => ({word: value, span}));
  return {
    number,
    index: 0,
    span,
    headSpan: span,
    text,
    inline: [{type: 'text', value: text}],
    tags: [alterTag(adding, span)],
    // The hazards themselves are all that is known of them.
    cautions:
      hazards.length === 0 ? [] : [{signal: 'warning', span, text: '', inline: [], hazards, tags: []}],
    pictures: [],
    steps: [],
    more: notes.flatMap((note) => (note === undefined ? [] : [prose(sentence(note), span)])),
    section: '',
    added: where,
  };
}

function alterTag({part, places, alteration}: Adding, span: Span): Tag {
  const using = alteration.using.map(({value}) => value);
  const named = places.length > 0 ? `[${places.join(', ')}]` : '';
  const tools = using.length > 0 ? ` using ${using.join(', ')}` : '';
  const clause = (word: 'by' | 'using', ids: readonly string[]) => ({
    word,
    span,
    valueSpan: span,
    value: {type: 'ids', ids: ids.map((id) => ({id, span, rest: ''}))} as const,
  });
  return {
    span,
    raw: `alter: ${part.id}${named} by ${alteration.id}${tools}`,
    verb: 'alter',
    verbSpan: span,
    targets: [{id: part.id, span, places: places.map((name) => ({name, span}))}],
    clauses: [clause('by', [alteration.id]), ...(using.length > 0 ? [clause('using', using)] : [])],
  };
}

function prose(text: string, span: Span): PlainBlock {
  return {type: 'prose', span, text, inline: [{type: 'text', value: text}]};
}

/** With a capital and a full stop. */
function sentence(text: string): string {
  const capital = text.slice(0, 1).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(capital) ? capital : `${capital}.`;
}
