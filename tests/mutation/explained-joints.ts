/** Mutants of findings about joints, fasteners and what is left undone that no test can kill, by file and reason. */
import {type Explained, explained} from './explained-form.js';

export const FINDINGS_OF_JOINTS: readonly Explained[] = [
  ...explained('src/findings/rework-missing.ts', 'told are the places that the item has, and no others', {
    'if (open !== undefined) left.set(open, [...(left.get(open) ?? []), place]);': [
      ['[]', '["Stryker was here"]'],
    ],
  }),
  ...explained(
    'src/findings/unreachable-step.ts',
    'a branch hangs on fits and checks alone; the question is for the compiler',
    {
      "if (item.kind !== 'fit' && item.kind !== 'check') return;": [
        ["item.kind !== 'fit' && item.kind !== 'check'", 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/undersize-mismatch.ts',
    'a job is read against the specification, and grinds surfaces alone',
    {
      "if (surface?.kind !== 'surface') continue;": [
        ["surface?.kind !== 'surface'", 'false'],
        ['surface?.kind', 'surface.kind'],
      ],
    },
  ),
  ...explained(
    'src/findings/undersize-mismatch.ts',
    'a word agrees with no amount, whichever of the two is asked',
    {
      "if (one === 'standard' || other === 'standard') return one === other;": [
        ["one === 'standard' || other === 'standard'", "one === 'standard' && other === 'standard'"],
        ["one === 'standard'", 'false'],
        ["other === 'standard'", 'false'],
        ["'standard'", '""'],
      ],
    },
  ),
  ...explained(
    'src/findings/thread-engagement.ts',
    'strengths come from tables, or as so many ksi, and are above nought',
    {
      'if (!worked.ok) return undefined;': [['!worked.ok', 'false']],
    },
  ),
  ...explained(
    'src/findings/thread-engagement.ts',
    'the margin takes up the last figures of a product; no length stands on its end',
    {
      'if (si(length) >= si(least) * (1 - 1e-9)) return undefined;': [
        ['si(length) >= si(least) * (1 - 1e-9)', 'si(length) > si(least) * (1 - 1e-9)'],
      ],
    },
  ),
  ...explained('src/findings/wire-size.ts', 'a spacing that is undefined is taken for none', {
    'return wireFor({hole, ...(apart !== undefined && {spacing: apart})});': [
      ['apart !== undefined', 'true'],
    ],
  }),
  ...explained(
    'src/findings/last-place.ts',
    'two actions that stand at one place are of one tag, and either leads there',
    {
      'if (latest === undefined || inBuildOrder(latest, action) < 0) latest = action;': [
        ['inBuildOrder(latest, action) < 0', 'inBuildOrder(latest, action) <= 0'],
      ],
    },
  ),
  ...explained('src/findings/last-place.ts', 'no item goes by that name', {
    'return ids(item).flatMap((id) => spec.items.get(id) ?? []);': [['[]', '["Stryker was here"]']],
    '...values(item.when?.installed ?? []),': [['[]', '["Stryker was here"]']],
    '...values(item.when?.tight ?? []),': [['[]', '["Stryker was here"]']],
    'return item.on ? [item.on.value] : [];': [['[]', '["Stryker was here"]']],
    'return [];': [['[]', '["Stryker was here"]']],
  }),
  ...explained('src/findings/left-filled-open.ts', 'a place of that name is tightened by no step', {
    'slack(action, fastener, on.length === 0 ? [] : meetingPlaces(part, on, fastener), context, part);': [
      ['[]', '["Stryker was here"]'],
    ],
  }),
  ...explained('src/findings/left-filled-open.ts', 'a filling is no torque, so that the two are never one', {
    'inBuildOrder(action, one) < 0,': [['inBuildOrder(action, one) < 0', 'inBuildOrder(action, one) <= 0']],
  }),
  ...explained('src/findings/left-filled-open.ts', 'no item has a place of that name', {
    '...about(action.item, []),': [['[]', '["Stryker was here"]']],
  }),
  ...explained('src/findings/left-in.ts', 'only parts go in; the question is for the compiler', {
    "if (item.kind !== 'part') return;": [["item.kind !== 'part'", 'false']],
  }),
  ...explained(
    'src/findings/left-slack.ts',
    'what asks for no torque is tight as it is, so that no place is left; the question is for the compiler',
    {
      "if (asked === undefined || asked === 'none' || asked === 'unknown') return;": [
        ["asked === undefined || asked === 'none' || asked === 'unknown'", 'false'],
        [
          "asked === undefined || asked === 'none' || asked === 'unknown'",
          "(asked === undefined || asked === 'none') && asked === 'unknown'",
        ],
        ["asked === undefined || asked === 'none'", 'false'],
        ["asked === undefined || asked === 'none'", "asked === undefined && asked === 'none'"],
        ['asked === undefined', 'false'],
        ["asked === 'none'", 'false'],
        ["'none'", '""'],
        ["asked === 'unknown'", 'false'],
        ["'unknown'", '""'],
      ],
    },
  ),
  ...explained(
    'src/findings/left-slack.ts',
    'only what a step had tightened is undone; the question is for the compiler',
    {
      'if (undone?.undone !== undefined && undone.by !== undefined) {': [['undone.by !== undefined', 'true']],
    },
  ),
  ...explained(
    'src/findings/left-slack.ts',
    'a torque always says how far it went; the question is for the compiler',
    {
      'if (short?.by !== undefined && lacksTurn(short.detail?.torque, fastener)) {': [
        ['short.detail?.torque', 'short.detail.torque'],
      ],
      "return `${stepName(short.by.step)} brings ${them} to ${short.detail?.torque ? `${their} torque` : 'snug'}, and no step turns ${them} on${angle}`;":
        [['short.detail?.torque', 'short.detail.torque']],
    },
  ),
  ...explained('src/findings/left-slack.ts', 'a turn is missed only where an angle is asked for', {
    "const angle = fastener.angle ? ` by ${formatAmount(fastener.angle.value)}` : '';": [
      ["''", '"Stryker was here!"'],
    ],
  }),
  ...explained(
    'src/findings/left-slack.ts',
    'without an angle, what has reached its torque is at the end of it',
    {
      'if (angle === undefined) return false;': [['angle === undefined', 'false']],
    },
  ),
  ...explained(
    'src/findings/left-slack.ts',
    'what ends slack has a torque; the question is for the compiler',
    {
      'const asked = torque?.value;': [['torque?.value', 'torque.value']],
    },
  ),
  ...explained('src/findings/left-slack.ts', 'a torque that is missed and has no value is snug', {
    "return typeof asked === 'object' ? reached !== undefined && amountsAgree(reached, asked) : asked === 'snug';":
      [["asked === 'snug'", 'true']],
  }),
  ...explained(
    'src/findings/left-undone.ts',
    'no fact is called that, and one that never was tells nothing',
    {
      'const kinds = [undone.fact, ...(undone.also ?? [])];': [['[]', '["Stryker was here"]']],
    },
  ),
  ...explained(
    'src/findings/left-undone.ts',
    'only what had been done is undone; the question is for the compiler',
    {
      "const done = fact.by === undefined ? '' : `: done at ${stepName(fact.by.step, step)},`;": [
        ["''", '"Stryker was here!"'],
        ['fact.by === undefined', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/left-unlocked.ts',
    'a lock is missed only where one is specified; the question is for the compiler',
    {
      'asked: `${id} is specified with lock: ${lockText(lock?.value)}`,': [['lock?.value', 'lock.value']],
    },
  ),
  ...explained(
    'src/findings/left-unlocked.ts',
    'a lock that is on, and not as asked, says what it lacks; the question is for the compiler',
    {
      "return holds ? listed(detail?.lacks ?? [], 'and') : '';": [
        ['[]', '["Stryker was here"]'],
        ['detail?.lacks', 'detail.lacks'],
      ],
      'const lacks = first?.holds ? (first.detail?.lacks ?? []) : locksOf(fastener);': [
        ['[]', '["Stryker was here"]'],
        ['first.detail?.lacks', 'first.detail.lacks'],
      ],
    },
  ),
  ...explained(
    'src/findings/left-unlocked.ts',
    'one place at least is open; the question is for the compiler',
    {
      'const lacks = first?.holds ? (first.detail?.lacks ?? []) : locksOf(fastener);': [
        ['first?.holds', 'first.holds'],
      ],
      'const step = tight[0]?.by?.step;': [['tight[0]?.by', 'tight[0].by']],
    },
  ),
  ...explained(
    'src/findings/left-unlocked.ts',
    'what is tight was tightened by a step, which is asked below, and what is missed is one lock at least',
    {
      'if (step === undefined || lacks.length === 0 || fastener.lockAfter.length > 0) return undefined;': [
        ['step === undefined || lacks.length === 0', 'false'],
        ['step === undefined || lacks.length === 0', 'step === undefined && lacks.length === 0'],
        ['step === undefined', 'false'],
        ['lacks.length === 0', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/left-unlocked.ts',
    'a torque always says how far it went; the question is for the compiler',
    {
      'if (!tight.every((fact) => fact.holds && fact.detail?.final === true && fact.by?.step === step))': [
        ['fact.detail?.final', 'fact.detail.final'],
      ],
    },
  ),
  ...explained(
    'src/findings/left-unlocked.ts',
    'what holds was done by a step; the question is for the compiler',
    {
      'if (!tight.every((fact) => fact.holds && fact.detail?.final === true && fact.by?.step === step))': [
        ['fact.by?.step', 'fact.by.step'],
      ],
    },
  ),
  ...explained('src/findings/left-unmeasured.ts', 'of what does not hold nothing more is asked', {
    ': facts.map((fact) => ({...fact, holds: false}));': [['{...fact, holds: false}', '{}']],
  }),
  ...explained('src/findings/left-unrecorded.ts', 'nothing undoes that a mark was written down', {
    "again: '[is|are] written down and lost again',": [["'[is|are] written down and lost again'", '""']],
    "const step = stepAfter({item: mark, kind: 'recorded', places: ['']}, needs, context);": [
      ["''", '"Stryker was here!"'],
      ["'recorded'", '""'],
    ],
  }),
  ...explained(
    'src/findings/loaded-before-cure.ts',
    'only systems are filled; the question is for the compiler',
    {
      "if (item.kind !== 'system') return;": [["item.kind !== 'system'", 'false']],
    },
  ),
  ...explained(
    'src/findings/lock-before-torque.ts',
    'only fasteners are locked; the question is for the compiler',
    {
      "if (action.item.kind === 'fastener') judge(action, action.item, context);": [
        ["action.item.kind === 'fastener'", 'true'],
      ],
    },
  ),
  ...explained('src/findings/lock-sizes.ts', 'only fasteners are locked; the question is for the compiler', {
    "const asked = item.kind === 'fastener' ? locksOf(item) : [];": [
      ["item.kind === 'fastener'", 'true'],
      ['[]', '["Stryker was here"]'],
    ],
  }),
  ...explained('src/findings/lock-sizes.ts', 'what is no id names no lock', {
    "return (value?.type === 'ids' ? value.ids : []).flatMap(({id, span, rest}) => {": [
      ['[]', '["Stryker was here"]'],
    ],
  }),
  ...explained(
    'src/findings/lock-sizes.ts',
    'it is asked of fasteners with such a lock alone; the question is for the compiler',
    {
      'const where = fastener.lock?.where ?? fastener.where;': [
        ['fastener.lock?.where', 'fastener.lock.where'],
      ],
    },
  ),
  ...explained(
    'src/findings/lock-wrong-kind.ts',
    'only fasteners are locked; the question is for the compiler',
    {
      "if (action.item.kind === 'fastener') judge(action, action.item, context);": [
        ["action.item.kind === 'fastener'", 'true'],
      ],
    },
  ),
  ...explained(
    'src/findings/lock-wrong-kind.ts',
    'it is asked of a fastener with a lock; the question is for the compiler',
    {
      'return specified(fastener, `${fastener.id} is specified with lock: ${lockText(fastener.lock?.value)}`);':
        [['fastener.lock?.value', 'fastener.lock.value']],
      'if (asked === undefined || other !== undefined) return {};': [['asked === undefined', 'false']],
    },
  ),
  ...explained('src/findings/lube-first.ts', 'only parts go in; the question is for the compiler', {
    "if (item.kind !== 'part') return;": [["item.kind !== 'part'", 'false']],
  }),
  ...explained(
    'src/findings/lube-first.ts',
    'a joint has no state in which it goes together; the question is for the compiler',
    {
      "if (surface.kind !== 'surface' || surface.assembly?.value !== 'lubed') continue;": [
        ["surface.kind !== 'surface'", 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/lube-first.ts',
    'a lubricant that no tag names is as asked, so that one which is not has its name; the question is for the compiler',
    {
      'const other = facts.find(({holds}) => holds)?.detail?.ids;': [
        ['facts.find(({holds}) => holds)?.detail?.ids', 'facts.find(({\n  holds\n}) => holds)?.detail.ids'],
      ],
    },
  ),
  ...explained('src/findings/mark-mismatch.ts', 'no mark goes by no name; the question is for the compiler', {
    'const must = other === undefined ? undefined : job.marks.get(other);': [
      ['other === undefined', 'false'],
    ],
  }),
  ...explained(
    'src/findings/mark-mismatch.ts',
    'each space is taken out by itself, and all of them in the end',
    {
      "const bare = (text: string) => text.replace(/\\s+/g, '').toUpperCase();": [['/\\s+/g', '/\\s/g']],
    },
  ),
  ...explained(
    'src/findings/passes-not-rising.ts',
    'a torque always says how far it went; the question is for the compiler',
    {
      'detail?.torque !== undefined &&': [['detail?.torque', 'detail.torque']],
    },
  ),
  ...explained(
    'src/findings/passes-not-rising.ts',
    'two torques that are as much agree, which is asked below',
    {
      'torque(first) < torque(detail.torque) &&': [
        ['torque(first) < torque(detail.torque)', 'torque(first) <= torque(detail.torque)'],
      ],
    },
  ),
  ...explained('src/findings/passes-not-rising.ts', 'where no place is below, nothing is told', {
    "const fact = state.get('tight', item.id, below[0] ?? '');": [["''", '"Stryker was here!"']],
  }),
  ...explained(
    'src/findings/passes-not-rising.ts',
    'a place that is below was brought to a torque by a step; the questions are for the compiler',
    {
      'if (below.length === 0 || fact.by === undefined || fact.detail?.torque === undefined) return;': [
        ['fact.by === undefined', 'false'],
        ['fact.detail?.torque === undefined', 'false'],
        ['fact.detail?.torque', 'fact.detail.torque'],
      ],
    },
  ),
  ...explained(
    'src/findings/preload-out-of-range.ts',
    'only fasteners are torqued, and what is stated stands in a clause; the questions are for the compiler',
    {
      "if (item.kind !== 'fastener' || clause === undefined || stated === undefined) return;": [
        [
          "item.kind !== 'fastener' || clause === undefined",
          "item.kind !== 'fastener' && clause === undefined",
        ],
        ["item.kind !== 'fastener' || clause === undefined", 'false'],
        ["item.kind !== 'fastener'", 'false'],
        ['clause === undefined', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/preload-out-of-range.ts',
    'a grade is read only for a thread that is known, and without one no share of its proof load comes out',
    {
      'if (aimed === undefined || thread === undefined || grade === undefined) return undefined;': [
        ['grade === undefined', 'false'],
        ['thread === undefined', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/preload-out-of-range.ts',
    'with a grade the share of its proof load is worked out; the questions are for the compiler',
    {
      'const likely = Math.round((ofProof?.likely ?? 0) * 10) / 10;': [['ofProof?.likely', 'ofProof.likely']],
      'if (ofProof === undefined || (likely >= BAND.low && likely <= BAND.high)) return undefined;': [
        ['ofProof === undefined', 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/preload-out-of-range.ts',
    'a share on the limit is in range, and was let pass before',
    {
      'const limit = likely > BAND.high ? `above ${BAND.high} %` : `below ${BAND.low} %`;': [
        ['likely > BAND.high', 'likely >= BAND.high'],
      ],
    },
  ),
  ...explained(
    'src/findings/preload-out-of-range.ts',
    'a factor of two decimals is written alike either way',
    {
      'return String(k).length > 4 ? String(k) : k.toFixed(2);': [
        ['String(k).length > 4', 'String(k).length >= 4'],
      ],
    },
  ),
  ...explained('src/findings/rework-missing.ts', 'what is no step has no branch', {
    'const branches: Node[] = [];': [['[]', '["Stryker was here"]']],
  }),
  ...explained(
    'src/findings/rework-missing.ts',
    'only steps with a branch are gathered, which is asked once more; the questions are for the compiler',
    {
      'if (when === undefined || below.length > 0) continue;': [['when === undefined', 'false']],
      'when?.item.id === item.id && when.places.includes(place) ? [when.is] : [],': [
        ['when?.item', 'when.item'],
      ],
      'if (node.when !== undefined) branches.push(node);': [['node.when !== undefined', 'true']],
    },
  ),
  ...explained('src/findings/rework-missing.ts', 'where nothing is found there is no number either', {
    'const [, number] = found ?? [];': [['[]', '["Stryker was here"]']],
    "if (found === null || number === undefined || number === '1') return undefined;": [
      ['found === null || number === undefined', 'found === null && number === undefined'],
      ['found === null', 'false'],
      ['number === undefined', 'false'],
    ],
  }),
  ...explained('src/findings/step-unmarked.ts', 'after a step without a number no number is the next', {
    'if (own === undefined) return;': [['own === undefined', 'false']],
  }),
  ...explained(
    'src/findings/step-unmarked.ts',
    'a line that is found has both; the question is for the compiler',
    {
      "const {0: line, index, groups: {said = '', mark = ''} = {}} = found;": [
        ["''", '"Stryker was here!"'],
        ["''", '"Stryker was here!"'],
      ],
    },
  ),
  ...explained('src/findings/step-unmarked.ts', 'a step begins with its number, and no line ends within it', {
    "const indent = step.start - (text.lastIndexOf('\\n', step.start - 1) + 1);": [
      ['step.start - 1', 'step.start + 1'],
    ],
  }),
  ...explained(
    'src/findings/thread-condition.ts',
    'only fasteners are torqued; the question is for the compiler',
    {
      'if (!isFastenerAction(action)) return;': [['!isFastenerAction(action)', 'false']],
    },
  ),
  ...explained(
    'src/findings/thread-condition.ts',
    'what is tight was tightened by a step; the question is for the compiler',
    {
      'return since !== undefined && before.by !== undefined && inBuildOrder(before.by, since) < 0;': [
        ['before.by !== undefined', 'true'],
      ],
    },
  ),
  ...explained('src/findings/thread-condition.ts', 'no tag both tightens a fastener and coats its threads', {
    'return since !== undefined && before.by !== undefined && inBuildOrder(before.by, since) < 0;': [
      ['inBuildOrder(before.by, since) < 0', 'inBuildOrder(before.by, since) <= 0'],
    ],
  }),
  ...explained(
    'src/findings/two-actions.ts',
    'only parts, surfaces, joints, fasteners and systems are worked on in this way',
    {
      'default:': [['default:\n      return [];', 'default:']],
      'return [];': [['[]', '["Stryker was here"]']],
    },
  ),
  ...explained('src/findings/workings.ts', 'worked out again it is the same; what is kept saves the work', {
    'if (before !== undefined) return before;': [['before !== undefined', 'false']],
  }),
  ...explained('src/findings/strip-not-dry.ts', 'only fits are laid; the question is for the compiler', {
    "if (item.kind !== 'fit') return;": [["item.kind !== 'fit'", 'false']],
  }),
  ...explained(
    'src/findings/substitute-unaltered.ts',
    'only for parts does a job name substitutes; the question is for the compiler',
    {
      "if (item.kind !== 'part' || fitted === undefined) return;": [["item.kind !== 'part'", 'false']],
    },
  ),
  ...explained(
    'src/findings/substitute-unaltered.ts',
    'a job keeps no name but that of a substitute which its part has; the question is for the compiler',
    {
      'for (const {value, where} of substitute?.alterations ?? []) {': [
        ['[]', '["Stryker was here"]'],
        ['substitute?.alterations', 'substitute.alterations'],
      ],
    },
  ),
  ...explained(
    'src/findings/substitute-unaltered.ts',
    'a part that is altered has a list of what was done to it; the question is for the compiler',
    {
      'return !fact.holds || fact.detail?.ids?.includes(value) !== true;': [
        ['fact.detail?.ids?.includes', 'fact.detail?.ids.includes'],
        ['fact.detail?.ids', 'fact.detail.ids'],
      ],
    },
  ),
  ...explained(
    'src/findings/tightened-early.ts',
    'only fasteners are torqued and locked; the questions are for the compiler',
    {
      "if (item.kind !== 'fastener' || isRunDown(action, item)) return;": [
        ["item.kind !== 'fastener'", 'false'],
      ],
      "if (item.kind !== 'fastener') return;": [["item.kind !== 'fastener'", 'false']],
    },
  ),
  ...explained(
    'src/findings/wire-run.ts',
    'of spans that are as long as each other in the one unit of their layout, either is told alike',
    {
      'const longest = spans.reduce((one, other) => (si(other) > si(one) ? other : one));': [
        ['si(other) > si(one)', 'si(other) >= si(one)'],
      ],
    },
  ),
  ...explained('src/findings/words.ts', 'each of the nouns begins with a small letter', {
    "return noun.replace(/^[a-z]+/, (first) => 'x'.repeat(first.length));": [['/^[a-z]+/', '/[a-z]+/']],
  }),
  ...explained(
    'src/findings/waiver-without-reason.ts',
    'a waiver is of one finding; what else it names is told where it is read, and left out',
    {
      "message: `the waiver of ${tag.targets.map(({id}) => id).join(', ')} does not say ${missing.join(', nor ')}`,":
        [["', '", '""']],
    },
  ),
  ...explained(
    'src/findings/substitute-unaltered.ts',
    'what is found at no place lasts at none, and is not told',
    {
      'if (bad.length === 0) continue;': [['bad.length === 0', 'false']],
    },
  ),
  ...explained('src/findings/rework-missing.ts', 'no item has a place of that name', {
    'if (open !== undefined) left.set(open, [...(left.get(open) ?? []), place]);': [
      ['[]', '["Stryker was here"]'],
    ],
  }),
  ...explained(
    'src/findings/thread-engagement.ts',
    'the strengths of bolt and metal are above nought, which is asked where they are read; the question is for the compiler',
    {
      'if (!worked.ok) return undefined;': [['!worked.ok', 'false']],
    },
  ),
  ...explained(
    'src/findings/undersize-mismatch.ts',
    'a job says of surfaces alone how they were ground; the questions are for the compiler',
    {
      "if (surface?.kind !== 'surface') continue;": [
        ["surface?.kind !== 'surface'", 'false'],
        ['surface?.kind', 'surface.kind'],
      ],
    },
  ),
  ...explained(
    'src/findings/unreachable-step.ts',
    'a branch hangs on a fit or a check; the question is for the compiler',
    {
      "if (item.kind !== 'fit' && item.kind !== 'check') return;": [
        ["item.kind !== 'fit' && item.kind !== 'check'", 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/value-disagrees.ts',
    'fasteners are torqued, systems filled and joints sealed; the questions are for the compiler',
    {
      "if (action.item.kind !== 'fastener') return;": [["action.item.kind !== 'fastener'", 'false']],
      "if (action.item.kind !== 'system') return;": [["action.item.kind !== 'system'", 'false']],
      "const asked = action.item.kind === 'joint' ? action.item.seal : undefined;": [
        ["action.item.kind === 'joint'", 'true'],
      ],
    },
  ),
  ...explained(
    'src/findings/value-disagrees.ts',
    'only fits and checks are read; the question is for the compiler',
    {
      "if (item.kind !== 'fit' && item.kind !== 'check') return;": [
        ["item.kind !== 'fit' && item.kind !== 'check'", 'false'],
      ],
    },
  ),
  ...explained('src/findings/value-disagrees.ts', 'where none is specified there is none to write', {
    'const fix = only !== undefined && second === undefined && clause.value.ids.length === 1 ? only : undefined;':
      [['only !== undefined', 'true']],
  }),
  ...explained('src/findings/wire-size.ts', 'a spacing that is unknown is as none', {
    'return wireFor({hole, ...(apart !== undefined && {spacing: apart})});': [
      ['apart !== undefined', 'true'],
    ],
  }),
  ...explained('src/findings/words.ts', 'behind the last letter no word begins', {
    'for (let start = 0; start < text.length; ) {': [['start < text.length', 'start <= text.length']],
  }),
  ...explained('src/findings/wrench-out-of-range.ts', 'no wrench goes by no name', {
    "const named = namedIn(tag, item.kind === 'check' ? item.using : [], all);": [
      ['[]', '["Stryker was here"]'],
    ],
  }),
  ...explained(
    'src/findings/wrench-out-of-range.ts',
    'only fasteners have a torque; the question is for the compiler',
    {
      "const asked = item.kind === 'fastener' ? torquesOf(item).map((one) => one.value) : [];": [
        ["item.kind === 'fastener'", 'true'],
      ],
    },
  ),
  ...explained('src/findings/wrench-out-of-range.ts', 'a wrench whose highest it is reaches it', {
    'return low > works.high ? low / works.high : works.low / high;': [
      ['low > works.high', 'low >= works.high'],
    ],
  }),
  ...explained(
    'src/findings/value-disagrees.ts',
    'passes that are read are one at least; the question is for the compiler',
    {
      'return last !== undefined && amountsAgree(last, asked);': [['last !== undefined', 'true']],
    },
  ),
  ...explained(
    'src/findings/value-disagrees.ts',
    'names that are read are one at least; the question is for the compiler',
    {
      'if (used === undefined || !spec.items.has(used.id) || barOn(spec, used.id, action.item)) return;': [
        ['used === undefined', 'false'],
      ],
    },
  ),
];
