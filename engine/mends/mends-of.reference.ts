import type { ActDeed, Cue, DrillPlan } from '../drill/drill.ts';
import { at, named, planOf, skate, type TestAct, type TestSpot } from '../run/drill-shorthand.reference.ts';
import type { FindingKind } from '../run/run-result.ts';
import type { LevelId } from '../skater/model.ts';

/** A drill that has a finding, and how its mend begins when there is to be one. */
export interface DrillWithFinding {
  readonly kind: FindingKind;
  readonly says: string;
  readonly plan: DrillPlan;
  readonly level?: LevelId;
  readonly mends: RegExp | null;
}

const whistle: Cue = { on: 'whistle' };
const pass = (
  to: string,
  speedMps: number,
  more: Partial<Extract<ActDeed, { kind: 'pass' }>> & { cue?: Cue } = {},
): TestAct => ({
  kind: 'pass',
  toSpot: named(to),
  way: 'direct',
  speedMps,
  cue: whistle,
  ...more,
});
const shoot: TestAct = { kind: 'shoot', atEnd: 'minusX', speedMps: 26, cue: whistle };
const chase = (whom: string): TestAct => ({ kind: 'chase', whom: named(whom), effortRatio: 1, cue: whistle });

const withWaiting = (plan: DrillPlan, role: string, waitingCount: number): DrillPlan => ({
  ...plan,
  spots: { ...plan.spots, [named(role)]: { ...plan.spots[named(role)]!, waitingCount } },
});

