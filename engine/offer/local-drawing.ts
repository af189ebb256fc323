import type { IcePoint } from '../units/points.ts';
import type { Disc, Stroke } from './strokes.ts';

/** Painted pieces near a place: red and blue apart. Segments as ax, ay, bx, by, half width; discs with a = b. Metres. */
export interface NearPaint {
  readonly red: readonly Segment[];
  readonly blue: readonly Segment[];
}
type Segment = readonly [ax: number, ay: number, bx: number, by: number, half: number];

/** The pieces that come within `reachM` of a place. Source: our own rule. */
export const paintNear = (
  strokes: readonly Stroke[],
  discs: readonly Disc[],
  atM: IcePoint,
  reachM: number,
): NearPaint => {
  const near: { red: Segment[]; blue: Segment[] } = { red: [], blue: [] };
  const take = (colour: 'red' | 'blue', segment: Segment): void => {
    if (distanceTo(segment, atM.xM, atM.yM) < reachM + segment[4]) near[colour].push(segment);
  };
  for (const { colour, widthM, pointsM } of strokes) {
    for (let i = 1; i < pointsM.length; i++) {
      const [a, b] = [pointsM[i - 1]!, pointsM[i]!];
      take(colour, [a.xM, a.yM, b.xM, b.yM, widthM / 2]);
    }
  }
  for (const { colour, atM: p, radiusM } of discs) take(colour, [p.xM, p.yM, p.xM, p.yM, radiusM]);
  return near;
};

/**
 * What share of each pixel of a square window is painted in one colour, row by row, −`reachPx` to +`reachPx` round
 * (xPx, yPx), by the inverse of a map from ice in metres to pixels; each pixel blurred over `BLUR_PX`. Source: sampling, 9 points a pixel.
 */
export const drawnShare = (
  segments: readonly Segment[],
  iceFromFilm: readonly number[],
  xPx: number,
  yPx: number,
  reachPx: number,
): Float64Array => {
  const side = 2 * reachPx + 1;
  const share = new Float64Array(side * side);
  if (segments.length === 0) return share;
  const [a, b, c, d, e, f, g, h, i] = iceFromFilm as number[];
  for (let row = 0; row < side; row++) {
    for (let column = 0; column < side; column++) {
      let hits = 0;
      for (let k = 0; k < 9; k++) {
        const x = xPx + column - reachPx + (((k % 3) - 1) * BLUR_PX) / 3;
        const y = yPx + row - reachPx + ((Math.floor(k / 3) - 1) * BLUR_PX) / 3;
        const t = g! * x + h! * y + i!;
        const xM = (a! * x + b! * y + c!) / t;
        const yM = (d! * x + e! * y + f!) / t;
        if (segments.some(segment => distanceTo(segment, xM, yM) <= segment[4])) hits++;
      }
      share[row * side + column] = hits / 9;
    }
  }
  return share;
};

/** Film pictures are blurred over about so many pixels by lens and coding. */
const BLUR_PX = 2;

const distanceTo = ([ax, ay, bx, by]: Segment, x: number, y: number): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const along = square > 0 ? Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / square)) : 0;
  return Math.hypot(x - ax - along * dx, y - ay - along * dy);
};
