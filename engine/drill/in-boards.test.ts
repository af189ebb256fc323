import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { boardsDistance } from '../rink/boards.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { BOARDS_ROOM_M } from './drill-rows.ts';
import { boardsDistanceAt, mindBoards, pushInside, speedIntoBoards, standingPointOf } from './in-boards.ts';

const { boards } = rinkOf({ preset: '200x85ft' });
const anywhere = fc.record({ xM: evenly(-40, 40), yM: evenly(-20, 20) });
const POWER = { stopDecelMps2: 5.5 };

describe('bodies and the boards', () => {
  it('the distance without an object is the distance with one', () => {
    fc.assert(
      fc.property(anywhere, point => {
        expect(boardsDistanceAt(boards, point.xM, point.yM)).toBeCloseTo(boardsDistance(boards, point), 9);
      }),
    );
  });

  it('a point is moved inside to the nearest place with that room, and one that has it is left alone', () => {
    fc.assert(
      fc.property(anywhere, evenly(0, 2), evenly(-Math.PI, Math.PI), (point, roomM, rad) => {
        const body = { ...point };
        pushInside(boards, body, roomM);
        expect(boardsDistance(boards, body)).toBeGreaterThanOrEqual(roomM - 1e-9);
        if (boardsDistance(boards, point) >= roomM) expect(body).toEqual(point);
        // No place with that room is nearer: not one a little along any direction from there.
        const movedM = Math.hypot(body.xM - point.xM, body.yM - point.yM);
        const other = { xM: body.xM + 0.05 * Math.cos(rad), yM: body.yM + 0.05 * Math.sin(rad) };
        if (boardsDistance(boards, other) >= roomM)
          expect(Math.hypot(other.xM - point.xM, other.yM - point.yM)).toBeGreaterThan(movedM - 1e-6);
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  it('a body that minds them can stop at its room: never faster towards them than √(2·a·room)', () => {
    fc.assert(
      fc.property(anywhere, evenly(-12, 12), evenly(-12, 12), (point, xMps, yMps) => {
        const start = standingPointOf(boards, point);
        const body = { ...start, xMps, yMps };
        mindBoards(boards, body, POWER);
        const roomM = Math.max(0, boardsDistance(boards, body) - BOARDS_ROOM_M.value);
        const into = speedIntoBoards(boards, body.xM, body.yM, body.xMps, body.yMps);
        expect(into).toBeLessThanOrEqual(Math.sqrt(2 * POWER.stopDecelMps2 * roomM) + 1e-6);
        // Along them nothing is lost, and nobody is made faster.
        expect(Math.hypot(body.xMps, body.yMps)).toBeLessThanOrEqual(Math.hypot(xMps, yMps) + 1e-9);
        const lost = Math.hypot(xMps - body.xMps, yMps - body.yMps);
        const before = speedIntoBoards(boards, body.xM, body.yM, xMps, yMps);
        expect(lost).toBeCloseTo(Math.max(0, before - into), 6);
      }),
      { numRuns: 300, seed: 2 },
    );
  });

  it('a step after a step, nobody who minds them comes nearer than the room', () => {
    fc.assert(
      fc.property(anywhere, evenly(-10, 10), evenly(-10, 10), (point, xMps, yMps) => {
        const body = { ...standingPointOf(boards, point), xMps, yMps };
        for (let i = 0; i < 240; i++) {
          body.xM += body.xMps / 120;
          body.yM += body.yMps / 120;
          mindBoards(boards, body, POWER);
          expect(boardsDistance(boards, body)).toBeGreaterThanOrEqual(BOARDS_ROOM_M.value - 1e-9);
        }
      }),
      { numRuns: 40, seed: 3 },
    );
  });
});
