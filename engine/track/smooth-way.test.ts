import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import { skateStepOf, spreadUnseen } from './skate-step.ts';
import { denseWay } from './smooth-way.reference.ts';
import { type SeenPlace, smoothWay } from './smooth-way.ts';

const POWER = { topSpeedMps: 9.3, tauS: 1.2, mindS: 1 };

describe('one step of a wandering skater', () => {
  it('keeps the spread that it has when nothing is known, whatever the step', () => {
    const { velocity, wanted, both } = spreadUnseen(POWER);
    for (const stepS of [0.002, 1 / 30, 0.4, 3]) {
      const { goes, strays } = skateStepOf(POWER, stepS);
      const [vv, vw, ww] = [goes[4]!, goes[5]!, goes[8]!];
      expect(vv * vv * velocity + 2 * vv * vw * both + vw * vw * wanted + strays[4]!).toBeCloseTo(
        velocity,
        6,
      );
      expect(ww * ww * wanted + strays[8]!).toBeCloseTo(wanted, 6);
      expect(vv * ww * both + vw * ww * wanted + strays[5]!).toBeCloseTo(both, 6);
    }
  });

  // The sprint law of engine/skater: from rest with w = V the speed is V (1 − e^(−t/τ)); here w fades, so τu → ∞ must give it.
  it('skates by the sprint law while the skater wants the same', () => {
    const { goes } = skateStepOf({ ...POWER, mindS: 1e9 }, 1.5);
    const { topSpeedMps: top, tauS } = POWER;
    const eased = 1 - Math.exp(-1.5 / tauS);
    expect(goes[5]! * top).toBeCloseTo(top * eased, 6);
    expect(goes[2]! * top).toBeCloseTo(top * (1.5 - tauS * eased), 6);
  });

  it('is the same in two halves', () => {
    const [whole, half] = [skateStepOf(POWER, 0.5), skateStepOf(POWER, 0.25)];
    for (let row = 0; row < 3; row++) {
      for (let column = 0; column < 3; column++) {
        let sum = 0;
        for (let k = 0; k < 3; k++) sum += half.goes[3 * row + k]! * half.goes[3 * k + column]!;
        expect(sum).toBeCloseTo(whole.goes[3 * row + column]!, 9);
      }
    }
  });
});

const placeAt = (timeS: number, xM: number, yM: number, sdM = 0.1): SeenPlace => ({
  timeS,
  atM: { xM, yM },
  covM2: { xxM2: sdM * sdM, xyM2: 0, yyM2: sdM * sdM },
});

