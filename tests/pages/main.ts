/**
 * Renews the kept pictures of pages in `tests/fixtures/pages`, and says which changed; look at each before you commit
 * it. Use: `npm run pages`.
 */
import {existsSync, mkdirSync, readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {openBrowser} from '../help/browser.js';
import {pageWith} from '../help/pdf.js';
import {difference, TOLERANCE} from './compare.js';
import {keptPages, pdfOf} from './pages.js';
import {openStudio} from './picture.js';

const folder = join(process.cwd(), 'tests', 'fixtures', 'pages');
mkdirSync(folder, {recursive: true});
const browser = await openBrowser();
const studio = await openStudio(browser);
for (const {name, print, has} of keptPages()) {
  const pdf = await pdfOf(print);
  const picture = await studio.draw(pdf, await pageWith(pdf, has));
  const file = join(folder, `${name}.png`);
  const apart = existsSync(file) ? difference(picture, await studio.read(readFileSync(file))) : 255;
  const kept = apart <= TOLERANCE;
  if (!kept) writeFileSync(file, await studio.png(picture));
  process.stdout.write(`${name}: ${apart.toFixed(1)} of ${TOLERANCE}, ${kept ? 'kept' : 'renewed'}\n`);
}
await browser.close();
