import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ContestView, contestPerS, reachShape } from './contest.ts';

/** Whole micrometres: next to nothing, a distance squared is none, and no direction follows from it. */
const number = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map(value => Math.round(value * 1e6) / 1e6);
const way = number(-Math.PI, Math.PI).map(rad => ({ x: Math.cos(rad), y: Math.sin(rad) }));
const body = fc.record({ xM: number(-3, 3), yM: number(-3, 3), xMps: number(-6, 6), yMps: number(-6, 6) });
const view: fc.Arbitrary<ContestView> = fc
  .tuple(body, way, body, way)
  .map(([by, byFacing, whom, whomFacing]) => ({
    by,
    byFacing,
    reachM: 1.45,
    lungeReachM: 1.98,
    whom,
    whomFacing,
    puck: { xM: whom.xM + whomFacing.x, yM: whom.yM + whomFacing.y },
  }));

/** The sum of the hazard while a stick comes by, at `hz` samples a second, by the rule of the run. */
const passingBy = (hz: number, forS: number): number => {
  const at = (timeS: number): number =>
    contestPerS({
      by: { xM: -2.5 + 2 * timeS, yM: 1.1, xMps: 7, yMps: 0 },
      byFacing: { x: 1, y: 0 },
      reachM: 1.45,
      lungeReachM: 1.98,
      whom: { xM: 0, yM: 0, xMps: 5, yMps: 0 },
      whomFacing: { x: 1, y: 0 },
      puck: { xM: 1, yM: 0 },
    });
  let sum = 0;
  for (let i = 1; i <= forS * hz; i++) sum += (at((i - 1) / hz) + at(i / hz)) / (2 * hz);
  return sum;
};

describe('the hazard of a contest', () => {
  it('is never below 0, and 0 outside the lunge', () => {
    fc.assert(
      fc.property(view, one => {
        const perS = contestPerS(one);
        expect(perS).toBeGreaterThanOrEqual(0);
        expect(perS).toBeLessThanOrEqual(1 + 1e-9);
        const stickM = Math.hypot(one.puck.xM - one.by.xM, one.puck.yM - one.by.yM);
        // The stick is half a metre long, so beyond that and a lunge nothing is in reach.
        if (stickM > 1.98 + 0.5) expect(perS).toBe(0);
      }),
    );
  });

  it('is the same in the mirror', () => {
    const flipped = ({ by, whom, byFacing, whomFacing, puck, ...reach }: ContestView): ContestView => ({
      ...reach,
      by: { ...by, yM: -by.yM, yMps: -by.yMps },
      whom: { ...whom, yM: -whom.yM, yMps: -whom.yMps },
      byFacing: { x: byFacing.x, y: -byFacing.y },
      whomFacing: { x: whomFacing.x, y: -whomFacing.y },
      puck: { xM: puck.xM, yM: -puck.yM },
    });
    fc.assert(
      fc.property(view, one => {
        expect(contestPerS(flipped(one))).toBeCloseTo(contestPerS(one), 12);
      }),
    );
  });

  it('adds up with the time in reach, to the same at 60, 120 and 240 samples a second', () => {
    let before = 0;
    for (let forS = 0.5; forS <= 3; forS += 0.5) {
      const sum = passingBy(120, forS);
      expect(sum).toBeGreaterThanOrEqual(before);
      before = sum;
      expect(passingBy(60, forS)).toBeCloseTo(sum, 3);
      expect(passingBy(240, forS)).toBeCloseTo(sum, 3);
    }
    expect(before).toBeGreaterThan(0.2);
  });

  it('reaches all the way ahead, four fifths to a side, a third behind', () => {
    expect(reachShape(1)).toBeCloseTo(1, 12);
    expect(reachShape(0)).toBeCloseTo(0.8, 12);
    expect(reachShape(-1)).toBeCloseTo(0.35, 12);
  });
});
