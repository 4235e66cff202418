/** The long soak of the editor's core: `npm run soak [EDITS] [SEED] [small|long|demo]`. Fails where it disagrees, or memory grows. */
import {setFlagsFromString} from 'node:v8';
import {runInNewContext} from 'node:vm';
import {soak} from './soak.js';

const [edits = '10000', seed = '1', book = 'small'] = process.argv.slice(2);
setFlagsFromString('--expose-gc');
const collect: unknown = runInNewContext('gc');
const start = performance.now();
const {
  memory,
  disagreement,
  edits: done,
} = await soak(Number(edits), Number(seed), book === 'long' || book === 'demo' ? book : 'small', () => {
  if (typeof collect === 'function') collect();
});
const mebibytes = memory.map((bytes) => Math.round(bytes / 1024 / 1024));
console.log(
  `${done} edits of the ${book} book, seed ${seed}, ${Math.round((performance.now() - start) / 1000)} s`,
);
console.log(`memory in use at every tenth, MiB: ${mebibytes.join(' ')}`);
const [early = 0] = memory;
const grown = (memory.at(-1) ?? 0) > early * 1.5;
if (disagreement) console.log(`after edit ${disagreement.edit} typed and saved disagree:`, disagreement);
if (grown) console.log('memory grew by more than half');
process.exitCode = disagreement || grown ? 1 : 0;
