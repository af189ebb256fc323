import fc from 'fast-check';
import { Box, Circle, World } from 'planck';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { boardsSpeedsAfter, bounceOff } from './bounce.ts';
import { puckModelOf } from './puck-model.ts';

const anySpeed = evenly(-30, 30);
const anyLaw = fc.record({
  restitutionRatio: evenly(0, 1),
  boardFrictionRatio: evenly(0, 2),
});
const energyOf = (speeds: { normalMps: number; alongMps: number; edgeMps: number }): number =>
  speeds.normalMps ** 2 + speeds.alongMps ** 2 + speeds.edgeMps ** 2 / 2;

describe('a bounce off the boards', () => {
  it('never adds energy, whatever the spin', () => {
    fc.assert(
      fc.property(anySpeed, anySpeed, anySpeed, anyLaw, (into, along, edge, law) => {
        const before = { normalMps: Math.abs(into), alongMps: along, edgeMps: edge };
        const after = boardsSpeedsAfter(before, { ...law, puckRadiusM: 0.0381 });
        expect(energyOf(after)).toBeLessThanOrEqual(energyOf(before) * (1 + 1e-12) + 1e-12);
      }),
    );
  });

  it('is the mirror image with e = 1 and no friction', () => {
    const after = bounceOff(
      { xMps: 3, yMps: -4, spinRadps: 7 },
      { xM: 0, yM: 1 },
      { restitutionRatio: 1, boardFrictionRatio: 0, puckRadiusM: 0.0381 },
    );
    expect([after.xMps, after.yMps]).toEqual([3, 4]);
    expect(after.spinRadps).toBeCloseTo(7, 12);
  });

  it('comes off flatter and slower, as the table of the default constants says', () => {
    // Worked by hand from Routh's impact, e 0.45, μ_b 0.25: angle in, angle out (degrees), speed kept.
    for (const [angleIn, angleOut, kept] of [
      [20, 10.7, 0.83],
      [30, 18.2, 0.72],
      [45, 34.0, 0.57],
      [60, 49.5, 0.51],
      [75, 68.3, 0.47],
    ] as const) {
      const rad = (angleIn * Math.PI) / 180;
      const after = boardsSpeedsAfter(
        { normalMps: Math.sin(rad), alongMps: Math.cos(rad), edgeMps: 0 },
        puckModelOf(),
      );
      expect((Math.atan2(after.normalMps, after.alongMps) * 180) / Math.PI).toBeCloseTo(angleOut, 1);
      expect(Math.hypot(after.normalMps, after.alongMps)).toBeCloseTo(kept, 2);
    }
  });

  it('never slows the way along below two thirds for a puck without spin', () => {
    const after = boardsSpeedsAfter(
      { normalMps: 10, alongMps: 3, edgeMps: 0 },
      { restitutionRatio: 0.5, boardFrictionRatio: 5, puckRadiusM: 0.0381 },
    );
    expect(after.alongMps).toBeCloseTo(2, 12);
    expect(after.alongMps + after.edgeMps).toBeCloseTo(0, 12);
  });

  it('agrees with a rigid-body engine stepping the same disc against a wall', () => {
    // planck 1.3.0 (dev dependency), a disc of radius 0.5 m: its contact margins are centimetres, too coarse for a puck, and the
    // law knows no size. It solves normal and friction impulses by turns, so friction trails the restitution by a
    // round: up to 0.035 m/s seen, against 2 m/s that the friction takes. Allowed: 0.5 % of the speed in.
    const planck = (e: number, friction: number, vn: number, vt: number, spin: number) => {
      const world = new World({ gravity: { x: 0, y: 0 } });
      const wall = world.createBody({ type: 'static', position: { x: 0, y: -1 } });
      wall.createFixture({ shape: new Box(50, 1), restitution: e, friction });
      const disc = world.createBody({
        type: 'dynamic',
        bullet: true,
        position: { x: 0, y: 0.5 + 0.002 },
        linearVelocity: { x: vt, y: -vn },
        angularVelocity: spin,
      });
      disc.createFixture({ shape: new Circle(0.5), density: 1, restitution: e, friction });
      for (let step = 0; step < 200 && disc.getLinearVelocity().y < 0; step++) world.step(1 / 2000, 20, 20);
      const velocity = disc.getLinearVelocity();
      return { normal: velocity.y, along: velocity.x, edge: 0.5 * disc.getAngularVelocity() };
    };
    for (const [e, friction, vn, vt, spin] of [
      [0, 0.25, 4, 10, 0],
      [0, 0.25, 4, 10, 6],
      [0, 0.1, 8, 3, -20],
      [0.45, 0.25, 6, 12, 0],
      [0.6, 0.15, 5, 20, 9],
      [0.45, 1.5, 6, 3, 0],
      [0.45, 1.5, 6, 3, 4],
      [0.8, 1.5, 6, -3, 0],
      [1, 0, 6, 3, 5],
    ] as const) {
      const seen = planck(e, friction, vn, vt, spin);
      const ours = boardsSpeedsAfter(
        { normalMps: vn, alongMps: vt, edgeMps: 0.5 * spin },
        { restitutionRatio: e, boardFrictionRatio: friction, puckRadiusM: 0.5 },
      );
      const allowed = 0.005 * Math.hypot(vn, vt) + 0.002;
      const label = `e ${e} μ ${friction} vn ${vn} vt ${vt} spin ${spin}`;
      expect(Math.abs(seen.normal - ours.normalMps), label).toBeLessThan(allowed);
      expect(Math.abs(seen.along - ours.alongMps), label).toBeLessThan(allowed);
      expect(Math.abs(seen.edge - ours.edgeMps), label).toBeLessThan(allowed);
    }
  });
});
