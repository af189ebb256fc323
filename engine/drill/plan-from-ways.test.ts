import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardsDistance } from '../rink/boards.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { runDrill } from '../run/run-drill.ts';
import { levelOf } from '../skater/level.ts';
import { routeCurveOf } from '../skater/route-curve.ts';
import type { DrillPlan, Spot } from './drill.ts';
import { drillPlanFromWays, type FilmedWay } from './plan-from-ways.ts';
import { playableOf } from './playable.ts';

const wayOf = (at: (timeS: number) => readonly [number, number], toS: number, fromS = 10): FilmedWay => ({
  side: 'us',
  kind: 'skater',
  role: 'F1',
  looks: Array.from({ length: Math.round((toS - fromS) * 30) + 1 }, (_, i) => {
    const [xM, yM] = at(i / 30);
    const [nextXM, nextYM] = at(i / 30 + SHORT_S);
    return { timeS: fromS + i / 30, xM, yM, vxMps: (nextXM - xM) / SHORT_S, vyMps: (nextYM - yM) / SHORT_S };
  }),
});

const SHORT_S = 1e-4;
const RINK = rinkOf({ preset: '200x85ft' });

const planOf = (ways: readonly FilmedWay[], attacks: 'plusX' | 'minusX' = 'plusX') => {
  let next = 0;
  return drillPlanFromWays(ways, { attacks, level: 'u18', boards: RINK.boards, newId: () => `id-${next++}` });
};

