/** Generated procedures, together with what a reader must find in them. */
import fc from 'fast-check';

/** One step as it was written, and its sub-steps. */
export interface Made {
  readonly text: string;
  readonly tags: readonly string[];
  readonly caution: boolean;
  readonly subs: readonly Made[];
}

export interface MadeProcedure {
  readonly markdown: string;
  readonly steps: readonly Made[];
}

const word = fc.constantFrom(
  'Brush',
  'the lobe',
  'é ü',
  '🔧 turn',
  'bolt-7',
  'a*b',
  '10:30',
  '&amp;',
  'x < y',
);
const tag = fc.constantFrom(
  'lube: journals with assembly-lube',
  'torque: bolts[1,2] to 85 lbf·ft in 30, 60, 85',
  'lock: bolts with safety-wire 0.041 in',
  'install: cap',
);
const text = fc.array(word, {minLength: 1, maxLength: 4}).map((words) => words.join(' '));

const sub: fc.Arbitrary<Made> = fc.record({
  text,
  tags: fc.array(tag, {maxLength: 2}),
  caution: fc.constant(false),
  subs: fc.constant([]),
});
const step: fc.Arbitrary<Made> = fc.record({
  text,
  tags: fc.array(tag, {maxLength: 3}),
  caution: fc.boolean(),
  subs: fc.array(sub, {maxLength: 3}),
});

/** Sections of steps, cautions among them, with any of the three line endings. */
export const madeProcedure: fc.Arbitrary<MadeProcedure> = fc
  .record({
    sections: fc.array(fc.array(step, {maxLength: 5}), {maxLength: 5}),
    filler: fc.constantFrom(
      '',
      'Some prose.\n\n',
      '```\n## no heading\n```\n\n',
      '<div>\n# none\n</div>\n\n',
      '- a\n- b\n\n',
    ),
    ending: fc.constantFrom('\n', '\r\n', '\r'),
  })
  .map(({sections, filler, ending}) => {
    const body = sections
      .map((steps, index) => `## Section ${index}\n\n${filler}${markdownOf(steps)}`)
      .join('\n');
    const whole = `---\ntitle: T\nrevision: A\ndate: 2026-01-02\n---\n\n${body}`;
    return {markdown: whole.replaceAll('\n', ending), steps: sections.flat()};
  });

function markdownOf(steps: readonly Made[]): string {
  return steps
    .map((made, index) => `${made.caution ? '\n> **Warning:** Hot.\n\n' : ''}${itemOf(made, index, '')}`)
    .join('');
}

function itemOf({text, tags, subs}: Made, index: number, indent: string): string {
  const marker = `${index + 1}. `;
  const line = `${indent}${marker}${[text, ...tags.map((raw) => `\`${raw}\``)].join(' ')}\n`;
  return line + subs.map((one, at) => itemOf(one, at, indent + ' '.repeat(marker.length))).join('');
}
