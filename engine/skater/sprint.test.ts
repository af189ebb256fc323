import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { levelOf } from './level.ts';
import { LEVEL_IDS, type LevelId } from './model.ts';
import { sprintDistanceAt, sprintSpeedAt, sprintTimeTo } from './sprint.ts';

const power = fc.record({
  topSpeedMps: fc.double({ min: 3, max: 12, noNaN: true }),
  tauS: fc.double({ min: 0.5, max: 2.5, noNaN: true }),
});
const distance = fc.double({ min: 0.01, max: 60, noNaN: true });

describe('the sprint law', () => {
  it('time to a distance and distance after a time undo each other', () => {
    fc.assert(
      fc.property(
        power,
        distance,
        evenly(-5, 14),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        (skater, distanceM, startMps, effort) => {
          const timeS = sprintTimeTo(skater, distanceM, startMps, effort) as number;
          expect(sprintDistanceAt(skater, timeS, startMps, effort)).toBeCloseTo(distanceM, 9);
          // The first time: nowhere before is the skater as far.
          for (const share of [0.2, 0.5, 0.9])
            expect(sprintDistanceAt(skater, timeS * share, startMps, effort)).toBeLessThan(distanceM);
        },
      ),
    );
  });

  it('speed is the rate of distance, and obeys (EV − v)/τ', () => {
    fc.assert(
      fc.property(
        power,
        fc.double({ min: 0.1, max: 8, noNaN: true }),
        evenly(-5, 12),
        (skater, timeS, startMps) => {
          const h = 1e-5;
          const rate =
            (sprintDistanceAt(skater, timeS + h, startMps) - sprintDistanceAt(skater, timeS - h, startMps)) /
            (2 * h);
          const speed = sprintSpeedAt(skater, timeS, startMps);
          expect(rate).toBeCloseTo(speed, 5);
          const push =
            (sprintSpeedAt(skater, timeS + h, startMps) - sprintSpeedAt(skater, timeS - h, startMps)) /
            (2 * h);
          expect(push).toBeCloseTo((skater.topSpeedMps - speed) / skater.tauS, 4);
        },
      ),
    );
  });

  it('without effort a glide ends after uτ', () => {
    const skater = { topSpeedMps: 9, tauS: 1.2 };
    expect(sprintTimeTo(skater, 7.1, 6, 0)).toBeCloseTo(-1.2 * Math.log1p(-7.1 / 7.2), 9);
    expect(sprintTimeTo(skater, 7.3, 6, 0)).toEqual({ kind: 'none', reason: 'neverGetsThere' });
  });

  // Published: 15 m from rest in 2.96 ± 0.12 s, college women, n = 17 (Wilson et al. 2021, Int J Exerc Sci 14(6):666).
  // Published: peak speed in 30 m, women 8.02 ± 0.36, men 8.96 ± 0.44 m/s (Budarick et al. 2018, Sports Biomechanics).
  // Published: 26–39 m tests, pooled males, mean 6.76 m/s, so 30 m in 4.44 s by gates (Stastny et al. 2023).
  it('our levels agree with published sprints', () => {
    const women = levelOf('collegeWomen').model;
    expect(Math.abs((sprintTimeTo(women, 15) as number) - 2.96)).toBeLessThan(0.12);
    expect(Math.abs(speedAfter('collegeWomen', 30) - 8.02)).toBeLessThan(0.36);
    expect(Math.abs(speedAfter('collegeMen', 30) - 8.96)).toBeLessThan(0.44);
    expect(Math.abs((sprintTimeTo(levelOf('u18').model, 30) as number) - 4.44)).toBeLessThan(0.2);
  });
});

const speedAfter = (id: LevelId, distanceM: number): number =>
  sprintSpeedAt(levelOf(id).model, sprintTimeTo(levelOf(id).model, distanceM) as number);

describe('levels', () => {
  it('get faster, quicker and longer from U10 to professionals', () => {
    const men = (['u10', 'u14', 'u18', 'collegeMen', 'pro'] as const).map(id => levelOf(id).model);
    for (let i = 1; i < men.length; i++) {
      expect(men[i]!.topSpeedMps).toBeGreaterThan(men[i - 1]!.topSpeedMps);
      expect(men[i]!.tauS).toBeLessThan(men[i - 1]!.tauS);
      expect(men[i]!.reactionS).toBeLessThan(men[i - 1]!.reactionS);
      expect(men[i]!.reachM).toBeGreaterThanOrEqual(men[i - 1]!.reachM);
    }
  });

  it('show a row with source and status for every number of the model', () => {
    for (const id of LEVEL_IDS) {
      const { rows, model } = levelOf(id);
      expect(Object.keys(rows).sort()).toEqual(Object.keys(model).sort());
      for (const [key, row] of Object.entries(rows)) {
        expect(row.value, key).toBe(model[key as keyof typeof model]);
        expect(row.source, key).not.toBe('');
        expect(row.range[0]).toBeLessThan(row.value);
        expect(row.range[1]).toBeGreaterThan(row.value);
      }
    }
  });

  // Derived statement of the reach model: the disc is a fair approximation of turning where V/τ is near a_lat.
  it('from U14 up V/τ is within 17 % of the sideways acceleration', () => {
    for (const id of LEVEL_IDS.slice(1)) {
      const { topSpeedMps, tauS, lateralAccelMps2 } = levelOf(id).model;
      expect(Math.abs(topSpeedMps / tauS / lateralAccelMps2 - 1)).toBeLessThan(0.17);
    }
  });
});
