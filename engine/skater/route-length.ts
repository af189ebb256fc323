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

/** Where samples lie: which piece each is on, and its parameter there. May have room for more samples than were asked for. */
export interface Parameters {
  readonly pieceIndex: Int32Array;
  readonly u: Float64Array;
}

/** Written over at every use. */
let room: Parameters = { pieceIndex: new Int32Array(0), u: new Float64Array(0) };

const SMALL_STEP = 1e-6;

/**
 * The parameters of `count` samples evenly along the curve, from its start to its end; `lengths` as of `cumulativeLengths`. Each is found by Newton
 * from inside its slice (at its ends a route that turns back on itself stands still), kept inside it. All in one loop: a number that is
 * handed over at every sample would be half the garbage of a run.
 */
export const parametersAlong = (
  pieces: readonly CubicPiece[],
  lengths: Float64Array,
  count: number,
): Parameters => {
  if (room.u.length < count) room = { pieceIndex: new Int32Array(count), u: new Float64Array(count) };
  const { pieceIndex, u: parameters } = room;
  const lengthM = lengths[lengths.length - 1]!;
  const stepM = lengthM / (count - 1);
  let slice = -1;
  let piece = pieces[0]!;
  let from = 0;
  let sliceM = 0;
  let fromSlope = 0;
  let toSlope = 0;
  for (let i = 0; i < count; i++) {
    const sM = i === count - 1 ? lengthM : i * stepM;
    const before = slice;
    if (slice < 0) slice = 0;
    while (slice < lengths.length - 2 && lengths[slice + 1]! < sM) slice++;
    if (slice !== before) {
      piece = pieces[Math.floor(slice / SLICES_PER_PIECE)]!;
      from = (slice % SLICES_PER_PIECE) / SLICES_PER_PIECE;
      sliceM = lengths[slice + 1]! - lengths[slice]!;
      fromSlope = slopeAt(piece, from, sliceM);
      toSlope = slopeAt(piece, from + 1 / SLICES_PER_PIECE, sliceM);
    }
    const to = from + 1 / SLICES_PER_PIECE;
    const restM = sM - lengths[slice]!;
    const t = sliceM > 0 ? Math.min(1, restM / sliceM) : 0;
    // The cubic through both ends of the slice with their slopes is mostly right to a millionth: one step then does.
    const guess =
      from + t * t * (3 - 2 * t) * (1 / SLICES_PER_PIECE) + t * (1 - t) * ((1 - t) * fromSlope - t * toSlope);
    let u = Math.min(to, Math.max(from, guess));
    for (let step = 0; step < 12; step++) {
      const speed = speedOnPiece(piece, u);
      if (speed < 1e-9) break;
      const next = Math.min(to, Math.max(from, u + (restM - lengthBetween(piece, from, u)) / speed));
      // Each step squares the error, so after one this small nothing is left to correct.
      const done = Math.abs(next - u) < SMALL_STEP;
      u = next;
      if (done) break;
    }
    pieceIndex[i] = Math.floor(slice / SLICES_PER_PIECE);
    parameters[i] = u;
  }
  return room;
};

/** How the parameter grows over the slice's length at `u`; where the curve stands still, as over the whole of an even slice. */
const slopeAt = (piece: CubicPiece, u: number, sliceM: number): number => {
  const speed = speedOnPiece(piece, u);
  const even = 1 / SLICES_PER_PIECE;
  return speed > 0 ? Math.min(3 * even, sliceM / speed) : even;
};
