import type { IcePoint } from '../units/points.ts';
import { cumulativeLengths, type Parameters, parametersAlong } from './route-length.ts';
import { ROUTE_ROWS } from './route-rows.ts';
import { type CubicPiece, splinePieces } from './route-spline.ts';

/**
 * A drawn route: the smooth curve through its points, sampled evenly along its length. All arrays have the same length,
 * sample i lies at `i · stepM` along the curve. `headingRad` is continuous (it may leave (−π, π]); `curvaturePerM` is
 * positive for a turn to the left, and is that of the body's line: the turn averaged over the row `bendM` to either side, so that a corner drawn
 * sharper than a skater can turn has a finite price whatever the sampling.
 */
export interface RouteCurve {
  readonly lengthM: number;
  readonly stepM: number;
  readonly xM: Float64Array;
  readonly yM: Float64Array;
  readonly headingRad: Float64Array;
  readonly curvaturePerM: Float64Array;
  /** Largest curvature to either side. */
  readonly sharpestPerM: number;
  /** The same curve for drawing. */
  readonly beziers: readonly RouteBezier[];
}

export interface RouteBezier {
  readonly fromM: IcePoint;
  readonly control1M: IcePoint;
  readonly control2M: IcePoint;
  readonly toM: IcePoint;
}

export interface RoutePlace {
  readonly atM: IcePoint;
  readonly headingRad: number;
  readonly curvaturePerM: number;
}

export interface RouteCurveOptions {
  /** Direction of motion at the first point, when it is given by what came before. */
  readonly startHeadingRad?: number;
  /** Wanted distance between samples, metres. */
  readonly stepM?: number;
}

/** Fine enough that a profile on it is within 0.3 % of one on a grid 25 times finer. */
const DEFAULT_STEP_M = 0.1;
const BEND_M = ROUTE_ROWS.bendM.value;
const FEWEST_SAMPLES = 16;

/**
 * The curve through these ice points (metres) in their order: a cubic spline with continuous curvature over centripetal
 * knots, straight at a free end. Points on top of each other count once; one point gives a route of length 0. Source:
 * centripetal knots, Lee 1989; natural cubic spline (both from memory).
 */
export const routeCurveOf = (pointsM: readonly IcePoint[], options: RouteCurveOptions = {}): RouteCurve => {
  const pieces = splinePieces(pointsM, options.startHeadingRad);
  if (pieces.length === 0) return standingCurve(pointsM[0] ?? { xM: 0, yM: 0 }, options.startHeadingRad ?? 0);
  const lengths = cumulativeLengths(pieces);
  const lengthM = lengths[lengths.length - 1]!;
  const count = Math.max(FEWEST_SAMPLES, Math.ceil(lengthM / (options.stepM ?? DEFAULT_STEP_M)) + 1);
  // One block for the four: each block of its own is a thing more to be followed by who clears the memory.
  const numbers = new Float64Array(4 * count);
  const curve = {
    lengthM,
    stepM: lengthM / (count - 1),
    xM: numbers.subarray(0, count),
    yM: numbers.subarray(count, 2 * count),
    headingRad: numbers.subarray(2 * count, 3 * count),
    curvaturePerM: numbers.subarray(3 * count),
    beziers: pieces.map(bezierOf),
  };
  writeSamples(curve, pieces, parametersAlong(pieces, lengths, count));
  return { ...curve, sharpestPerM: writeCurvature(curve) };
};

/**
 * Place at `sM` along the route (clamped to it): Hermite between samples, error about (step · curvature)⁴. Source: cubic
 * Hermite interpolation.
 */
export const routePlaceAt = (curve: RouteCurve, sM: number): RoutePlace => {
  const last = curve.xM.length - 1;
  if (curve.lengthM <= 0 || last < 1) {
    return {
      atM: { xM: curve.xM[0]!, yM: curve.yM[0]! },
      headingRad: curve.headingRad[0]!,
      curvaturePerM: 0,
    };
  }
  const at = Math.min(Math.max(sM / curve.stepM, 0), last);
  const i = Math.min(Math.floor(at), last - 1);
  const t = at - i;
  const heading0 = curve.headingRad[i]!;
  const heading1 = curve.headingRad[i + 1]!;
  const h01 = t * t * (3 - 2 * t);
  const h10 = t * (1 - t) * (1 - t) * curve.stepM;
  const h11 = -t * t * (1 - t) * curve.stepM;
  const between = (from: number, to: number, slope0: number, slope1: number): number =>
    from + (to - from) * h01 + slope0 * h10 + slope1 * h11;
  return {
    atM: {
      xM: between(curve.xM[i]!, curve.xM[i + 1]!, Math.cos(heading0), Math.cos(heading1)),
      yM: between(curve.yM[i]!, curve.yM[i + 1]!, Math.sin(heading0), Math.sin(heading1)),
    },
    headingRad: heading0 + (heading1 - heading0) * t,
    curvaturePerM: curve.curvaturePerM[i]! * (1 - t) + curve.curvaturePerM[i + 1]! * t,
  };
};

