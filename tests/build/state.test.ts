/** The state of facts: set, undone, taken back, and met with another way. */
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {FACT_KINDS, type FactKind} from '../../src/build/facts.js';
import type {Found} from '../../src/build/found.js';
import {ledger} from '../../src/build/ledger.js';
import type {Action} from '../../src/build/program.js';
import {State} from '../../src/build/state.js';
import {book} from '../help/example.js';

const ACTION = anAction();

type Deed = readonly ['set' | 'undo' | 'spoil', FactKind, string, string];

const deed: fc.Arbitrary<Deed> = fc.tuple(
  fc.constantFrom('set' as const, 'undo' as const, 'spoil' as const),
  fc.constantFrom(...FACT_KINDS),
  fc.constantFrom('a', 'b'),
  fc.constantFrom('', 'front', 'far left'),
);
const deeds = fc.array(deed, {maxLength: 30});

describe('State', () => {
  it('takes back everything since a mark, exactly', () => {
    fc.assert(
      fc.property(deeds, deeds, (before, since) => {
        const state = stateAfter(before);
        const then = picture(state);
        const mark = state.mark();
        perform(state, since);
        state.takeBack(mark);
        expect(picture(state)).toEqual(then);
      }),
    );
  });

  it('keeps, where two ways meet, exactly what holds on both', () => {
    fc.assert(
      fc.property(deeds, deeds, (common, branch) => {
        const without = held(stateAfter(common));
        const within = held(stateAfter([...common, ...branch]));
        const state = stateAfter(common);
        const mark = state.mark();
        perform(state, branch);
        state.meet(state.takeBack(mark));
        expect(held(state)).toEqual(without.filter((fact) => within.includes(fact)));
      }),
    );
  });

  it('says what was lost since a mark', () => {
    fc.assert(
      fc.property(deeds, deeds, (before, since) => {
        const state = stateAfter(before);
        const then = held(state);
        const mark = state.mark();
        perform(state, since);
        const now = held(state);
        const lost = [...state.lostSince(mark).keys()].map(
          ({kind, item, place}) => `${kind} ${item} ${place}`,
        );
        expect(lost.sort()).toEqual(then.filter((fact) => !now.includes(fact)).sort());
      }),
    );
  });

  it.each([
    {here: true, there: true, met: true},
    {here: true, there: false, met: false},
    {here: false, there: true, met: false},
    {here: false, there: false, met: false},
  ])('knows a torque for final only where it is on both ways: $here, $there', ({here, there, met}) => {
    const state = new State();
    state.set('tight', 'a', '', ACTION, {final: here});
    const mark = state.mark();
    state.set('tight', 'a', '', ACTION, {final: there});
    const lost = state.lostSince(mark);
    expect([...lost.keys()].some(({kind, item}) => kind === 'tight' && item === 'a')).toBe(here && !there);
    state.meet(state.takeBack(mark));
    expect(state.get('tight', 'a', '').detail?.final).toBe(met);
    expect(state.holds('tight', 'a', '')).toBe(true);
  });

  it.each<readonly [here: string[], there: string[], met: string[]]>([
    [[], [], []],
    [['one'], [], ['one']],
    [[], ['one'], ['one']],
    [['one'], ['one'], ['one']],
    [['one'], ['two'], ['one', 'two']],
    [['one', 'two'], ['two'], ['one', 'two']],
  ])('keeps the faults of both ways, each once: %j, %j', (here, there, met) => {
    const state = new State();
    state.set('installed', 'a', '', ACTION);
    const mark = state.mark();
    for (const name of there) state.fault('installed', 'a', '', faultNamed(name));
    expect(state.lostSince(mark).size > 0).toBe(there.length > 0);
    const other = state.takeBack(mark);
    for (const name of here) state.fault('installed', 'a', '', faultNamed(name));
    state.meet(other);
    expect(state.faults().map(({message}) => message)).toEqual(met);
  });

  it('leaves no trace where two ways that are alike meet', () => {
    const state = new State();
    state.set('installed', 'a', '', ACTION);
    const mark = state.mark();
    state.undo('installed', 'a', '', ACTION);
    state.set('installed', 'a', '', ACTION);
    const other = state.takeBack(mark);
    state.meet(other);
    expect(state.mark()).toBe(mark);
  });

  it.each<readonly [title: string, deeds: readonly Deed[], by: boolean, undone: boolean]>([
    ['what was never done', [], false, false],
    ['what was done', [['set', 'clean', 'a', '']], true, false],
    ['what was never done and is undone', [['undo', 'clean', 'a', '']], false, false],
    [
      'what was done and undone',
      [
        ['set', 'clean', 'a', ''],
        ['undo', 'clean', 'a', ''],
      ],
      true,
      true,
    ],
    ['what was never done and is spoilt', [['spoil', 'clean', 'a', '']], false, true],
    [
      'what was done and is spoilt',
      [
        ['set', 'clean', 'a', ''],
        ['spoil', 'clean', 'a', ''],
      ],
      true,
      true,
    ],
    [
      'what was spoilt and is undone',
      [
        ['spoil', 'clean', 'a', ''],
        ['undo', 'clean', 'a', ''],
      ],
      false,
      true,
    ],
  ])('remembers of %s which action did it and which undid it', (_, done, by, undone) => {
    const fact = stateAfter(done).get('clean', 'a', '');
    expect([fact.by, fact.undone]).toEqual([by ? ACTION : undefined, undone ? ACTION : undefined]);
  });

  it('knows of what was just undone the part that still holds', () => {
    const state = new State();
    state.set('locked', 'a', '', ACTION, {ids: ['threadlocker', 'safety-wire']});
    state.undo('locked', 'a', '', ACTION);
    expect(state.named('locked', 'a', '')).toEqual([]);
    state.keep('locked', 'a', '', {ids: ['threadlocker'], lacks: ['safety-wire']});
    expect(state.get('locked', 'a', '')).toEqual({
      kind: 'locked',
      holds: true,
      by: ACTION,
      undone: ACTION,
      detail: {ids: ['threadlocker'], lacks: ['safety-wire']},
    });
    expect(state.named('locked', 'a', '')).toEqual(['threadlocker']);
    expect([state.holds('locked', 'a', ''), state.whole('locked', 'a', '')]).toEqual([true, false]);
    expect(state.changesSince(0).map(({holds}) => holds)).toEqual([false, false, false]);
  });

  it('names nothing with a fact that was noted without names', () => {
    const state = new State();
    state.set('sealed', 'a', '', ACTION);
    state.set('sealed', 'b', '', ACTION, {ids: ['gasket']});
    expect([state.named('sealed', 'a', ''), state.named('sealed', 'b', '')]).toEqual([[], ['gasket']]);
  });

  it('forgets the faults of what does not hold', () => {
    const state = new State();
    state.fault('installed', 'a', '', faultNamed('one'));
    expect(state.mark()).toBe(0);
    expect(state.faults()).toEqual([]);
    state.set('installed', 'a', '', ACTION);
    state.fault('installed', 'a', '', faultNamed('one'));
    state.fault('installed', 'a', '', faultNamed('two'));
    expect(state.faults()).toEqual([faultNamed('one'), faultNamed('two')]);
    state.undo('installed', 'a', '', ACTION);
    expect(state.faults()).toEqual([]);
  });

  it('says what was gained of a kind since a mark, and not what was there before or is gone again', () => {
    const state = stateAfter([['set', 'tight', 'a', 'front']]);
    const mark = state.mark();
    perform(state, [
      ['set', 'tight', 'a', 'front'],
      ['set', 'installed', 'b', 'front'],
      ['set', 'tight', 'b', 'front'],
      ['set', 'tight', 'b', 'front'],
      ['set', 'tight', 'b', ''],
      ['undo', 'tight', 'b', ''],
    ]);
    expect(state.gainedSince(mark, 'tight')).toEqual([
      {kind: 'tight', item: 'b', place: 'front', holds: true},
    ]);
  });

  it('tells places with spaces in their names apart', () => {
    const state = stateAfter([['set', 'tight', 'a', 'far left']]);
    expect(state.changesSince(0)).toEqual([{kind: 'tight', item: 'a', place: 'far left', holds: true}]);
    expect(state.gainedSince(0, 'tight')).toEqual([
      {kind: 'tight', item: 'a', place: 'far left', holds: true},
    ]);
    expect(state.held('a', 'far left')).toEqual(['tight']);
    expect(state.held('a', '')).toEqual([]);
  });
});

