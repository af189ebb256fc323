import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rinkOf } from '../rink/rink-of.ts';
import { levelOf } from '../skater/level.ts';
import { routeCurveOf } from '../skater/route-curve.ts';
import { profileRoute } from '../skater/route-profile.ts';
import { isNone } from '../units/none.ts';
import { drillPlanFromWays, type FilmedWay } from './plan-from-ways.ts';
import { playableOf } from './playable.ts';

const wayOf = (at: (timeS: number) => readonly [number, number], toS: number, fromS = 10): FilmedWay => ({
  side: 'us',
  kind: 'skater',
  role: 'F1',
  looks: Array.from({ length: Math.round((toS - fromS) * 30) + 1 }, (_, i) => {
    const [xM, yM] = at(i / 30);
    return { timeS: fromS + i / 30, xM, yM };
  }),
});

const planOf = (ways: readonly FilmedWay[], attacks: 'plusX' | 'minusX' = 'plusX') => {
  let next = 0;
  return drillPlanFromWays(ways, { attacks, level: 'u18', newId: () => `id-${next++}` });
};

describe('a drill of a stretch of film', () => {
  it('takes as long as the film, at whatever speed that was', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 6, noNaN: true }), speedMps => {
        const plan = planOf([wayOf(s => [-15 + speedMps * s, 3 * Math.sin(s / 2)], 14)]);
        const [spot] = Object.values(plan.spots);
        const [act] = Object.values(spot!.acts);
        if (act?.kind !== 'skate') throw new Error('no way');
        const curve = routeCurveOf([spot!.atM, ...act.throughM]);
        const run = { startSpeedMps: 0, facing: 'forward', withPuck: false, stops: false } as const;
        const profile = profileRoute(curve, levelOf('u18').model, { ...run, effortRatio: act.effortRatio });
        expect(!isNone(profile) && Math.abs(profile.durationS - 4)).toBeLessThan(0.05);
      }),
      { numRuns: 30, seed: 4 },
    );
  });

  it('keeps to the way within a hand', () => {
    const at = (s: number) => [-15 + 5 * s, 3 * Math.sin(s)] as const;
    const [spot] = Object.values(planOf([wayOf(at, 14)]).spots);
    const [act] = Object.values(spot!.acts);
    if (act?.kind !== 'skate') throw new Error('no way');
    const curve = routeCurveOf([spot!.atM, ...act.throughM]);
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
    expect(skater!.atM).toEqual({ xM: -15, yM: -2 });
    expect(Object.values(goalie!.acts)).toEqual([]);
    const playable = playableOf(plan, rinkOf({ preset: '200x85ft' }), levelOf('u18'));
    expect(playable.kind).toBe('playable');
  });

  it('lets one who comes into the picture later wait as long', () => {
    const plan = planOf([wayOf(s => [5 * s, 2], 13), wayOf(s => [5 * s, -4], 14, 11.5)]);
    const cues = Object.values(plan.spots).flatMap(({ acts }) => Object.values(acts).map(({ cue }) => cue));
    expect(cues).toEqual([{ on: 'whistle' }, { on: 'after', seconds: 1.5 }]);
  });

  it('gives one who hardly moved no act, and one who was never told no spot', () => {
    const plan = planOf([wayOf(s => [0.1 * s, 0], 13), { ...wayOf(() => [0, 0], 11), looks: [] }]);
    expect(Object.values(plan.spots)).toHaveLength(1);
    expect(Object.values(plan.spots)[0]!.acts).toEqual({});
  });
});
