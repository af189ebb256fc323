import { describe, expect, it } from 'vitest';
import { chanceOf } from './chance.reference.ts';
import {
  at,
  drillOf,
  named,
  planOf,
  playableFrom,
  skate,
  type TestSpot,
} from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';
import type { Run, RunEvent } from './run-result.ts';

const carrier = (more: Partial<TestSpot> = {}): TestSpot => ({
  role: 'X1',
  side: 'them',
  atM: at(12, 4),
  facingRad: Math.PI,
  puck: true,
  acts: [skate([at(-10, 4), at(-24, 3)], { kind: 'carry', effortRatio: 0.8 })],
  ...more,
});

const thief = (role: string, xM: number, yM: number): TestSpot => ({
  role,
  atM: at(xM, yM),
  facingRad: Math.PI,
  acts: [{ kind: 'steal', whom: named('X1'), effortRatio: 1 }],
});

const of = <Kind extends RunEvent['kind']>(run: Run, kind: Kind) =>
  run.events.filter((event): event is RunEvent & { kind: Kind } => event.kind === kind);

describe('a steal', () => {
  it('comes up from behind, is within reach for a while, and then has the puck', () => {
    const run = runDrill(playableFrom(planOf([carrier(), thief('F1', 14.5, 3)])));
    const [steal] = of(run, 'steal');
    expect(steal).toMatchObject({ spot: 'F1', from: 'X1' });
    expect(run.pucks[0]!.owner.at(-1)).toBe(1);
    expect(of(run, 'actEnds').some(event => event.spot === 'F1' && event.timeS === steal!.timeS)).toBe(true);
  });

  it('tells who waits for the carrier to lose it', () => {
    const run = runDrill(
      playableFrom(
        planOf([
          carrier(),
          thief('F1', 14.5, 3),
          {
            role: 'F2',
            atM: at(0, -8),
            acts: [skate([at(12, -8)], { cue: { on: 'losesPuck', spot: named('X1') } })],
          },
        ]),
      ),
    );
    const lost = of(run, 'steal')[0]!.timeS;
    const start = of(run, 'actStarts').find(event => event.spot === 'F2')!.timeS;
    expect(start - lost).toBeCloseTo(0.21, 9);
  });

  it('two at it are no later than one', () => {
    const one = runDrill(playableFrom(planOf([carrier(), thief('F1', 14.5, 2)])));
    const two = runDrill(playableFrom(planOf([carrier(), thief('F1', 14.5, 2), thief('F2', 14.5, 6)])));
    expect(of(two, 'steal')[0]!.timeS).toBeLessThan(of(one, 'steal')[0]!.timeS);
  });

  it('never ends beside somebody who has no puck', () => {
    const run = runDrill(playableFrom(planOf([carrier({ puck: false }), thief('F1', 14.5, 3)])));
    expect(of(run, 'steal')).toHaveLength(0);
    expect(run.durationS).toBeLessThan(10);
  });

  it('ends for all when one has the puck, and mirrored it is the mirrored rep', () => {
    const spots = [carrier(), thief('F1', 14.5, 2), thief('F2', 16, 6)];
    const mirrored = spots.map(spot => ({
      ...spot,
      atM: at(spot.atM.xM, -spot.atM.yM),
      acts: spot.acts!.map(act =>
        'throughM' in act ? { ...act, throughM: act.throughM.map(p => at(p.xM, -p.yM)) } : act,
      ),
    }));
    const run = runDrill(playableFrom(planOf(spots)));
    const other = runDrill(playableFrom(planOf(mirrored)));
    expect(of(other, 'steal')[0]!.timeS).toBeCloseTo(of(run, 'steal')[0]!.timeS, 5);
    expect(of(other, 'steal')[0]!.spot).toBe(of(run, 'steal')[0]!.spot);
    expect(of(run, 'actEnds').filter(event => event.spot.startsWith('F'))).toHaveLength(2);
  });
});

