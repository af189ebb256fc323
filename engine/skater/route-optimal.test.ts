import { describe, expect, it } from 'vitest';
import { type Random, randomOf } from '../random/random.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { levelOf } from './level.ts';
import { LEVEL_IDS } from './model.ts';
import { routeCurveOf } from './route-curve.ts';
import { routeTimeByProgramming } from './route-optimal.reference.ts';
import { profileRoute } from './route-profile.ts';

/** Two to six points, each 2–15 m from the last in any direction: sharp turns and reversals included. */
const anyRoute = (random: Random): IcePoint[] => {
  let xM = 0;
  let yM = 0;
  return Array.from({ length: 2 + random.below(5) }, () => {
    const at = { xM, yM };
    const farM = 2 + random.uniform() * 13;
    const way = random.uniform() * 2 * Math.PI;
    xM += farM * Math.cos(way);
    yM += farM * Math.sin(way);
    return at;
  });
};

describe('a route profile against dynamic programming', () => {
  it('is within 1 % of the fastest that trying finds, over random routes, modes and starts', {
    timeout: 60_000,
  }, () => {
    const random = randomOf(77);
    const off: number[] = [];
    while (off.length < 40) {
      const points = anyRoute(random);
      const { model } = levelOf(LEVEL_IDS[random.below(LEVEL_IDS.length)]!);
      const facing = random.below(2) ? 'forward' : 'backward';
      const withPuck = random.below(2) === 1;
      const effortRatio = 0.3 + 0.7 * random.uniform();
      const stops = random.below(2) === 1;
      const goalMps =
        model.topSpeedMps *
        effortRatio *
        (facing === 'backward' ? model.backwardRatio : 1) *
        (withPuck ? model.carryRatio : 1);
      const startSpeedMps = random.below(2) ? 0 : random.uniform() * goalMps;
      const run = { startSpeedMps, facing, withPuck, effortRatio, stops } as const;
      const profile = profileRoute(routeCurveOf(points), model, run);
      // A start too fast for the way to its end has no fastest time: the profile says so itself.
      if (isNone(profile) || profile.startExcessMps > 0) continue;
      const bestS = routeTimeByProgramming(points, model, goalMps, startSpeedMps, stops);
      off.push(profile.durationS / bestS - 1);
    }
    expect(Math.max(...off)).toBeLessThan(0.01);
    expect(Math.min(...off)).toBeGreaterThan(-0.01);
  });
});
