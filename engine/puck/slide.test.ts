import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { puckModelOf } from './puck-model.ts';
import {
  slideDistanceAtTime,
  slideSpeedAtDistance,
  slideSpeedAtTime,
  slideStopDistance,
  slideStopTime,
  slideTimeAtDistance,
  slowingOf,
} from './slide.ts';
import { Sliding } from './sliding.ts';

const anySlowing = fc.record({
  constantMps2: fc.oneof(fc.constant(0), fc.double({ min: 1e-9, max: 1.5, noNaN: true })),
  dragPerM: fc.oneof(fc.constant(0), fc.constant(1e-7), fc.double({ min: 1e-9, max: 0.02, noNaN: true })),
});
const anySpeed = fc.double({ min: 0.5, max: 45, noNaN: true });
const anyShare = fc.double({ min: 0.001, max: 0.97, noNaN: true });

describe('a sliding puck', () => {
  it('comes back to the same distance by way of its time, with and without friction and drag', () => {
    fc.assert(
      fc.property(anySlowing, anySpeed, anyShare, (slowing, speed, share) => {
        const distance = share * Math.min(80, slideStopDistance(slowing, speed));
        const time = slideTimeAtDistance(slowing, speed, distance);
        expect(slideDistanceAtTime(slowing, speed, time)).toBeCloseTo(distance, 8);
        expect(slideSpeedAtTime(slowing, speed, time)).toBeCloseTo(
          slideSpeedAtDistance(slowing, speed, distance),
          7,
        );
      }),
    );
  });

  it('needs the time of two parts for the whole', () => {
    fc.assert(
      fc.property(anySlowing, anySpeed, anyShare, anyShare, (slowing, speed, share, part) => {
        const distance = share * Math.min(80, slideStopDistance(slowing, speed));
        const middle = slideSpeedAtDistance(slowing, speed, part * distance);
        const parts =
          slideTimeAtDistance(slowing, speed, part * distance) +
          slideTimeAtDistance(slowing, middle, (1 - part) * distance);
        expect(parts).toBeCloseTo(slideTimeAtDistance(slowing, speed, distance), 8);
      }),
    );
  });

  it('goes over smoothly into the laws without drag and without friction', () => {
    // v² = v0² − 2ad, and v = v0 e^(−kd): the two limits in any mechanics text.
    const friction = { constantMps2: 0.8, dragPerM: 0 };
    expect(slideSpeedAtDistance(friction, 10, 20)).toBeCloseTo(Math.sqrt(100 - 32), 12);
    expect(slideStopDistance(friction, 10)).toBeCloseTo(62.5, 10);
    expect(slideStopTime(friction, 10)).toBeCloseTo(12.5, 12);
    const nearly = { constantMps2: 0.8, dragPerM: 1e-12 };
    expect(slideTimeAtDistance(nearly, 10, 20)).toBeCloseTo(slideTimeAtDistance(friction, 10, 20), 9);
    const drag = { constantMps2: 0, dragPerM: 0.004 };
    expect(slideSpeedAtDistance(drag, 10, 20)).toBeCloseTo(10 * Math.exp(-0.08), 12);
    expect(slideStopTime(drag, 10)).toBe(Number.POSITIVE_INFINITY);
    const nothing = { constantMps2: 0, dragPerM: 0 };
    expect(slideTimeAtDistance(nothing, 10, 20)).toBe(2);
    expect(slideDistanceAtTime(nothing, 10, 2)).toBe(20);
  });

  it('lies still after its stop and says so', () => {
    const slowing = slowingOf(puckModelOf());
    const stopS = slideStopTime(slowing, 8);
    expect(slideSpeedAtTime(slowing, 8, stopS + 1)).toBe(0);
    expect(slideDistanceAtTime(slowing, 8, stopS + 1)).toBe(slideStopDistance(slowing, 8));
    expect(slideTimeAtDistance(slowing, 8, slideStopDistance(slowing, 8) + 0.01)).toBeNaN();
  });

  it('slides as far as the table of the default constants says', () => {
    // Worked by hand with the textbook form for 8, 12 and 16 m/s, k 0.004: whole metres, so half a metre of rounding.
    for (const [frictionRatio, stopsM] of [
      [0.05, [52, 97, 141]],
      [0.08, [35, 69, 104]],
      [0.12, [25, 50, 78]],
    ] as const) {
      const slowing = slowingOf(puckModelOf({ frictionRatio }));
      [8, 12, 16].forEach((speed, index) => {
        expect(Math.abs(slideStopDistance(slowing, speed) - stopsM[index]!)).toBeLessThan(0.6);
      });
    }
  });

  it('has an inner loop that gives the same figures', () => {
    fc.assert(
      fc.property(anySlowing, anySpeed, anyShare, (slowing, speed, share) => {
        const fast = new Sliding(slowing.constantMps2, slowing.dragPerM);
        const distance = share * Math.min(80, slideStopDistance(slowing, speed));
        expect(fast.over(speed, distance)).toBe(true);
        expect(fast.timeS).toBeCloseTo(slideTimeAtDistance(slowing, speed, distance), 9);
        const time = fast.timeS;
        fast.after(speed, time);
        expect(fast.distanceM).toBeCloseTo(slideDistanceAtTime(slowing, speed, time), 9);
        expect(fast.speedMps).toBeCloseTo(slideSpeedAtTime(slowing, speed, time), 9);
        expect(fast.stopTime(speed)).toBeCloseTo(slideStopTime(slowing, speed), 6);
        const h = 1e-4;
        const lostMps = speed - slideSpeedAtTime(slowing, speed, h);
        if (speed > 0.1) expect(lostMps / h).toBeCloseTo(fast.slowingMps2(speed - lostMps / 2), 5);
      }),
    );
  });
});
