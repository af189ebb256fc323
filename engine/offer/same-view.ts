import { iceOf } from './ice-of.ts';
import { SAME_VIEW } from './view-rows.ts';

/**
 * Half of the places of the ice in the picture, as two maps (ice in metres to a picture of half diagonal 1) give them, lie at most so
 * far apart, metres; places that either map puts above its horizon are endlessly far. `inside` is 1 where the picture shows ice.
 */
export const apartM = (
  a: ArrayLike<number>,
  b: ArrayLike<number>,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
  inside: Uint8Array,
): number => {
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  const distances: number[] = [];
  for (let y = GRID_PX / 2; y < heightPx; y += GRID_PX) {
    for (let x = GRID_PX / 2; x < widthPx; x += GRID_PX) {
      if (inside[y * widthPx + x] === 0) continue;
      const [u, v] = [(x - widthPx / 2) / halfDiagonal, (y - heightPx / 2) / halfDiagonal];
      const [p, q] = [iceOf(a, u, v), iceOf(b, u, v)];
      distances.push(p && q ? Math.hypot(p.xM - q.xM, p.yM - q.yM) : Number.POSITIVE_INFINITY);
    }
  }
  distances.sort((one, other) => one - other);
  return distances[distances.length >> 1] ?? Number.POSITIVE_INFINITY;
};

/** Whether two maps are one and the same view. See `apartM`. */
export const isSameView = (...views: Parameters<typeof apartM>): boolean =>
  apartM(...views) < SAME_VIEW.value;

const GRID_PX = 40;
