/// <reference path="./bezier-js.d.ts" />
import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import type { IcePoint } from '../units/points.ts';
import { type RouteCurve, routeCurveOf, routePlaceAt } from './route-curve.ts';

const point = fc.record({ xM: evenly(-28, 28), yM: evenly(-12, 12) });
const points = fc
  .array(point, { minLength: 2, maxLength: 8 })
  .filter(list =>
    list.every((a, i) => i === 0 || Math.hypot(a.xM - list[i - 1]!.xM, a.yM - list[i - 1]!.yM) > 0.5),
  );

const placeOf = ({ xM, yM }: RouteCurve, i: number): IcePoint => ({ xM: xM[i]!, yM: yM[i]! });

describe('a route', () => {
  it('goes through its points, first to last', () => {
    fc.assert(
      fc.property(points, list => {
        const curve = routeCurveOf(list);
        const ends = [placeOf(curve, 0), placeOf(curve, curve.xM.length - 1)];
        expect(Math.hypot(ends[0]!.xM - list[0]!.xM, ends[0]!.yM - list[0]!.yM)).toBeLessThan(1e-9);
        expect(Math.hypot(ends[1]!.xM - list.at(-1)!.xM, ends[1]!.yM - list.at(-1)!.yM)).toBeLessThan(1e-6);
        expect(curve.beziers).toHaveLength(list.length - 1);
        for (const [i, { fromM }] of curve.beziers.entries()) expect(fromM).toEqual(list[i]);
      }),
    );
  });

  // Independent: bezier-js computes each piece's length by its own quadrature.
  it('is as long as an independent library says', () => {
    fc.assert(
      fc.property(points, list => {
        const curve = routeCurveOf(list);
        const lengthM = curve.beziers.reduce((sum, { fromM, control1M, control2M, toM }) => {
          const piece = new Bezier(
            ...[fromM, control1M, control2M, toM].map(({ xM, yM }) => ({ x: xM, y: yM })),
          );
          return sum + piece.length();
        }, 0);
        expect(Math.abs(curve.lengthM - lengthM)).toBeLessThan(0.02 + 1e-3 * lengthM);
      }),
      { numRuns: 50 },
    );
  });

  it('samples lie evenly along it', () => {
    fc.assert(
      fc.property(points, list => {
        const curve = routeCurveOf(list, { stepM: 0.02 });
        // Where a route turns back on itself the length of the tip is known to 2 cm (12 mm at worst in 25,000 routes).
        const slackM = curve.sharpestPerM < 1 ? 1e-6 : 0.02;
        let sum = 0;
        for (let i = 1; i < curve.xM.length; i++) {
          const chord = Math.hypot(curve.xM[i]! - curve.xM[i - 1]!, curve.yM[i]! - curve.yM[i - 1]!);
          expect(chord).toBeLessThan(curve.stepM + slackM);
          sum += chord;
        }
        // Where a route turns back on itself a chord cuts the tip off: at most one step a point.
        expect(curve.lengthM - sum).toBeLessThan(curve.stepM * list.length + 1e-3 * curve.lengthM);
      }),
      { numRuns: 30 },
    );
  });

  it('bends without jumps: curvature of a smooth route changes little from sample to sample', () => {
    const curve = routeCurveOf([
      { xM: -20, yM: 0 },
      { xM: -10, yM: 5 },
      { xM: 0, yM: 0 },
      { xM: 9, yM: -3 },
    ]);
    for (let i = 1; i < curve.xM.length; i++)
      expect(Math.abs(curve.curvaturePerM[i]! - curve.curvaturePerM[i - 1]!)).toBeLessThan(0.02);
  });

  it('round a circle the curvature is that of the circle', () => {
    const radiusM = 4.5;
    const list = Array.from({ length: 17 }, (_, i) => ({
      xM: radiusM * Math.cos((i * Math.PI) / 8),
      yM: radiusM * Math.sin((i * Math.PI) / 8),
    }));
    const curve = routeCurveOf(list);
    expect(curve.lengthM).toBeCloseTo(2 * Math.PI * radiusM, 1);
    const middle = Math.floor(curve.xM.length / 2);
    expect(curve.curvaturePerM[middle]!).toBeCloseTo(1 / radiusM, 2);
  });

  it('a half turn turns it, a mirror mirrors its bends, a start heading is kept', () => {
    fc.assert(
      fc.property(points, evenly(-3, 3), (list, startHeadingRad) => {
        const curve = routeCurveOf(list, { startHeadingRad });
        expect(Math.cos(curve.headingRad[0]! - startHeadingRad)).toBeCloseTo(1, 6);
        const plain = routeCurveOf(list);
        const turned = routeCurveOf(list.map(({ xM, yM }) => ({ xM: -xM, yM: -yM })));
        const mirrored = routeCurveOf(list.map(({ xM, yM }) => ({ xM, yM: -yM })));
        const i = Math.floor(plain.xM.length / 3);
        expect(turned.lengthM).toBeCloseTo(plain.lengthM, 6);
        expect(turned.xM[i]!).toBeCloseTo(-plain.xM[i]!, 6);
        expect(mirrored.yM[i]!).toBeCloseTo(-plain.yM[i]!, 6);
      }),
    );
  });

  it('places between samples lie on it', () => {
    const list = [
      { xM: 0, yM: 0 },
      { xM: 8, yM: 3 },
      { xM: 12, yM: 10 },
    ];
    const fine = routeCurveOf(list, { stepM: 0.01 });
    const coarse = routeCurveOf(list);
    for (let i = 0; i < fine.xM.length; i += 7) {
      const { atM } = routePlaceAt(coarse, i * fine.stepM);
      expect(Math.hypot(atM.xM - fine.xM[i]!, atM.yM - fine.yM[i]!)).toBeLessThan(1e-4);
    }
  });

  it('of one point, or of points on top of each other, has no length', () => {
    const curve = routeCurveOf([
      { xM: 1, yM: 2 },
      { xM: 1, yM: 2 },
    ]);
    expect(curve.lengthM).toBe(0);
    expect(routePlaceAt(curve, 3).atM).toEqual({ xM: 1, yM: 2 });
  });
});
