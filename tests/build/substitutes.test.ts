/**
 * Parts of other engines: where the steps stand that alter them, and what such a step is.
 * Common practice, no source.
 */
import {describe, expect, it} from 'vitest';
import {forJob, procedureFor} from '../../src/build/for-job.js';
import {specificationFor} from '../../src/build/job-specification.js';
import {relations} from '../../src/build/relations.js';
import type {Fitting} from '../../src/build/without-options.js';
import {check} from '../../src/findings/check.js';
import type {Procedure} from '../../src/procedure/model.js';
import {book} from '../help/example.js';
import {ENGINE, made, outline} from './one-engine.js';

describe('a substitute is altered', () => {
  const GRIND = 'alter: shells by grind-lip using steel-hammer';
  const DRILL = 'alter: shells by drill-hole';

  it.each([
    [
      'right before it goes in',
      '1. a `turn: pump`\n2. b `install: shells`\n',
      ['1 turn: pump', `J1 ${GRIND}`, `J2 ${DRILL}`, '2 install: shells'],
    ],
    [
      'before its surfaces are readied',
      '1. a `clean: faces`\n2. b `install: shells`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 clean: faces', '2 install: shells'],
    ],
    [
      'before a fit of it is read',
      '1. a `measure: clearance`\n2. b `install: shells`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 measure: clearance', '2 install: shells'],
    ],
    [
      'once, before a trial fit',
      '1. a `install: shells`\n2. b `remove: shells`\n3. c `install: shells`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 install: shells', '2 remove: shells', '3 install: shells'],
    ],
    [
      'never where it is not used again',
      '1. a `clean: faces`\n2. b `renew: shells`\n3. c `install: shells`\n',
      ['1 clean: faces', '2 renew: shells', `J1 ${GRIND}`, `J2 ${DRILL}`, '3 install: shells'],
    ],
    [
      'after it is renewed',
      '1. a `renew: shells`\n2. b `install: shells`\n',
      ['1 renew: shells', `J1 ${GRIND}`, `J2 ${DRILL}`, '2 install: shells'],
    ],
    [
      'again after it is renewed again, where it is renewed',
      '1. a `install: shells`\n2. b `remove: shells`\n3. c `renew: shells[rear]`\n4. d `install: shells`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells',
        '2 remove: shells',
        '3 renew: shells[rear]',
        'J3 alter: shells[rear] by grind-lip using steel-hammer',
        'J4 alter: shells[rear] by drill-hole',
        '4 install: shells',
      ],
    ],
    [
      'in all places before the first',
      '1. a `install: shells[front]`\n2. b `install: shells[rear]`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 install: shells[front]', '2 install: shells[rear]'],
    ],
    [
      'among the sub-steps',
      '1. a\n   1. b `turn: pump`\n   2. c `install: shells`\n',
      ['1', '  1a turn: pump', `  J1 ${GRIND}`, `  J2 ${DRILL}`, '  1b install: shells'],
    ],
    [
      'on either way of a branch',
      '1. a `if: clearance is out`\n   1. b `install: shells`\n2. c `install: shells`\n',
      [
        '1 if: clearance is out',
        `  J1 ${GRIND}`,
        `  J2 ${DRILL}`,
        '  1a install: shells',
        `J3 ${GRIND}`,
        `J4 ${DRILL}`,
        '2 install: shells',
      ],
    ],
    [
      'before the way goes back to where it goes in',
      '1. a `install: shells` `step: press`\n2. b `if: clearance is out` `repeat: press`\n   1. c `remove: shells`\n   2. d `renew: shells`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells step: press',
        '2 if: clearance is out repeat: press',
        '  2a remove: shells',
        '  2b renew: shells',
        `  J3 ${GRIND}`,
        `  J4 ${DRILL}`,
      ],
    ],
    [
      'before the step that sends the way back, where it does no more than that',
      '1. a `install: shells` `step: press`\n2. b `if: clearance is out`\n   1. c `remove: shells`\n   2. d `renew: shells`\n   3. e `repeat: press`\n3. f `measure: clearance`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells step: press',
        '2 if: clearance is out',
        '  2a remove: shells',
        '  2b renew: shells',
        `  J3 ${GRIND}`,
        `  J4 ${DRILL}`,
        '  2c repeat: press',
        '3 measure: clearance',
      ],
    ],
    [
      'on the way round, where it is not in yet at the step that is gone back to',
      '1. a `turn: pump` `step: start`\n2. b `install: shells`\n3. c `if: clearance is out`\n   1. d `renew: shells`\n   2. e `repeat: start`\n4. f `measure: clearance`\n',
      [
        '1 turn: pump step: start',
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '2 install: shells',
        '3 if: clearance is out',
        '  3a renew: shells',
        '  3b repeat: start',
        '4 measure: clearance',
      ],
    ],
    [
      'not before a way goes back with the same shells',
      '1. a `install: shells` `step: press`\n2. b `if: clearance is out` `repeat: press`\n   1. c `remove: shells`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells step: press',
        '2 if: clearance is out repeat: press',
        '  2a remove: shells',
      ],
    ],
    [
      'not before a way goes back to a step that there is not',
      '1. a `install: shells`\n2. b `if: clearance is out` `repeat: nowhere`\n   1. c `renew: shells`\n3. d `measure: clearance`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells',
        '2 if: clearance is out repeat: nowhere',
        '  2a renew: shells',
        `J3 ${GRIND}`,
        `J4 ${DRILL}`,
        '3 measure: clearance',
      ],
    ],
    [
      'once, among sub-steps that are always followed',
      '1. a\n   1. b `install: shells`\n2. c `measure: clearance`\n',
      ['1', `  J1 ${GRIND}`, `  J2 ${DRILL}`, '  1a install: shells', '2 measure: clearance'],
    ],
    [
      'after a branch that leaves new ones lying there',
      '1. a `install: shells`\n2. b `if: clearance is out`\n   1. c `renew: shells[front]`\n3. d `measure: clearance`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells',
        '2 if: clearance is out',
        '  2a renew: shells[front]',
        'J3 alter: shells[front] by grind-lip using steel-hammer',
        'J4 alter: shells[front] by drill-hole',
        '3 measure: clearance',
      ],
    ],
    [
      'in both places of one tag',
      '1. a `install: shells[front], shells[rear]`\n2. b `remove: shells`\n3. c `install: shells`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells[front], shells[rear]',
        '2 remove: shells',
        '3 install: shells',
      ],
    ],
    [
      'in places named one by one',
      '1. a `renew: shells`\n2. b `clean: faces[rear]`\n3. c `install: shells[rear, front]`\n',
      [
        '1 renew: shells',
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '2 clean: faces[rear]',
        '3 install: shells[rear, front]',
      ],
    ],
    [
      'before a strip is laid in a fit of it',
      '1. a `lay: clearance`\n2. b `install: shells`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 lay: clearance', '2 install: shells'],
    ],
    [
      'before its surfaces are lubed, or it is cleaned itself',
      '1. a `lube: backs`\n2. b `renew: shells`\n3. c `clean: shells`\n4. d `install: shells`\n',
      [
        '1 lube: backs',
        '2 renew: shells',
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '3 clean: shells',
        '4 install: shells',
      ],
    ],
    [
      'never for what is done to other parts',
      '1. a `renew: pump`\n2. b `install: pump`\n3. c `clean: pump`\n4. d `lube: pump, journals`\n5. e `measure: drive`\n6. f `clean: faces`\n7. g `renew: shells`\n8. h `turn: shells`\n9. i `install: shells`\n10. j `renew: pump`\n11. k `measure: clearance`\n',
      [
        '1 renew: pump',
        '2 install: pump',
        '3 clean: pump',
        '4 lube: pump, journals',
        '5 measure: drive',
        '6 clean: faces',
        '7 renew: shells',
        '8 turn: shells',
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '9 install: shells',
        '10 renew: pump',
        '11 measure: clearance',
      ],
    ],
    [
      'whatever other parts are renewed before',
      '1. a `renew: pump`\n2. b `install: shells`\n',
      ['1 renew: pump', `J1 ${GRIND}`, `J2 ${DRILL}`, '2 install: shells'],
    ],
    [
      'never where it is not used again, whatever other parts go in before',
      '1. a `install: pump`\n2. b `clean: faces`\n3. c `renew: shells`\n4. d `install: shells`\n',
      [
        '1 install: pump',
        '2 clean: faces',
        '3 renew: shells',
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '4 install: shells',
      ],
    ],
    [
      'before it is lubed as it comes',
      '1. a `lube: backs`\n2. b `install: shells`\n',
      [`J1 ${GRIND}`, `J2 ${DRILL}`, '1 lube: backs', '2 install: shells'],
    ],
    [
      'whatever is done by the same alteration to another part',
      '1. a `alter: pump by drill-hole, grind-lip`\n2. b `install: shells`\n',
      ['1 alter: pump by drill-hole, grind-lip', `J1 ${GRIND}`, `J2 ${DRILL}`, '2 install: shells'],
    ],
    [
      'by the procedures, together with another part',
      '1. a `alter: pump, shells by drill-hole, grind-lip`\n2. b `install: shells`\n',
      ['1 alter: pump, shells by drill-hole, grind-lip', '2 install: shells'],
    ],
    [
      'whatever tags stand half written beside it',
      '1. a `install: shells`\n2. b `remove: shells`\n3. c `renew: shells`\n4. d `if:`\n   1. e `repeat:`\n',
      [
        `J1 ${GRIND}`,
        `J2 ${DRILL}`,
        '1 install: shells',
        '2 remove: shells',
        '3 renew: shells',
        '4 if:',
        '  4a repeat:',
      ],
    ],
    [
      'not in a loop that it has nothing to do with',
      '1. a `turn: pump` `step: again`\n2. b `if: sea-gap is out`\n   1. c `repeat: again`\n3. d `install: shells`\n',
      ['1 turn: pump step: again', '(2 for raw-water)', `J1 ${GRIND}`, `J2 ${DRILL}`, '3 install: shells'],
    ],
    [
      'by what the procedures leave out',
      '1. a `alter: shells by drill-hole`\n2. b `install: shells`\n',
      ['1 alter: shells by drill-hole', `J1 ${GRIND}`, '2 install: shells'],
    ],
    [
      'by the procedures alone',
      '1. a `alter: shells by drill-hole, grind-lip`\n2. b `install: shells`\n',
      ['1 alter: shells by drill-hole, grind-lip', '2 install: shells'],
    ],
    [
      'where the step that alters it is for other engines',
      '1. a `alter: shells by drill-hole, grind-lip` `only: keel`\n2. b `install: shells`\n',
      ['(1 for keel)', `J1 ${GRIND}`, `J2 ${DRILL}`, '2 install: shells'],
    ],
    [
      'no more where it is in',
      '1. a `renew: shells` `install: shells`\n2. b `measure: clearance`\n',
      ['1 renew: shells install: shells', '2 measure: clearance'],
    ],
  ])('%s', (_, procedure, expected) => {
    const job = 'substitutes: {shells: twins}\n';
    expect(outline(made(procedure, job))).toEqual(expected);
  });

  it('by no step where it fits as it comes, or where the job fits the original', () => {
    const steps = ['1 install: shells'];
    expect(outline(made('1. a `install: shells`\n', 'substitutes: {shells: plain}\n'))).toEqual(steps);
    expect(outline(made('1. a `install: shells`\n', ''))).toEqual(steps);
  });

  it('by nothing that is no alteration of this engine', () => {
    const engine = ENGINE.replace(
      'alterations: [grind-lip, drill-hole]',
      'alterations: [pump, drill-hole, polish]',
    );
    const whole = book({
      engine,
      procedures: {'p.md': '1. a `install: shells`\n'},
      job: 'substitutes: {shells: twins}\n',
    });
    expect(outline(forJob(whole))).toEqual([`J1 ${DRILL}`, '1 install: shells']);
  });

  it('by no step where the engine does not have the part', () => {
    const steps = '1. a `install: impeller`\n';
    const job = 'substitutes: {impeller: brass}\n';
    expect(outline(made(steps, job))).toEqual(['1']);
    expect(outline(made(steps, `options: [raw-water]\n${job}`))).toEqual([
      'J1 alter: impeller by drill-hole',
      '1 install: impeller',
    ]);
  });

  it('and no procedure that it does not concern is another', () => {
    const whole = book({
      engine: ENGINE,
      procedures: {'a.md': '1. a `turn: pump`\n', 'b.md': '1. b `install: shells`\n'},
      job: 'substitutes: {shells: twins}\n',
    });
    const kept = new Map<Procedure, Procedure>();
    const make = {
      specification: specificationFor,
      relations,
      procedure(procedure: Procedure, fitting: Fitting) {
        const own = procedureFor(procedure, fitting);
        kept.set(procedure, own);
        return own;
      },
    };
    const [a, b] = forJob(whole, make).procedures;
    const [beforeA, beforeB] = whole.procedures.map((procedure) => kept.get(procedure));
    expect(a).toBe(beforeA);
    expect(b).not.toBe(beforeB);
  });

  it('in steps that are counted anew in each procedure', () => {
    const whole = book({
      engine: ENGINE,
      procedures: {
        'a.md': '1. a `install: shells` `step: press`\n',
        'b.md':
          '1. b `renew: shells`\n2. c `if: clearance is out`\n   1. d `repeat: press`\n3. e `install: shells`\n',
      },
      job: 'substitutes: {shells: twins}\n',
    });
    expect(outline(forJob(whole))).toEqual([
      `J1 ${GRIND}`,
      `J2 ${DRILL}`,
      '1 install: shells step: press',
      '1 renew: shells',
      '2 if: clearance is out',
      '  2a repeat: press',
      `J1 ${GRIND}`,
      `J2 ${DRILL}`,
      '3 install: shells',
    ]);
  });

  it('as a step like any other', () => {
    const {procedures, job} = made(
      '1. a `install: shells`\n2. b `renew: shells[front]`\n3. c `install: shells[front]`\n',
      'substitutes: {shells: twins}\n',
    );
    const [whole, , , , one] = procedures[0]?.steps ?? [];
    const span = whole?.span;
    const ids = (word: string, ...named: string[]) => ({
      word,
      span,
      valueSpan: span,
      value: {type: 'ids', ids: named.map((id) => ({id, span, rest: ''}))},
    });
    const prose = (text: string) => ({type: 'prose', span, text, inline: [{type: 'text', value: text}]});
    expect(whole).toEqual({
      number: 'J1',
      index: 0,
      span,
      headSpan: span,
      text: 'Grind the lip flush.',
      inline: [{type: 'text', value: 'Grind the lip flush.'}],
      tags: [
        {
          span,
          raw: 'alter: shells by grind-lip using steel-hammer',
          verb: 'alter',
          verbSpan: span,
          targets: [{id: 'shells', span, places: []}],
          clauses: [ids('by', 'grind-lip'), ids('using', 'steel-hammer')],
        },
      ],
      cautions: [
        {
          signal: 'warning',
          span,
          text: '',
          inline: [],
          hazards: [{word: 'sparks', span}],
          tags: [],
        },
      ],
      pictures: [],
      steps: [],
      more: [prose('They came in a blue box.'), prose('Dip it often.')],
      section: '',
      added: job?.substitutes.get('shells')?.where,
    });
    expect(one?.tags[0]?.targets).toEqual([
      {id: 'shells', span: one?.span, places: [{name: 'front', span: one?.span}]},
    ]);
  });

  it.each([
    ['grind off 0.5 mm', 'Grind off 0.5 mm.'],
    ['stop! then grind', 'Stop! then grind.'],
    ['Grind it.', 'Grind it.'],
    ['must it be? then grind!', 'Must it be? then grind!'],
    ['is it flush?', 'Is it flush?'],
  ])('in a sentence: %s', (does, text) => {
    const engine = ENGINE.replace('drill the oil hole through', `'${does}'`).replace(
      'alterations: [grind-lip, drill-hole]',
      'alterations: [drill-hole]',
    );
    const job = 'substitutes: {shells: twins}\n';
    const {procedures} = forJob(book({engine, procedures: {'p.md': '1. a `install: shells`\n'}, job}));
    const [step] = procedures[0]?.steps ?? [];
    expect([step?.text, step?.tags[0]?.clauses.map(({word}) => word)]).toEqual([text, ['by']]);
  });

  it('with places and tools told one by one', () => {
    const engine = ENGINE.replace(
      'at: [front, rear]\n    substitutes',
      'at: [front, middle, rear]\n    substitutes',
    ).replace('using: [steel-hammer]', 'using: [steel-hammer, soft-mallet]');
    const {procedures} = forJob(
      book({
        engine,
        procedures: {
          'p.md':
            '1. a `renew: shells`\n2. b `install: shells[rear]`\n3. c `renew: shells[middle, front]`\n4. d `install: shells[front, middle]`\n',
        },
        job: 'substitutes: {shells: twins}\n',
      }),
    );
    const raw = procedures[0]?.steps.flatMap(({tags}) => tags.map((tag) => tag.raw));
    expect(raw?.filter((tag) => tag.includes('grind-lip'))).toEqual([
      'alter: shells by grind-lip using steel-hammer, soft-mallet',
      'alter: shells[front, middle] by grind-lip using steel-hammer, soft-mallet',
    ]);
  });

  it('and what is wrong with it is said where the job names it', () => {
    const engine = `${ENGINE}barred:\n  - {what: [steel-hammer], on: [shells], because: it burrs}\n`;
    const {findings} = check(
      book({engine, procedures: {'p.md': '1. a `install: shells`\n'}, job: 'substitutes: {shells: twins}\n'}),
    );
    expect(
      findings
        .filter(({name}) => name === 'barred-tool')
        .map(({message, where}) => `${where.file}: ${message}`),
    ).toEqual(['jobs/1.yaml: shells are worked on with steel-hammer, which is barred there: it burrs']);
  });

  it('with its text, tools, notes and hazards, and in the job’s own file', () => {
    const {procedures, job} = made('1. a `install: shells`\n', 'substitutes: {shells: twins}\n');
    const [grind, drill] = procedures[0]?.steps ?? [];
    expect(grind).toMatchObject({
      number: 'J1',
      index: 0,
      text: 'Grind the lip flush.',
      cautions: [{signal: 'warning', hazards: [{word: 'sparks'}]}],
      more: [{text: 'They came in a blue box.'}, {text: 'Dip it often.'}],
      added: job?.substitutes.get('shells')?.where,
    });
    expect(drill).toMatchObject({number: 'J2', text: 'Drill the oil hole through.', cautions: [], more: []});
  });

  it('so that the check is content, and says so where no step could do it', () => {
    const found = (procedure: string) =>
      check(book({engine: ENGINE, procedures: {'p.md': procedure}, job: 'substitutes: {shells: twins}\n'}))
        .findings.filter(({name}) => name === 'substitute-unaltered')
        .map(({message}) => message);
    expect(found('1. a `install: shells`\n')).toEqual([]);
    expect(found('1. a `renew: shells` `install: shells`\n')).toEqual([
      'shells are twins on this job, and go in without grind-lip',
      'shells are twins on this job, and go in without drill-hole',
    ]);
    expect(found('1. a `install: shells`\n2. b `alter: shells by grind-lip, drill-hole`\n')).toHaveLength(2);
    expect(found('1. a `alter: shells[front] by grind-lip`\n2. b `install: shells`\n')).toEqual([
      'shells[rear] are twins on this job, and go in without grind-lip',
    ]);
  });

  it('whose tool the shop does not have is found where the alteration names it, and not in the job’s file', () => {
    const engine = ENGINE.replace('using: [steel-hammer]', 'using: [steel-hamer]');
    const procedures = {'p.md': '1. a `install: shells`\n'};
    const {findings} = check(book({engine, procedures, job: 'substitutes: {shells: twins}\n'}));
    const named = findings.filter(({message}) => message.includes('steel-hamer'));
    expect(named.map(({message, where}) => `${where.file}: ${message}`)).toEqual([
      'engine.yaml: nothing is called steel-hamer; did you mean steel-hammer?',
    ]);
  });
});