describe('a smoothed way', () => {
  it('agrees with one dense least-squares problem of very short steps', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.double({ min: -8, max: 8, noNaN: true })), {
          minLength: 1,
          maxLength: 5,
        }),
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        (raw, sdM) => {
          const seen = [...new Map(raw.map(([k, x]) => [k, placeAt(k * 0.02, x, -x, sdM)])).values()].sort(
            (a, b) => a.timeS - b.timeS,
          );
          const timesS = Array.from({ length: 41 }, (_, k) => k * 0.02);
          const dense = denseWay(seen, 0.8, 0.02, POWER);
          for (const [k, point] of smoothWay(seen, timesS, POWER).entries()) {
            expect(Math.abs(point.atM.xM - dense.xM[k]!)).toBeLessThan(0.02 + 0.01 * Math.abs(dense.xM[k]!));
            expect(Math.abs(point.atM.xM + point.atM.yM)).toBeLessThan(1e-6);
            expect(Math.sqrt(point.covariance[0]!) / dense.sdM[k]!).toBeCloseTo(1, 1);
            expect(Math.sqrt(point.covariance[10]!) / dense.sdMps[k]!).toBeCloseTo(1, 1);
          }
        },
      ),
      { numRuns: 25, seed: 11 },
    );
  }, 60_000);

  it('holds the truth in its ± for skaters who wander as it thinks they do', () => {
    const random = randomOf(5);
    const { velocity, wanted, both } = spreadUnseen(POWER);
    let [held, heldSpeed, count] = [0, 0, 0];
    for (let run = 0; run < 60; run++) {
      const stepS = 0.05;
      const { goes, strays } = skateStepOf(POWER, stepS);
      const axes = [0, 1].map(() => {
        const w = random.normal() * Math.sqrt(wanted);
        const v = (both / wanted) * w + random.normal() * Math.sqrt(velocity - (both * both) / wanted);
        return [0, v, w];
      });
      const truth: number[][] = [];
      const draw = () => {
        // Cholesky of the strays, by hand.
        const a = Math.sqrt(strays[0]!);
        const [b, c] = [strays[3]! / a, strays[6]! / a];
        const d = Math.sqrt(Math.max(0, strays[4]! - b * b));
        const e = (strays[7]! - b * c) / d;
        const f = Math.sqrt(Math.max(0, strays[8]! - c * c - e * e));
        const [p, q, r] = [random.normal(), random.normal(), random.normal()];
        return [a * p, b * p + d * q, c * p + e * q + f * r];
      };
      for (let k = 0; k <= 80; k++) {
        truth.push(axes.flatMap(axis => [axis[0]!, axis[1]!]));
        for (const axis of axes) {
          const [x, v, w] = axis as [number, number, number];
          const noise = draw();
          for (let i = 0; i < 3; i++)
            axis[i] = goes[3 * i]! * x + goes[3 * i + 1]! * v + goes[3 * i + 2]! * w + noise[i]!;
        }
      }
      const seen = [0, 20, 40, 60, 80].map(k =>
        placeAt(k * stepS, truth[k]![0]! + 0.1 * random.normal(), truth[k]![2]! + 0.1 * random.normal()),
      );
      const timesS = truth.map((_, k) => k * stepS);
      for (const [k, { atM, velocityMps, covariance }] of smoothWay(seen, timesS, POWER).entries()) {
        const [x, vx] = truth[k]! as [number, number];
        count++;
        if (Math.abs(atM.xM - x) <= 1.96 * Math.sqrt(covariance[0]!)) held++;
        if (Math.abs(velocityMps.xMps - vx) <= 1.96 * Math.sqrt(covariance[10]!)) heldSpeed++;
      }
    }
    expect(held / count).toBeGreaterThan(0.91);
    expect(held / count).toBeLessThan(0.985);
    expect(heldSpeed / count).toBeGreaterThan(0.91);
    expect(heldSpeed / count).toBeLessThan(0.985);
  });

  it('is surest at the hand, and the less sure the further from it', () => {
    const timesS = [0, 0.5, 1, 1.5, 2, 2.5, 3];
    const points = smoothWay([placeAt(0, 0, 0), placeAt(2, 8, 0)], timesS, POWER);
    const sds = points.map(({ covariance }) => covariance[0]!);
    expect(sds[1]!).toBeGreaterThan(sds[0]!);
    expect(sds[2]!).toBeGreaterThan(sds[1]!);
    expect(sds[3]!).toBeGreaterThan(sds[4]!);
    expect(sds[5]!).toBeGreaterThan(sds[4]!);
    expect(sds[6]!).toBeGreaterThan(sds[5]!);
  });

  it('says nothing of a skater nobody saw', () => {
    expect(smoothWay([], [0, 1], POWER)).toEqual([]);
  });

  it('turns with the sheet: a half turn of the places is one of the way', () => {
    const seen = [placeAt(0, 1, 2), placeAt(1, 4, -1), placeAt(1.6, 6, 0)];
    const turned = seen.map(({ timeS, atM }) => placeAt(timeS, -atM.xM, -atM.yM));
    const timesS = [0.3, 0.9, 1.2];
    const [a, b] = [smoothWay(seen, timesS, POWER), smoothWay(turned, timesS, POWER)];
    for (const [i, point] of a.entries()) {
      expect(point.atM.xM).toBeCloseTo(-b[i]!.atM.xM, 9);
      expect(point.velocityMps.yMps).toBeCloseTo(-b[i]!.velocityMps.yMps, 9);
    }
  });
});
