import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { levelOf } from '../skater/level.ts';
import { movingBodyAt } from './moving-body.ts';
import { steerToGoal } from './push-to-goal.ts';
import { moveUnderPush } from './reactive-step.ts';
import { STEP_S, stretchOf } from './stretch.ts';

const { model } = levelOf('collegeWomen');
const RESPONSE_S = 0.1;

const followerOf = () => ({
  push: { x: 0, y: 0 },
  power: model,
  goal: movingBodyAt(0, 0),
  expectedRatio: 1,
  stepKeeps: Math.exp(-STEP_S / model.tauS),
  responseKeeps: Math.exp(-RESPONSE_S / model.tauS),
});

/** Follows a goal that goes straight on for that long; how far off at each step, and how fast against the goal. */
const follow = (
  self: { xM: number; yM: number; xMps: number; yMps: number },
  goal: { xMps: number; yMps: number },
  forS: number,
) => {
  const follower = followerOf();
  const body = { ...self };
  follower.goal.xMps = goal.xMps;
  follower.goal.yMps = goal.yMps;
  const offM: number[] = [];
  let mostPush = 0;
  const step = stretchOf(0, STEP_S);
  for (let i = 0; i < forS / STEP_S; i++) {
    steerToGoal(follower, body);
    mostPush = Math.max(mostPush, Math.hypot(follower.push.x, follower.push.y));
    moveUnderPush(body, follower, step);
    follower.goal.xM += goal.xMps * STEP_S;
    follower.goal.yM += goal.yMps * STEP_S;
    offM.push(Math.hypot(body.xM - follower.goal.xM, body.yM - follower.goal.yM));
  }
  expect(mostPush).toBeLessThanOrEqual(1 + 1e-12);
  return { offM, body };
};

describe('a skater who steers to a moving point', () => {
  it('is on it in the end, and stays, whenever the point is slower than the skater', () => {
    fc.assert(
      fc.property(
        evenly(-8, 8),
        evenly(-8, 8),
        evenly(-4, 4),
        evenly(-4, 4),
        evenly(0, 0.6),
        evenly(-Math.PI, Math.PI),
        (xM, yM, xMps, yMps, part, rad) => {
          const mps = part * model.topSpeedMps;
          const goal = { xMps: mps * Math.cos(rad), yMps: mps * Math.sin(rad) };
          const { offM, body } = follow({ xM, yM, xMps, yMps }, goal, 12);
          expect(Math.max(...offM.slice(-120))).toBeLessThan(0.02);
          expect(Math.hypot(body.xMps - goal.xMps, body.yMps - goal.yMps)).toBeLessThan(0.05);
        },
      ),
      { numRuns: 15, seed: 1 },
    );
  });

  it('from a stand comes to a standing point without going past it', () => {
    fc.assert(
      fc.property(evenly(0.2, 25), wayM => {
        const { body } = follow({ xM: -wayM, yM: 0, xMps: 0, yMps: 0 }, { xMps: 0, yMps: 0 }, 1);
        expect(body.xM).toBeLessThan(0.01);
        const late = follow({ xM: -wayM, yM: 0, xMps: 0, yMps: 0 }, { xMps: 0, yMps: 0 }, 10);
        expect(late.body.xM).toBeLessThan(0.01);
        expect(late.offM.at(-1)).toBeLessThan(0.02);
      }),
      { numRuns: 10, seed: 2 },
    );
  });

  it('does the same turned round by any angle', () => {
    fc.assert(
      fc.property(
        evenly(-6, 6),
        evenly(-6, 6),
        evenly(-3, 3),
        evenly(-Math.PI, Math.PI),
        (xM, yM, mps, rad) => {
          const turn = (x: number, y: number) => ({
            x: x * Math.cos(rad) - y * Math.sin(rad),
            y: x * Math.sin(rad) + y * Math.cos(rad),
          });
          const a = followerOf();
          const b = followerOf();
          a.goal.xMps = mps;
          const goal = turn(mps, 0);
          b.goal.xMps = goal.x;
          b.goal.yMps = goal.y;
          const place = turn(xM, yM);
          steerToGoal(a, { xM, yM, xMps: 0, yMps: 0 });
          steerToGoal(b, { xM: place.x, yM: place.y, xMps: 0, yMps: 0 });
          const want = turn(a.push.x, a.push.y);
          expect(b.push.x).toBeCloseTo(want.x, 6);
          expect(b.push.y).toBeCloseTo(want.y, 6);
        },
      ),
      { numRuns: 100, seed: 4 },
    );
  });
});
