/** What is made from code must be in step with it: `npm run generate` writes it anew. */
import {readFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {expect, test} from 'vitest';
import {generatedFiles} from './files.js';

const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/\/$/, '');

test.each(generatedFiles(root))('$path', ({path, text}) => {
  expect(readFileSync(`${root}/${path}`, 'utf8')).toBe(text);
});
