import type { OpenFilm } from '../open-film.ts';

/** Pixels of a reel's picture. */
export interface ReelSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** As large as the largest of its films: smaller ones stand whole in it. No wider than `widestPx`. */
export const reelSizeOf = (
  films: readonly Pick<OpenFilm, 'widthPx' | 'heightPx'>[],
  widestPx = Number.POSITIVE_INFINITY,
): ReelSize => {
  const { widthPx, heightPx } = films.reduce(
    (largest, one) => (one.widthPx * one.heightPx > largest.widthPx * largest.heightPx ? one : largest),
    { widthPx: 0, heightPx: 0 },
  );
  const scale = Math.min(1, widestPx / widthPx);
  return { widthPx: Math.round(scale * widthPx), heightPx: Math.round(scale * heightPx) };
};
