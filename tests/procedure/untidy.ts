/** Generated procedures that are right but written in every loose way: spelling of tags, numbers, indentation, ends. */
import fc from 'fast-check';

/** The names that the tags use, with the places of `bolts` out of their alphabetical order. */
export const UNTIDY_ENGINE = `
parts:
  block: {given: true}
  caps: {at: [front, centre, rear]}
surfaces:
  journals: {on: block, at: [front, centre, rear], assembly: lubed, lubricants: [assembly-lube]}
fits:
  play: {between: [journals], limits: 0.0015–0.0025 in}
fasteners:
  bolts: {at: [front, centre, rear], holds: [caps], torque: 85 lbf·ft, threads: dry, lock: safety-wire}
`;

const blank = fc.constantFrom(' ', '  ', '   ');
const comma = fc.constantFrom(',', ', ', ' ,', ' ,  ');
const places = fc.uniqueArray(fc.constantFrom('front', 'centre', 'rear'), {minLength: 1, maxLength: 3});
const bracketed = fc.oneof(
  fc.constant(''),
  fc.tuple(places, comma, blank).map(([names, mark, gap]) => `${gap}[${names.join(mark)}]`),
  fc.tuple(places, comma).map(([names, mark]) => `[${names.join(mark)} ]`),
);
const verb = (name: string) =>
  fc.constantFrom(`${name}:`, `${name}: `, `${name} : `, `${name.toUpperCase()}:  `);
const torque = fc.constantFrom(
  '85 lbf·ft',
  '85 ft-lb',
  '85  lb.ft',
  '1,085 ft lbs',
  '85.0 lbf.ft',
  '85 ±5 % lbf·ft',
);
const passes = fc.constantFrom(
  '30, 60, 85',
  '30 ft-lb, 60 ft-lb, 85 ft-lb',
  '30,60 ,85 lbf·ft',
  '40 N·m, 60, 85 N·m',
);
const limits = fc.constantFrom(
  '.0015-.0025 in',
  '.0015..0.0025"',
  '0.0015–0.0025 in',
  '≤ 0.0025 inch',
  '0.002 +/-0.0005 in',
  '1 1/2 in',
);
const reason = fc.constantFrom('"soft, with care"', 'cracks  and  scores', 'a worn face');

const clauses = (...all: fc.Arbitrary<string>[]) =>
  fc
    .tuple(fc.shuffledSubarray([...all.keys()]), fc.tuple(...all), blank)
    .map(([order, texts, gap]) => order.map((index) => `${gap}${texts[index] ?? ''}`).join(''));

const tag = fc.oneof(
  fc
    .tuple(
      verb('torque'),
      bracketed,
      clauses(
        torque.map((value) => `to ${value}`),
        passes.map((value) => `in ${value}`),
        fc.constant('using wrench'),
        fc.constantFrom('turn 90 deg', 'turn 1/4 turn'),
      ),
    )
    .map(([word, at, more]) => `${word}bolts${at}${more}`),
  fc
    .tuple(
      verb('measure'),
      clauses(
        limits.map((value) => `within ${value}`),
        fc.constantFrom('using gauge, mike', 'using gauge ,  mike'),
      ),
    )
    .map(([word, more]) => `${word}play${more}`),
  fc
    .tuple(
      verb('inspect'),
      bracketed,
      comma,
      clauses(
        reason.map((value) => `for ${value}`),
        fc.constant('using lamp'),
      ),
    )
    .map(([word, at, mark, more]) => `${word}caps${at}${mark}journals${at}${more}`),
  fc
    .tuple(
      verb('lock'),
      clauses(fc.constantFrom('with safety-wire  0.041  in', 'with wire , tab'), fc.constant('using pliers')),
    )
    .map(([word, more]) => `${word}bolts${more}`),
  // What cannot be read, and what is no tag, stays.
  fc.constantFrom('torque:', 'trque: bolts', 'clean: Block', 'https://example.org', 'x = 1', 'witness: a b'),
);

const span = fc
  .tuple(tag, fc.constantFrom('', '', ' '), fc.boolean())
  .map(([text, pad, broken]) => ({text: `\`${pad}${text}${pad}\``, broken}));

