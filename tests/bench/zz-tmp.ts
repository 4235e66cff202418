import {TUNED} from '/work/main/tests/findings/prose-corpus.ts';
import {scoreCommands} from '/work/main/tests/findings/prose.ts';
const s = scoreCommands(TUNED);
console.log(s.precision, s.recall, s.right); console.log('WRONG', s.wrong); console.log('MISSED', s.missed);
