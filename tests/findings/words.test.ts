/** How shop prose is cut: what belongs to a word or a number, what is left out, and which nouns are no commands. */
import {describe, expect, it} from 'vitest';
import {wordsOf} from '../../src/findings/words.js';

describe('the words, numbers and marks', () => {
  it.each<[text: string, words: string]>([
    ['Oil & fit', 'oil|and|fit'],
    ["don't, don’t", "don't|,|don’t"],
    ["the shop' end", 'the|shop|end'],
    ['hand-tight, type-5', 'hand-tight|,|type|5'],
    ['0.032 in, 1,000 rpm, 3/8-16.', '0.032|in|,|1,000|rpm|,|3/8|16|.'],
    ['90°C, 5 µm, 5 μm, 5 ΜM', '90|°c|,|5|µm|,|5|μm|,|5|μm'],
    ['preſs it, preſſed', 'preſs|it|,|preſſed'],
    ['Oil it “well” 🔧 (twice)', 'oil|it|well|(|twice|)'],
    ['oil\nfit', 'oil|fit'],
    ['oil\n fit', 'oil|fit'],
    ['oil\n\nfit', 'oil|\n\n|fit'],
    ['oil\n \t \nfit', 'oil|\n \t \n|fit'],
    ['oil\r\n\r\nfit', 'oil|\n\r\n|fit'],
    ['oil\n', 'oil'],
  ])('of %j', (text, words) => {
    expect(
      wordsOf(text)
        .map((word) => word.text)
        .join('|'),
    ).toBe(words);
  });

  it('stand where they stand in the text, though a letter before them is longer in lower case', () => {
    const text = 'İİ OIL the \u212ait';
    expect(wordsOf(text).map(({start, end}) => text.slice(start, end))).toEqual(['OIL', 'the', '\u212ait']);
    expect(wordsOf(text).map((word) => word.text)).toEqual(['oil', 'the', 'kit']);
  });
});

describe('a noun that begins with a command has it crossed out', () => {
  it.each<[text: string, words: string]>([
    ['Oil pump, oil pumps, oil it', 'xxx pump , xxx pumps , oil it'],
    ['oil seal seat', 'xxx seal seat'],
    ['oil seal, seal seat', 'xxx seal , xxxx seat'],
    ['Locknut, lock nut, lock it', 'xxxxxxx , xxxx nut , lock it'],
    ['pre-check valve, pre-check', 'pre-xxxxx valve , pre-check'],
    ['90°lock nut', '90 °xxxx nut'],
    ['oil pumping, boil pump, oil\npump', 'oil pumping , boil pump , oil pump'],
  ])('%j', (text, words) => {
    expect(
      wordsOf(text)
        .map((word) => word.text)
        .join(' '),
    ).toBe(words);
  });
});
