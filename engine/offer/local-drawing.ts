import type { IcePoint } from '../units/points.ts';
import { iceOf } from './ice-of.ts';
import type { Disc, Stroke } from './strokes.ts';

/** A painted piece: a segment from a to b, or a disc with a = b, and half its width. Metres. */
export type PaintedPiece = readonly [ax: number, ay: number, bx: number, by: number, half: number];

/** The pieces of one colour that come within `reachM` of a place, metres. Source: our own rule. */
export const piecesNear = (
  strokes: readonly Stroke[],
  discs: readonly Disc[],
  colour: 'red' | 'blue',
  atM: IcePoint,
  reachM: number,
): PaintedPiece[] => {
  const pieces: PaintedPiece[] = [];
  for (const stroke of strokes) {
    if (stroke.colour !== colour) continue;
    for (let i = 1; i < stroke.pointsM.length; i++) {
      const [a, b] = [stroke.pointsM[i - 1]!, stroke.pointsM[i]!];
      pieces.push([a.xM, a.yM, b.xM, b.yM, stroke.widthM / 2]);
    }
  }
  for (const disc of discs) {
    const { xM, yM } = disc.atM;
    if (disc.colour === colour) pieces.push([xM, yM, xM, yM, disc.radiusM]);
  }
  return pieces.filter(piece => squareTo(piece, atM.xM, atM.yM) < (reachM + piece[4]) ** 2);
};

/**
 * What share of each pixel of a square window is painted, row by row, `sizePx` pixels to each side of the pixel whose middle is (xPx, yPx):
 * through a map from the ice in metres to pixels, blurred over `BLUR_PX`. Source: sampling, nine points a pixel.
 */
export const drawnShare = (
  pieces: readonly PaintedPiece[],
  filmFromIce: ArrayLike<number>,
  xPx: number,
  yPx: number,
  sizePx: number,
): Float64Array => {
  const side = 2 * sizePx + 1;
  const share = new Float64Array(side * side);
  if (pieces.length === 0) return share;
  for (let at = 0; at < share.length; at++) {
    const x = xPx + (at % side) - sizePx;
    const y = yPx + Math.floor(at / side) - sizePx;
    for (let k = 0; k < 9; k++) {
      const place = iceOf(
        filmFromIce,
        x + (((k % 3) - 1) * BLUR_PX) / 3,
        y + (((k / 3) | 0) - 1) * (BLUR_PX / 3),
      );
      if (place !== null && isPainted(pieces, place)) share[at] = share[at]! + 1 / 9;
    }
  }
  return share;
};

/** Film pictures are blurred over about so many pixels by lens and coding. */
const BLUR_PX = 2;

const isPainted = (pieces: readonly PaintedPiece[], { xM, yM }: IcePoint): boolean => {
  for (const piece of pieces) if (squareTo(piece, xM, yM) <= piece[4] * piece[4]) return true;
  return false;
};

const squareTo = ([ax, ay, bx, by]: PaintedPiece, x: number, y: number): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const along = square > 0 ? Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / square)) : 0;
  return (x - ax - along * dx) ** 2 + (y - ay - along * dy) ** 2;
};