describe('chance', () => {
  const plan = planOf([carrier(), thief('F1', 14.5, 3)]);
  const playable = playableFrom(plan);

  it('the same chance is the same rep', () => {
    expect(runDrill(playable, { chance: chanceOf(3) })).toEqual(runDrill(playable, { chance: chanceOf(3) }));
  });

  it('wins some contests early and some late, some clean and some loose', () => {
    const runs = Array.from({ length: 60 }, (_, i) => runDrill(playable, { chance: chanceOf(i) }));
    const clean = runs.filter(run => of(run, 'steal').length > 0).length;
    const loose = runs.filter(run => of(run, 'loose').length > 0).length;
    expect(clean).toBeGreaterThan(10);
    expect(loose).toBeGreaterThan(5);
    const times = runs.flatMap(run => of(run, 'steal').map(event => event.timeS));
    expect(Math.max(...times) - Math.min(...times)).toBeGreaterThan(0.5);
  });

  it('a loose puck is somebody’s again in most reps', () => {
    const runs = Array.from({ length: 80 }, (_, i) => runDrill(playable, { chance: chanceOf(i) }));
    const loose = runs.filter(run => of(run, 'loose').length > 0);
    const taken = loose.filter(run => of(run, 'pickUp').length > 0);
    expect(taken.length / loose.length).toBeGreaterThan(0.8);
  });

  it('spreads passes and their control, and leaves the run without it as it was', () => {
    const passes = playableFrom(drillOf());
    const plain = runDrill(passes);
    const runs = Array.from({ length: 60 }, (_, i) => runDrill(passes, { chance: chanceOf(100 + i) }));
    const got = runs.filter(run => of(run, 'receive').length > 0).length;
    expect(got).toBeGreaterThan(15);
    expect(got).toBeLessThan(60);
    expect(runDrill(passes)).toEqual(plain);
    expect(of(plain, 'loose')).toHaveLength(0);
  });
});

describe('picking up and leaving', () => {
  it('goes to the nearest puck, takes it, and carries on with it', () => {
    const run = runDrill(
      playableFrom(
        planOf(
          [
            {
              role: 'F1',
              atM: at(-10, 0),
              acts: [{ kind: 'pickUp', effortRatio: 1 }, skate([at(10, 5)], { kind: 'carry' })],
            },
          ],
          at(-2, 3),
        ),
      ),
    );
    expect(of(run, 'pickUp')).toHaveLength(1);
    expect(run.pucks[0]!.owner.at(-1)).toBe(0);
    expect(run.pucks.at(-1)!.count).toBe(4);
    expect(run.tracks[0]!.xM.at(-1)).toBeGreaterThan(9);
  });

  it('answers a puck that is left for another', () => {
    const run = runDrill(
      playableFrom(
        planOf([
          {
            role: 'X1',
            side: 'them',
            atM: at(0, 0),
            puck: true,
            acts: [{ kind: 'pass', toSpot: named('X2'), way: 'direct', speedMps: 9 }],
          },
          {
            role: 'X2',
            side: 'them',
            atM: at(20, 3),
            acts: [{ kind: 'leave', cue: { on: 'receive', spot: named('X2') } }],
          },
          {
            role: 'F1',
            atM: at(2, -12),
            acts: [{ kind: 'pickUp', effortRatio: 1, cue: { on: 'losesPuck', spot: named('X2') } }],
          },
        ]),
      ),
    );
    expect(of(run, 'leave')).toHaveLength(1);
    expect(of(run, 'pickUp')[0]).toMatchObject({ spot: 'F1' });
  });

  it('with no puck on the ice the rep ends, and says so', () => {
    const run = runDrill(
      playableFrom(planOf([{ role: 'F1', atM: at(0, 0), acts: [{ kind: 'pickUp', effortRatio: 1 }] }])),
    );
    expect(run.durationS).toBeLessThan(1);
    expect(run.findings.map(({ kind }) => kind)).toContain('noPuckToPlay');
  });
});