const word = fc.constantFrom(
  'Brush',
  'the  lobe',
  'é ü',
  '🔧 turn',
  '10:30',
  'see step 4',
  '*so*',
  '<b>x</b>',
  '85 ft-lb',
);
const prose = fc.array(word, {minLength: 1, maxLength: 4}).map((words) => words.join(' '));

/** A block below the first paragraph of a step, as lines without indentation. */
const block = fc.oneof(
  prose.map((text) => [text]),
  fc.constant(['- one', '- two']),
  fc.constant(['```', 'code', '  deeper', '', '1. no step', '```']),
  fc.constant(['> **Caution:** Hot. `hazard:  eyes ,hot-metal`']),
  fc.constant(['    indented code']),
  fc.constant(['<div>', '  html', '</div>']),
  prose.map((text) => ['* bullet', '', `  ${text}`]),
);

interface Step {
  readonly text: string;
  readonly spans: readonly {readonly text: string; readonly broken: boolean}[];
  readonly lazy: boolean;
  readonly blocks: readonly (readonly string[])[];
  readonly subs: readonly Step[];
  readonly numeral: number;
  readonly gap: number;
}

const {step} = fc.letrec<{step: Step}>((tie) => ({
  step: fc.record({
    text: prose,
    spans: fc.array(span, {maxLength: 3}),
    lazy: fc.boolean(),
    blocks: fc.array(block, {maxLength: 2}),
    subs: fc.oneof(
      {depthSize: 'small', withCrossShrink: true, maxDepth: 2},
      fc.constant([]),
      fc.array(tie('step'), {maxLength: 3}),
    ),
    numeral: fc.constantFrom(1, 1, 2, 7, 9, 10, 11, 99, 100, 1000),
    gap: fc.constantFrom(1, 1, 1, 2, 3),
  }),
}));

/** Whole texts, front matter and all, with each of the three line ends, tabs here and there. */
export const untidy: fc.Arbitrary<string> = fc
  .record({
    lists: fc.array(fc.array(step, {minLength: 1, maxLength: 5}), {minLength: 1, maxLength: 3}),
    between: fc.constantFrom(
      '## More\n',
      '## More\n\n',
      'Some prose.\n',
      'Some prose.\n\n',
      '> **Danger:** Hot.\n\n',
      '<!-- x -->\n\n',
    ),
    ones: fc.boolean(),
    mark: fc.constantFrom('.', ')'),
    tabs: fc.boolean(),
    ending: fc.constantFrom('\n', '\n', '\r\n', '\r'),
  })
  .map(({lists, between, ones, mark, tabs, ending}) => {
    const style = {mark, ones, tabs};
    const body = lists
      .map((steps) => steps.flatMap((one) => linesOf(one, style)).join('\n'))
      .join(`\n\n${between}`);
    return `---\ntitle: T\nrevision: A\ndate: 2026-01-02\n---\n\n${body}\n`.replaceAll('\n', ending);
  });

interface Style {
  readonly mark: string;
  readonly ones: boolean;
  readonly tabs: boolean;
}

function linesOf({text, spans, lazy, blocks, subs, numeral, gap}: Step, style: Style): string[] {
  const marker = `${style.ones ? 1 : numeral}${style.mark}${style.tabs ? '\t' : ' '.repeat(gap)}`;
  const indent = style.tabs ? ' '.repeat(marker.length <= 4 ? 4 : 8) : ' '.repeat(marker.length);
  const head = [text];
  for (const one of spans) {
    const [first = '', ...rest] = one.broken ? one.text.split(/ (?=\w)/) : [one.text];
    head[head.length - 1] += ` ${first}`;
    head.push(...rest);
  }
  const below = [
    ...blocks.flatMap((lines) => ['', ...lines]),
    ...(blocks.length > 0 && subs.length > 0 ? [''] : []),
    ...subs.flatMap((sub) => linesOf(sub, style)),
  ];
  const [first = '', ...more] = head;
  return [
    marker + first,
    ...more.map((line) => (lazy ? line : indent + line)),
    ...below.map((line) =>
      line === '' ? '' : (style.tabs ? indent.replaceAll('    ', '\t') : indent) + line,
    ),
  ];
}
