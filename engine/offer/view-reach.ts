import { iceFromFilm } from '../film/ice-from-film.ts';
import type { PinFit } from '../film/pins.ts';
import { boardsDistance } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import type { FilmPoint } from '../units/points.ts';

/**
 * Within how many metres (√ of both variances) a fit knows the middle one of all places of the ice in view; endless where none is. `inside` is
 * 1 where the picture shows ice. Source: `iceFromFilm` for points known exactly.
 */
export const medianReachM = (
  fit: PinFit,
  rink: Rink,
  size: { readonly widthPx: number; readonly heightPx: number },
  inside: Uint8Array,
): number => {
  const reaches: number[] = [];
  for (const place of placesInView(size, inside)) {
    const placed = iceFromFilm(fit, place, { footSdPx: 0 });
    if (placed.kind === 'none') reaches.push(Number.POSITIVE_INFINITY);
    else if (boardsDistance(rink.boards, placed.atM) > 0) {
      reaches.push(Math.sqrt(placed.covM2.xxM2 + placed.covM2.yyM2));
    }
  }
  reaches.sort((a, b) => a - b);
  return reaches[reaches.length >> 1] ?? Number.POSITIVE_INFINITY;
};

/** Places all over the ice of a picture, pixels, on an even grid of it. */
export const placesInView = (
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
  inside: Uint8Array,
): FilmPoint[] => {
  const places: FilmPoint[] = [];
  for (let y = GRID_PX / 2; y < heightPx; y += GRID_PX) {
    for (let x = GRID_PX / 2; x < widthPx; x += GRID_PX) {
      if (inside[y * widthPx + x] !== 0) places.push({ xPx: x, yPx: y });
    }
  }
  return places;
};

const GRID_PX = 40;
