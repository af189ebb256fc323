import { describe, expect, it } from 'vitest';
import { at, named, planOf, playableFrom, skate, type TestSpot } from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';
import type { Run } from './run-result.ts';

const passOf = (way: 'direct' | 'saucer' | 'rim' | 'drop', speedMps: number) =>
  ({ kind: 'pass', toSpot: named('F2'), way, speedMps }) as const;
const pair = (way: 'direct' | 'saucer', opponentM?: { x: number; y: number }): TestSpot[] => [
  { role: 'F1', atM: at(-6, 0), puck: true, acts: [passOf(way, 12)] },
  { role: 'F2', atM: at(6, 0), facingRad: Math.PI },
  ...(opponentM ? [{ role: 'X1', side: 'them', atM: at(opponentM.x, opponentM.y) } as const] : []),
];
const has = (run: Run, kind: string): boolean => run.events.some(event => event.kind === kind);

describe('a saucer', () => {
  it('goes over a stick beside the lane that a flat pass does not get by', () => {
    const beside = { x: -1.5, y: 1.2 };
    expect(has(runDrill(playableFrom(planOf(pair('direct', beside)))), 'intercept')).toBe(true);
    const over = runDrill(playableFrom(planOf(pair('saucer', beside))));
    expect(has(over, 'intercept')).toBe(false);
    expect(has(over, 'receive')).toBe(true);
  });

  it('is taken once it has come down', () => {
    expect(has(runDrill(playableFrom(planOf(pair('saucer', { x: 4.4, y: 1 })))), 'intercept')).toBe(true);
  });

  it('is there sooner than a flat pass: nothing slows it but the air, and it loses a little as it lands', () => {
    const timeOf = (way: 'direct' | 'saucer') =>
      runDrill(playableFrom(planOf(pair(way)))).events.find(event => event.kind === 'receive')!.timeS;
    // 10 m from blade to blade at 12 m/s: flat 0.888 s (v̇ = −μg − kv²); in the air 0.5 s of it without μg.
    expect(timeOf('direct')).toBeCloseTo(0.89, 1);
    expect(timeOf('saucer')).toBeLessThan(timeOf('direct') + 0.02);
  });
});

describe('a rim', () => {
  it('follows the corner round to who waits at the other boards', () => {
    const run = runDrill(
      playableFrom(
        planOf([
          { role: 'F1', atM: at(-26, -11), facingRad: Math.PI, puck: true, acts: [passOf('rim', 20)] },
          { role: 'F2', atM: at(-20, 11.8), facingRad: Math.PI },
        ]),
      ),
    );
    expect(has(run, 'receive')).toBe(true);
    const half = run.pucks[0]!.xM.findIndex((_, i) => run.pucks[0]!.yM[i]! > 0);
    expect(run.pucks[0]!.xM[half]).toBeLessThan(-28);
  });
});

describe('a rim that does not come by', () => {
  it('is met by a receiver who has nothing else to do', () => {
    const run = runDrill(
      playableFrom(
        planOf([
          { role: 'F1', atM: at(-27.4, 7), puck: true, acts: [passOf('rim', 16)] },
          {
            role: 'F2',
            atM: at(-6, 8),
            acts: [skate([at(0, 8.5)], { kind: 'carry', cue: { on: 'receive', spot: named('F2') } })],
          },
        ]),
      ),
    );
    expect(run.events.find(event => event.kind === 'receive')).toMatchObject({ spot: 'F2', from: 'F1' });
    expect(run.pucks[0]!.owner.at(-1)).toBe(1);
  });
});

describe('a drop', () => {
  const drop = (speedMps: number) =>
    runDrill(
      playableFrom(
        planOf([
          {
            role: 'F1',
            atM: at(-8, 0),
            puck: true,
            acts: [skate([at(2, 0)], { kind: 'carry' }), passOf('drop', speedMps), skate([at(10, 6)])],
          },
          { role: 'F2', atM: at(-13, 0.5), acts: [skate([at(2, 0.5), at(12, 0.5)])] },
        ]),
      ),
    );

  it.each([0, 2])('pushed back at %s m/s, is there for who comes after', speedMps => {
    const run = drop(speedMps);
    expect(run.events.find(event => event.kind === 'receive')).toMatchObject({ spot: 'F2', from: 'F1' });
    expect(run.pucks[0]!.owner.at(-1)).toBe(1);
  });
});
