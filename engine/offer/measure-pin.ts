import { factorInto, solveInPlace } from '../film/matrix.ts';
import type { IcePoint } from '../units/points.ts';
import { drawnShare, paintNear } from './local-drawing.ts';
import { LEAST_LIKENESS, LOOSEST_PIN, PIN_REACH } from './offer-rows.ts';
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

/**
 * Measures a landmark near (xPx, yPx): the shift of the markings as drawn by `iceFromFilm` (pixels to metres) that makes
 * them most like the paint in a small window. Null where they are not there, are hidden, or have no corner: then the window does not
 * tell both directions. Source: Lucas & Kanade 1981, Proc. 7th IJCAI, 674, with brightness and ground level free (from memory).
 */
export const measurePin = (
  { widthPx, heightPx, red, blue }: PaintMaps,
  strokes: readonly Stroke[],
  discs: readonly Disc[],
  iceFromFilm: readonly number[],
  landmarkM: IcePoint,
  xPx: number,
  yPx: number,
  metresPerPx: number,
): MeasuredPin | null => {
  const reachPx = Math.round(PIN_REACH.value);
  const edge = reachPx + 4;
  if (!(xPx > edge && yPx > edge && xPx < widthPx - edge && yPx < heightPx - edge)) return null;
  const near = paintNear(strokes, discs, landmarkM, metresPerPx * (reachPx + 3) * 1.5);
  // Drawn a pixel wider all round, for the slopes.
  const size = reachPx + 1;
  const side = 2 * size + 1;
  const centreX = Math.round(xPx - 0.5);
  const centreY = Math.round(yPx - 0.5);
  let [shiftX, shiftY] = [0, 0];
  let answer: MeasuredPin | null = null;
  for (let pass = 0; pass < PASSES; pass++) {
    const normal = new Float64Array(25);
    const right = new Float64Array(5);
    const colours = [
      { drawn: drawnShare(near.red, iceFromFilm, centreX + 0.5 - shiftX, centreY + 0.5 - shiftY, size), paint: red },
      { drawn: drawnShare(near.blue, iceFromFilm, centreX + 0.5 - shiftX, centreY + 0.5 - shiftY, size), paint: blue },
    ];
    const row = new Float64Array(5);
    let [count, sumP, sumPP, sumT, sumTT, sumPT] = [0, 0, 0, 0, 0, 0];
    let [gxx, gxy, gyy] = [0, 0, 0];
    for (const { drawn, paint } of colours) {
      for (let y = -reachPx; y <= reachPx; y++) {
        for (let x = -reachPx; x <= reachPx; x++) {
          const at = (y + size) * side + x + size;
          const value = paint[(centreY + y) * widthPx + centreX + x]!;
          const t = drawn[at]!;
          const slopeX = (drawn[at + 1]! - drawn[at - 1]!) / 2;
          const slopeY = (drawn[at + side]! - drawn[at - side]!) / 2;
          row[0] = t;
          row[1] = 1;
          row[2] = -slopeX;
          row[3] = -slopeY;
          for (let i = 0; i < 4; i++) {
            right[i] = right[i]! + row[i]! * value;
            for (let j = 0; j <= i; j++) normal[4 * i + j] = normal[4 * i + j]! + row[i]! * row[j]!;
          }
          count++;
          sumP += value;
          sumPP += value * value;
          sumT += t;
          sumTT += t * t;
          sumPT += value * t;
          gxx += slopeX * slopeX;
          gxy += slopeX * slopeY;
          gyy += slopeY * slopeY;
        }
      }
    }
    const factor = new Float64Array(16);
    if (!factorInto(normal.subarray(0, 16), factor, 4)) return null;
    solveInPlace(factor, right.subarray(0, 4), 4);
    const strength = right[0]!;
    if (!(strength > LEAST_STRENGTH)) return null;
    shiftX += right[2]! / strength;
    shiftY += right[3]! / strength;
    if (!(Math.hypot(shiftX, shiftY) < MOST_SHIFT_PX)) return null;
    const varianceP = sumPP - sumP ** 2 / count;
    const varianceT = sumTT - sumT ** 2 / count;
    const likeness = (sumPT - (sumP * sumT) / count) / Math.sqrt(varianceP * varianceT);
    const least = (gxx + gyy) / 2 - Math.hypot((gxx - gyy) / 2, gxy);
    const noise = (varianceP * (1 - likeness * likeness)) / count;
    const sdPx = (ALIKE * Math.sqrt(noise / least)) / strength;
    answer = { xPx: xPx + shiftX, yPx: yPx + shiftY, sdPx, likeness };
  }
  return answer !== null && answer.likeness > LEAST_LIKENESS.value && answer.sdPx < LOOSEST_PIN.value ? answer : null;
};

const PASSES = 4;
const MOST_SHIFT_PX = 3;
/** Paint weaker than this is not there. */
const LEAST_STRENGTH = 0.08;
/** Neighbouring pixels stray alike, so that their errors count so much more. */
const ALIKE = 3;
