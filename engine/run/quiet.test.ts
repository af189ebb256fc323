import { describe, expect, it, vi } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import { chanceOf } from './chance.reference.ts';
import { at, drillOf, named, planOf, playableFrom, skate } from './drill-shorthand.reference.ts';
import type * as Quiet from './quiet.ts';
import { runDrill } from './run-drill.ts';
import { inText } from './run-in-text.reference.ts';

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
  it('finds what looking at every step finds, to the last bit', { timeout: 60_000 }, async () => {
    // The independent method: the same run with the looks left in; on random drafts in run-fuzz.test.ts.
    vi.resetModules();
    vi.doMock('./quiet.ts', async load => ({ ...(await load<typeof Quiet>()), isQuietUntil: () => false }));
    const { runDrill: looks } = await import('./run-drill.ts');
    const kinds = new Set<string>();
    for (const plan of [drillOf(), farOff(), passesBy()]) {
      const playable = playableFrom(plan);
      for (const options of [{}, ...[1, 2, 3, 4, 5, 6].map(luck => ({ chance: chanceOf(luck) }))]) {
        const quiet = runDrill(playable, options);
        expect(inText(quiet)).toEqual(inText(looks(playable, options)));
        for (const { kind } of quiet.events) kinds.add(kind);
      }
    }
    // All that is looked for has happened.
    for (const kind of ['caught', 'steal', 'loose', 'pickUp', 'receive']) expect(kinds).toContain(kind);
  });
});
