import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { boardsDistanceAt } from '../drill/in-boards.ts';
import type { BodyAsked } from '../motion/body-asked.ts';
import { PIVOT_LOSS_RATIO } from '../motion/body-rows.ts';
import type { RouteWay } from '../motion/kept-routes.ts';
import { pivotWayOf } from '../motion/plan-pivot.ts';
import { stopWayOf } from '../motion/plan-stop.ts';
import { turnWayOf } from '../motion/plan-turn.ts';
import { placeOnRoute } from '../motion/planned-route.ts';
import { stretchOf } from '../motion/stretch.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { levelOf } from '../skater/level.ts';
import { LEVEL_IDS } from '../skater/model.ts';
import { referencePivot, referenceStop, referenceTurn } from './body-acts.reference.ts';

const { boards } = rinkOf({ preset: '200x85ft' });

/** Someone in the middle of the ice, with room for everything that is compared: the reference knows no boards. */
const anybody = fc
  .record({
    levelId: fc.constantFrom(...LEVEL_IDS),
    speedRatio: evenly(0.1, 1),
    headingRad: evenly(-Math.PI, Math.PI),
  })
  .map(({ levelId, speedRatio, headingRad }): BodyAsked => {
    const { model } = levelOf(levelId);
    const speedMps = speedRatio * model.topSpeedMps;
    const facingX = Math.cos(headingRad);
    const facingY = Math.sin(headingRad);
    const from = { xM: 0, yM: 0, xMps: speedMps * facingX, yMps: speedMps * facingY };
    return { boards: WIDE, model, from, facingX, facingY, isBackward: false, withPuck: false };
  });

/** Boards so far away that they do not come into it. */
const WIDE = { lengthM: 400, widthM: 400, cornerRadiusM: 8.5 };

const speedOf = ({ from }: BodyAsked): number => Math.hypot(from.xMps, from.yMps);
const lengthOf = (way: RouteWay): number => way.stepM * (way.xM.length - 1);

/** Where a way has come to after that many seconds. */
const placeAfter = (way: RouteWay, afterS: number) => {
  const body = { xM: 0, yM: 0, xMps: 0, yMps: 0 };
  placeOnRoute({ ...way, startS: 0, endS: way.durationS, cursor: 0 }, stretchOf(0, afterS), body);
  return body;
};

describe('a stop', () => {
  it('takes v/a seconds and v²/2a metres, straight on, as small steps have it', () => {
    fc.assert(
      fc.property(anybody, asked => {
        const way = stopWayOf(asked);
        const { stopDecelMps2 } = asked.model;
        expect(way.durationS).toBeCloseTo(speedOf(asked) / stopDecelMps2, 12);
        expect(lengthOf(way)).toBeCloseTo(speedOf(asked) ** 2 / (2 * stopDecelMps2), 9);
        expect(way.speedMps.at(-1)).toBe(0);
        const plain = referenceStop(asked.from, asked.model);
        const end = placeAfter(way, way.durationS);
        expect(Math.hypot(end.xM - plain.xM, end.yM - plain.yM)).toBeLessThan(2e-3);
        const half = placeAfter(way, way.durationS / 2);
        expect(Math.hypot(half.xM, half.yM) / lengthOf(way)).toBeCloseTo(0.75, 9);
      }),
      { numRuns: 60, seed: 31, endOnFailure: true },
    );
  });

  it('of who stands is none', () => {
    const from = { xM: 3, yM: 4, xMps: 0, yMps: 0 };
    const { model } = levelOf('u14');
    const way = stopWayOf({
      boards,
      model,
      from,
      facingX: 1,
      facingY: 0,
      isBackward: false,
      withPuck: false,
    });
    expect(way.durationS).toBe(0);
  });
});

describe('a change between forward and backward', () => {
  it('takes the transition time, costs its part of the speed, and goes straight on, as small steps have it', () => {
    fc.assert(
      fc.property(anybody, asked => {
        const way = pivotWayOf(asked);
        expect(way.durationS).toBe(asked.model.transitionS);
        expect(way.speedMps.at(-1)).toBeCloseTo(speedOf(asked) * (1 - PIVOT_LOSS_RATIO.value), 12);
        expect(way.backward).toBe(true);
        const plain = referencePivot(asked.from, asked.model);
        const end = placeAfter(way, way.durationS);
        expect(Math.hypot(end.xM - plain.xM, end.yM - plain.yM)).toBeLessThan(3e-3);
      }),
      { numRuns: 60, seed: 32, endOnFailure: true },
    );
  });
});

