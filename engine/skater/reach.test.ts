import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { reachSetAt, type SkaterState, type TouchPower, timeTo, touchIntervals } from './reach.ts';

const point = fc.record({ xM: evenly(-30, 30), yM: evenly(-13, 13) });
const state = fc.record({ atM: point, velocityMps: fc.record({ xMps: evenly(-7, 7), yMps: evenly(-7, 7) }) });
const power = fc.record({
  topSpeedMps: evenly(5, 10),
  tauS: evenly(1, 1.5),
  reactionS: evenly(0, 0.6),
  reachM: evenly(0, 2.2),
});

const missOf = (at: SkaterState, skater: TouchPower, pointM: IcePoint, timeS: number): number => {
  const disc = reachSetAt(at, skater, timeS, skater.reactionS);
  return Math.hypot(pointM.xM - disc.centreM.xM, pointM.yM - disc.centreM.yM) - disc.radiusM - skater.reachM;
};
const timeOf = (at: SkaterState, skater: TouchPower, pointM: IcePoint): number => {
  const time = timeTo(at, skater, pointM);
  if (isNone(time)) throw new Error(time.reason);
  return time;
};

describe('reach', () => {
  it('the earliest touch is on the edge of the disc, and at no sampled time before', () => {
    fc.assert(
      fc.property(state, power, point, (at, skater, pointM) => {
        const time = timeOf(at, skater, pointM);
        if (time > skater.reactionS) expect(missOf(at, skater, pointM, time)).toBeCloseTo(0, 9);
        else expect(missOf(at, skater, pointM, time)).toBeLessThanOrEqual(1e-9);
        for (let i = 0; i < 200; i++) {
          const before = skater.reactionS + ((time - skater.reactionS) * i) / 200;
          if (before < time - 1e-6) expect(missOf(at, skater, pointM, before)).toBeGreaterThan(-1e-6);
        }
      }),
    );
  });

  it('is none when it is surely not before the time asked for, else the same', () => {
    let none = 0;
    fc.assert(
      fc.property(state, power, point, evenly(0, 8), (at, skater, pointM, notAfterS) => {
        const whole = timeOf(at, skater, pointM);
        const asked = timeTo(at, skater, pointM, skater.reactionS, skater.reachM, notAfterS);
        if (!isNone(asked)) expect(asked).toBe(whole);
        else {
          none++;
          expect(whole).toBeGreaterThan(notAfterS);
        }
      }),
      { numRuns: 300, seed: 1 },
    );
    expect(none).toBeGreaterThan(50);
  });

  it('touch intervals begin with the earliest touch, follow each other, and the last never ends', () => {
    fc.assert(
      fc.property(state, power, point, (at, skater, pointM) => {
        const intervals = touchIntervals(at, skater, pointM);
        expect(intervals[0]!.fromS).toBeCloseTo(timeOf(at, skater, pointM), 9);
        expect(intervals.at(-1)!.toS).toBeNull();
        for (const [i, { fromS, toS }] of intervals.entries()) {
          if (toS === null) continue;
          expect(toS).toBeGreaterThanOrEqual(fromS);
          expect(intervals[i + 1]!.fromS).toBeGreaterThanOrEqual(toS);
          expect(missOf(at, skater, pointM, (fromS + toS) / 2)).toBeLessThanOrEqual(1e-9);
        }
      }),
    );
  });

  it('a half turn and a mirror of everything change no time', () => {
    fc.assert(
      fc.property(state, power, point, (at, skater, pointM) => {
        const time = timeOf(at, skater, pointM);
        const moved = (sx: number, sy: number): number =>
          timeOf(
            {
              atM: { xM: sx * at.atM.xM, yM: sy * at.atM.yM },
              velocityMps: { xMps: sx * at.velocityMps.xMps, yMps: sy * at.velocityMps.yMps },
            },
            skater,
            { xM: sx * pointM.xM, yM: sy * pointM.yM },
          );
        expect(moved(-1, -1)).toBeCloseTo(time, 9);
        expect(moved(1, -1)).toBeCloseTo(time, 9);
      }),
    );
  });

  it('a longer stick is never later, a later reaction never earlier', () => {
    fc.assert(
      fc.property(state, power, point, evenly(0, 1), (at, skater, pointM, extra) => {
        const longer = timeOf(at, { ...skater, reachM: skater.reachM + extra }, pointM);
        expect(longer).toBeLessThanOrEqual(timeOf(at, skater, pointM) + 1e-9);
      }),
    );
    fc.assert(
      fc.property(point, power, point, evenly(0, 1), (atM, skater, pointM, extra) => {
        const at = { atM, velocityMps: { xMps: 0, yMps: 0 } };
        const later = timeOf(at, { ...skater, reactionS: skater.reactionS + extra }, pointM);
        expect(later).toBeCloseTo(timeOf(at, skater, pointM) + extra, 9);
      }),
    );
  });

  it('steering at full effort one way ends inside the disc', () => {
    fc.assert(
      fc.property(state, power, evenly(-Math.PI, Math.PI), evenly(0.1, 5), (at, skater, driveRad, timeS) => {
        // v̇ = (V·u − v)/τ in small steps, exact for a constant u.
        let { xM, yM } = at.atM;
        let { xMps, yMps } = at.velocityMps;
        const steps = 400;
        const h = timeS / steps;
        const keep = Math.exp(-h / skater.tauS);
        for (let i = 0; i < steps; i++) {
          const turn = i < steps / 2 ? driveRad : driveRad + 2;
          const goalX = skater.topSpeedMps * Math.cos(turn);
          const goalY = skater.topSpeedMps * Math.sin(turn);
          xM += goalX * h + (xMps - goalX) * skater.tauS * (1 - keep);
          yM += goalY * h + (yMps - goalY) * skater.tauS * (1 - keep);
          xMps = goalX + (xMps - goalX) * keep;
          yMps = goalY + (yMps - goalY) * keep;
        }
        const disc = reachSetAt(at, skater, timeS);
        expect(Math.hypot(xM - disc.centreM.xM, yM - disc.centreM.yM)).toBeLessThan(disc.radiusM + 1e-9);
      }),
    );
  });

  it('a skater without speed reaches only what the stick reaches', () => {
    const at = { atM: { xM: 0, yM: 0 }, velocityMps: { xMps: 0, yMps: 0 } };
    const still = { topSpeedMps: 0, tauS: 1, reactionS: 0.3, reachM: 1.5 };
    expect(timeTo(at, still, { xM: 1, yM: 0 })).toBe(0.3);
    expect(timeTo(at, still, { xM: 2, yM: 0 })).toEqual({ kind: 'none', reason: 'neverGetsThere' });
  });
});