const standingCurve = (atM: IcePoint, headingRad: number): RouteCurve => ({
  lengthM: 0,
  stepM: 0,
  xM: Float64Array.of(atM.xM),
  yM: Float64Array.of(atM.yM),
  headingRad: Float64Array.of(headingRad),
  curvaturePerM: Float64Array.of(0),
  sharpestPerM: 0,
  beziers: [],
});

const bezierOf = (piece: CubicPiece): RouteBezier => {
  const x = bernstein(piece.ax, piece.bx, piece.cx, piece.dx);
  const y = bernstein(piece.ay, piece.by, piece.cy, piece.dy);
  const at = (k: 0 | 1 | 2 | 3): IcePoint => ({ xM: x[k], yM: y[k] });
  return { fromM: at(0), control1M: at(1), control2M: at(2), toM: at(3) };
};

const bernstein = (a: number, b: number, c: number, d: number): readonly [number, number, number, number] => [
  a,
  a + b / 3,
  a + (2 * b + c) / 3,
  a + b + c + d,
];

type SampleArrays = Pick<RouteCurve, 'xM' | 'yM' | 'headingRad'>;

const writeSamples = (
  { xM, yM, headingRad }: SampleArrays,
  pieces: readonly CubicPiece[],
  { pieceIndex, u: parameters }: Parameters,
): void => {
  for (let i = 0; i < xM.length; i++) {
    const piece = pieces[pieceIndex[i]!]!;
    const u = parameters[i]!;
    const x1 = piece.bx + u * (2 * piece.cx + 3 * piece.dx * u);
    const y1 = piece.by + u * (2 * piece.cy + 3 * piece.dy * u);
    xM[i] = piece.ax + u * (piece.bx + u * (piece.cx + u * piece.dx));
    yM[i] = piece.ay + u * (piece.by + u * (piece.cy + u * piece.dy));
    headingRad[i] = nearestTurn(Math.atan2(y1, x1), i > 0 ? headingRad[i - 1]! : 0);
  }
};

const nearestTurn = (headingRad: number, beforeRad: number): number => {
  const turnRad = beforeRad - headingRad;
  if (turnRad < Math.PI && turnRad > -Math.PI) return headingRad;
  return headingRad + 2 * Math.PI * Math.round(turnRad / (2 * Math.PI));
};

/** Room for the integral, written over at every use. */
let sums = new Float64Array(0);

/**
 * Second difference of the heading's integral: the turn averaged with triangular weights, so that it has no jumps at a
 * kink. Beyond the ends the line goes straight on.
 */
const writeCurvature = ({
  headingRad,
  curvaturePerM,
  stepM,
}: Pick<RouteCurve, 'headingRad' | 'curvaturePerM' | 'stepM'>): number => {
  let sharpest = 0;
  const last = headingRad.length - 1;
  if (sums.length <= last) sums = new Float64Array(last + 1);
  for (let i = 1; i <= last; i++) sums[i] = sums[i - 1]! + (headingRad[i - 1]! + headingRad[i]!) / 2;
  const reach = BEND_M / stepM;
  const whole = Math.floor(reach);
  const rest = reach - whole;
  const sumAt = (i: number, part: number): number => {
    if (i < 0) return (i + part) * headingRad[0]!;
    if (i >= last) return sums[last]! + (i + part - last) * headingRad[last]!;
    return sums[i]! + part * (headingRad[i]! + (part * (headingRad[i + 1]! - headingRad[i]!)) / 2);
  };
  for (let i = 0; i <= last; i++) {
    let bend: number;
    if (rest > 0 && i > whole && i + whole < last) {
      // Away from the ends, which is almost everywhere, as `sumAt` does it but without its calls.
      const a = i + whole;
      const b = i - whole - 1;
      const part = 1 - rest;
      const ahead = sums[a]! + rest * (headingRad[a]! + (rest * (headingRad[a + 1]! - headingRad[a]!)) / 2);
      const behind = sums[b]! + part * (headingRad[b]! + (part * (headingRad[b + 1]! - headingRad[b]!)) / 2);
      bend = ahead - 2 * sums[i]! + behind;
    } else {
      const behind = rest > 0 ? sumAt(i - whole - 1, 1 - rest) : sumAt(i - whole, 0);
      bend = sumAt(i + whole, rest) - 2 * sums[i]! + behind;
    }
    const turn = bend / (reach * reach * stepM);
    curvaturePerM[i] = turn;
    sharpest = Math.max(sharpest, Math.abs(turn));
  }
  return sharpest;
};
