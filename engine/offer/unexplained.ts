import { boardsDistance } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import { iceOf } from './ice-of.ts';
import type { PictureFeatures } from './picture-features.ts';
import { discsOf, type Stroke } from './strokes.ts';

/**
 * How much of what was found in a picture a map (ice in metres to a picture of half diagonal 1) does not explain: straight lines and spots on the
 * ice with no marking there, and ice beyond the boards; a piece of line of ten pixels counts 1. Source: our own rule.
 */
export const unexplainedOf = (
  map: Float64Array,
  { paint, ice, spots, blueLines, redLines }: PictureFeatures,
  strokes: readonly Stroke[],
  rink: Rink,
): number => {
  const { widthPx, heightPx } = paint;
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  const placeOf = (xPx: number, yPx: number) =>
    iceOf(map, (xPx - widthPx / 2) / halfDiagonal, (yPx - heightPx / 2) / halfDiagonal);
  const isInside = (x: number, y: number): boolean =>
    x >= 0 &&
    y >= 0 &&
    x < widthPx &&
    y < heightPx &&
    ice.inside[Math.floor(y) * widthPx + Math.floor(x)] === 1;
  let count = 0;
  for (const [colour, lines] of [
    ['blue', blueLines],
    ['red', redLines],
  ] as const) {
    const drawn = strokes.filter(stroke => stroke.colour === colour);
    for (const { line, fromPx, toPx, widthPx: thick } of lines) {
      const lengthPx = Math.hypot(toPx[0] - fromPx[0], toPx[1] - fromPx[1]);
      const beside = thick + 8;
      for (let along = 5; along < lengthPx; along += 10) {
        const x = fromPx[0] + ((toPx[0] - fromPx[0]) * along) / lengthPx;
        const y = fromPx[1] + ((toPx[1] - fromPx[1]) * along) / lengthPx;
        const [nx, ny] = [line.normalX * beside, line.normalY * beside];
        // What lies along the edge of the ice is a board.
        if (!isInside(x + nx, y + ny) || !isInside(x - nx, y - ny)) continue;
        const place = placeOf(x, y);
        const next = placeOf(x + line.normalX, y + line.normalY);
        const perPxM = place && next ? Math.hypot(next.xM - place.xM, next.yM - place.yM) : 0;
        if (place === null || !isNearOne(drawn, place.xM, place.yM, 0.1 + 3 * perPxM)) count++;
      }
    }
  }
  const discs = discsOf(rink);
  for (const { xPx, yPx, halfLongPx, areaPx2 } of spots) {
    if (areaPx2 < SURE_SPOT_PX2) continue;
    const place = placeOf(xPx, yPx);
    const next = placeOf(xPx + halfLongPx, yPx);
    const reachM = place && next ? 0.2 + Math.hypot(next.xM - place.xM, next.yM - place.yM) : 0;
    const isThere =
      place !== null && discs.some(({ atM }) => Math.hypot(atM.xM - place.xM, atM.yM - place.yM) < reachM);
    if (!isThere) count += SPOT_COUNTS;
  }
  let [all, beyond] = [0, 0];
  for (let y = 20; y < heightPx; y += 40) {
    for (let x = 20; x < widthPx; x += 40) {
      if (!isInside(x, y)) continue;
      all++;
      const place = placeOf(x, y);
      if (place === null || boardsDistance(rink.boards, place) < -1.5) beyond++;
    }
  }
  return count + (BEYOND_COUNTS * beyond) / Math.max(1, all);
};

const isNearOne = (strokes: readonly Stroke[], x: number, y: number, reachM: number): boolean =>
  strokes.some(({ pointsM, widthM }) => {
    for (let i = 1; i < pointsM.length; i++) {
      const [a, b] = [pointsM[i - 1]!, pointsM[i]!];
      const [dx, dy] = [b.xM - a.xM, b.yM - a.yM];
      const along = ((x - a.xM) * dx + (y - a.yM) * dy) / (dx * dx + dy * dy);
      const t = Math.max(0, Math.min(1, along));
      if (Math.hypot(x - a.xM - t * dx, y - a.yM - t * dy) < reachM + widthM / 2) return true;
    }
    return false;
  });

const SURE_SPOT_PX2 = 40;
const SPOT_COUNTS = 8;
const BEYOND_COUNTS = 300;
