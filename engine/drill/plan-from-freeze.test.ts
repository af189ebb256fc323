import { describe, expect, it } from 'vitest';
import { playableFrom } from '../run/drill-shorthand.reference.ts';
import { runDrill } from '../run/run-drill.ts';
import { drillPlanFromFreeze, type FreezeScene } from './plan-from-freeze.ts';

const scene: FreezeScene = {
  skaters: [
    { id: 'a', side: 'us', kind: 'skater', role: 'F1', atM: { xM: 6, yM: 3 }, ghostM: { xM: -4, yM: 1 } },
    { id: 'b', side: 'them', kind: 'skater', role: 'X1', atM: { xM: 2, yM: -5 } },
    { id: 'c', side: 'us', kind: 'goalie', role: 'G', atM: { xM: -26, yM: 0 } },
  ],
  puck: { atM: { xM: 1, yM: -5 }, carrier: 'b' },
};

const counted = () => {
  let next = 0;
  return () => `id${next++}`;
};

describe('a drill from a freeze', () => {
  it('has the same skaters on the same places, the puck on its carrier, and only the act that a ghost asks for', () => {
    const plan = drillPlanFromFreeze(scene, { attacks: 'plusX', newId: counted() });
    const spots = Object.values(plan.spots);
    expect(spots.map(spot => [spot.role, spot.atM])).toEqual(scene.skaters.map(one => [one.role, one.atM]));
    expect(spots.flatMap(spot => Object.values(spot.acts))).toMatchObject([
      { kind: 'skate', throughM: [{ xM: -4, yM: 1 }], stops: true },
    ]);
    expect(Object.values(plan.pucks)[0]!.ownerSpot).toBe(Object.keys(plan.spots)[1]);
    const run = runDrill(playableFrom(plan));
    expect(run.tracks[0]!.xM.at(-1)).toBeCloseTo(-4, 6);
    expect(run.pucks[0]!.owner.at(-1)).toBe(1);
  });

  it('is turned round by half a turn when we attack the other end, never mirrored', () => {
    const plan = drillPlanFromFreeze(scene, { attacks: 'minusX', newId: counted() });
    const [first] = Object.values(plan.spots);
    expect(first!.atM).toEqual({ xM: -6, yM: -3 });
  });

  it('faces the puck, and its carrier faces the end they attack', () => {
    const [first, second] = Object.values(
      drillPlanFromFreeze(scene, { attacks: 'plusX', newId: counted() }).spots,
    );
    expect(first!.facingRad).toBeCloseTo(Math.atan2(-8, -5), 9);
    expect(second!.facingRad).toBeCloseTo(Math.PI, 9);
  });
});
