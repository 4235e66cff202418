import {HELD_OUT} from '/work/main/tests/findings/prose-held-out.ts';
import {scoreCommands} from '/work/main/tests/findings/prose.ts';
const s = scoreCommands(HELD_OUT);
console.log(s.precision, s.recall, s.right); console.log('WRONG', s.wrong); console.log('MISSED', s.missed);
