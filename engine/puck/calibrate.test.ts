import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { isNone } from '../units/none.ts';
import { boardsSpeedsAfter } from './bounce.ts';
import { boardsFromBounce, frictionFromSlide } from './calibrate.ts';
import { slideTimeAtDistance } from './slide.ts';

const gravity = 9.80665;
const filmed = (friction: number, drag: number, speed: number, spansM: readonly [number, number]) => {
  const slowing = { constantMps2: friction * gravity, dragPerM: drag };
  return {
    spansM,
    timesS: [
      3,
      3 + slideTimeAtDistance(slowing, speed, spansM[0]),
      3 + slideTimeAtDistance(slowing, speed, spansM[0] + spansM[1]),
    ] as const,
    timeSdS: 0.004,
    spanSdM: 0.03,
  };
};

describe('friction from one filmed slide', () => {
  it('finds the friction that made the film, whatever it was', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.04, max: 0.15, noNaN: true }),
        evenly(0, 0.008),
        fc.double({ min: 9, max: 20, noNaN: true }),
        (friction, drag, speed) => {
          const found = frictionFromSlide(filmed(friction, drag, speed, [7.6, 7.6]), drag, gravity);
          if (isNone(found)) expect(found.reason).toBe('tooUncertain');
          else expect(found.value).toBeCloseTo(friction, 9);
        },
      ),
    );
  });

  it('is near the hand formula from two mean speeds', () => {
    // μ ≈ (v1² − v2²)/(2 g d̄) − k v̄²/g over the distance between the middles of the spans.
    const film = filmed(0.08, 0.004, 11, [7, 8]);
    const v1 = 7 / (film.timesS[1] - film.timesS[0]);
    const v2 = 8 / (film.timesS[2] - film.timesS[1]);
    const hand = (v1 ** 2 - v2 ** 2) / (2 * gravity * 7.5) - (0.004 * ((v1 + v2) / 2) ** 2) / gravity;
    const found = frictionFromSlide(film, 0.004, gravity);
    if (isNone(found)) throw new Error(found.reason);
    expect(Math.abs(found.value - hand)).toBeLessThan(0.002);
  });

  it('states a ± that covers what noisy films give', () => {
    // A fixed sawtooth stands for the noise: eleven films, each time off by up to 1.5 sd.
    const film = filmed(0.08, 0.004, 8, [7.6, 15.2]);
    const found = frictionFromSlide(film, 0.004, gravity);
    if (isNone(found)) throw new Error(found.reason);
    const misses = Array.from({ length: 11 }, (_, n) => {
      const off = (k: number) => 0.004 * (((n * 7 + k * 3) % 11) / 5 - 1) * 1.5;
      const [a, b, c] = film.timesS;
      const noisy = frictionFromSlide(
        { ...film, timesS: [a + off(0), b + off(1), c + off(2)] },
        0.004,
        gravity,
      );
      return isNone(noisy) ? Number.POSITIVE_INFINITY : Math.abs(noisy.value - 0.08);
    });
    expect(misses.filter(miss => miss <= 2 * found.sd).length).toBeGreaterThanOrEqual(10);
    expect(Math.max(...misses)).toBeGreaterThan(found.sd / 5);
  });

  it('refuses what is no slide, with the reason', () => {
    const film = filmed(0.08, 0.004, 11, [7, 8]);
    const reason = (change: Partial<typeof film>) => {
      const found = frictionFromSlide({ ...film, ...change }, 0.004, gravity);
      return isNone(found) ? found.reason : found;
    };
    expect(reason({ spansM: [0, 8] })).toBe('spansNotPositive');
    expect(reason({ timesS: [3, 2, 4] })).toBe('timesNotInOrder');
    expect(reason({ timesS: [3, 4, 4.5] })).toBe('doesNotSlow');
    expect(reason({ timesS: [3, 3.2, 9] })).toBe('slowsTooMuch');
    expect(reason({ timeSdS: 0.5 })).toBe('tooUncertain');
  });
});

describe('restitution and friction of the boards from one filmed bounce', () => {
  const bounce = (e: number, friction: number, speed: number, angleRad: number) => {
    const after = boardsSpeedsAfter(
      { normalMps: speed * Math.sin(angleRad), alongMps: speed * Math.cos(angleRad), edgeMps: 0 },
      { restitutionRatio: e, boardFrictionRatio: friction, puckRadiusM: 0.0381 },
    );
    return {
      speedInMps: speed,
      angleInRad: angleRad,
      speedOutMps: Math.hypot(after.normalMps, after.alongMps),
      angleOutRad: Math.atan2(after.normalMps, after.alongMps),
      speedSdMps: 0.2,
      angleSdRad: 0.02,
    };
  };

  it('finds what made the bounce while the edge slips, and says when it gripped', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 0.9, noNaN: true }),
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        fc.double({ min: 0.2, max: 1.3, noNaN: true }),
        (e, friction, angleRad) => {
          const found = boardsFromBounce(bounce(e, friction, 12, angleRad));
          if (isNone(found)) throw new Error(found.reason);
          expect(found.restitution.value).toBeCloseTo(e, 9);
          const grips = friction * (1 + e) * Math.sin(angleRad) >= Math.cos(angleRad) / 3;
          if (isNone(found.boardFriction)) expect(grips).toBe(true);
          else expect(found.boardFriction.value).toBeCloseTo(friction, 8);
        },
      ),
    );
  });

  it('grows its ± with the spreads', () => {
    const sharp = boardsFromBounce(bounce(0.45, 0.2, 12, 0.6));
    const blurred = boardsFromBounce({ ...bounce(0.45, 0.2, 12, 0.6), speedSdMps: 0.4, angleSdRad: 0.04 });
    if (isNone(sharp) || isNone(blurred)) throw new Error('refused');
    expect(blurred.restitution.sd).toBeCloseTo(2 * sharp.restitution.sd, 6);
  });

  it('refuses nonsense with the reason', () => {
    const film = bounce(0.45, 0.2, 12, 0.6);
    const reason = (change: Partial<typeof film>) => {
      const found = boardsFromBounce({ ...film, ...change });
      return isNone(found) ? found.reason : found;
    };
    expect(reason({ speedOutMps: 0 })).toBe('speedsNotPositive');
    expect(reason({ angleInRad: 2 })).toBe('anglesOutOfRange');
    expect(reason({ speedOutMps: 20, angleOutRad: 1 })).toBe('comesOffFaster');
    expect(reason({ speedOutMps: 14, angleOutRad: 0.2 })).toBe('speedsUpAlong');
    expect(reason({ speedOutMps: 4, angleOutRad: 0.4 })).toBe('slowsTooMuchAlong');
  });
});
