import { factorInto, solveInPlace } from '../film/matrix.ts';
import type { IcePoint } from '../units/points.ts';
import { iceOf } from './ice-of.ts';
import { drawnShare, piecesNear } from './local-drawing.ts';
import { FARTHEST_PIN, LEAST_CORNER, LEAST_LIKENESS, LOOSEST_PIN, PIN_REACH } from './offer-rows.ts';
import type { PaintMaps } from './paint-maps.ts';
import type { Disc, Stroke } from './strokes.ts';

/** Where a landmark was measured in a picture, pixels, and how well in the direction in which it is known least. */
export interface MeasuredPin {
  readonly xPx: number;
  readonly yPx: number;
  readonly sdPx: number;
  /** How like the paint is to the markings drawn there, correlation, −1 to 1. */
  readonly likeness: number;
}

/** The sheet as drawn by a map, ice in metres to pixels. */
export interface DrawnSheet {
  readonly strokes: readonly Stroke[];
  readonly discs: readonly Disc[];
  readonly filmFromIce: ArrayLike<number>;
}

/**
 * Measures a landmark that the sheet as drawn has at (xPx, yPx): the shift of the drawing that makes it most like the paint in a small window.
 * Null where the markings are not there, are hidden, are too far off, or have no corner: then the window does not tell
 * both directions. Source: Lucas & Kanade 1981, Proc. 7th IJCAI, 674, with strength and ground free (from memory).
 */
export const measurePin = (
  paint: PaintMaps,
  sheet: DrawnSheet,
  landmarkM: IcePoint,
  xPx: number,
  yPx: number,
): MeasuredPin | null => {
  const { widthPx, heightPx } = paint;
  const steps = [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ].map(([dx, dy]) => stepM(sheet, landmarkM, xPx + dx!, yPx + dy!));
  const nearM = Math.max(...steps);
  if (!(nearM < FARTHEST_PIN.value)) return null;
  // A spot near by may be larger than the window that suits the other marks.
  const spot = sheet.discs.find(({ atM }) => atM.xM === landmarkM.xM && atM.yM === landmarkM.yM);
  const spotPx = spot === undefined ? 0 : (SPOT_WINDOW * spot.radiusM) / Math.min(...steps);
  const reachPx = Math.round(Math.max(PIN_REACH.value, Math.min(MOST_REACH_PX, spotPx)));
  const edge = reachPx + MOST_SHIFT_PX + 3;
  if (!(xPx > edge && yPx > edge && xPx < widthPx - edge && yPx < heightPx - edge)) return null;
  const window = windowOf(paint, sheet, landmarkM, xPx, yPx, reachPx, nearM);
  let shift = { x: 0, y: 0 };
  let answer: MeasuredPin | null = null;
  for (let pass = 0; pass < PASSES; pass++) {
    const step = stepOf(window, shift);
    if (step === null) return null;
    shift = { x: shift.x + step.x, y: shift.y + step.y };
    if (!(Math.hypot(shift.x, shift.y) < MOST_SHIFT_PX)) return null;
    if (pass > 0 && step.likeness < LEAST_LIKENESS.value) return null;
    answer = { xPx: xPx + shift.x, yPx: yPx + shift.y, sdPx: step.sdPx, likeness: step.likeness };
  }
  return answer !== null && answer.sdPx < LOOSEST_PIN.value ? answer : null;
};

/** How far on the ice a pixel's step goes. */
const stepM = ({ filmFromIce }: DrawnSheet, { xM, yM }: IcePoint, xPx: number, yPx: number): number => {
  const place = iceOf(filmFromIce, xPx, yPx);
  return place === null ? Number.POSITIVE_INFINITY : Math.hypot(place.xM - xM, place.yM - yM);
};

/** One colour of a window: what is drawn, its slopes, and the paint to compare it with. */
interface Window {
  readonly reachPx: number;
  readonly xPx: number;
  readonly yPx: number;
  readonly widthPx: number;
  readonly colours: readonly { readonly drawn: Float64Array; readonly paint: Float32Array }[];
}

