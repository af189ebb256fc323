import { describe, expect, it } from 'vitest';
import { somePinnedView, TEST_RINK } from '../film/pinned-view.reference.ts';
import { randomOf } from '../random/random.ts';
import { boardsDistance } from '../rink/boards.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import type { FilmPoint } from '../units/points.ts';
import { normalisedMap } from './normalised-map.ts';
import { LEAST_OFFERED, MOST_OFFERED, NEAR_PIN, NEAR_PIN_WORTH, OFFER_CLICK } from './offer-rows.ts';
import type { OfferedPin } from './offered-pin.ts';
import { halvesOf, iceAt, meanVarianceSlowly } from './telling-pins.reference.ts';
import { tellingPins } from './telling-pins.ts';

const landmarks = new Map(landmarksOf(TEST_RINK).map(({ id, atM }) => [id, atM]));

/** A camera drawn by lot with pins on landmarks that it sees, and places all over its picture that show ice. */
const viewOf = (seed: number, count: number) => {
  const random = randomOf(seed);
  const { camera, filmFromIce, pins } = somePinnedView(random, count, 0.5);
  const map = normalisedMap(filmFromIce, camera);
  const places: FilmPoint[] = [];
  for (let y = 60; y < camera.heightPx; y += 120)
    for (let x = 60; x < camera.widthPx; x += 120) {
      const w = iceAt([...map], halvesOf({ xPx: x, yPx: y }, camera));
      if (boardsDistance(TEST_RINK.boards, w) > 0) places.push({ xPx: x, yPx: y });
    }
  const offered: OfferedPin[] = pins.map(({ id, filmPx }) => ({
    landmark: id,
    filmPx,
    sdPx: 0.1 + 0.5 * random.uniform(),
  }));
  const half = Math.hypot(camera.widthPx, camera.heightPx) / 2;
  /** Mean variance on the ice with these known, by the slow way. */
  const left = (some: readonly OfferedPin[]): number =>
    meanVarianceSlowly(
      [...map],
      some.map(({ filmPx, sdPx }) => ({
        at: halvesOf(filmPx, camera),
        variance: (OFFER_CLICK.value ** 2 + sdPx ** 2) / half ** 2,
      })),
      places.map(place => halvesOf(place, camera)),
    );
  return { offered, taken: tellingPins(TEST_RINK, offered, map, places, camera), left };
};

const apartM = (a: OfferedPin, b: OfferedPin): number => {
  const [p, q] = [landmarks.get(a.landmark)!, landmarks.get(b.landmark)!];
  return Math.hypot(p.xM - q.xM, p.yM - q.yM);
};

describe('pins that tell most', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'are those that leave the ice in view the least unsure, those alone first, and near ones only where they tell much (%i)',
    seed => {
      const { offered, taken, left } = viewOf(seed, 8 + 2 * seed);
      expect(new Set(taken).size).toBe(taken.length);
      expect(taken.length).toBeLessThanOrEqual(MOST_OFFERED.value);
      const isNear = (one: OfferedPin, some: readonly OfferedPin[]) =>
        some.some(other => apartM(one, other) < NEAR_PIN.value);
      let nearCount = 0;
      for (let count = 0; count < taken.length; count++) {
        const before = taken.slice(0, count);
        const rest = offered.filter(one => !before.includes(one));
        const alone = rest.filter(one => !isNear(one, before));
        const one = taken[count]!;
        const among = alone.length > 0 ? alone : rest;
        expect(among).toContain(one);
        const least = Math.min(...among.map(other => left([...before, other])));
        const now = left([...before, one]);
        expect(now / least).toBeLessThan(1 + 1e-4);
        if (alone.length > 0) continue;
        nearCount++;
        if (count >= LEAST_OFFERED.value)
          expect(1 - now / left(before)).toBeGreaterThan(NEAR_PIN_WORTH.value - 1e-4);
      }
      // Whoever is left out would have told too little, or there are enough.
      if (taken.length < MOST_OFFERED.value) {
        for (const one of offered.filter(pin => !taken.includes(pin))) {
          expect(isNear(one, taken)).toBe(true);
          expect(1 - left([...taken, one]) / left(taken)).toBeLessThan(NEAR_PIN_WORTH.value + 1e-4);
        }
      }
      expect(nearCount).toBeLessThan(offered.length);
    },
  );

  it('take one of a heap and all that stand alone', () => {
    const { taken, offered } = viewOf(11, 30);
    const heaped = (some: readonly OfferedPin[]) =>
      some.flatMap((a, i) => some.slice(0, i).filter(b => apartM(a, b) < NEAR_PIN.value)).length;
    expect(heaped(offered)).toBeGreaterThan(10);
    expect(heaped(taken)).toBeLessThan(heaped(offered) / 3);
  });

  it('are all of them where there are few', () => {
    const { taken, offered } = viewOf(5, 5);
    expect(new Set(taken)).toEqual(new Set(offered));
  });
});