describe('a drill of a stretch of film', () => {
  /** Played by the engine's own run, which knows nothing of the film: where and how fast each is at a time after the run-up. */
  const playedAt = (plan: DrillPlan) => {
    const playable = playableOf(plan, RINK, levelOf('u18'));
    if (playable.kind !== 'playable') throw new Error('not playable');
    const { tracks, stepHz } = runDrill(playable);
    return (spot: number, timeS: number) => {
      const { xM, yM } = tracks[spot]!;
      const at = (i: number) => [xM[i]!, yM[i]!] as const;
      const i = Math.round(timeS * stepHz);
      const [before, here, after] = [at(i - 2), at(i), at(i + 2)];
      return { here, speedMps: (distance(before, after) / 4) * stepHz };
    };
  };

  it('comes to the first place with the speed of the film, and takes as long as the film from there', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 6, noNaN: true }), speedMps => {
        const at = (s: number) => [-8 + speedMps * s, 3 * Math.sin(s / 2)] as const;
        const plan = planOf([wayOf(at, 13)]);
        const [spot] = Object.values(plan.spots);
        const leadS = leadOf(spot!, at(0), Math.hypot(speedMps, 1.5));
        const played = playedAt(plan);
        expect(distance(played(0, leadS).here, at(0))).toBeLessThan(0.4);
        expect(Math.abs(played(0, leadS).speedMps - Math.hypot(speedMps, 1.5))).toBeLessThan(0.5);
        expect(distance(played(0, leadS + 3 - 0.05).here, at(3 - 0.05))).toBeLessThan(0.6);
      }),
      { numRuns: 30, seed: 4 },
    );
  });

  it('begins for all at once, however fast each was', () => {
    const [slow, fast] = [(s: number) => [-5 + 2 * s, 4] as const, (s: number) => [-5 + 6 * s, -4] as const];
    const plan = planOf([wayOf(slow, 13), wayOf(fast, 13)]);
    const leadS = leadOf(Object.values(plan.spots)[1]!, fast(0), 6);
    const played = playedAt(plan);
    expect(distance(played(0, leadS).here, slow(0))).toBeLessThan(0.3);
    expect(distance(played(1, leadS).here, fast(0))).toBeLessThan(0.3);
  });

  it('starts from standing who stood, or has the boards behind him', () => {
    const stood = planOf([wayOf(s => [2.5 * s * s - 5, 0], 12)]);
    expect(Object.values(stood.spots)[0]!.atM).toEqual({ xM: -5, yM: 0 });
    const atBoards = planOf([wayOf(s => [0, -12.3 + 4 * s], 13)]);
    expect(boardsDistance(RINK.boards, Object.values(atBoards.spots)[0]!.atM)).toBeGreaterThanOrEqual(0.3);
    expect(playableOf(atBoards, RINK, levelOf('u18')).kind).toBe('playable');
  });

  it('gives the puck to who had it, and to nobody else', () => {
    const ways = [wayOf(s => [5 * s, 2], 13), { ...wayOf(s => [5 * s, -4], 13), hasPuck: true }];
    const plan = planOf(ways);
    const [without, withPuck] = Object.entries(plan.spots);
    expect(Object.values(plan.pucks).map(one => one.ownerSpot)).toEqual([withPuck![0]]);
    expect(Object.values(withPuck![1].acts).map(one => one.kind)).toEqual(['carry', 'carry']);
    expect(Object.values(without![1].acts).map(one => one.kind)).toEqual(['skate', 'skate']);
    expect(playableOf(plan, RINK, levelOf('u18')).kind).toBe('playable');
  });

  it('keeps to the way within a hand', () => {
    const at = (s: number) => [-15 + 5 * s, 3 * Math.sin(s)] as const;
    const [spot] = Object.values(planOf([wayOf(at, 14)]).spots);
    const way = Object.values(spot!.acts).find(({ rank }) => rank === 1);
    if (way?.kind !== 'skate') throw new Error('no way');
    const [xM, yM] = at(0);
    const curve = routeCurveOf([{ xM, yM }, ...way.throughM], { startHeadingRad: Math.atan2(3, 5) });
    for (let s = 0; s < 4; s += 0.1) {
      const [x, y] = at(s);
      let nearM = Number.POSITIVE_INFINITY;
      for (let i = 0; i < curve.xM.length; i++) {
        nearM = Math.min(nearM, Math.hypot(curve.xM[i]! - x, curve.yM[i]! - y));
      }
      expect(nearM).toBeLessThan(0.25);
    }
  });

  it('is turned round when we attacked the other end, and can be played', () => {
    const ways = [
      wayOf(s => [15 - 5 * s, 2], 13),
      { ...wayOf(() => [20, 0], 13), role: 'G', kind: 'goalie' as const },
    ];
    const plan = planOf(ways, 'minusX');
    const [skater, goalie] = Object.values(plan.spots);
    const [runUp] = Object.values(skater!.acts);
    expect(runUp).toMatchObject({ throughM: [{ xM: -15, yM: -2 }] });
    expect(skater!.atM.xM).toBeLessThan(-16);
    expect(skater!.atM.yM).toBeCloseTo(-2, 6);
    expect(Object.values(goalie!.acts)).toEqual([]);
    const playable = playableOf(plan, RINK, levelOf('u18'));
    expect(playable.kind).toBe('playable');
  });

  it('lets one who comes into the picture later wait as long', () => {
    const plan = planOf([wayOf(s => [5 * s, 2], 13), wayOf(s => [5 * s, -4], 14, 11.5)]);
    const cues = Object.values(plan.spots).flatMap(({ acts }) => Object.values(acts).map(({ cue }) => cue));
    expect(cues).toEqual([
      { on: 'whistle' },
      undefined,
      { on: 'after', seconds: expect.closeTo(1.5 + levelOf('u18').model.expectedReactionS, 2) },
      undefined,
    ]);
  });

  it('gives one who hardly moved no act, and one who was never told no spot', () => {
    const plan = planOf([wayOf(s => [0.1 * s, 0], 13), { ...wayOf(() => [0, 0], 11), looks: [] }]);
    expect(Object.values(plan.spots)).toHaveLength(1);
    expect(Object.values(plan.spots)[0]!.acts).toEqual({});
  });
});

const distance = (a: readonly [number, number], b: readonly [number, number]): number =>
  Math.hypot(a[0] - b[0], a[1] - b[1]);

/** How long after the whistle the run-up ends: one reaction, then the published law of sprints, v = V(1 − e^(−t/τ)), which the engine's profile is no part of. */
const leadOf = ({ atM }: Spot, place: readonly [number, number], speedMps: number): number => {
  const { topSpeedMps, tauS, expectedReactionS } = levelOf('u18').model;
  const leadS = -tauS * Math.log(1 - speedMps / topSpeedMps);
  const wayM = topSpeedMps * (leadS - tauS * (1 - Math.exp(-leadS / tauS)));
  expect(distance([atM.xM, atM.yM], place)).toBeCloseTo(wayM, 0);
  return leadS + expectedReactionS;
};
