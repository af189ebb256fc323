import * as fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import type { Playable } from '../drill/playable.ts';
import { chanceOf } from './chance.reference.ts';
import { at, drillOf, named, planOf, playableFrom, skate } from './drill-shorthand.reference.ts';
import type * as Quiet from './quiet.ts';
import { anyRun } from './random-draft.reference.ts';
import { runDrill } from './run-drill.ts';
import { inText } from './run-in-text.reference.ts';

/** The independent method: a run that looks for everybody and everything at every step. */
const runThatLooks = async (): Promise<typeof runDrill> => {
  vi.resetModules();
  vi.doMock('./quiet.ts', async load => ({ ...(await load<typeof Quiet>()), isQuietUntil: () => false }));
  const { runDrill: looks } = await import('./run-drill.ts');
  vi.doUnmock('./quiet.ts');
  return looks;
};

/** A thief who comes from far, a loose puck that is picked up far off, a place that a cue waits for. */
const farOff = (): DrillPlan =>
  planOf(
    [
      {
        role: 'X1',
        side: 'them',
        atM: at(10, 2),
        puck: true,
        acts: [skate([at(-5, 4), at(-22, 0)], { kind: 'carry', effortRatio: 0.6 })],
      },
      { role: 'D1', atM: at(24, -9), acts: [{ kind: 'steal', whom: named('X1'), effortRatio: 1 }] },
      {
        role: 'F1',
        atM: at(20, 8),
        acts: [{ kind: 'pickUp', effortRatio: 0.8 }, skate([at(20, -8)], { kind: 'carry' })],
      },
      {
        role: 'F2',
        atM: at(-20, -8),
        acts: [
          skate([at(0, -8)], { cue: { on: 'reaches', spot: named('X1'), atM: at(-8, 3), withinM: 0.5 } }),
        ],
      },
    ],
    at(-3, -9),
  );

/** Nobody is near anybody: only the place of a cue is passed. */
const passesBy = (): DrillPlan =>
  planOf([
    { role: 'F1', atM: at(-20, -8), acts: [skate([at(20, -8)])] },
    {
      role: 'F2',
      atM: at(0, 8),
      acts: [
        skate([at(-15, 8)], { cue: { on: 'reaches', spot: named('F1'), atM: at(11, -8.2), withinM: 0.3 } }),
      ],
    },
  ]);

describe('looking only when somebody can be near enough', () => {
  it('finds what looking at every step finds, to the last bit', { timeout: 120_000 }, async () => {
    const looks = await runThatLooks();
    const kinds = new Set<string>();
    const same = (playable: Playable, luck: number | null): void => {
      const options = luck === null ? {} : { chance: chanceOf(luck) };
      const quiet = runDrill(playable, options);
      for (const { kind } of quiet.events) kinds.add(kind);
      expect(inText(quiet)).toEqual(inText(looks(playable, options)));
    };
    for (const luck of [null, 1, 2, 3])
      for (const plan of [drillOf(), farOff(), passesBy()]) same(playableFrom(plan), luck);
    fc.assert(
      fc.property(anyRun, fc.option(fc.integer({ min: 0, max: 1e6 })), ([plan, level, rink], luck) =>
        same(playableFrom(plan, level, rink), luck),
      ),
      { numRuns: 60, seed: 41 },
    );
    // All that is looked for has happened.
    for (const kind of ['caught', 'steal', 'loose', 'pickUp', 'receive', 'intercept'])
      expect(kinds).toContain(kind);
  });
});
