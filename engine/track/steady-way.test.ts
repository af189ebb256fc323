import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import type { JoinedPlace } from './join-ways.ts';
import { smoothWay } from './smooth-way.ts';
import { steadyWay } from './steady-way.ts';

const POWER = { topSpeedMps: 9.3, tauS: 1.2, mindS: 0.6 };
const SD_M = 0.1;

const placeAt = (k: number, xM: number, yM: number, by: JoinedPlace['by'] = 'both'): JoinedPlace => ({
  frameIndex: k,
  timeS: k / 30,
  atM: { xM, yM },
  covM2: { xxM2: SD_M * SD_M, xyM2: 0, yyM2: SD_M * SD_M },
  together: 1,
  by,
});

const straight = (seed: number, noiseM: number): JoinedPlace[] => {
  const random = randomOf(seed);
  return Array.from({ length: 61 }, (_, k) =>
    placeAt(k, (5 * k) / 30 + noiseM * random.normal(), noiseM * random.normal()),
  );
};

const timesOf = (places: readonly JoinedPlace[]) => places.map(({ timeS }) => timeS);

describe('a way through places of which some are of another body', () => {
  it('is the smoothed one where no place is far off', () => {
    const places = straight(3, 0.3 * SD_M);
    const plain = smoothWay(places, timesOf(places), POWER);
    for (const [k, { atM, velocityMps }] of steadyWay(places, timesOf(places), POWER).entries()) {
      expect(Math.hypot(atM.xM - plain[k]!.atM.xM, atM.yM - plain[k]!.atM.yM)).toBeLessThan(0.01);
      expect(Math.abs(velocityMps.xMps - plain[k]!.velocityMps.xMps)).toBeLessThan(0.05);
    }
  });

  it('hardly heeds a third of a second spent on somebody two metres away', () => {
    const places = straight(4, SD_M).map((place, k) =>
      k >= 25 && k < 35 ? { ...place, atM: { xM: place.atM.xM, yM: place.atM.yM + 2 } } : place,
    );
    const [plain, steady] = [smoothWay, steadyWay].map(way => way(places, timesOf(places), POWER));
    const worst = (way: typeof plain) => Math.max(...way!.map(({ atM }) => Math.abs(atM.yM)));
    expect(worst(plain)).toBeGreaterThan(1);
    expect(worst(steady)).toBeLessThan(0.25);
  });

  it('always heeds a hand', () => {
    const places = straight(5, 0).map((place, k) =>
      k === 30 ? placeAt(30, place.atM.xM, 1, 'hand') : place,
    );
    const found = places.map((place, k) => (k === 30 ? { ...place, by: 'both' as const } : place));
    const [byHand, byFound] = [places, found].map(some => steadyWay(some, [1], POWER)[0]!.atM.yM);
    const plain = smoothWay(places, [1], POWER)[0]!.atM.yM;
    expect(byHand!).toBeCloseTo(plain, 2);
    expect(byFound!).toBeLessThan(plain / 3);
  });

  // Student's t: where it is likeliest, each place pulls by (ν + 2) d / (ν + d²/σ²), so the sum of pulls is what the law of skating pulls back.
  it('rests where reweighting no longer moves it', () => {
    const random = randomOf(6);
    const places = straight(6, SD_M).map((place, k) =>
      k % 7 === 3 ? placeAt(k, place.atM.xM, place.atM.yM + 2 * random.uniform() - 1) : place,
    );
    const way = steadyWay(places, timesOf(places), POWER);
    const reweighed = places.map((place, k): JoinedPlace => {
      const away = Math.hypot(place.atM.xM - way[k]!.atM.xM, place.atM.yM - way[k]!.atM.yM) / SD_M;
      const by = Math.max(1, (3 + away * away) / 5);
      return {
        ...place,
        covM2: { xxM2: SD_M * SD_M * by, xyM2: 0, yyM2: SD_M * SD_M * by },
      };
    });
    for (const [k, { atM }] of smoothWay(reweighed, timesOf(places), POWER).entries()) {
      expect(Math.hypot(atM.xM - way[k]!.atM.xM, atM.yM - way[k]!.atM.yM)).toBeLessThan(0.03);
    }
  });

  it('counts places that share an error as one', () => {
    const places = straight(7, SD_M);
    const alone = steadyWay(places, [1], POWER)[0]!.covariance[0]!;
    const shared = steadyWay(
      places.map(place => ({ ...place, together: 12 })),
      [1],
      POWER,
    )[0]!.covariance[0]!;
    expect(Math.sqrt(shared / alone)).toBeGreaterThan(1.5);
  });
});