const anyAngle = fc.tuple(fc.constantFrom(-1, 1), evenly(0.1, 2 * Math.PI)).map(([side, rad]) => side * rad);

describe('a tight turn', () => {
  it('follows the way that small steps have: place, heading, speed and time at its end', () => {
    fc.assert(
      fc.property(
        anybody,
        anyAngle,
        evenly(0.1, 1),
        fc.boolean(),
        (someone, angleRad, effortRatio, stands) => {
          const from = stands ? { xM: 0, yM: 0, xMps: 0, yMps: 0 } : someone.from;
          const asked = { ...someone, from };
          const way = turnWayOf(asked, { kind: 'turn', angleRad, effortRatio });
          const end = placeAfter(way, way.durationS);
          const plain = referenceTurn(
            from,
            Math.atan2(asked.facingY, asked.facingX),
            angleRad,
            effortRatio,
            effortRatio * asked.model.topSpeedMps,
            asked.model,
          );
          expect(Math.abs(way.durationS / plain.timeS - 1)).toBeLessThan(0.01);
          expect(Math.abs(lengthOf(way) / plain.wayM - 1)).toBeLessThan(0.002);
          expect(Math.hypot(end.xM - plain.xM, end.yM - plain.yM)).toBeLessThan(0.05);
          expect(Math.hypot(end.xMps - plain.xMps, end.yMps - plain.yMps)).toBeLessThan(0.08);
        },
      ),
      { numRuns: 120, seed: 33, endOnFailure: true },
    );
  });

  it('at full effort keeps its speed round a circle of v²/a_lat, and never asks for more than the level turns', () => {
    fc.assert(
      fc.property(anybody, anyAngle, evenly(0, 1), (asked, angleRad, effortRatio) => {
        const way = turnWayOf(asked, { kind: 'turn', angleRad, effortRatio });
        const { lateralAccelMps2, minTurnRadiusM } = asked.model;
        const radiusM = Math.max(minTurnRadiusM, speedOf(asked) ** 2 / lateralAccelMps2);
        const full = turnWayOf(asked, { kind: 'turn', angleRad, effortRatio: 1 });
        expect(lengthOf(full)).toBeCloseTo(radiusM * Math.abs(angleRad), 9);
        expect(lengthOf(way)).toBeGreaterThan(0);
        // Curvature from three places at a time; over the whole way within the grip there is.
        for (let i = 1; i + 1 < way.xM.length; i++) {
          const ax = way.xM[i]! - way.xM[i - 1]!;
          const ay = way.yM[i]! - way.yM[i - 1]!;
          const bx = way.xM[i + 1]! - way.xM[i]!;
          const by = way.yM[i + 1]! - way.yM[i]!;
          const bendPerM = Math.atan2(ax * by - ay * bx, ax * bx + ay * by) / way.stepM;
          expect(way.speedMps[i]! ** 2 * Math.abs(bendPerM)).toBeLessThan(lateralAccelMps2 * 1.01);
        }
      }),
      { numRuns: 60, seed: 34, endOnFailure: true },
    );
  });

  it('is tighter with less effort, and slows only before a corner too near for it', () => {
    const { model } = levelOf('collegeMen');
    const at = (xM: number): BodyAsked => ({
      boards,
      model,
      from: { xM, yM: 0, xMps: 8, yMps: 0 },
      facingX: 1,
      facingY: 0,
      isBackward: false,
      withPuck: false,
    });
    const fastestIn = (way: RouteWay): number => way.speedMps.at(-1)!;
    const turn = (xM: number, effortRatio: number): RouteWay =>
      turnWayOf(at(xM), { kind: 'turn', angleRad: Math.PI / 2, effortRatio });
    expect(fastestIn(turn(0, 1))).toBeCloseTo(8, 9);
    expect(fastestIn(turn(0, 0.5))).toBeCloseTo(0.5 * model.topSpeedMps, 6);
    const nearBoards = turn(22.5, 1);
    expect(fastestIn(nearBoards)).toBeLessThan(7);
    expect(nearBoards.off).toBeNull();
    for (let i = 0; i < nearBoards.xM.length; i++) {
      expect(boardsDistanceAt(boards, nearBoards.xM[i]!, nearBoards.yM[i]!)).toBeGreaterThan(0.5);
    }
  });

  it('of no angle is none', () => {
    const asked = fc.sample(anybody, { numRuns: 1, seed: 3 })[0]!;
    expect(turnWayOf(asked, { kind: 'turn', angleRad: 0, effortRatio: 1 }).durationS).toBe(0);
  });
});
