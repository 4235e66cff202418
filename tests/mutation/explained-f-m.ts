/** Mutants of findings from f to m that no test can kill, by file and reason. */
import {type Explained, explained} from './explained-form.js';

export const FINDINGS_F_TO_M: readonly Explained[] = [
  ...explained(
    'src/findings/fit-impossible.ts',
    'of two sizes with one middle either may be the hole: least and most come out the same',
    {
      'const [hole, shaft] = middle(first) >= middle(second) ? [first, second] : [second, first];': [
        ['middle(first) >= middle(second)', 'middle(first) > middle(second)'],
      ],
    },
  ),
  ...explained('src/findings/fit-impossible.ts', 'what is worked out of it looks at its ends alone', {
    "return {form: 'range', low: end(low, -half), high: end(high, half)};": [["'range'", '""']],
  }),
  ...explained('src/findings/fit-impossible.ts', 'middles are only held against each other', {
    'return (si(low) + si(high)) / 2;': [['(si(low) + si(high)) / 2', '(si(low) + si(high)) * 2']],
  }),
  ...explained('src/findings/fit-impossible.ts', 'the last figures of a conversion decide there', {
    'return Math.min(...middles) >= 0.9 * Math.max(...middles);': [
      [
        'Math.min(...middles) >= 0.9 * Math.max(...middles)',
        'Math.min(...middles) > 0.9 * Math.max(...middles)',
      ],
    ],
  }),
  ...explained(
    'src/findings/fit-impossible.ts',
    'the margin takes up the last figures of a conversion; no limit stands on its end',
    {
      'return si(most) >= due.low - slack && si(least) <= due.high + slack;': [
        ['si(most) >= due.low - slack', 'si(most) > due.low - slack'],
        ['si(least) <= due.high + slack', 'si(least) < due.high + slack'],
      ],
    },
  ),
  ...explained('src/findings/found-fault.ts', 'no offset is beyond a length that there is not', {
    'if (length === undefined) continue;': [['length === undefined', 'false']],
  }),
  ...explained(
    'src/findings/gauge-too-coarse.ts',
    'nothing else has a range, so that it says nothing; the question is for the compiler',
    {
      ": tool.kind === 'consumable'": [["tool.kind === 'consumable'", 'true']],
    },
  ),
  ...explained(
    'src/findings/gauge-too-coarse.ts',
    'without an accuracy its ratio is beyond every other; the question is for the compiler',
    {
      'accuracy !== undefined && byAccuracy < byResolution': [['accuracy !== undefined', 'true']],
    },
  ),
  ...explained('src/findings/gauge-too-coarse.ts', 'what is worked out of it looks at its ends alone', {
    "return {form: 'range', low: {...limits.high, value: 0}, high: limits.high};": [["'range'", '""']],
  }),
  ...explained(
    'src/findings/gauge-too-coarse.ts',
    'the hundredth takes up what a conversion loses; no limit stands on its end',
    {
      '!Number.isFinite(end) || (end >= reads.low * 0.99 && end <= reads.high * 1.01);': [
        ['end >= reads.low * 0.99', 'end > reads.low * 0.99'],
        ['end <= reads.high * 1.01', 'end < reads.high * 1.01'],
      ],
    },
  ),
  ...explained('src/findings/hazards.ts', 'every procedure has a section; the default is for the compiler', {
    'return outline[low]?.around ?? [0];': [
      ['[0]', '[]'],
      ['outline[low]?.around', 'outline[low].around'],
    ],
  }),
  ...explained('src/findings/hazards.ts', 'of no hazards nothing is told, so that only the work is saved', {
    'if (brought.length === 0) continue;': [['brought.length === 0', 'false']],
  }),
  ...explained('src/findings/hazards.ts', 'it has no depth, so that nothing is within it', {
    'let open: {readonly start: number; readonly depth: number}[] = [];': [['[]', '["Stryker was here"]']],
  }),
  ...explained(
    'src/findings/hazards.ts',
    'no step and no caution begins where a heading does; the question is for the compiler',
    {
      'if ((outline[middle]?.start ?? 0) <= offset) low = middle;': [
        ['(outline[middle]?.start ?? 0) <= offset', '(outline[middle]?.start ?? 0) < offset'],
        ['outline[middle]?.start', 'outline[middle].start'],
      ],
    },
  ),
  ...explained(
    'src/findings/inspect-first.ts',
    'reported of no place it lasts nowhere, so that only the work is saved',
    {
      'if (bad.length === 0) return;': [['bad.length === 0', 'false']],
    },
  ),
  ...explained('src/findings/known.ts', 'what is no map is no entry', {
    "const entries = list?.type === 'list' ? list.items : [];": [['[]', '["Stryker was here"]']],
  }),
  ...explained('src/findings/known.ts', 'no finding says either of them', {
    "function keyOf({finding, file, says = '', ...about}: Known): string {": [["''", '"Stryker was here!"']],
  }),
  ...explained(
    'src/findings/known-text.ts',
    'an entry is one of the list; the question is for the compiler',
    {
      "if (found === 1) map?.delete('times');": [['map?.delete', 'map.delete']],
      "else map?.set('times', found);": [['map?.set', 'map.set']],
    },
  ),
  ...explained(
    'src/findings/mend.ts',
    'no fix brings back what another took away, so that the rounds end by themselves',
    {
      'for (let round = 0; ; round++) {': [['round++', 'round--']],
      'if (chosen.length === 0 || round === MOST_ROUNDS) {': [['round === MOST_ROUNDS', 'false']],
    },
  ),
  ...explained(
    'src/findings/mend.ts',
    'findings come in the order of the text, and so do fixes that change only how a thing is written',
    {
      '.sort((one, other) => one.span.start - other.span.start);': [
        ['(one, other) => one.span.start - other.span.start', '() => undefined'],
        ['one.span.start - other.span.start', 'one.span.start + other.span.start'],
      ],
    },
  ),
  ...explained('src/findings/mend.ts', 'a text without edits is read as it was; only the work is saved', {
    'if (edits.length === 0) return procedure;': [['edits.length === 0', 'false']],
  }),
  ...explained(
    'src/findings/missing-seal.ts',
    'what holds was done by a step; the question is for the compiler',
    {
      'const steps = facts.flatMap(({by}) => by?.step ?? []);': [
        ['[]', '["Stryker was here"]'],
        ['by?.step', 'by.step'],
      ],
      'return holds ? by?.step.order : undefined;': [['by?.step', 'by.step']],
    },
  ),
  ...explained(
    'src/findings/missing-seal.ts',
    'a cure by then keeps the seal from being written there in any case',
    {
      'return clean <= order && (cure === undefined || cured > order);': [
        ['cured > order', 'cured >= order'],
      ],
    },
  ),
  ...explained(
    'src/findings/missing-seal.ts',
    'only of a joint that asks for a seal; the question is for the compiler',
    {
      'const seals = joint.seal?.value;': [['joint.seal?.value', 'joint.seal.value']],
      "if (typeof seals !== 'object' || seals.length !== 1 || step === undefined) return undefined;": [
        ["typeof seals !== 'object'", 'false'],
      ],
    },
  ),
  ...explained(
    'src/findings/missing-step.ts',
    'no other block has a step in it; the question is for the compiler',
    {
      "content.some((block) => block.type === 'step' && block.step === step),": [
        ["block.type === 'step'", 'true'],
      ],
    },
  ),
  ...explained('src/findings/missing-step.ts', 'a step of a list begins with its number', {
    '.replace(/^(\\d+)(.)[\\s\\S]*/, (_, numeral, mark) => `${Number(numeral) + 1}${mark}`);': [
      ['/^(\\d+)(.)[\\s\\S]*/', '/(\\d+)(.)[\\s\\S]*/'],
    ],
  }),
  ...explained(
    'src/findings/missing-torque.ts',
    'no lock of that name goes on first, so that it is as good as none',
    {
      'const locks = detail?.ids ?? [];': [['[]', '["Stryker was here"]']],
    },
  ),
  ...explained(
    'src/findings/install-order.ts',
    'what is in was put in by a step; the default is for the compiler',
    {
      "const by = state.get('installed', item.id, already[0] ?? '').by;": [["''", '"Stryker was here!"']],
    },
  ),
  ...explained(
    'src/findings/install-order.ts',
    'what is in was put in by a step; the question is for the compiler',
    {
      "const since = by === undefined ? '' : ` since ${stepName(by.step, action.step)}`;": [
        ["''", '"Stryker was here!"'],
        ['by === undefined', 'false'],
      ],
    },
  ),
  ...explained('src/findings/install-order.ts', 'a joint is on no part; the question is for the compiler', {
    "return closedBy(relations, cover).some((closed) => closed.kind === 'surface' && closed.on?.value === id);":
      [["closed.kind === 'surface'", 'true']],
  }),
  ...explained(
    'src/findings/missing-place.ts',
    'no other block has a step in it; the question is for the compiler',
    {
      "const own = content.flatMap((block) => (block.type === 'step' ? [block.step] : []));": [
        ['[]', '["Stryker was here"]'],
      ],
    },
  ),
  ...explained('src/findings/missing-place.ts', 'an `if` has one target', {
    "return step.tags.some(({verb, targets}) => verb === 'if' && targets.some((target) => target.id === id));":
      [['targets.some((target) => target.id === id)', 'targets.every(target => target.id === id)']],
  }),
];
