import { type CubicPiece, speedOnPiece } from './route-spline.ts';

/** Parts of each piece whose lengths are summed up. */
export const SLICES_PER_PIECE = 16;

/** Three-point Gauss–Legendre nodes and weights on [0, 1]. */
const GAUSS_NODES = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)] as const;
const GAUSS_WEIGHTS = [5 / 18, 8 / 18, 5 / 18] as const;

const lengthBetween = (piece: CubicPiece, from: number, to: number): number => {
  const wide = to - from;
  return (
    wide *
    (GAUSS_WEIGHTS[0] * speedOnPiece(piece, from + wide * GAUSS_NODES[0]) +
      GAUSS_WEIGHTS[1] * speedOnPiece(piece, from + wide * GAUSS_NODES[1]) +
      GAUSS_WEIGHTS[2] * speedOnPiece(piece, from + wide * GAUSS_NODES[2]))
  );
};

/** Length of the curve up to each slice, metres; one entry more than there are slices. */
export const cumulativeLengths = (pieces: readonly CubicPiece[]): Float64Array => {
  const lengths = new Float64Array(pieces.length * SLICES_PER_PIECE + 1);
  for (let i = 0; i < lengths.length - 1; i++) {
    const from = (i % SLICES_PER_PIECE) / SLICES_PER_PIECE;
    const piece = pieces[Math.floor(i / SLICES_PER_PIECE)]!;
    lengths[i + 1] = lengths[i]! + lengthBetween(piece, from, from + 1 / SLICES_PER_PIECE);
  }
  return lengths;
};

const SMALL_STEP = 1e-6;

/**
 * Parameter at which the piece has gone `restM` into the slice that begins at `from` and is `sliceM` long; Newton from
 * inside the slice (at its ends a route that turns back on itself stands still), kept inside it.
 */
export const parameterAt = (piece: CubicPiece, from: number, restM: number, sliceM: number): number => {
  const to = from + 1 / SLICES_PER_PIECE;
  let u = sliceM > 0 ? from + Math.min(1, restM / sliceM) / SLICES_PER_PIECE : from;
  for (let step = 0; step < 12; step++) {
    const speed = speedOnPiece(piece, u);
    if (speed < 1e-9) break;
    const next = Math.min(to, Math.max(from, u + (restM - lengthBetween(piece, from, u)) / speed));
    // Each step squares the error, so after one this small nothing is left to correct.
    const done = Math.abs(next - u) < SMALL_STEP;
    u = next;
    if (done) break;
  }
  return u;
};
