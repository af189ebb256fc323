import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { puckAt, puckPath } from '../puck/path.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { boardsOf } from '../rink/boards.ts';
import { levelOf } from '../skater/level.ts';
import { timeTo } from '../skater/reach.ts';
import { completionOf, type LaneOpponent, laneBand, laneBandOfMargin, laneMargins } from './lane.ts';

const boards = boardsOf(60.96, 25.908, 8.5344);
const power = levelOf('collegeWomen').model;
const path = puckPath(boards, puckModelOf(), { xM: -10, yM: 0 }, 0, 14);
const opponentAt = (id: string, xM: number, yM: number, xMps = 0, yMps = 0): LaneOpponent => ({
  id,
  state: { atM: { xM, yM }, velocityMps: { xMps, yMps } },
  power,
  spreadS: 0.35,
});

describe('the margins of a lane', () => {
  it('are nowhere undercut along the way', () => {
    fc.assert(
      fc.property(evenly(-9, 9), evenly(-8, 8), evenly(-6, 6), evenly(-6, 6), (x, y, vx, vy) => {
        const opponent = opponentAt('D1', x, y, vx, vy);
        const [margin] = laneMargins(path, 1.2, [opponent]);
        for (let timeS = 0; timeS <= 1.2; timeS += 0.01) {
          const arrival = timeTo(opponent.state, power, puckAt(path, timeS).atM);
          expect(typeof arrival === 'number' ? arrival - timeS : Infinity).toBeGreaterThan(
            margin!.marginS - 2e-3,
          );
        }
      }),
      { numRuns: 60 },
    );
  });

  it('name first who is nearest to cutting the pass off, with place and time', () => {
    const margins = laneMargins(path, 1.2, [opponentAt('far', 0, 9), opponentAt('near', -1, 1.6)]);
    expect(margins.map(one => one.id)).toEqual(['near', 'far']);
    expect(margins[0]!.marginS).toBeLessThan(0);
    expect(margins[1]!.marginS).toBeGreaterThan(0);
    expect(margins[0]!.atM.yM).toBeCloseTo(0, 9);
  });

  it('make a pass less likely the smaller they are', () => {
    const chance = (y: number) => completionOf(laneMargins(path, 1.2, [opponentAt('D1', 0, y)]), 1);
    expect(chance(2)).toBeLessThan(chance(4));
    expect(chance(4)).toBeLessThan(chance(8));
    expect(completionOf([], 0.9)).toBe(0.9);
  });

  it('are named as their margin says', () => {
    expect([-0.01, 0, 0.29, 0.31, Number.POSITIVE_INFINITY].map(laneBandOfMargin)).toEqual([
      'shut',
      'contested',
      'contested',
      'open',
      'open',
    ]);
  });

  it('fall into open, contested and shut by the clearance at the release', () => {
    const band = (y: number) => laneBand(path, 1.2, [{ atM: { xM: 0, yM: y } }], 3);
    expect(band(0.5).band).toBe('shut');
    expect(band(2).band).toBe('contested');
    expect(band(4)).toEqual({ band: 'open', clearanceM: 4 });
    // Beside the end of the way, not beside its continuation.
    expect(laneBand(path, 0.5, [{ atM: { xM: 12, yM: 0 } }], 3).band).toBe('open');
  });
});
