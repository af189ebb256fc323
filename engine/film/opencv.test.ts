import { loadOpenCV } from '@opencvjs/web';
import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import { drawnAt } from './camera.reference.ts';
import { fitPins } from './fit-pins.ts';
import { iceFromFilm } from './ice-from-film.ts';
import { somePinnedView, somePlaceInView } from './pinned-view.reference.ts';
import type { Pin } from './pins.ts';

/** Film points as 32-bit floats: OpenCV rounds its input to them, so both get the same numbers. */
const rounded = (pins: readonly Pin[]): Pin[] =>
  pins.map(({ id, iceM, filmPx }) => ({
    id,
    iceM: { xM: Math.fround(iceM.xM), yM: Math.fround(iceM.yM) },
    filmPx: { xPx: Math.fround(filmPx.xPx), yPx: Math.fround(filmPx.yPx) },
  }));

describe('against OpenCV 4.13 (findHomography, method 0)', () => {
  it('places points of 200 random views within 1e-6 m of it', async () => {
    const cv = await loadOpenCV();
    const random = randomOf(31);
    let largestM = 0;
    let compared = 0;
    for (let view = 0; view < 200; view++) {
      const pinned = somePinnedView(random, 6 + random.below(9), 0.5);
      const pins = rounded(pinned.pins);
      const result = fitPins(pins, 0.5);
      if (result.kind === 'refused') continue;
      const ice = cv.matFromArray(
        pins.length,
        2,
        cv.CV_32F,
        pins.flatMap(({ iceM }) => [iceM.xM, iceM.yM]),
      );
      const film = cv.matFromArray(
        pins.length,
        2,
        cv.CV_32F,
        pins.flatMap(({ filmPx }) => [filmPx.xPx, filmPx.yPx]),
      );
      const found = cv.findHomography(ice, film);
      const inverse = found.inv(cv.DECOMP_LU);
      const m = inverse.data64F;
      const { xPx, yPx } = drawnAt(pinned.filmFromIce, somePlaceInView(random, pinned))!;
      const t = m[6]! * xPx + m[7]! * yPx + m[8]!;
      const [xM, yM] = [(m[0]! * xPx + m[1]! * yPx + m[2]!) / t, (m[3]! * xPx + m[4]! * yPx + m[5]!) / t];
      for (const mat of [ice, film, found, inverse]) mat.delete();
      const placed = iceFromFilm(result.fit, { xPx, yPx }, { footSdPx: 0 });
      if (placed.kind === 'none') continue;
      compared++;
      largestM = Math.max(largestM, Math.hypot(placed.atM.xM - xM, placed.atM.yM - yM));
    }
    expect(compared).toBeGreaterThan(180);
    expect(largestM).toBeLessThan(1e-6);
  });
});
