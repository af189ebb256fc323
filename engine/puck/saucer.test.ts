import { describe, expect, it } from 'vitest';
import { isNone } from '../units/none.ts';
import { puckModelOf } from './puck-model.ts';
import { saucerAtTime, saucerOf } from './saucer.ts';

describe('a saucer pass', () => {
  it('flies as long as a throw of that height, and as far as its speed carries', () => {
    // 2√(2h/g) and 12 m/s, by hand: 0.29, 0.40, 0.49 s and 3.4, 4.8, 5.9 m (air drag takes under 2 %).
    for (const [heightM, flightS, carryM] of [
      [0.1, 0.29, 3.4],
      [0.2, 0.4, 4.8],
      [0.3, 0.49, 5.9],
    ] as const) {
      const saucer = saucerOf(puckModelOf(), 12, heightM);
      if (isNone(saucer)) throw new Error(saucer.reason);
      expect(saucer.flightS).toBeCloseTo(flightS, 2);
      expect(Math.abs(saucer.carryM - carryM)).toBeLessThan(0.1);
    }
  });

  it('tops out at its height halfway, lands, and slides on slower', () => {
    const model = puckModelOf();
    const saucer = saucerOf(model, 12, 0.25);
    if (isNone(saucer)) throw new Error(saucer.reason);
    expect(saucerAtTime(model, saucer, 12, saucer.flightS / 2).heightM).toBeCloseTo(0.25, 12);
    const landed = saucerAtTime(model, saucer, 12, saucer.flightS + 0.2);
    expect(landed.heightM).toBe(0);
    expect(landed.distanceM).toBeGreaterThan(saucer.carryM);
    expect(landed.speedMps).toBeLessThan(saucer.landingMps);
  });

  it('says why there is none', () => {
    expect(saucerOf(puckModelOf(), 12, 0)).toEqual({ kind: 'none', reason: 'noHeight' });
    expect(saucerOf(puckModelOf(), 0, 0.2)).toEqual({ kind: 'none', reason: 'noSpeed' });
  });
});
