/** A step's own prose: what of its text is prose, each word where it stands in the file, and where its paragraph ends. */
import {describe, expect, it} from 'vitest';
import {readPart} from '../../src/build/program.js';
import {check} from '../../src/findings/check.js';
import {inFile, paragraphEnd, proseOf} from '../../src/findings/step-prose.js';
import {book} from '../help/example.js';

function firstStep(text: string) {
  const {spec, procedures} = book({engine: 'parts:\n  pump: {}\n', procedures: {'a.md': `\n${text}`}});
  const [procedure] = procedures;
  const step = procedure && readPart(procedure, spec, 0).steps[0];
  if (step === undefined) throw new Error('the text has no step');
  return step;
}

/** The prose with line ends as `|` and runs of blanks as one. */
function words(text: string): string {
  const step = firstStep(text);
  const prose = proseOf(step);
  const {source} = step.procedure;
  // Every letter stands where it stood.
  for (const {index, 0: word} of prose.text.matchAll(/\S+/g)) {
    const {start, end} = inFile(prose, {start: index, end: index + word.length});
    expect(source.text.slice(start, end)).toBe(word);
  }
  return prose.text
    .replace(/\r\n|\r|\n/g, '|')
    .replace(/ +/g, ' ')
    .trim();
}

describe('the prose of a step', () => {
  it.each([
    ['1. Turn the pump. `turn: pump`\n', 'Turn the pump.'],
    [
      '10. Turn the *pump* __twice__ by [hand](https://example.org/a). `turn: pump`\n',
      'Turn the pump twice by hand .',
    ],
    ['1. Turn it. <!-- not now --> Turn <b>it</b> on.\n', 'Turn it. Turn it on.'],
    ['1. Turn it.\n   Look at it.\n', 'Turn it.| Look at it.'],
    [
      '1. Turn it.\n\n   Look at it. `turn: pump`\n\n   > Quoted words.\n\n   Last words.\n',
      'Turn it.|| Look at it. || || Last words.',
    ],
    ['1. Turn it.\n\n   > WARNING: It pinches.\n\n   Look at it.\n', 'Turn it.|| || Look at it.'],
    ['1. Turn it.\n\n   > WARNING: It pinches.\n\n2. Look at it.\n', 'Turn it.||'],
    ['1. Turn it.\n\n   > WARNING: It pinches.\n\n   > CAUTION: It drips.\n', 'Turn it.|| ||'],
    ['1. > WARNING: It pinches.\n\n   Turn it.\n', '|| Turn it.'],
    ['> WARNING: It pinches.\n\n1. Turn it.\n', 'Turn it.'],
    ['1. Turn it.\n   1. Below it.\n   2. Below it too.\n\n   After it.\n', 'Turn it.| | || After it.'],
    ['1. Turn it. ![a pump](pump.png)\n\n   ![a pump](pump.png)\n', 'Turn it. ||'],
    ['1. Turn it.\n\n   ```\n   code\n   ```\n\n   - a list\n   - of it\n', 'Turn it.|| | | || |'],
    [
      '1. Turn it to 3 < 4 and back.\r\n   Then `a\r\n   b` on.\r\n',
      'Turn it to 3 < 4 and back.| Then | on.',
    ],
    ['1. Turn `it\n   on` again.\n', 'Turn | again.'],
    ['1. Turn it.\n\n   > Quoted words.\n\n## Nothing below\n', 'Turn it.||'],
    ['1. Plain.', 'Plain.'],
  ])('%j', (text, expected) => expect(words(text)).toBe(expected));
});

describe('the paragraph of a word ends', () => {
  /** The text of the file from the word on to there. */
  function rest(text: string, word: string): string {
    const step = firstStep(text);
    const prose = proseOf(step);
    const from = prose.text.indexOf(word);
    const {source} = step.procedure;
    return source.text.slice(prose.start + from, paragraphEnd(step, prose, from));
  }

  it.each([
    ['1. Turn it. `turn: pump`\n', 'Turn', 'Turn it. `turn: pump`'],
    ['1. Turn it.\n   And on. `turn: pump`  \n\n   Look.\n', 'Turn', 'Turn it.\n   And on. `turn: pump`'],
    ['1. Turn it.\n   \n   Look at it.\n', 'Look', 'Look at it.'],
    ['1. Turn it.\n   \n   Look at it.\n', 'Turn', 'Turn it.'],
    ['1. Turn it.\r\n \t\r\n   Look at it.\r\n', 'Turn', 'Turn it.'],
    ['1. Turn it.\r   \r   Look at it.\r', 'Turn', 'Turn it.'],
    ['1. Turn it.\r\n\r\n   Look.\r\n', 'Turn', 'Turn it.'],
    ['1. Turn it.\n\n   Look.\n', '\n', ''],
    ['1. Turn it.\r\r   Look.\r', 'Turn', 'Turn it.'],
    ['1. Turn it.\n   1. Below it.\n', 'Turn', 'Turn it.'],
    [
      '1. Turn it.\n   10) Below it.\n   11) And again.\n',
      'Turn',
      'Turn it.\n   10) Below it.\n   11) And again.',
    ],
    ['1. Turn it.\r\n   1. Below it.\r\n', 'Turn', 'Turn it.'],
    ['1. Turn it.\n   And on.\n   1. Below it.\n\n   After it.\n', 'After', 'After it.'],
    ['1. Turn it.\n\n   1. Below it.\n', 'Turn', 'Turn it.'],
    ['1. Turn it at 5.\n   - Below it.\n', 'Turn', 'Turn it at 5.\n   - Below it.'],
  ])('%j, %s', (text, word, expected) => expect(rest(text, word)).toBe(expected));
});

it.each([
  ['of the next step', '1. Turn the pump. `turn: pump`\n\n   > WARNING: Remove the key first.\n\n2. Wait.\n'],
  ['of the section', '1. Turn the pump. `turn: pump`\n\n   > WARNING: Remove the key first.\n'],
])('a caution below the words of a step, %s, commands nothing of the step', (_, text) => {
  const {findings} = check(
    book({
      engine: 'parts:\n  pump: {given: true}\n  key: {given: true}\n',
      procedures: {'a.md': `\n${text}`},
    }),
  );
  expect(findings.filter(({name}) => name === 'untagged-action')).toEqual([]);
});
