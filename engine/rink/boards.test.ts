import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { alongBoardsM, boardsPointAtArc, nearestBoardsPoint } from './along-boards.ts';
import {
  type Boards,
  boardsDistance,
  boardsOf,
  halfSpanAtX,
  halfSpanAtY,
  insetBoards,
  perimeterOf,
} from './boards.ts';
import { boardsRayHit } from './boards-ray.ts';

const anyBoards = fc
  .tuple(
    fc.double({ min: 15, max: 75, noNaN: true }),
    fc.double({ min: 10, max: 40, noNaN: true }),
    evenly(0, 1),
  )
  .map(([lengthM, widthM, share]) => boardsOf(lengthM, widthM, (share * Math.min(lengthM, widthM)) / 2));

/** A point inside: some way from the middle towards a boards point. */
const withInside = fc.tuple(anyBoards, evenly(0, 1), evenly(0, 0.999)).map(([boards, around, out]) => {
  const edge = boardsPointAtArc(boards, around * perimeterOf(boards)).pointM;
  return { boards, pointM: { xM: edge.xM * out, yM: edge.yM * out } };
});
const direction = evenly(-Math.PI, Math.PI);

const halfTurn = ({ xM, yM }: IcePoint): IcePoint => ({ xM: -xM, yM: -yM });
const mirror = ({ xM, yM }: IcePoint): IcePoint => ({ xM, yM: -yM });
const apart = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);

const hitOf = (boards: Boards, startM: IcePoint, directionRad: number) => {
  const hit = boardsRayHit(boards, startM, directionRad);
  if (isNone(hit)) throw new Error(`no hit: ${hit.reason}`);
  return hit;
};

