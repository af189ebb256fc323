import { describe, expect, it } from 'vitest';
import type { DrillPlan } from '../drill/drill.ts';
import type { IcePoint } from '../units/points.ts';
import {
  at,
  drillOf,
  named,
  planOf,
  playableFrom,
  skate,
  type TestSpot,
} from './drill-shorthand.reference.ts';
import { runMemory } from './recorder.ts';
import { runDrill } from './run-drill.ts';
import type { Run } from './run-result.ts';

/** The drill and itself after a half turn: what is played when both ends work at once. */
const atBothEnds = (plan: DrillPlan): DrillPlan => {
  const turned = ({ xM, yM }: IcePoint): IcePoint => ({ xM: -xM, yM: -yM });
  const other = JSON.parse(
    JSON.stringify(plan, (key, value) => {
      if (value && typeof value === 'object' && 'xM' in value) return turned(value as IcePoint);
      if (key === 'atEnd') return value === 'plusX' ? 'minusX' : 'plusX';
      if (key === 'side') return value === 'us' ? 'them' : 'us';
      if (key === 'facingRad') return (value as number) + Math.PI;
      if (['toSpot', 'whom', 'spot', 'ownerSpot'].includes(key)) return `${value}'`;
      return value;
    }),
  ) as DrillPlan;
  const renamed = <Item>(list: Readonly<Record<string, Item>>): Record<string, Item> =>
    Object.fromEntries(Object.entries(list).map(([id, item]) => [`${id}'`, item]));
  const spots = Object.fromEntries(
    Object.entries(other.spots).map(([id, spot]) => [
      `${id}'`,
      { ...spot, rank: spot.rank + 100, acts: renamed(spot.acts) },
    ]),
  );
  return {
    spots: { ...plan.spots, ...spots },
    pucks: { ...plan.pucks, ...renamed(other.pucks) },
    gear: {},
  } as DrillPlan;
};

const eventsOf = (run: Run, kind: string) => run.events.filter(event => event.kind === kind);

describe('several pucks', () => {
  it('both ends at once: each end is what it is alone, a half turn apart', () => {
    const alone: TestSpot[] = [
      { role: 'Co', kind: 'coach', atM: at(20, 8), puck: true, acts: [passTo('F1', { on: 'whistle' })] },
      {
        role: 'F1',
        atM: at(10, 3),
        acts: [
          skate([at(16, 4)]),
          skate([at(22, 1)], { kind: 'carry', cue: { on: 'receive', spot: named('F1') } }),
          { kind: 'shoot', atEnd: 'plusX', speedMps: 24 },
        ],
      },
    ];
    const run = runDrill(playableFrom(atBothEnds(planOf(alone))));
    const single = runDrill(playableFrom(planOf(alone)));
    expect(run.pucks).toHaveLength(2);
    expect(eventsOf(run, 'receive').map(event => event.timeS)).toEqual([
      eventsOf(single, 'receive')[0]!.timeS,
      expect.closeTo(eventsOf(single, 'receive')[0]!.timeS, 6),
    ]);
    expect(eventsOf(run, 'shot')).toHaveLength(2);
    for (let i = 0; i < single.sampleCount; i++) {
      expect(run.pucks[0]!.xM[i]).toBe(single.pucks[0]!.xM[i]);
      expect(run.pucks[1]!.xM[i]).toBeCloseTo(-single.pucks[0]!.xM[i]!, 5);
      expect(run.pucks[1]!.yM[i]).toBeCloseTo(-single.pucks[0]!.yM[i]!, 5);
    }
  });

  it('the busy drill too, where sides matter for gaps: every event comes twice', () => {
    const single = runDrill(playableFrom(drillOf()));
    const run = runDrill(playableFrom(atBothEnds(drillOf())));
    expect(run.pucks).toHaveLength(2);
    for (const kind of ['pass', 'receive']) {
      expect(eventsOf(run, kind).length).toBeGreaterThanOrEqual(eventsOf(single, kind).length);
    }
    expect(eventsOf(run, 'shot').length).toBeGreaterThan(0);
  });

  it('a heap gives one at a time and keeps the rest', () => {
    const plan = planOf(
      [
        {
          role: 'Co',
          kind: 'coach',
          atM: at(0, 1),
          acts: [
            passTo('F1'),
            passTo('F2', { on: 'after', seconds: 0.5 }),
            passTo('F1', { on: 'after', seconds: 0.5 }),
          ],
        },
        { role: 'F1', atM: at(8, 4), facingRad: Math.PI, acts: [{ kind: 'hold', seconds: 3 }] },
        { role: 'F2', atM: at(8, -4), facingRad: Math.PI, acts: [{ kind: 'hold', seconds: 3 }] },
      ],
      at(0, 0),
    );
    const run = runDrill(playableFrom(plan));
    expect(run.pucks.map(({ count }) => count)).toEqual([1, 1, 1, 2]);
    expect(run.pucks.map(({ owner }) => owner.at(-1))).toEqual([1, 2, -1, -1]);
    // The third goes by: there is one on the stick already.
    expect(eventsOf(run, 'receive')).toHaveLength(2);
    for (const { xM, yM, owner } of run.pucks.slice(1)) {
      expect([xM[0], yM[0], owner[0]]).toEqual([0, 0, -1]);
    }
  });

  it('no stick ever has two, and no puck jumps', () => {
    const run = runDrill(playableFrom(atBothEnds(drillOf())));
    for (let i = 0; i < run.sampleCount; i++) {
      const owners = run.pucks.map(({ owner }) => owner[i]!).filter(owner => owner >= 0);
      expect(new Set(owners).size).toBe(owners.length);
    }
    for (const { xM, yM } of run.pucks) {
      for (let i = 1; i < run.sampleCount; i++) {
        expect(Math.hypot(xM[i]! - xM[i - 1]!, yM[i]! - yM[i - 1]!)).toBeLessThan(0.5);
      }
    }
  });

  it('a run written into the memory of one with other pucks is the same run', () => {
    const memory = runMemory();
    const heap = planOf(
      [
        { role: 'Co', kind: 'coach', atM: at(0, 1), acts: [passTo('F1'), passTo('F1')] },
        { role: 'F1', atM: at(9, 1) },
      ],
      at(0, 0),
    );
    const playable = playableFrom(heap);
    const fresh = runDrill(playable);
    runDrill(
      playableFrom(
        planOf([
          { role: 'A', atM: at(0, 0), puck: true, acts: [skate([at(9, 9), at(20, -9)], { kind: 'carry' })] },
          { role: 'B', atM: at(5, 5) },
        ]),
      ),
      { memory },
    );
    expect(runDrill(playable, { memory })).toEqual(fresh);
  });

  it('a named heap leaves its rest at the blade', () => {
    const plan = planOf([
      { role: 'F1', atM: at(0, 0), acts: [passTo('F2'), passTo('F2')] },
      { role: 'F2', atM: at(8, 0), facingRad: Math.PI },
    ]);
    const named3 = { ...plan, pucks: { p: { atM: at(0, 0), ownerSpot: named('F1'), count: 3 } } };
    const run = runDrill(playableFrom(named3));
    expect(eventsOf(run, 'pass')).toHaveLength(2);
    expect(run.pucks.at(-1)!.count).toBe(1);
    expect(run.pucks.at(-1)!.xM[0]).toBeCloseTo(1, 9);
  });
});

function passTo(role: string, cue?: NonNullable<TestSpot['acts']>[number]['cue']) {
  const act = { kind: 'pass', toSpot: named(role), way: 'direct', speedMps: 12 } as const;
  return cue ? { ...act, cue } : act;
}
