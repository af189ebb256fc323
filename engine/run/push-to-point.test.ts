import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { GAP_RESPONSE_S } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import { freshStance } from '../motion/keeper-stance.ts';
import { movingBodyAt } from '../motion/moving-body.ts';
import { pushToGoal } from '../motion/push-to-goal.ts';
import { levelOf } from '../skater/level.ts';
import { moved, pushToPoint } from './run.reference.ts';

const { model } = levelOf('collegeWomen');
const RAD = evenly(-Math.PI, Math.PI);

const body = fc.record({ xM: evenly(-6, 6), yM: evenly(-6, 6), speedMps: evenly(0, 8), headingRad: RAD });
const bodyOf = ({
  xM,
  yM,
  speedMps,
  headingRad,
}: typeof body extends fc.Arbitrary<infer One> ? One : never) => ({
  xM,
  yM,
  xMps: speedMps * Math.cos(headingRad),
  yMps: speedMps * Math.sin(headingRad),
});

/** What the stance leaves of the top speed towards (x, y), with its angle from straight backward. */
const facingTopMps = (facingRad: number) => (x: number, y: number) => {
  const backward = -Math.cos(Math.atan2(y, x) - facingRad);
  const backwardMps = model.backwardRatio * model.topSpeedMps;
  return backward > 0 ? Math.min(model.topSpeedMps, backwardMps / backward) : model.topSpeedMps;
};

type Stands = 'none' | 'facing' | 'turned';

const topMpsOf = (stands: Stands, facingRad: number) =>
  stands === 'facing' ? facingTopMps(facingRad) : () => model.topSpeedMps;

interface State {
  readonly here: Body;
  readonly point: Body;
  readonly facingRad: number;
  readonly stands: Stands;
  readonly dares: boolean;
  readonly expected: number;
  readonly frontM: number;
}

/** How far the push lies from that of the plain reference: axes turned by angles, what can be braked by halving. */
const apartFromReference = ({ here, point, facingRad, stands, dares, expected, frontM }: State): number => {
  const stance = freshStance();
  stance.towardX = Math.cos(facingRad);
  stance.towardY = Math.sin(facingRad);
  stance.isTurned = stands === 'turned';
  const push = { x: 0, y: 0 };
  const follower = {
    push,
    power: model,
    goal: Object.assign(movingBodyAt(0, 0), point),
    expectedRatio: expected,
    responseKeeps: Math.exp(-GAP_RESPONSE_S.value / model.tauS),
  };
  const able = stands === 'none' ? null : { stance, power: model, model };
  pushToGoal(follower, here, able, dares, frontM);
  const topMps = topMpsOf(stands, facingRad);
  const reference = pushToPoint(model, here, point, moved(point), {
    times: expected,
    topMps,
    turnS: stands === 'none' ? 0 : model.transitionS,
    turnShare: dares ? 0.5 : 1,
    dares: dares && stands !== 'none',
    frontM,
  });
  return Math.hypot(push.x - reference.x, push.y - reference.y);
};

/** How often each kind of case came, so that none is left out unseen. */
const seen = { ahead: 0, behind: 0, inFront: 0, turned: 0, mustTurn: 0 };

describe('the push towards a moving point, in one state after the other', () => {
  it('is that of the plain reference', () => {
    fc.assert(
      fc.property(
        body,
        body,
        fc.oneof(fc.constant(0), evenly(0.3, 9), evenly(0.3, 9)),
        RAD,
        fc.constantFrom<Stands[]>('none', 'facing', 'turned'),
        fc.boolean(),
        evenly(1, 1.6),
        fc.oneof(fc.constant(0), evenly(0.5, 5)),
        (self, goal, goalMps, facingRad, stands, dares, expected, frontM) => {
          const here = bodyOf(self);
          const point = bodyOf({ ...goal, speedMps: goalMps });
          // At the place itself there is no way to go.
          fc.pre(Math.hypot(point.xM - here.xM, point.yM - here.yM) > 0.01);
          // Level with the point, rounding decides whether he is ahead of it.
          const behindM = (point.xM - here.xM) * point.xMps + (point.yM - here.yM) * point.yMps;
          fc.pre(goalMps === 0 || Math.abs(behindM) > 1e-3);
          fc.pre(goalMps === 0 || Math.abs(behindM / goalMps - frontM) > 1e-3);
          expect(
            apartFromReference({ here, point, facingRad, stands, dares, expected, frontM }),
          ).toBeLessThan(1e-4);
          const topMps = topMpsOf(stands, facingRad);
          const isAhead = behindM < 0;
          if (isAhead) seen.ahead++;
          else seen.behind++;
          if (!isAhead && goalMps > 0 && behindM < frontM * goalMps) seen.inFront++;
          if (stands === 'turned') seen.turned++;
          if (isAhead && stands === 'facing' && topMps(point.xMps, point.yMps) < expected * goalMps)
            seen.mustTurn++;
        },
      ),
      { numRuns: 3000, seed: 12 },
    );
    expect(Object.entries(seen).filter(([, count]) => count < 50)).toEqual([]);
  });

  it('and where a turn to come is paid by what the point gains: not by what it loses, and not beyond the point', () => {
    const point = { xM: 0, yM: 0, xMps: 5, yMps: 0 };
    const stands = {
      point,
      facingRad: Math.PI,
      stands: 'facing',
      dares: false,
      expected: 1.5,
      frontM: 0,
    } as const;
    for (const [aheadM, alongMps] of [
      [0.1, 5.3],
      [0.02, 4.9],
    ] as const) {
      const here = { xM: aheadM, yM: 0, xMps: alongMps, yMps: 0 };
      expect(apartFromReference({ ...stands, here })).toBeLessThan(1e-4);
    }
  });
});
