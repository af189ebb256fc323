import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import type { DrillPlan } from '../drill/drill.ts';
import { playableOf } from '../drill/playable.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { levelOf } from '../skater/level.ts';
import type { SpotId } from '../units/ids.ts';
import { at, drillOf, named, planOf, skate } from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';
import { inText } from './run-in-text.reference.ts';
import type { Run } from './run-result.ts';
import { twoRunMemories } from './two-memories.ts';

const rink = rinkOf({ preset: '200x85ft' });
const level = levelOf('collegeWomen');

const runOf = (plan: DrillPlan, memory = twoRunMemories(), speedRatio?: number): Run => {
  const playable = playableOf(plan, rink, level);
  if (playable.kind !== 'playable') throw new Error(JSON.stringify(playable.issues));
  const model = { ...level.model, topSpeedMps: level.model.topSpeedMps * (speedRatio ?? 1) };
  const models = Object.fromEntries(playable.spots.map(({ id }) => [id, model]));
  return runDrill(playable, { memory: memory.next(), ...(speedRatio && { models }) });
};

/** A route with a second act, a pass off the boards onto it, and somebody in the way. */
const bankDrill = (): DrillPlan =>
  planOf([
    {
      role: 'F1',
      atM: at(-12, -5),
      puck: true,
      acts: [
        { kind: 'pass', toSpot: named('F2'), way: 'bank', speedMps: 15, cue: { on: 'after', seconds: 0.6 } },
        skate([at(0, -6), at(14, 0)]),
      ],
    },
    { role: 'F2', atM: at(-14, 6), acts: [skate([at(-5, 8)]), skate([at(4, 8), at(16, 3)])] },
    { role: 'D1', side: 'them', atM: at(2, 2), acts: [{ kind: 'gap', whom: named('F2'), distanceM: 3 }] },
  ]);

const movedTo = (plan: DrillPlan, id: SpotId, xM: number, yM: number): DrillPlan => {
  const spot = plan.spots[id]!;
  return { ...plan, spots: { ...plan.spots, [id]: { ...spot, atM: at(xM, yM) } } };
};

describe('what is kept from earlier runs', () => {
  it.each([
    ['passes and a chase', drillOf()],
    ['a pass off the boards', bankDrill()],
  ])('does not change what comes out while a spot is dragged: %s', (_, plan) => {
    const ids = Object.keys(plan.spots) as SpotId[];
    const memory = twoRunMemories();
    fc.assert(
      fc.property(fc.constantFrom(...ids), evenly(-22, 22), evenly(-11, 11), (id, xM, yM) => {
        const dragged = movedTo(plan, id, xM, yM);
        // A copy shares no part with anything that ran before.
        expect(inText(runOf(dragged, memory))).toEqual(inText(runOf(structuredClone(dragged))));
      }),
      { numRuns: 60, seed: 11, endOnFailure: true },
    );
  });

  it('does not change what comes out when other people skate the same drill', () => {
    const plan = bankDrill();
    const runs = [0.9, 1, 1.1].map(speedRatio => {
      const run = structuredClone(runOf(plan, twoRunMemories(), speedRatio));
      expect(inText(run)).toEqual(inText(runOf(structuredClone(plan), twoRunMemories(), speedRatio)));
      return run;
    });
    expect(new Set(runs.map(({ durationS }) => durationS)).size).toBe(3);
  });

  it('leaves the run before alone, for one run more', () => {
    const memory = twoRunMemories();
    const plan = drillOf();
    const first = runOf(plan, memory);
    const before = structuredClone(first);
    runOf(movedTo(plan, named('F3'), 0, -9), memory);
    expect(inText(first)).toEqual(inText(before));
  });
});