describe('the boards', () => {
  it('round trip: arc length → point → arc length, and the point lies on the boards', () => {
    fc.assert(
      fc.property(anyBoards, fc.double({ min: 0.0001, max: 0.9999, noNaN: true }), (boards, around) => {
        const arcM = around * perimeterOf(boards);
        const { pointM } = boardsPointAtArc(boards, arcM);
        expect(Math.abs(boardsDistance(boards, pointM))).toBeLessThan(1e-9);
        expect(alongBoardsM(boards, pointM, boardsPointAtArc(boards, arcM).pointM)).toBeLessThan(1e-9);
        // A square corner belongs to two parts; elsewhere the arc length comes back.
        if (boards.cornerRadiusM > 0.01) expect(nearestBoardsPoint(boards, pointM).arcM).toBeCloseTo(arcM, 6);
      }),
    );
  });

  it('the nearest point is as far as the distance says, along its normal', () => {
    fc.assert(
      fc.property(withInside, ({ boards, pointM }) => {
        const near = nearestBoardsPoint(boards, pointM);
        const distanceM = boardsDistance(boards, pointM);
        expect(apart(near.pointM, pointM)).toBeCloseTo(distanceM, 9);
        expect(near.pointM.xM + near.normal.xM * distanceM).toBeCloseTo(pointM.xM, 9);
        expect(near.pointM.yM + near.normal.yM * distanceM).toBeCloseTo(pointM.yM, 9);
      }),
    );
  });

  it('no sampled boards point is nearer than the nearest', () => {
    fc.assert(
      fc.property(withInside, ({ boards, pointM }) => {
        const perimeterM = perimeterOf(boards);
        const distanceM = boardsDistance(boards, pointM);
        for (let i = 0; i < 400; i++)
          expect(apart(boardsPointAtArc(boards, (i / 400) * perimeterM).pointM, pointM)).toBeGreaterThan(
            distanceM - 1e-9,
          );
      }),
      { numRuns: 30 },
    );
  });

  it('a ray ends on the boards, on its own line, and sees the ice all the way', () => {
    fc.assert(
      fc.property(withInside, direction, ({ boards, pointM }, directionRad) => {
        const hit = hitOf(boards, pointM, directionRad);
        expect(Math.abs(boardsDistance(boards, hit.pointM))).toBeLessThan(1e-7);
        expect(
          apart(hit.pointM, {
            xM: pointM.xM + hit.distanceM * Math.cos(directionRad),
            yM: pointM.yM + hit.distanceM * Math.sin(directionRad),
          }),
        ).toBeLessThan(1e-6);
        for (const share of [0.25, 0.5, 0.75, 0.99]) {
          const on = {
            xM: pointM.xM + share * (hit.pointM.xM - pointM.xM),
            yM: pointM.yM + share * (hit.pointM.yM - pointM.yM),
          };
          expect(boardsDistance(boards, on)).toBeGreaterThan(-1e-9);
        }
      }),
    );
  });

  it('from a hit back again finds where the ray would have come from', () => {
    fc.assert(
      fc.property(withInside, direction, ({ boards, pointM }, directionRad) => {
        const hit = hitOf(boards, pointM, directionRad);
        fc.pre(hit.angleFromBoardsRad > 0.01);
        const back = hitOf(boards, hit.pointM, directionRad + Math.PI);
        expect(back.distanceM).toBeGreaterThan(hit.distanceM - 1e-6);
        const again = hitOf(boards, back.pointM, directionRad);
        fc.pre(back.angleFromBoardsRad > 0.01);
        expect(apart(again.pointM, hit.pointM)).toBeLessThan(1e-6);
      }),
    );
  });

  it('turns and mirrors with the rink', () => {
    fc.assert(
      fc.property(withInside, direction, ({ boards, pointM }, directionRad) => {
        const hit = hitOf(boards, pointM, directionRad);
        const turned = hitOf(boards, halfTurn(pointM), directionRad + Math.PI);
        const mirrored = hitOf(boards, mirror(pointM), -directionRad);
        expect(apart(turned.pointM, halfTurn(hit.pointM))).toBeLessThan(1e-6);
        expect(apart(mirrored.pointM, mirror(hit.pointM))).toBeLessThan(1e-6);
        expect(apart(mirrored.normal, mirror(hit.normal))).toBeLessThan(1e-6);
      }),
    );
  });

  it('inset boards keep that distance from the boards', () => {
    fc.assert(
      fc.property(anyBoards, evenly(0, 1), (boards, around) => {
        fc.pre(boards.cornerRadiusM > 0.04);
        const inner = insetBoards(boards, 0.0381);
        const { pointM } = boardsPointAtArc(inner, around * perimeterOf(inner));
        expect(boardsDistance(boards, pointM)).toBeCloseTo(0.0381, 9);
      }),
    );
  });

  it('says why there is no hit', () => {
    const boards = boardsOf(60, 30, 8.5);
    expect(boardsRayHit(boards, { xM: 31, yM: 0 }, 0)).toEqual({ kind: 'none', reason: 'startsOutside' });
    expect(boardsRayHit(boards, { xM: 30, yM: 0 }, 0)).toEqual({ kind: 'none', reason: 'leadsOut' });
    expect(hitOf(boards, { xM: 30, yM: 0 }, Math.PI).distanceM).toBeCloseTo(60, 12);
    expect(() => boardsOf(20, 10, 6)).toThrow(/6/);
  });

  it('lines across meet the boards where the boards are', () => {
    fc.assert(
      fc.property(anyBoards, evenly(-1, 1), (boards, share) => {
        const xM = (share * boards.lengthM) / 2;
        const yM = (share * boards.widthM) / 2;
        expect(Math.abs(boardsDistance(boards, { xM, yM: halfSpanAtX(boards, xM) }))).toBeLessThan(1e-6);
        expect(Math.abs(boardsDistance(boards, { xM: halfSpanAtY(boards, yM), yM }))).toBeLessThan(1e-6);
      }),
    );
    expect(halfSpanAtX(boardsOf(60, 30, 8), 31)).toBe(0);
    // At the very end, where the radius is not told to the last digit.
    expect(halfSpanAtX(boardsOf(15, 10, 0.375015), 7.5)).toBeCloseTo(5 - 0.375015, 6);
  });
});
