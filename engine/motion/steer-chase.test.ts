import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { CHASE_LOOK_S } from '../drill/drill-rows.ts';
import { levelOf } from '../skater/level.ts';
import { moveUnderPush } from './reactive-step.ts';
import { sightOf, steerChase } from './steer-chase.ts';
import { stretchOf } from './stretch.ts';

const { model } = levelOf('collegeWomen');
const body = fc.record({
  xM: evenly(-15, 15),
  yM: evenly(-10, 10),
  xMps: evenly(-5, 5),
  yMps: evenly(-5, 5),
});

describe('the course of a chaser', () => {
  it('kept to the meeting, ends within reach of one who goes on as now, and no straight course is sooner', () => {
    fc.assert(
      fc.property(body, body, evenly(-Math.PI, Math.PI), evenly(0, 0.98), (self, whom, otherRad, part) => {
        const chaser = {
          push: { x: 0, y: 0 },
          power: model,
          model,
          sight: sightOf(model.tauS),
          stepKeeps: 0,
        };
        steerChase(chaser, self, whom);
        const { meetS } = chaser.sight;
        fc.pre(meetS < CHASE_LOOK_S.value);
        const apartAfter = (push: { x: number; y: number }, timeS: number): number => {
          const at = { ...self };
          moveUnderPush(at, { ...chaser, push }, stretchOf(0, timeS));
          return Math.hypot(whom.xM + whom.xMps * timeS - at.xM, whom.yM + whom.yMps * timeS - at.yM);
        };
        expect(apartAfter(chaser.push, meetS)).toBeLessThanOrEqual(model.lungeReachM + 1e-6);
        if (meetS > 0) {
          expect(apartAfter(chaser.push, meetS)).toBeCloseTo(model.lungeReachM, 5);
          const other = { x: Math.cos(otherRad), y: Math.sin(otherRad) };
          expect(apartAfter(other, part * meetS)).toBeGreaterThan(model.lungeReachM - 1e-6);
        }
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  it('is the same whatever meeting was seen in the step before', () => {
    fc.assert(
      fc.property(body, body, evenly(0, 3), (self, whom, seenS) => {
        const fresh = { push: { x: 0, y: 0 }, power: model, model, sight: sightOf(model.tauS) };
        const later = { push: { x: 0, y: 0 }, power: model, model, sight: sightOf(model.tauS) };
        later.sight.meetS = seenS;
        steerChase(fresh, self, whom);
        steerChase(later, self, whom);
        expect(later.push.x).toBeCloseTo(fresh.push.x, 6);
        expect(later.push.y).toBeCloseTo(fresh.push.y, 6);
      }),
      { numRuns: 200, seed: 2 },
    );
  });
});
