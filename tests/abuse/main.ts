/**
 * Fuzzes every reader and what is made of what it read: `npm run fuzz -- [SECONDS] [SEED] [SUBJECT]`. Prints its seed; a
 * crash is made as short as it can be, written down, and said how to keep.
 */
import {mkdirSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';
import {seeded} from '../help/random.js';
import {coverageOf} from './coverage.js';
import {fuzz, nameOf} from './fuzz.js';
import {subjects} from './subjects.js';

const [seconds = '60', seed = String(Date.now() % 1_000_000), only] = process.argv.slice(2);
const chosen = subjects().filter(({name}) => only === undefined || name === only);
const FOUND = '.cache/fuzz';
console.log(`seed ${seed}, ${seconds} s over ${chosen.map(({name}) => name).join(', ')}`);
const coverage = await coverageOf('.mjs');
let crashed = 0;
for (const [at, subject] of chosen.entries()) {
  const end = performance.now() + (Number(seconds) * 1000) / chosen.length;
  const before = process.cpuUsage();
  const random = seeded(Number(seed) + at);
  const {inputs, kept, crashes} = await fuzz(subject, {
    random,
    coverage,
    more: () => performance.now() < end,
  });
  const used = process.cpuUsage(before);
  const rate = Math.round(inputs / ((used.user + used.system) / 1e6));
  console.log(
    `${subject.name}: ${inputs} inputs, ${rate} a second of processor, ${kept} joined, ${coverage.reached()} parts reached`,
  );
  for (const {text, says} of crashes) {
    crashed++;
    const file = join(FOUND, subject.name, nameOf(text));
    mkdirSync(join(FOUND, subject.name), {recursive: true});
    writeFileSync(file, text);
    console.log(`\n${says.split('\n').slice(0, 4).join('\n')}\n  by ${JSON.stringify(text.slice(0, 300))}`);
    console.log(`  keep it once it is mended: cp ${file} tests/abuse/kept/${subject.name}/\n`);
  }
}
coverage.stop();
process.exitCode = crashed > 0 ? 1 : 0;
