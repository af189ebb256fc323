import { type DrillPlan, levelOf, playableOf, rinkOf, runDrill, type SpotId } from '@icewright/engine';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { svgParts, svgPieces } from '../pen/svg-pen.ts';
import { FULL_ICE } from '../scenes/full-ice.plan.ts';
import { drawDrillOnly } from './draw-drill.ts';

const rink = rinkOf({ preset: '200x85ft' });
const SPOTS = Object.keys(FULL_ICE.spots) as SpotId[];

const moved = (plan: DrillPlan, spot: SpotId, dxM: number, dyM: number): DrillPlan => {
  const before = plan.spots[spot]!;
  const atM = { xM: before.atM.xM + dxM, yM: before.atM.yM + dyM };
  return { ...plan, spots: { ...plan.spots, [spot]: { ...before, atM } } };
};

const drawing = (plan: DrillPlan) => {
  const playable = playableOf(plan, rink, levelOf('collegeWomen'));
  const run = playable.kind === 'playable' ? runDrill(playable) : undefined;
  return (pen: Parameters<typeof drawDrillOnly>[0]) =>
    drawDrillOnly(pen, plan, rink, { level: 'collegeWomen', ...(run && { run }) });
};

describe('lines that are kept from one picture to the next', () => {
  it('give the drawing that is made from nothing, wherever a hand moves its spots', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.constantFrom(...SPOTS),
            fc.double({ min: -3, max: 3, noNaN: true }),
            fc.double({ min: -3, max: 3, noNaN: true }),
          ),
          { minLength: 1, maxLength: 4 },
        ),
        moves => {
          let plan: DrillPlan = FULL_ICE;
          for (const [spot, dxM, dyM] of moves) {
            plan = moved(plan, spot, dxM, dyM);
            const again = svgPieces(drawing(plan), { digits: 2, idPrefix: 'one' }).join('');
            // Nothing can be kept for a plan that nobody has seen.
            expect(again).toBe(svgParts(drawing(structuredClone(plan)), { digits: 2, idPrefix: 'one' }));
          }
        },
      ),
      { numRuns: 6, seed: 5 },
    );
  });

  it('are drawn anew where the marks are larger or the sheet is turned', () => {
    const draw = drawing(FULL_ICE);
    const fresh = (set: { k?: number; turnRad?: number }) =>
      svgParts(drawing(structuredClone(FULL_ICE)), { digits: 2, ...set });
    for (const set of [{}, { k: 1.75 }, { turnRad: Math.PI / 2 }, {}])
      expect(svgParts(draw, { digits: 2, ...set })).toBe(fresh(set));
  });
});
