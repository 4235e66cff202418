/** Writes the files that are made from code: `npm run generate`. */
import {writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {generatedFiles} from './files.js';

const root = process.cwd();
for (const {path, text} of generatedFiles(root)) writeFileSync(join(root, path), text);
