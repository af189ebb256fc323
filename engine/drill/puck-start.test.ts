import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { at, named, planOf, playableFrom, skate, type TestAct } from '../run/drill-shorthand.reference.ts';
import { levelOf } from '../skater/level.ts';
import type { PuckPlace } from './drill.ts';
import { BLADE_AHEAD_M } from './drill-rows.ts';
import { puckStartsOf } from './puck-start.ts';

const level = levelOf('collegeWomen');
const ROLES = ['F1', 'F2', 'F3'] as const;
const carry: TestAct = skate([at(20, 0)], { kind: 'carry' });
const chase: TestAct = { kind: 'chase', whom: named('F1'), effortRatio: 1 };
const spotsOf = (acts: readonly (readonly TestAct[])[]) =>
  playableFrom(planOf(ROLES.map((role, i) => ({ role, atM: at(0, 4 * i), acts: acts[i] ?? [] })))).spots;

const heap = fc.record(
  {
    atM: fc.record({
      xM: evenly(-3, 3),
      yM: evenly(-2, 10),
    }),
    count: fc.integer({ min: 0, max: 5 }),
    ownerSpot: fc.constantFrom(...ROLES.map(named)),
  },
  { requiredKeys: ['atM', 'count'] },
);
const heaps = fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), heap) as fc.Arbitrary<
  Record<string, PuckPlace>
>;
const deeds = fc.tuple(
  ...ROLES.map(() => fc.constantFrom<readonly TestAct[]>([], [carry], [skate([at(5, 0)]), carry])),
);

describe('the pucks at the whistle', () => {
  it('are as many as were drawn, and nobody has two', () => {
    fc.assert(
      fc.property(heaps, deeds, (pucks, acts) => {
        const starts = puckStartsOf(pucks, spotsOf(acts), level);
        const drawn = Object.values(pucks).reduce((sum, { count }) => sum + count, 0);
        expect(starts.reduce((sum, { count }) => sum + count, 0)).toBe(drawn);
        const owners = starts.flatMap(({ ownerSpot }) => (ownerSpot ? [ownerSpot] : []));
        expect(new Set(owners).size).toBe(owners.length);
        for (const { ownerSpot, count } of starts) if (ownerSpot) expect(count).toBe(1);
      }),
      { numRuns: 200, seed: 1 },
    );
  });

  it('one named to a spot is on its stick, whatever it does; and only who needs one takes another’s heap, within a lunge', () => {
    fc.assert(
      fc.property(heaps, deeds, (pucks, acts) => {
        const spots = spotsOf(acts);
        const starts = puckStartsOf(pucks, spots, level);
        const places = Object.values(pucks).filter(({ count }) => count > 0);
        for (const { ownerSpot } of places)
          if (ownerSpot) expect(starts.some(start => start.ownerSpot === ownerSpot)).toBe(true);
        for (const { ownerSpot, atM } of starts) {
          if (!ownerSpot || places.some(place => place.ownerSpot === ownerSpot)) continue;
          const spot = spots.find(({ id }) => id === ownerSpot)!;
          expect(spot.acts.some(({ kind }) => kind === 'carry')).toBe(true);
          expect(Math.hypot(atM.xM - spot.atM.xM, atM.yM - spot.atM.yM)).toBeLessThanOrEqual(
            level.model.lungeReachM,
          );
        }
      }),
      { numRuns: 200, seed: 2 },
    );
  });

  it('of one heap within reach of two, who needs it in the first act has it before who needs it in the second', () => {
    const spots = playableFrom(
      planOf([
        { role: 'F1', atM: at(0, 0), acts: [skate([at(5, 0)]), carry] },
        { role: 'F2', atM: at(1, 0), acts: [carry] },
        { role: 'F3', atM: at(0.5, 0.5), acts: [chase] },
      ]),
    ).spots;
    const starts = puckStartsOf({ a: { atM: at(0.5, 0), count: 1 } }, spots, level);
    expect(starts).toEqual([{ atM: at(0.5, 0), ownerSpot: 'F2', count: 1 }]);
  });

  it('what is left of a heap named to a spot lies at its blade', () => {
    const spots = spotsOf([[carry]]);
    const [first, rest] = puckStartsOf(
      { a: { atM: at(9, 9), ownerSpot: named('F1'), count: 4 } },
      spots,
      level,
    );
    expect(first).toEqual({ atM: at(0, 0), ownerSpot: 'F1', count: 1 });
    expect(rest).toEqual({ atM: at(BLADE_AHEAD_M.value, 0), ownerSpot: null, count: 3 });
  });
});
