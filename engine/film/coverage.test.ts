import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import type { FilmPoint } from '../units/points.ts';
import { drawnAt } from './camera.reference.ts';
import { ellipseOf } from './ellipse.ts';
import { fitPins } from './fit-pins.ts';
import { iceFromFilm } from './ice-from-film.ts';
import { alongOffset, distanceBetween } from './measure.ts';
import { holds, somePinnedView, somePlaceInView } from './pinned-view.reference.ts';

// The camera's truth is the anchor: what is said to hold 95 % must hold 93 to 97 % of many seeded views.
const VIEWS = 4000;

const shareOf = (seed: number, isHeld: (random: ReturnType<typeof randomOf>) => boolean | null): number => {
  const random = randomOf(seed);
  let held = 0;
  let asked = 0;
  while (asked < VIEWS) {
    const answer = isHeld(random);
    if (answer === null) continue;
    asked++;
    if (answer) held++;
  }
  return held / asked;
};

const clicked = (random: ReturnType<typeof randomOf>, px: FilmPoint, sdPx: number): FilmPoint => ({
  xPx: px.xPx + sdPx * random.normal(),
  yPx: px.yPx + sdPx * random.normal(),
});

describe('the ± of a place holds what it says', () => {
  it.each([
    [6, 1],
    [12, 1],
    [12, 2],
  ])('ellipses of %i pins at %i px hold the truth in 93 to 97 of 100', (count, noisePx) => {
    const share = shareOf(100 * count + noisePx, random => {
      const view = somePinnedView(random, count, noisePx);
      const result = fitPins(view.pins, noisePx);
      if (result.kind === 'refused') return null;
      const atM = somePlaceInView(random, view);
      const placed = iceFromFilm(result.fit, clicked(random, drawnAt(view.filmFromIce, atM)!, 2), {
        footSdPx: 2,
      });
      if (placed.kind === 'none') return null;
      return holds(placed.covM2, placed.atM.xM - atM.xM, placed.atM.yM - atM.yM);
    });
    expect(share).toBeGreaterThan(0.93);
    expect(share).toBeLessThan(0.97);
  });

  it('95 % of a distance and of an offset along the sheet do too, near and far', () => {
    const within = { distance: 0, offset: 0, asked: 0 };
    const random = randomOf(55);
    while (within.asked < VIEWS) {
      const view = somePinnedView(random, 10, 1);
      const result = fitPins(view.pins, 1);
      if (result.kind === 'refused') continue;
      const [a, b] = [somePlaceInView(random, view), somePlaceInView(random, view)];
      const trueM = Math.hypot(a.xM - b.xM, a.yM - b.yM);
      if (trueM < 1) continue;
      const [aPx, bPx] = [a, b].map(at => clicked(random, drawnAt(view.filmFromIce, at)!, 2)) as [
        FilmPoint,
        FilmPoint,
      ];
      const distance = distanceBetween(result.fit, aPx, bPx, 2);
      const offset = alongOffset(result.fit, aPx, bPx, 'minusX', 2);
      if (distance.kind === 'none' || offset.kind === 'none') continue;
      within.asked++;
      if (Math.abs(distance.lengthM.value - trueM) <= 1.96 * distance.lengthM.sd) within.distance++;
      if (Math.abs(offset.lengthM.value - (b.xM - a.xM)) <= 1.96 * offset.lengthM.sd) within.offset++;
    }
    for (const count of [within.distance, within.offset]) {
      expect(count / within.asked).toBeGreaterThan(0.93);
      expect(count / within.asked).toBeLessThan(0.97);
    }
  });

  it('knows a short distance better than two separate places, because they share the pins', () => {
    const random = randomOf(9);
    for (let i = 0; i < 50; i++) {
      const view = somePinnedView(random, 8, 2);
      const result = fitPins(view.pins, 2);
      if (result.kind === 'refused') continue;
      const a = somePlaceInView(random, view);
      const aPx = drawnAt(view.filmFromIce, a)!;
      const bPx = drawnAt(view.filmFromIce, { xM: a.xM + 0.5, yM: a.yM })!;
      const measured = distanceBetween(result.fit, aPx, bPx, 0.1);
      const [placedA, placedB] = [aPx, bPx].map(px => iceFromFilm(result.fit, px, { footSdPx: 0.1 }));
      if (measured.kind === 'none' || placedA?.kind !== 'placed' || placedB?.kind !== 'placed') continue;
      const apartM = Math.sqrt(placedA.covM2.xxM2 + placedB.covM2.xxM2);
      expect(measured.lengthM.sd).toBeLessThan(apartM);
    }
  });
});

describe('the ellipse of a covariance', () => {
  it('has the half axes of its eigenvalues', () => {
    const ellipse = ellipseOf({ xxM2: 4, xyM2: 0, yyM2: 1 });
    // χ² of 2 degrees at 95 %: 5.9915 (printed tables).
    expect(ellipse.semiMajorM).toBeCloseTo(Math.sqrt(5.9915 * 4), 3);
    expect(ellipse.semiMinorM).toBeCloseTo(Math.sqrt(5.9915), 3);
    expect(ellipse.angleRad).toBe(0);
    expect(ellipseOf({ xxM2: 2, xyM2: 1, yyM2: 2 }).angleRad).toBeCloseTo(Math.PI / 4, 12);
    expect(ellipseOf({ xxM2: 1, xyM2: 0, yyM2: 4 }).angleRad).toBeCloseTo(Math.PI / 2, 12);
  });
});
