import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { at, drillOf, planOf, skate } from '../run/drill-shorthand.reference.ts';
import { needsOf } from './needs-of.ts';

const RINK = rinkOf({ preset: '200x85ft' });

describe('what a drill needs', () => {
  it('counts people by what they are and by the letters of their roles', () => {
    expect(needsOf(drillOf(), RINK)).toMatchObject({
      skaterCount: 4,
      forwardCount: 3,
      defenderCount: 1,
      coachCount: 1,
      goalieCount: 0,
      netCount: 1,
      ice: 'whole',
    });
  });

  it.each([
    ['zone', 10, 26],
    ['zone', -27, -9],
    ['middle', -7, 7],
    ['half', 1, 25],
    ['half', -25, 0.5],
    ['whole', -20, 12],
  ] as const)('%s: from %s m to %s m', (ice, fromXM, toXM) => {
    const plan = planOf([{ role: 'F1', atM: at(fromXM, 3), acts: [skate([at(toXM, -3)])] }]);
    expect(needsOf(plan, RINK).ice).toBe(ice);
  });

  it('is the same for the drill turned by half a turn', () => {
    const x = evenly(-28, 28);
    fc.assert(
      fc.property(x, x, (a, b) => {
        const plan = (sign: number) =>
          planOf([{ role: 'F1', atM: at(sign * a, 3), acts: [skate([at(sign * b, 1)])] }]);
        expect(needsOf(plan(1), RINK)).toEqual(needsOf(plan(-1), RINK));
      }),
    );
  });

  it('needs nothing without anybody', () => {
    expect(needsOf(planOf([]), RINK)).toMatchObject({ skaterCount: 0, netCount: 0, ice: 'zone' });
  });
});
