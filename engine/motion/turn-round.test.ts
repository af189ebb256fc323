import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { levelOf } from '../skater/level.ts';
import { PIVOT_LOSS_RATIO, TURNS_AGAIN_S } from './body-rows.ts';
import { facingTopSpeedMps, freshStance, limitToStance } from './keeper-stance.ts';
import { movingBodyAt } from './moving-body.ts';
import { changesStance, glideThroughChange, turnCostM } from './turn-round.ts';

const { model } = levelOf('collegeWomen');
const backMps = model.backwardRatio * model.topSpeedMps;
const angle = evenly(-Math.PI, Math.PI);

/** A keeper at the middle of the ice who looks towards `lookRad`, and the point he is to hold. */
const keeperOf = (lookRad: number) => {
  const stance = freshStance();
  stance.towardX = Math.cos(lookRad);
  stance.towardY = Math.sin(lookRad);
  const self = movingBodyAt(0, 0);
  const goal = movingBodyAt(0, 0);
  const push = { x: 0, y: 0 };
  return {
    stance,
    power: model,
    model,
    goal,
    expectedRatio: 1,
    push,
    self,
    gapM: 2.4,
    stepKeeps: Math.exp(-1 / 120 / model.tauS),
  };
};

describe('what a keeper can do in his stance', () => {
  it('the part of his top speed that is straight backward is never more than the row, and no way is shut to him', () => {
    fc.assert(
      fc.property(angle, angle, (lookRad, wayRad) => {
        const keeper = keeperOf(lookRad);
        const mps = facingTopSpeedMps(keeper, Math.cos(wayRad), Math.sin(wayRad));
        expect(-mps * Math.cos(wayRad - lookRad)).toBeLessThanOrEqual(backMps + 1e-9);
        expect(mps).toBeGreaterThanOrEqual(backMps - 1e-9);
        expect(mps).toBeLessThanOrEqual(model.topSpeedMps);
      }),
    );
  });

  it('a push is shortened to that, never turned and never lengthened', () => {
    fc.assert(
      fc.property(angle, angle, fc.double({ min: 0.01, max: 1, noNaN: true }), (lookRad, wayRad, size) => {
        const keeper = keeperOf(lookRad);
        const push = { x: size * Math.cos(wayRad), y: size * Math.sin(wayRad) };
        limitToStance(push, keeper);
        const after = Math.hypot(push.x, push.y);
        expect(after).toBeLessThanOrEqual(size + 1e-12);
        expect(push.x * Math.sin(wayRad) - push.y * Math.cos(wayRad)).toBeCloseTo(0, 12);
        const backward = -(push.x * keeper.stance.towardX + push.y * keeper.stance.towardY);
        expect(backward).toBeLessThanOrEqual(model.backwardRatio + 1e-12);
        // What is within it stays as it is.
        if (-size * Math.cos(wayRad - lookRad) <= model.backwardRatio) expect(after).toBeCloseTo(size, 12);
        const turned = keeperOf(lookRad);
        turned.stance.isTurned = true;
        const whole = { x: size * Math.cos(wayRad), y: size * Math.sin(wayRad) };
        limitToStance(whole, turned);
        expect(Math.hypot(whole.x, whole.y)).toBeCloseTo(size, 12);
      }),
    );
  });
});

describe('what a turn costs', () => {
  it('is the way a point gains in a turn and a sprint walked step by step', () => {
    fc.assert(
      fc.property(evenly(0, backMps), fc.double({ min: 0.1, max: 1.2, noNaN: true }), (isMps, fasterMps) => {
        const goalMps = isMps + fasterMps;
        let mps = isMps;
        let gainedM = 0;
        const h = 1e-4;
        for (let t = 0; t < model.transitionS; t += h) {
          gainedM += (goalMps - mps) * h;
          mps -= ((PIVOT_LOSS_RATIO.value * isMps) / model.transitionS) * h;
        }
        while (mps < goalMps) {
          gainedM += (goalMps - mps) * h;
          mps += ((model.topSpeedMps - mps) / model.tauS) * h;
        }
        expect(turnCostM(keeperOf(0), goalMps, isMps, goalMps)).toBeCloseTo(gainedM, 2);
      }),
      { numRuns: 40, seed: 1 },
    );
  });
});

describe('when a keeper turns', () => {
  /** Going backward at `isMps` before a point at `goalMps` that he is `aheadM` ahead of; he looks along +x. */
  const before = (isMps: number, goalMps: number, aheadM: number) => {
    const keeper = keeperOf(0);
    keeper.self.xMps = -isMps;
    keeper.goal.xMps = -goalMps;
    keeper.goal.xM = aheadM;
    return keeper;
  };

  it('not before a point that backward can hold, however near', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 0.97, noNaN: true }), ratio => {
        const keeper = before(ratio * backMps, ratio * backMps, 0);
        expect(changesStance(keeper, keeper.self, 10)).toBe(false);
        expect(keeper.stance.isTurned).toBe(false);
      }),
    );
  });

  it('before a faster one as late as it can: not while he is ahead by more than the turn costs', () => {
    const goalMps = backMps + 0.8;
    const costM = turnCostM(keeperOf(0), goalMps, backMps, goalMps);
    const early = before(backMps, goalMps, costM + 0.05);
    expect(changesStance(early, early.self, 10)).toBe(false);
    const due = before(backMps, goalMps, costM - 0.05);
    expect(changesStance(due, due.self, 10)).toBe(true);
    expect(due.stance.isTurned).toBe(true);
    expect(due.stance.changesUntilS).toBe(10 + model.transitionS);
    // And not back again at once, whatever the point does.
    due.goal.xMps = 0;
    expect(changesStance(due, due.self, 10 + model.transitionS + 0.9 * TURNS_AGAIN_S.value)).toBe(false);
  });

  it('and back once the point is slow, when he comes out of it no faster than he can go backward', () => {
    const keeper = before(backMps, 0.5 * backMps, 0);
    keeper.stance.isTurned = true;
    expect(changesStance(keeper, keeper.self, 10)).toBe(true);
    expect(keeper.stance.isTurned).toBe(false);
    const fast = before(model.topSpeedMps, 0.5 * backMps, 0);
    fast.stance.isTurned = true;
    expect(changesStance(fast, fast.self, 10)).toBe(false);
  });

  it('glides through the change: the speed falls evenly, in its direction', () => {
    const keeper = before(5, 8, 0);
    keeper.stance.slowsMps2 = 2;
    keeper.stance.isTurned = true;
    const stepS = 1 / 120;
    glideThroughChange(keeper, keeper.self, stepS);
    const afterMps =
      keeper.stepKeeps * keeper.self.xMps + (1 - keeper.stepKeeps) * model.topSpeedMps * keeper.push.x;
    expect(afterMps).toBeCloseTo(-5 + 2 * stepS, 9);
    expect(keeper.push.y).toBeCloseTo(0, 12);
  });
});
