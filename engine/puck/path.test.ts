import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { boardsDistance, boardsOf } from '../rink/boards.ts';
import { puckAt, puckPath } from './path.ts';
import { type PuckModel, puckModelOf } from './puck-model.ts';
import { rimAtTime, rimOf, rimTimeAtDistance } from './rim.ts';

const boards = boardsOf(60.96, 25.908, 8.5344);
const radiusM = 0.0381;
const anyShot = fc.record({
  xM: evenly(-26, 26),
  yM: evenly(-12, 12),
  launchRad: evenly(-Math.PI, Math.PI),
  speedMps: fc.double({ min: 1, max: 40, noNaN: true }),
  spinRadps: evenly(-300, 300),
  restitutionRatio: evenly(0, 1),
  boardFrictionRatio: evenly(0, 1),
});
const energyAt = (path: ReturnType<typeof puckPath>, timeS: number): number => {
  const { velocity, spinRadps } = puckAt(path, timeS);
  return velocity.xMps ** 2 + velocity.yMps ** 2 + (radiusM * spinRadps) ** 2 / 2;
};
const shoot = (shot: Record<string, number>, model: PuckModel = puckModelOf(shot)) =>
  puckPath(boards, model, { xM: shot.xM!, yM: shot.yM! }, shot.launchRad!, shot.speedMps!, {
    spinRadps: shot.spinRadps!,
    maxTimeS: 12,
  });
const modelOf = ({ restitutionRatio, boardFrictionRatio }: Record<string, number>): PuckModel =>
  puckModelOf({ restitutionRatio: restitutionRatio!, boardFrictionRatio: boardFrictionRatio! });

describe('the path of a puck', () => {
  it('never gains energy, stays inside the boards and never jumps', () => {
    fc.assert(
      fc.property(anyShot, shot => {
        const path = shoot(shot, modelOf(shot));
        let before = energyAt(path, 0);
        let place = puckAt(path, 0).atM;
        const steps = 200;
        for (let step = 1; step <= steps; step++) {
          const timeS = (path.endTimeS * step) / steps;
          const energy = energyAt(path, timeS);
          const at = puckAt(path, timeS).atM;
          expect(energy).toBeLessThanOrEqual(before * (1 + 1e-9) + 1e-9);
          expect(boardsDistance(boards, at)).toBeGreaterThan(radiusM - 1e-7);
          const fastest = Math.sqrt(before) * (path.endTimeS / steps);
          expect(Math.hypot(at.xM - place.xM, at.yM - place.yM)).toBeLessThanOrEqual(fastest + 1e-6);
          before = energy;
          place = at;
        }
      }),
      { numRuns: 150 },
    );
  });

  it('turns with the ends and mirrors with the sides', () => {
    fc.assert(
      fc.property(anyShot, shot => {
        const model = modelOf(shot);
        const path = shoot(shot, model);
        const turned = shoot(
          { ...shot, xM: -shot.xM, yM: -shot.yM, launchRad: shot.launchRad + Math.PI },
          model,
        );
        const mirrored = shoot(
          { ...shot, yM: -shot.yM, launchRad: -shot.launchRad, spinRadps: -shot.spinRadps },
          model,
        );
        const timeS = Math.min(path.endTimeS, path.bounces[2]?.timeS ?? 2) * 0.999;
        const at = puckAt(path, timeS).atM;
        const there = puckAt(turned, timeS).atM;
        const image = puckAt(mirrored, timeS).atM;
        expect(Math.hypot(at.xM + there.xM, at.yM + there.yM)).toBeLessThan(1e-6);
        expect(Math.hypot(at.xM - image.xM, at.yM + image.yM)).toBeLessThan(1e-6);
      }),
      { numRuns: 150 },
    );
  });

  // Found by the test above: without restitution the puck left a corner exactly along it, and met it again where rounding said.
  it('follows a corner from the bounce that does not lead away from it', () => {
    const model = puckModelOf({ restitutionRatio: 0, boardFrictionRatio: 0.6543 });
    const [start, centreM] = [
      { xM: 25.1, yM: 11.99 },
      { xM: 60.96 / 2 - 8.5344, yM: 25.908 / 2 - 8.5344 },
    ];
    const path = puckPath(boards, model, start, 0, 2, { maxTimeS: 12 });
    expect(path.bounces.map(({ becomesRim }) => becomesRim)).toEqual([true]);
    expect(path.legs.map(({ kind }) => kind)).toEqual(['slide', 'rim']);
    const { atM } = puckAt(path, path.endTimeS);
    expect(Math.hypot(atM.xM - centreM.xM, atM.yM - centreM.yM)).toBeCloseTo(8.5344 - radiusM, 9);
    const turned = puckPath(boards, model, { xM: -start.xM, yM: -start.yM }, Math.PI, 2, { maxTimeS: 12 });
    expect(puckAt(turned, turned.endTimeS).atM.xM).toBeCloseTo(-atM.xM, 9);
  });

  it('keeps its energy for ever without friction on a lossless rink', () => {
    const model = puckModelOf({ frictionRatio: 0, dragPerM: 0, restitutionRatio: 1, boardFrictionRatio: 0 });
    const path = puckPath(boards, model, { xM: 3, yM: 2 }, 0.7, 12, { maxTimeS: 20, rims: false });
    expect(path.bounces.length).toBeGreaterThan(8);
    expect(energyAt(path, 20)).toBeCloseTo(144, 9);
  });

  it('becomes a rim in a corner and follows the boards to the other side', () => {
    const path = puckPath(boards, puckModelOf(), { xM: 20, yM: -12.8 }, 0, 22, { maxTimeS: 8 });
    expect(path.bounces[0]!.becomesRim).toBe(true);
    const rims = path.legs.filter(leg => leg.kind === 'rim');
    expect(rims.length).toBeGreaterThanOrEqual(2);
    for (let timeS = path.bounces[0]!.timeS; timeS < path.endTimeS; timeS += 0.02) {
      expect(boardsDistance(boards, puckAt(path, timeS).atM)).toBeCloseTo(radiusM, 6);
    }
    expect(Math.max(...path.legs.map(leg => leg.startS))).toBeLessThanOrEqual(path.endTimeS);
  });

  it('moves a start that lies in the boards to where a puck can be', () => {
    const path = puckPath(boards, puckModelOf(), { xM: 0, yM: 12.95 }, 0.3, 10);
    expect(boardsDistance(boards, puckAt(path, 0).atM)).toBeCloseTo(radiusM, 9);
  });

  it('keeps max(2/3, e^(−μ_b θ)) of its speed round a corner without ice friction', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.6, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        (boardFriction, turnRad) => {
          const rim = rimOf({ constantMps2: 0, dragPerM: 0 }, boardFriction, 8.5, {
            speedMps: 15,
            edgeMps: 0,
          });
          const end = rimAtTime(rim, rimTimeAtDistance(rim, 8.5 * turnRad));
          expect(end.speedMps / 15).toBeCloseTo(Math.max(2 / 3, Math.exp(-boardFriction * turnRad)), 8);
        },
      ),
    );
  });
});
