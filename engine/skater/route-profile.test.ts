import { describe, expect, it } from 'vitest';
import { type Random, randomOf } from '../random/random.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { levelOf } from './level.ts';
import { LEVEL_IDS, type SkaterModel } from './model.ts';
import { type RouteCurve, routeCurveOf } from './route-curve.ts';
import { routeTimeReference } from './route-profile.reference.ts';
import { profileRoute, type RouteProfile, type RouteRun } from './route-profile.ts';
import { sprintTimeTo } from './sprint.ts';

const FREE: RouteRun = { startSpeedMps: 0, facing: 'forward', withPuck: false, effortRatio: 1, stops: false };

const profileOf = (curve: RouteCurve, model: SkaterModel, run: Partial<RouteRun> = {}): RouteProfile => {
  const profile = profileRoute(curve, model, { ...FREE, ...run });
  if (isNone(profile)) throw new Error(profile.reason);
  return profile;
};

/** Two to seven points, each 1–15 m from the last in any direction: sharp turns and reversals included. */
const anyRoute = (random: Random): IcePoint[] => {
  let xM = (random.uniform() - 0.5) * 50;
  let yM = (random.uniform() - 0.5) * 22;
  return Array.from({ length: 2 + random.below(6) }, () => {
    const at = { xM, yM };
    const farM = 1 + random.uniform() * 14;
    const way = random.uniform() * 2 * Math.PI;
    xM += farM * Math.cos(way);
    yM += farM * Math.sin(way);
    return at;
  });
};
const anyModel = (random: Random): SkaterModel => levelOf(LEVEL_IDS[random.below(LEVEL_IDS.length)]!).model;

