import fc from 'fast-check';
import { expect, it } from 'vitest';
import { WIDE_CAMERA } from '../people/drawn-people.reference.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import { drawnAt, filmFromIceOf } from './camera.reference.ts';
import { fitOfPart } from './fit-of-part.ts';
import { fitPins } from './fit-pins.ts';
import { iceFromFilm } from './ice-from-film.ts';
import { TEST_RINK, theFit } from './pinned-view.reference.ts';

const whole = theFit(
  fitPins(
    landmarksOf(TEST_RINK).flatMap(({ id, atM }) => {
      const filmPx = drawnAt(filmFromIceOf(WIDE_CAMERA), atM);
      return filmPx ? [{ id, iceM: atM, filmPx }] : [];
    }),
    1,
  ),
);

it('places a point of a part where the whole picture places it, and as well', () => {
  const px = fc.integer({ min: 0, max: 600 });
  fc.assert(
    fc.property(px, px, px, px, (left, top, x, y) => {
      const part = fitOfPart(whole, left, top)!;
      const here = iceFromFilm(part, { xPx: x, yPx: y });
      const there = iceFromFilm(whole, { xPx: x + left, yPx: y + top });
      expect(here.kind).toBe(there.kind);
      if (here.kind === 'none' || there.kind === 'none') return;
      expect(here.atM.xM).toBeCloseTo(there.atM.xM, 6);
      expect(here.atM.yM).toBeCloseTo(there.atM.yM, 6);
      expect(here.covM2.yyM2 / there.covM2.yyM2).toBeCloseTo(1, 6);
    }),
  );
});

it('has none for a part of a bent picture', () => {
  const lens = { k1: -0.1, widthPx: 1280, heightPx: 720 };
  expect(fitOfPart({ ...whole, lens }, 10, 10)).toBeNull();
});
