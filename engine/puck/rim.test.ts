import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rimAtTime, rimOf, rimStopTime, rimTimeAtDistance } from './rim.ts';

const anyRim = fc.record({
  constantMps2: fc.integer({ min: 20, max: 200 }).map(n => n / 100),
  dragPerM: fc.integer({ min: 0, max: 40 }).map(n => n / 1000),
  boardFrictionRatio: fc.integer({ min: 0, max: 100 }).map(n => n / 100),
  radiusM: fc.integer({ min: 40, max: 90 }).map(n => n / 10),
  speedMps: fc.integer({ min: 5, max: 350 }).map(n => n / 10),
  edgeMps: fc.integer({ min: -400, max: 100 }).map(n => n / 10),
});
type Rim = typeof anyRim extends fc.Arbitrary<infer Of> ? Of : never;

/**
 * The independent method: Newton for a uniform disc (I = ½mR²) against a wall that presses it with v²/r, Coulomb's friction there, in very
 * short steps: what holds the edge when it can, else what slips.
 */
const stepped = (
  { constantMps2, dragPerM, boardFrictionRatio, radiusM, speedMps, edgeMps }: Rim,
  timeS: number,
) => {
  const stepS = 2e-5;
  let [v, edge, distanceM] = [speedMps, edgeMps, 0];
  for (let t = 0; t < timeS && v > 0; t += stepS) {
    const iceMps2 = constantMps2 + dragPerM * v * v;
    const mostMps2 = (boardFrictionRatio * v * v) / radiusM;
    // What brings the slip to nothing within this step: v gains f, the edge twice that.
    const holdsMps2 = (iceMps2 - (v + edge) / stepS) / 3;
    const f = Math.max(-mostMps2, Math.min(mostMps2, holdsMps2));
    distanceM += v * stepS;
    v = Math.max(0, v + (f - iceMps2) * stepS);
    edge += 2 * f * stepS;
  }
  return { v, edge, distanceM };
};

describe('a puck along a corner', () => {
  it('goes as a disc pressed against a wall goes, slipping, rolling and slipping again', () => {
    fc.assert(
      fc.property(anyRim, fc.integer({ min: 1, max: 9 }), (rim, tenths) => {
        const motion = rimOf(rim, rim.boardFrictionRatio, rim.radiusM, rim);
        const timeS = (Math.min(rimStopTime(motion), 12) * tenths) / 10;
        const exact = rimAtTime(motion, timeS);
        const plain = stepped(rim, timeS);
        expect(Math.abs(exact.speedMps - plain.v)).toBeLessThan(0.005);
        expect(Math.abs(exact.edgeMps - plain.edge)).toBeLessThan(0.01);
        expect(Math.abs(exact.distanceM - plain.distanceM)).toBeLessThan(0.01);
        expect(rimTimeAtDistance(motion, exact.distanceM)).toBeCloseTo(timeS, 6);
      }),
      { numRuns: 200 },
    );
  });

  it('rolls only while the boards press it hard enough, and hangs on no last digit of the slip', () => {
    const slowing = { constantMps2: 0.785, dragPerM: 0.004 };
    const stops = [-1e-15, 0, 1e-15].map(slip =>
      rimStopTime(rimOf(slowing, 0.25, 8.5, { speedMps: 2, edgeMps: -2 + slip })),
    );
    expect(Math.max(...stops) - Math.min(...stops)).toBeLessThan(1e-9);
    // At 2 m/s the boards give .25 · 4/8.5 = .12 m/s², rolling needs .27: nearly all of the ice's slowing is felt.
    expect(stops[1]).toBeLessThan((2 / 0.785) * 1.1);
    // At 10 m/s it rolls first, and slows by two thirds.
    const fast = rimOf(slowing, 0.25, 8.5, { speedMps: 10, edgeMps: -10 });
    expect(10 - rimAtTime(fast, 0.1).speedMps).toBeCloseTo((2 / 3) * (0.785 + 0.004 * 100) * 0.1, 3);
  });
});