describe('a route profile', () => {
  it('agrees within 0.5 % with a plain solver on a grid 25 times finer', () => {
    const random = randomOf(11);
    for (let i = 0; i < 60; i++) {
      const points = anyRoute(random);
      const model = anyModel(random);
      const startSpeedMps = random.below(2) ? 0 : random.uniform() * model.topSpeedMps * 1.1;
      const stops = random.below(2) === 1;
      const profile = profileOf(routeCurveOf(points), model, { startSpeedMps, stops });
      const referenceS = routeTimeReference(points, model, startSpeedMps, stops);
      expect(Math.abs(profile.durationS / referenceS - 1), `route ${i}`).toBeLessThan(0.005);
    }
  });

  it('solves 10,000 of 10,000 random routes, within the limits at every sample', () => {
    const random = randomOf(5);
    for (let i = 0; i < 10_000; i++) {
      const curve = routeCurveOf(anyRoute(random));
      const model = anyModel(random);
      const profile = profileOf(curve, model, {
        startSpeedMps: random.uniform() * model.topSpeedMps,
        facing: random.below(2) ? 'forward' : 'backward',
        withPuck: random.below(2) === 1,
        effortRatio: 0.2 + 0.8 * random.uniform(),
        stops: random.below(2) === 1,
      });
      let ok = Number.isFinite(profile.durationS) && profile.durationS > 0;
      for (let k = 1; k < curve.xM.length; k++) {
        const speed = profile.speedMps[k]!;
        ok &&= profile.timeS[k]! > profile.timeS[k - 1]!;
        ok &&= speed * speed * Math.abs(curve.curvaturePerM[k]!) <= model.lateralAccelMps2 * (1 + 1e-9);
        const rate = (speed ** 2 - profile.speedMps[k - 1]! ** 2) / (2 * curve.stepM);
        ok &&= rate >= -model.stopDecelMps2 * (1 + 1e-9) - model.topSpeedMps / model.tauS;
        ok &&= rate <= (model.topSpeedMps / model.tauS) * (1 + 1e-9);
      }
      if (!ok) throw new Error(`route ${i} breaks a limit`);
    }
  });

  it('straight ahead is the sprint law', () => {
    for (const id of LEVEL_IDS) {
      const { model } = levelOf(id);
      for (const lengthM of [3, 15, 40]) {
        for (const startSpeedMps of [0, 4, 12]) {
          const curve = routeCurveOf([
            { xM: -20, yM: 1 },
            { xM: -20 + lengthM, yM: 1 },
          ]);
          const profile = profileOf(curve, model, { startSpeedMps });
          const exactS = sprintTimeTo(model, lengthM, startSpeedMps) as number;
          expect(profile.durationS / exactS).toBeCloseTo(1, 3);
        }
      }
    }
  });

  it('a steady circle is skated at √(a_lat·r), where the skater is fast enough', () => {
    const radiusM = 4;
    const list = Array.from({ length: 33 }, (_, i) => ({
      xM: radiusM * Math.cos((i * Math.PI) / 8),
      yM: radiusM * Math.sin((i * Math.PI) / 8),
    }));
    const { model } = levelOf('collegeMen');
    const profile = profileOf(routeCurveOf(list), model);
    const middle = Math.floor(profile.speedMps.length / 2);
    expect(profile.speedMps[middle]!).toBeCloseTo(Math.sqrt(model.lateralAccelMps2 * radiusM), 1);
  });

  it('a stop takes v²/2a, and a start too fast for the way to it says by how much', () => {
    const { model } = levelOf('pro');
    const curve = routeCurveOf([
      { xM: 0, yM: 0 },
      { xM: 3, yM: 0 },
    ]);
    const profile = profileOf(curve, model, { startSpeedMps: 9, stops: true });
    const fastest = Math.sqrt(2 * model.stopDecelMps2 * 3);
    expect(profile.startExcessMps).toBeCloseTo(9 - fastest, 6);
    expect(profile.speedMps.at(-1)).toBe(0);
    expect(profileOf(curve, model, { startSpeedMps: 2, stops: true }).startExcessMps).toBe(0);
  });

  it('backward, with puck, with less effort, with a turn first: each is slower', () => {
    const { model } = levelOf('u18');
    const curve = routeCurveOf([
      { xM: -15, yM: 0 },
      { xM: 0, yM: 6 },
      { xM: 14, yM: 2 },
    ]);
    const plainS = profileOf(curve, model).durationS;
    expect(profileOf(curve, model, { facing: 'backward' }).durationS).toBeGreaterThan(plainS);
    expect(profileOf(curve, model, { withPuck: true }).durationS).toBeGreaterThan(plainS);
    expect(profileOf(curve, model, { effortRatio: 0.7 }).durationS).toBeGreaterThan(plainS);
    expect(profileOf(curve, model, { stops: true }).durationS).toBeGreaterThan(plainS);
    const turned = profileOf(curve, model, { facingBefore: 'backward' });
    expect(turned.durationS).toBeCloseTo(plainS + model.transitionS, 9);
    const movingS = profileOf(curve, model, { startSpeedMps: 4 }).durationS;
    const movingTurned = profileOf(curve, model, { startSpeedMps: 4, facingBefore: 'backward' });
    expect(movingTurned.durationS).toBeGreaterThan(movingS);
    expect(movingTurned.durationS).toBeLessThan(movingS + model.transitionS);
  });

  it('a half turn and a mirror of the route change no time', () => {
    const random = randomOf(2);
    for (let i = 0; i < 50; i++) {
      const points = anyRoute(random);
      const model = anyModel(random);
      const durationS = profileOf(routeCurveOf(points), model, { stops: true }).durationS;
      for (const [sx, sy] of [
        [-1, -1],
        [1, -1],
      ] as const) {
        const moved = routeCurveOf(points.map(({ xM, yM }) => ({ xM: sx * xM, yM: sy * yM })));
        expect(profileOf(moved, model, { stops: true }).durationS).toBeCloseTo(durationS, 6);
      }
    }
  });

  it('states follow the speed: place moves as fast as it says', () => {
    const random = randomOf(8);
    for (let i = 0; i < 40; i++) {
      const profile = profileOf(routeCurveOf(anyRoute(random)), anyModel(random), {
        startSpeedMps: 3,
        stops: true,
      });
      for (const share of [0.1, 0.37, 0.5, 0.83]) {
        const atS = share * profile.durationS;
        const h = 1e-4;
        const before = profile.stateAt(atS - h);
        const after = profile.stateAt(atS + h);
        expect((after.sM - before.sM) / (2 * h)).toBeCloseTo(profile.stateAt(atS).speedMps, 1);
      }
      expect(profile.stateAt(profile.durationS + 1).sM).toBeCloseTo(profile.curve.lengthM, 9);
      expect(profile.stateAt(-1).sM).toBe(0);
    }
  });

  it('without effort there is no arrival, and a route tighter than the skater turns is named', () => {
    const { model } = levelOf('u10');
    const far = routeCurveOf([
      { xM: 0, yM: 0 },
      { xM: 20, yM: 0 },
    ]);
    expect(profileRoute(far, model, { ...FREE, startSpeedMps: 4, effortRatio: 0 })).toEqual({
      kind: 'none',
      reason: 'neverGetsThere',
    });
    const back = routeCurveOf([
      { xM: 0, yM: 0 },
      { xM: 10, yM: 0 },
      { xM: 1, yM: 0.5 },
    ]);
    expect(profileOf(back, model).isTooTight).toBe(true);
    expect(profileOf(far, model).isTooTight).toBe(false);
  });

  it('a route of no length takes no time', () => {
    const profile = profileOf(routeCurveOf([{ xM: 1, yM: 1 }]), levelOf('u14').model);
    expect(profile.durationS).toBe(0);
    expect(profile.stateAt(2).atM).toEqual({ xM: 1, yM: 1 });
  });
});
