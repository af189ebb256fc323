import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import { boardsDistance } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import { drawnAt, isInPicture } from './camera.reference.ts';
import { fitPins } from './fit-pins.ts';
import { pictureOnIce } from './picture-on-ice.ts';
import { somePinnedView, TEST_RINK, theFit } from './pinned-view.reference.ts';

const isInside = (polygon: readonly IcePoint[], { xM, yM }: IcePoint): boolean =>
  polygon.length > 2 &&
  polygon.every((from, i) => {
    const to = polygon[(i + 1) % polygon.length]!;
    return (to.xM - from.xM) * (yM - from.yM) - (to.yM - from.yM) * (xM - from.xM) >= 0;
  });

describe('what the picture shows of the ice', () => {
  it('is exactly the points of the ice that are drawn inside it', () => {
    const random = randomOf(21);
    let inside = 0;
    let outside = 0;
    for (let view = 0; view < 40; view++) {
      const pinned = somePinnedView(random, 8, 0);
      const fit = theFit(fitPins(pinned.pins, 0.1));
      const polygon = pictureOnIce(fit, pinned.camera, TEST_RINK.boards);
      for (let i = 0; i < 200; i++) {
        const atM = { xM: -31 + 62 * random.uniform(), yM: -14 + 28 * random.uniform() };
        const offBoardsM = boardsDistance(TEST_RINK.boards, atM);
        // The corner is drawn with chords that leave the arc by under 1 cm.
        if (Math.abs(offBoardsM) < 0.02) continue;
        const isShown = offBoardsM > 0 && isInPicture(pinned.camera, drawnAt(pinned.filmFromIce, atM));
        expect(isInside(polygon, atM)).toBe(isShown);
        if (isShown) inside++;
        else outside++;
      }
    }
    expect(Math.min(inside, outside)).toBeGreaterThan(500);
  });

  it('is nothing when the picture looks past the ice', () => {
    const pinned = somePinnedView(randomOf(22), 8, 0);
    const fit = theFit(fitPins(pinned.pins, 0.1));
    expect(pictureOnIce(fit, { widthPx: -5000, heightPx: 720 }, TEST_RINK.boards)).toEqual([]);
  });
});