const FAULTS = new Map(['one', 'two'].map((name) => [name, fault(name)]));

/** The same object each time: the same fault, however the engine came to it. */
function faultNamed(name: string): Found {
  return FAULTS.get(name) ?? fault(name);
}

function fault(message: string): Found {
  return {where: {file: 'procedure.md', span: {start: 0, end: 0}}, message};
}

function stateAfter(done: readonly Deed[]): State {
  const state = new State();
  perform(state, done);
  return state;
}

function perform(state: State, done: readonly Deed[]): void {
  for (const [what, kind, item, place] of done) state[what](kind, item, place, ACTION);
}

function held(state: State): string[] {
  return picture(state)
    .filter(([, holds]) => holds)
    .map(([key]) => key);
}

function picture(state: State): [string, boolean, boolean][] {
  return FACT_KINDS.flatMap((kind) =>
    ['a', 'b'].flatMap((item) =>
      ['', 'front', 'far left'].map((place): [string, boolean, boolean] => {
        const fact = state.get(kind, item, place);
        return [`${kind} ${item} ${place}`, fact.holds, fact.undone !== undefined];
      }),
    ),
  );
}

function anAction(): Action {
  const run = ledger(
    book({
      engine: 'parts:\n  block: {}\n',
      procedures: {'procedure.md': '\n1. Set it down. `install: block`\n'},
    }),
  );
  const action = run.program.parts[0]?.nodes[0]?.actions[0];
  if (action === undefined) throw new Error('the example has no action');
  return action;
}
