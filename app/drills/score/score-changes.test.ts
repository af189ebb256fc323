import type { Drill, DrillAct } from '@icewright/book';
import { type ActId, levelOf, playableOf, type Run, rinkOf, runDrill, type SpotId } from '@icewright/engine';
import { actTimes } from '@icewright/picture';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, drillWith } from '../edit/drill-of-tests.reference.ts';
import { actsOf, spotsOf } from '../route-writes.ts';
import { afterWrites } from '../write.ts';
import { refired } from './refire.ts';
import { restacked } from './restack.ts';
import { retimed } from './retime.ts';

const rink = rinkOf({ preset: '200x85ft' });
const route = (rank: number, ...throughM: { xM: number; yM: number }[]) =>
  ({ rank, kind: 'skate', facing: 'forward', effortRatio: 1, stops: false, throughM }) as const;
const [co, x1, f3, d1] = ['co', 'x1', 'f3', 'd1'] as SpotId[] as [SpotId, SpotId, SpotId, SpotId];
const actId = (id: string) => id as ActId;

const withActs = (
  drill: Drill,
  acts: Readonly<Record<string, Readonly<Record<string, DrillAct>>>>,
): Drill => ({
  ...drill,
  spots: Object.fromEntries(
    spotsOf(drill).map(([id, spot], rank) => [
      id,
      { ...spot, atM: at(6 * rank - 9, 5 * rank - 8), acts: acts[id] ?? {} },
    ]),
  ) as Drill['spots'],
});

/** Co passes to X1; F3 goes when she receives, D1 chases her then; X1 carries, then skates on. */
const DRILL: Drill = {
  ...withActs(drillWith({ spots: ['co', 'x1', 'f3', 'd1'] }), {
    co: { pass: { rank: 0, kind: 'pass', toSpot: x1, way: 'direct', speedMps: 12, cue: { on: 'whistle' } } },
    x1: { go: { ...route(0, at(6, -3)), cue: { on: 'receive', spot: x1 } }, on: route(1, at(16, 2)) },
    f3: { go: { ...route(0, at(12, 6)), cue: { on: 'receive', spot: x1 } } },
    d1: { hunt: { rank: 0, kind: 'chase', whom: x1, effortRatio: 1, cue: { on: 'receive', spot: x1 } } },
  }),
  pucks: { p: { atM: at(-9, -8), ownerSpot: co, count: 1 } } as unknown as Drill['pucks'],
};

const runOf = (drill: Drill): Run => {
  const playable = playableOf(drill, rink, levelOf(drill.level));
  if (playable.kind === 'unplayable') throw new Error(JSON.stringify(playable.issues));
  return runDrill(playable);
};
const startOf = (drill: Drill, spot: SpotId, act: string) => actTimes(runOf(drill), spot, actId(act))!.startS;

/** A sample of the run is this long. */
const SAMPLE_S = 1 / 120;

describe('an act that is started at another time', () => {
  const cases = [
    [co, 'pass'],
    [x1, 'go'],
    [x1, 'on'],
    [f3, 'go'],
    [d1, 'hunt'],
  ] as const;

  it('starts then when the drill is played again, whatever it hung on', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...cases),
        fc.double({ min: -2, max: 5, noNaN: true }),
        ([spot, act], byS) => {
          const run = runOf(DRILL);
          const wasS = actTimes(run, spot, actId(act))!.startS;
          const change = retimed(DRILL, run, spot, actId(act), wasS + byS, actId('held'))!;
          const after = afterWrites(DRILL, change.writes);
          // What is held tenths of a second long starts within half of one of what was asked, or at the first time it can.
          if (byS > 0.1) expect(Math.abs(change.startS - wasS - byS)).toBeLessThan(0.101);
          expect(Math.abs(startOf(after, spot, act) - change.startS)).toBeLessThan(2 * SAMPLE_S);
        },
      ),
      { numRuns: 60, seed: 3 },
    );
  });

  it('keeps the cue it hangs on, in a hold before it, and gives it back when the hold is gone', () => {
    const run = runOf(DRILL);
    const wasS = actTimes(run, f3, actId('go'))!.startS;
    const later = retimed(DRILL, run, f3, actId('go'), wasS + 0.6, actId('held'))!;
    expect(later.said).toBe('F3 waits 0.6 s more, when X1 receives');
    const held = afterWrites(DRILL, later.writes);
    expect(actsOf(held.spots[f3]!).map(([id, act]) => [id, act.kind, act.cue?.on])).toEqual([
      ['held', 'hold', 'receive'],
      ['go', 'skate', undefined],
    ]);
    const back = retimed(held, runOf(held), f3, actId('go'), 0)!;
    expect(back.said).toBe('F3 starts when X1 receives');
    expect(afterWrites(held, back.writes).spots[f3]).toEqual(DRILL.spots[f3]);
  });

  it('never starts before what it hangs on, and says so', () => {
    const run = runOf(DRILL);
    const change = retimed(DRILL, run, f3, actId('go'), 0)!;
    expect(change.writes).toEqual([]);
    expect(change.said).toBe('F3 starts when X1 receives, no sooner');
  });

  it('is so many seconds after the whistle, or on it', () => {
    const run = runOf(DRILL);
    expect(retimed(DRILL, run, co, actId('pass'), 2)!.said).toBe('CO starts 2 s after the whistle');
    expect(retimed(DRILL, run, co, actId('pass'), 0)!.said).toBe('CO starts on the whistle');
  });
});

describe('a lozenge on another stave', () => {
  const cue = { on: 'receive', spot: x1 } as const;

  it('full: moves what fires for everybody who waits for it', () => {
    const change = refired(DRILL, { spot: x1, act: actId('go'), way: 'fires', cue }, f3)!;
    const after = afterWrites(DRILL, change.writes);
    for (const [spot, act] of [
      [x1, 'go'],
      [f3, 'go'],
      [d1, 'hunt'],
    ] as const)
      expect(after.spots[spot]?.acts[actId(act)]?.cue).toEqual({ on: 'receive', spot: f3 });
    expect(change.said).toBe('X1, F3, D1 start when F3 receives');
  });

  it('open: only for its own act', () => {
    const after = afterWrites(
      DRILL,
      refired(DRILL, { spot: d1, act: actId('hunt'), way: 'waits', cue }, f3)!.writes,
    );
    expect(after.spots[d1]?.acts[actId('hunt')]?.cue).toEqual({ on: 'receive', spot: f3 });
    expect(after.spots[f3]).toEqual(DRILL.spots[f3]);
  });

  it('changes nothing on the stave it is on', () => {
    expect(refired(DRILL, { spot: d1, act: actId('hunt'), way: 'waits', cue }, x1)).toBeNull();
  });
});

describe('a stave at another place', () => {
  it('lies there, and all others keep their order', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3 }),
        fc.integer({ min: -2, max: 6 }),
        fc.boolean(),
        (from, to, same) => {
          const drill = same
            ? {
                ...DRILL,
                spots: Object.fromEntries(
                  spotsOf(DRILL).map(([id, spot]) => [id, { ...spot, rank: 0 }]),
                ) as Drill['spots'],
              }
            : DRILL;
          const ids = spotsOf(drill).map(([id]) => id);
          const moved = ids[from]!;
          const left = ids.filter(id => id !== moved);
          const at = Math.max(0, Math.min(3, to));
          const after = spotsOf(afterWrites(drill, restacked(drill, moved, to))).map(([id]) => id);
          expect(after).toEqual([...left.slice(0, at), moved, ...left.slice(at)]);
        },
      ),
      { numRuns: 60, seed: 5 },
    );
  });
});
