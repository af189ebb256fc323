import { describe, expect, it } from 'vitest';
import { rinkOf } from '../rink/rink-of.ts';
import { at, named, planOf, skate } from '../run/drill-shorthand.reference.ts';
import { findingSentence } from '../run/finding-sentence.ts';
import type { Finding } from '../run/run-result.ts';
import { levelOf } from '../skater/level.ts';
import type { DrillPlan } from './drill.ts';
import { playableOf } from './playable.ts';

const check = (plan: DrillPlan) => playableOf(plan, rinkOf({ preset: '60x30m' }), levelOf('u14'));

describe('a draft', () => {
  it('is playable when everything in it has a meaning', () => {
    expect(check(planOf([{ role: 'F1', atM: at(0, 0), acts: [skate([at(5, 0)])] }])).kind).toBe('playable');
  });

  it('says what keeps it from being run, and where', () => {
    const draft = check(
      planOf([
        {
          role: 'F1',
          atM: at(Number.NaN, 0),
          acts: [
            skate([], { cue: { on: 'receive', spot: named('F9') } }),
            { kind: 'pass', toSpot: named('F1'), way: 'direct', speedMps: 90 },
          ],
        },
      ]),
    );
    if (draft.kind === 'playable') throw new Error('this must not be playable');
    expect(draft.issues.map(issue => [issue.code, issue.path.join('.')])).toEqual([
      ['notANumber', 'spots.F1.atM.xM'],
      ['noSuchSpot', 'spots.F1.acts.F1.0.cue.spot'],
      ['noPoints', 'spots.F1.acts.F1.0.throughM'],
      ['aimsAtItself', 'spots.F1.acts.F1.1.toSpot'],
      ['outOfRange', 'spots.F1.acts.F1.1.speedMps'],
    ]);
  });

  it('puts the puck of the first act that needs one first, and the other on its own stick', () => {
    const draft = check(
      planOf([
        {
          role: 'F1',
          atM: at(0, 0),
          acts: [skate([at(5, 0)]), { kind: 'shoot', atEnd: 'plusX', speedMps: 20 }],
          puck: true,
        },
        { role: 'F2', atM: at(0, 5), acts: [skate([at(5, 5)], { kind: 'carry' })], puck: true },
      ]),
    );
    if (draft.kind !== 'playable') throw new Error('this must be playable');
    expect(draft.pucks.map(({ ownerSpot }) => ownerSpot)).toEqual(['F2', 'F1']);
  });
});

describe('a finding in words', () => {
  const finding: Finding = {
    kind: 'tooFastIntoBoards',
    weight: 'look',
    timeS: 3,
    atM: at(20, 0),
    spots: [named('X2')],
    value: 5.1,
    threshold: 6.2,
    speedMps: 7.9,
    unit: 'm',
    status: 'estimate',
    source: '',
  };
  const plan = planOf([{ role: 'X2', atM: at(0, 0) }]);

  it('says who, what, and how much against how much', () => {
    expect(findingSentence(finding, plan)).toBe(
      'X2 comes too near the boards: 5.1 m left at 7.9 m/s, 6.2 m needed to stop.',
    );
  });

  it('in feet when the team counts in feet', () => {
    expect(findingSentence(finding, plan, 'feet')).toBe(
      'X2 comes too near the boards: 17 ft left at 26 ft/s, 20 ft needed to stop.',
    );
  });
});
