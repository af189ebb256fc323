import type { Stroke } from './strokes.ts';

/** Points along painted lines: seven numbers each, see `STRIDE`. Metres. */
export interface StrokeSamples {
  readonly count: number;
  /** x, y; the line's direction there, length 1; half its width; 1 for blue and 0 for red; how much of the line it stands for. */
  readonly values: Float64Array;
}

export const STRIDE = 7;

/** Points at most `spacingM` (> 0) apart along lines, each in the middle of the piece it stands for. Source: our own rule. */
export const samplesOf = (strokes: readonly Stroke[], spacingM: number): StrokeSamples => {
  const values: number[] = [];
  for (const { colour, widthM, pointsM } of strokes) {
    let carriedM = spacingM / 2;
    for (let i = 1; i < pointsM.length; i++) {
      const from = pointsM[i - 1]!;
      const to = pointsM[i]!;
      const lengthM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
      if (!(lengthM > 0)) continue;
      const dx = (to.xM - from.xM) / lengthM;
      const dy = (to.yM - from.yM) / lengthM;
      for (; carriedM < lengthM; carriedM += spacingM) {
        const [x, y] = [from.xM + carriedM * dx, from.yM + carriedM * dy];
        values.push(x, y, dx, dy, widthM / 2, colour === 'blue' ? 1 : 0, spacingM);
      }
      carriedM -= lengthM;
    }
  }
  return { count: values.length / STRIDE, values: Float64Array.from(values) };
};