/** One small drill for every kind of finding of a rep. */
export const drillsWithFindings = (): readonly DrillWithFinding[] => {
  const crossing: readonly TestSpot[] = [
    { role: 'F1', atM: at(-10, 0), acts: [skate([at(10, 0)])] },
    { role: 'F2', atM: at(0, -10), acts: [skate([at(0, 10)])] },
  ];
  return [
    {
      kind: 'tooFastIntoBoards',
      says: 'end boards',
      plan: planOf([{ role: 'F1', atM: at(8, 4), acts: [skate([at(29, 4)])] }]),
      mends: /^(End the route|Let F1)/,
    },
    { kind: 'pathsCrossTooFast', says: 'at the red line', plan: planOf(crossing), mends: /F[12]/ },
    {
      kind: 'bodiesTouch',
      says: 'shoulder in shoulder',
      plan: planOf([
        { role: 'F1', atM: at(-10, 0), acts: [skate([at(10, 0)])] },
        { role: 'F2', atM: at(-10, 0.5), acts: [skate([at(10, 0.5)])] },
      ]),
      mends: /^Start F[12]/,
    },
    {
      kind: 'passDiesShort',
      says: 'too soft',
      plan: planOf([
        { role: 'D1', atM: at(-20, 0), puck: true, acts: [pass('F1', 5)] },
        { role: 'F1', atM: at(14, 0) },
      ]),
      mends: /^Let D1 pass at/,
    },
    {
      kind: 'receiverCannotGetThere',
      says: 'to one who hunts another',
      plan: planOf([
        {
          role: 'D1',
          atM: at(-20, 0),
          puck: true,
          acts: [pass('F1', 12, { cue: { on: 'after', seconds: 1.5 } })],
        },
        { role: 'F1', atM: at(0, 8), acts: [{ kind: 'chase', whom: named('F2'), effortRatio: 1 }] },
        { role: 'F2', atM: at(8, -4), acts: [skate([at(12, -8), at(4, -11), at(-4, -8)])] },
      ]),
      mends: /D1|F1/,
    },
    {
      kind: 'laneShut',
      says: 'a stick in the way',
      plan: planOf([
        { role: 'D1', atM: at(-16, 0), puck: true, acts: [pass('F1', 12)] },
        { role: 'X1', side: 'them', atM: at(-4, 2), facingRad: Math.PI },
        { role: 'F1', atM: at(8, 0) },
      ]),
      mends: /D1|F1/,
    },
    {
      kind: 'cueNeverFires',
      says: 'a line nobody comes to',
      plan: planOf([
        { role: 'F1', atM: at(-12, 3), acts: [skate([at(4, 3)])] },
        {
          role: 'F2',
          atM: at(-4, -8),
          acts: [
            skate([at(6, -8)], { cue: { on: 'spotCrosses', spot: named('F1'), line: 'goalLinePlusX' } }),
          ],
        },
      ]),
      mends: /^Let F2 start when their blue line/,
    },
    {
      kind: 'twoActsAtOnce',
      says: 'a cue too soon',
      plan: planOf([
        { role: 'F1', atM: at(-4, 3), acts: [skate([at(8, 3)])] },
        {
          role: 'F2',
          atM: at(-4, -8),
          acts: [
            { kind: 'hold', seconds: 4 },
            skate([at(6, -8)], { cue: { on: 'spotCrosses', spot: named('F1'), line: 'centreLine' } }),
          ],
        },
      ]),
      mends: /F2/,
    },
    {
      kind: 'noPuckToPlay',
      says: 'nothing to shoot',
      plan: planOf([{ role: 'F1', atM: at(-10, 4), acts: [shoot] }]),
      mends: /^Give F1 a puck/,
    },
    {
      kind: 'puckLeftBehind',
      says: 'out of reach',
      plan: planOf([{ role: 'F1', atM: at(-10, 4), acts: [shoot] }], at(-4, 4)),
      mends: /F1/,
    },
    {
      kind: 'tooFewPucks',
      says: 'one for two',
      plan: planOf([
        { role: 'F1', atM: at(-10, 4), puck: true, acts: [shoot] },
        { role: 'F2', atM: at(-10, -4), acts: [shoot] },
      ]),
      mends: /^Give F2 a puck/,
    },
    {
      kind: 'offTheIce',
      says: 'over the boards',
      plan: planOf([
        { role: 'F1', atM: at(0, 8), acts: [skate([at(8, 14)], { stops: true, effortRatio: 0.6 })] },
      ]),
      mends: /^Bring F1 onto the ice/,
    },
    {
      kind: 'throughNet',
      says: 'over the goal frame',
      plan: planOf([
        { role: 'F1', atM: at(-14, 0), acts: [skate([at(-28.2, 0)], { stops: true, effortRatio: 0.5 })] },
      ]),
      mends: /F1/,
    },
    {
      kind: 'gapNotHeld',
      says: 'starts behind the carrier',
      plan: planOf([
        {
          role: 'X1',
          side: 'them',
          atM: at(10, 3),
          acts: [skate([at(-20, 2)], { effortRatio: 0.85, cue: whistle })],
        },
        {
          role: 'D1',
          atM: at(11, 3),
          acts: [{ kind: 'gap', whom: named('X1'), distanceM: 2.4, cue: whistle }],
        },
      ]),
      mends: /D1|X1/,
    },
    {
      kind: 'noBankPass',
      says: 'too soft for the boards',
      plan: planOf([
        { role: 'D1', atM: at(-20, 0), puck: true, acts: [pass('F1', 4, { way: 'bank' })] },
        { role: 'F1', atM: at(14, 0) },
      ]),
      mends: /^Let D1 pass/,
    },
    {
      kind: 'shotAcrossGroup',
      says: 'past a line',
      plan: withWaiting(
        planOf([
          { role: 'F1', atM: at(-8, 0), facingRad: Math.PI, puck: true, acts: [shoot] },
          { role: 'F2', atM: at(-16.8, 1), facingRad: Math.PI / 2 },
        ]),
        'F2',
        3,
      ),
      mends: /F2|F1/,
    },
    {
      kind: 'contactBelowAge',
      says: 'pinned at the boards',
      level: 'u14',
      plan: planOf([
        {
          role: 'X1',
          side: 'them',
          atM: at(-12, 12),
          puck: true,
          acts: [skate([at(14, 12)], { kind: 'carry', effortRatio: 0.6, cue: whistle })],
        },
        { role: 'F1', atM: at(-6, 7), acts: [chase('X1')] },
      ]),
      mends: /F1/,
    },
    {
      kind: 'cueNeverFires',
      says: 'somebody who never shoots, and whom another waits for',
      plan: planOf([
        {
          role: 'F1',
          atM: at(-4, 0),
          puck: true,
          acts: [skate([at(4, 0)], { kind: 'carry', cue: { on: 'shot', spot: named('F2') } })],
        },
        {
          role: 'F2',
          atM: at(2.5, 0),
          acts: [skate([at(2.5, 6)], { cue: { on: 'shot', spot: named('F1') } })],
        },
      ]),
      mends: null,
    },
  ];
};
