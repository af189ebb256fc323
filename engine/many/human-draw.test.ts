import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Occasion } from '../run/chance.ts';
import { at, drillOf, named, planOf, playableFrom } from '../run/drill-shorthand.reference.ts';
import { humanDraw } from './human-draw.ts';

const playable = playableFrom(drillOf());
const REPS = 4000;
const draws = Array.from({ length: REPS }, (_, rep) => humanDraw(playable, 7, rep));

const momentsOf = (values: readonly number[]): { mean: number; sd: number } => {
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  return { mean, sd: Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / values.length) };
};

describe('the people of a rep', () => {
  it('spread about the level’s middle as its rows say', () => {
    const { topSpeedMps, topSpeedSdRatio, tauS, reactionS } = playable.level.model;
    const f3 = draws.map(draw => draw.models[named('F3')]!);
    const speed = momentsOf(f3.map(model => model.topSpeedMps));
    const sd = topSpeedMps * topSpeedSdRatio;
    // Five standard errors of a mean and of a standard deviation.
    expect(Math.abs(speed.mean - topSpeedMps)).toBeLessThan((5 * sd) / Math.sqrt(REPS));
    expect(Math.abs(speed.sd - sd)).toBeLessThan((5 * sd) / Math.sqrt(2 * REPS) + 0.01 * sd);
    const tau = momentsOf(f3.map(model => model.tauS));
    expect(Math.abs(tau.mean - tauS)).toBeLessThan((5 * 0.06 * tauS) / Math.sqrt(REPS));
    expect(Math.min(...f3.map(model => model.reactionS))).toBeGreaterThan(0.3 * reactionS);
  });

  it('are independent of each other and of themselves', () => {
    const z = (spot: string, of: 'topSpeedMps' | 'tauS'): number[] => {
      const values = draws.map(draw => draw.models[named(spot)]![of]);
      const { mean, sd } = momentsOf(values);
      return values.map(value => (value - mean) / sd);
    };
    const correlation = (a: number[], b: number[]): number =>
      a.reduce((sum, one, i) => sum + one * b[i]!, 0) / a.length;
    for (const [a, b] of [
      [z('F3', 'topSpeedMps'), z('X1', 'topSpeedMps')],
      [z('F3', 'topSpeedMps'), z('F3', 'tauS')],
      [z('F3', 'topSpeedMps').slice(1), z('F3', 'topSpeedMps').slice(0, -1)],
    ] as const)
      expect(Math.abs(correlation([...a], [...b]))).toBeLessThan(5 / Math.sqrt(REPS));
  });

  it('are the same whatever else stands in the drill, as long as the place in the order is', () => {
    const moved = playableFrom(planOf(['Co', 'X2', 'X1'].map(role => ({ role, atM: at(3, 3) }))));
    for (let rep = 0; rep < 20; rep++)
      expect(humanDraw(moved, 7, rep).models[named('X1')]).toEqual(draws[rep]!.models[named('X1')]);
  });
});

describe('the luck of a rep', () => {
  const occasions: readonly Occasion[] = ['passDirection', 'passSpeed', 'control', 'contest', 'shot'];

  it('answers the same question the same way in whatever order it is asked', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(30), fc.constantFrom(...occasions), fc.nat(12)), {
          minLength: 2,
          maxLength: 20,
        }),
        fc.nat(1e6),
        (asked, rep) => {
          const ask = (list: typeof asked) => {
            const { chance } = humanDraw(playable, 3, rep);
            return new Map(list.map(q => [q.join(), [chance.uniform(...q), chance.normal(...q)]]));
          };
          const forward = ask(asked);
          const backward = ask([...asked].reverse());
          for (const [question, answer] of forward) expect(backward.get(question)).toEqual(answer);
        },
      ),
    );
  });

  it('is uniform and normal', () => {
    const uniforms = draws.map(draw => draw.chance.uniform(2, 'control', 1));
    const normals = draws.map(draw => draw.chance.normal(2, 'passDirection', 0));
    for (let bin = 0; bin < 10; bin++) {
      const share = uniforms.filter(u => Math.floor(u * 10) === bin).length / REPS;
      expect(Math.abs(share - 0.1)).toBeLessThan(5 * Math.sqrt(0.09 / REPS));
    }
    const { mean, sd } = momentsOf(normals);
    expect(Math.abs(mean)).toBeLessThan(5 / Math.sqrt(REPS));
    expect(Math.abs(sd - 1)).toBeLessThan(5 / Math.sqrt(2 * REPS));
    expect(new Set(uniforms).size).toBe(REPS);
  });

  it('is this on every machine', () => {
    const { models, chance } = humanDraw(playable, 4680, 3);
    expect([
      models[named('F3')]!.topSpeedMps,
      chance.uniform(1, 'contest', 0),
      chance.normal(1, 'shot', 2),
    ]).toMatchInlineSnapshot(`
      [
        8.128073925433332,
        0.3199081582467064,
        0.6547127515308674,
      ]
    `);
  });
});
