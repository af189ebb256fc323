import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { drillPlanFromFreeze, type FreezeScene, type FreezeSkater } from '../drill/plan-from-freeze.ts';
import { at, planOf, playableFrom, skate } from '../run/drill-shorthand.reference.ts';
import { runDrill } from '../run/run-drill.ts';
import { MISSING_M } from './ideas-rows.ts';
import { likenessOf } from './likeness.ts';

const skater = (id: string, side: 'us' | 'them', xM: number, yM: number): FreezeSkater => ({
  id,
  side,
  kind: 'skater',
  role: id,
  atM: at(xM, yM),
});
const SCENE: FreezeScene = {
  skaters: [skater('F1', 'us', 3, 4), skater('D1', 'us', -8, -2), skater('X1', 'them', -2, 6)],
  puck: { atM: at(-3, 6), carrier: 'X1' },
};

const ids = () => {
  let next = 0;
  return () => `id-${next++}`;
};
const runOf = (plan: ReturnType<typeof planOf>) => runDrill(playableFrom(plan, 'collegeWomen'));

describe('likeness to the game', () => {
  it('is nothing at the whistle for the drill that is the picture, whichever end it was at', () => {
    for (const attacks of ['plusX', 'minusX'] as const) {
      const plan = drillPlanFromFreeze(SCENE, { attacks, newId: ids() });
      const like = likenessOf(SCENE, attacks, plan, runOf(plan))!;
      // The carried puck lies on the blade, a metre ahead of where the middle is drawn: the picture has it there too.
      expect(like.placesM).toBeLessThan(1.1);
      expect(like).toMatchObject({
        timeS: 0,
        missingCount: 0,
        extraCount: 0,
        isMirrored: false,
        speedsMps: null,
      });
    }
  });

  it('a drill moved by a vector is that far off in places, by hand, and not at all in gaps', () => {
    fc.assert(
      fc.property(evenly(-4, 4), evenly(0, 3), (dx, dy) => {
        const scene: FreezeScene = { skaters: SCENE.skaters, puck: { atM: at(-3, 6) } };
        const plan = drillPlanFromFreeze(
          {
            skaters: scene.skaters.map(one => ({ ...one, atM: at(one.atM.xM + dx, one.atM.yM + dy) })),
            puck: { atM: at(-3 + dx, 6 + dy) },
          },
          { attacks: 'plusX', newId: ids() },
        );
        const like = likenessOf(scene, 'plusX', plan, runOf(plan), { atTimeS: 0 })!;
        if (!like.isMirrored) {
          expect(like.placesM).toBeCloseTo(Math.hypot(dx, dy), 6);
          expect(like.gapsM).toBeCloseTo(0, 6);
        }
        expect(like.distanceM).toBeLessThanOrEqual(Math.hypot(dx, dy) + 1e-9);
      }),
      { numRuns: 40 },
    );
  });

  it('one who is missing and one too many count as the row says', () => {
    const scene: FreezeScene = { skaters: SCENE.skaters };
    const plan = drillPlanFromFreeze(
      { skaters: SCENE.skaters.slice(0, 2) },
      { attacks: 'plusX', newId: ids() },
    );
    const like = likenessOf(scene, 'plusX', plan, runOf(plan))!;
    expect(like.missingCount).toBe(1);
    expect(like.placesM).toBeCloseTo(MISSING_M.value / Math.sqrt(3), 9);
  });

  it('finds the moment at which the rep is the picture', () => {
    const plan = planOf([
      { role: 'F1', atM: at(-10, 0), acts: [skate([at(10, 0)], { stops: false })] },
      { role: 'X1', side: 'them', atM: at(5, 5), facingRad: 0 },
    ]);
    const scene: FreezeScene = { skaters: [skater('F1', 'us', 2, 0), skater('X1', 'them', 5, 5)] };
    const run = runOf(plan);
    const like = likenessOf(scene, 'plusX', plan, run)!;
    expect(run.tracks[0]!.xM[Math.round(like.timeS * run.stepHz)]).toBeCloseTo(2, 0);
    expect(like.placesM).toBeLessThan(0.2);
  });

  it('a mirrored drill is as like as the drill', () => {
    const scene: FreezeScene = { skaters: SCENE.skaters };
    const mirrored: FreezeScene = {
      skaters: SCENE.skaters.map(one => ({ ...one, atM: at(one.atM.xM, -one.atM.yM) })),
    };
    const plan = drillPlanFromFreeze(mirrored, { attacks: 'plusX', newId: ids() });
    const like = likenessOf(scene, 'plusX', plan, runOf(plan))!;
    expect(like.isMirrored).toBe(true);
    expect(like.placesM).toBeCloseTo(0, 9);
  });
});