const windowOf = (
  { red, blue, widthPx }: PaintMaps,
  { strokes, discs, filmFromIce }: DrawnSheet,
  landmarkM: IcePoint,
  xPx: number,
  yPx: number,
  reachPx: number,
  nearM: number,
): Window => {
  // A pixel wider all round, for the slopes; the window's corners are farther by √2.
  const reachM = 1.5 * nearM * (reachPx + 3);
  const colours = (
    [
      ['red', red],
      ['blue', blue],
    ] as const
  ).map(([colour, paint]) => ({
    drawn: drawnShare(
      piecesNear(strokes, discs, colour, landmarkM, reachM),
      filmFromIce,
      xPx,
      yPx,
      reachPx + 1,
    ),
    paint,
  }));
  return { reachPx, xPx, yPx, widthPx, colours };
};

/** One step of the shift: strength, ground and shift by least squares. */
const stepOf = (
  { reachPx, xPx, yPx, widthPx, colours }: Window,
  shift: { readonly x: number; readonly y: number },
): { x: number; y: number; sdPx: number; likeness: number } | null => {
  const side = 2 * reachPx + 3;
  const normal = new Float64Array(16);
  const right = new Float64Array(4);
  const row = new Float64Array(4);
  let [count, squares] = [0, 0];
  for (const { drawn, paint } of colours) {
    for (let y = -reachPx; y <= reachPx; y++) {
      for (let x = -reachPx; x <= reachPx; x++) {
        const at = (y + reachPx + 1) * side + x + reachPx + 1;
        const value = sampled(paint, widthPx, xPx + x + shift.x - 0.5, yPx + y + shift.y - 0.5);
        row[0] = drawn[at]!;
        row[1] = 1;
        row[2] = (drawn[at + 1]! - drawn[at - 1]!) / 2;
        row[3] = (drawn[at + side]! - drawn[at - side]!) / 2;
        for (let i = 0; i < 4; i++) {
          right[i] = right[i]! + row[i]! * value;
          for (let j = 0; j <= i; j++) normal[4 * i + j] = normal[4 * i + j]! + row[i]! * row[j]!;
        }
        count++;
        squares += value * value;
      }
    }
  }
  const [sumT, sumTT, sumP, sumPT] = [normal[4]!, normal[0]!, right[1]!, right[0]!];
  const [gxx, gxy, gyy] = [normal[10]!, normal[14]!, normal[15]!];
  const factor = new Float64Array(16);
  if (!factorInto(normal, factor, 4)) return null;
  solveInPlace(factor, right, 4);
  const strength = right[0]!;
  if (!(strength > LEAST_STRENGTH)) return null;
  const variance = squares - sumP ** 2 / count;
  const likeness = (sumPT - (sumP * sumT) / count) / Math.sqrt(variance * (sumTT - sumT ** 2 / count));
  const least = (gxx + gyy) / 2 - Math.hypot((gxx - gyy) / 2, gxy);
  if (!(least > LEAST_CORNER.value * (gxx + gyy - least))) return null;
  const noise = (variance * (1 - likeness ** 2)) / count;
  // Paint at p + shift looks like the drawing at p; where it still lies to the right, the slope's share is negative.
  return {
    x: -right[2]! / strength,
    y: -right[3]! / strength,
    sdPx: (ALIKE * Math.sqrt(noise / least)) / strength,
    likeness,
  };
};

const sampled = (paint: Float32Array, widthPx: number, x: number, y: number): number => {
  const [column, row] = [Math.floor(x), Math.floor(y)];
  const [fx, fy] = [x - column, y - row];
  const at = row * widthPx + column;
  const top = paint[at]! * (1 - fx) + paint[at + 1]! * fx;
  return top * (1 - fy) + (paint[at + widthPx]! * (1 - fx) + paint[at + widthPx + 1]! * fx) * fy;
};

/** Half a window over a spot's radius. */
const SPOT_WINDOW = 1.5;
const MOST_REACH_PX = 40;
const PASSES = 5;
const MOST_SHIFT_PX = 2.5;
/** Paint weaker than this is not there. */
const LEAST_STRENGTH = 0.08;
/** Neighbouring pixels stray alike, so that their errors count so much more. */
const ALIKE = 3;
