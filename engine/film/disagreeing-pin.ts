import { FALSE_ALARM, SEVERAL_RATIO } from './film-rows.ts';
import type { Pin } from './pins.ts';
import { type RefinedFit, refinedFitOf } from './refine-fit.ts';
import { refusalByPlaces } from './refuse-pins.ts';
import { type ScaledPins, scaledPinsOf } from './scaled-pins.ts';
import { chiSquareTail, ratioTail } from './tails.ts';

export type FoundDisagreement =
  | {
      readonly kind: 'onePin';
      readonly index: number;
      readonly without: RefinedFit;
      readonly pins: ScaledPins;
    }
  | { readonly kind: 'oneOf'; readonly indices: readonly number[] }
  | { readonly kind: 'several' };

/**
 * The pin that does not go with the others. First the cheap test: all residuals together against the click (χ²), and
 * each pin against the fit without it, to first order. Only when one of them fails is the fit made anew without each
 * pin in turn; the pin is named when the rest then agree and it stands out at the chance `FALSE_ALARM` / pins, or
 * stands out so against the scatter of the rest. With five pins every rest fits, so only "one of them" can be said.
 * Null when nothing disagrees. `unit` is (JᵀJ)⁻¹ of the fit.
 */
export const findDisagreement = (
  pins: readonly Pin[],
  scaled: ScaledPins,
  fit: RefinedFit,
  unit: Float64Array,
  clickSdPx: number,
): FoundDisagreement | null => {
  const count = pins.length;
  const degrees = 2 * count - 8;
  if (degrees < 2) return null;
  const variance = (clickSdPx * scaled.scaling.filmPerPx) ** 2;
  const isOff = chiSquareTail(fit.sumOfSquares / variance, degrees) < FALSE_ALARM.value;
  const share = FALSE_ALARM.value / count;
  if (!isOff && !(Math.exp(-largestDeletionOf(scaled, fit.coefficients, unit) / variance / 2) < share))
    return null;
  if (count === 5) return { kind: 'oneOf', indices: pins.map((_, index) => index) };

  const rests = pins.map((_, index) => restWithout(pins, index, scaled.scaling.filmPerPx));
  const sums = rests.map(rest => rest?.sum ?? Number.POSITIVE_INFINITY);
  const least = Math.min(...sums);
  const best = sums.indexOf(least);
  const rest = rests[best];
  if (rest === null || rest === undefined) return { kind: 'several' };
  const restDegrees = degrees - 2;
  const drop = fit.sumOfSquares - least;
  const isByClick =
    chiSquareTail(least / variance, restDegrees) >= FALSE_ALARM.value &&
    Math.exp(-drop / variance / 2) < share;
  const isByScatter = ratioTail(drop / 2 / (least / restDegrees), restDegrees) < share;
  if (isByClick || isByScatter) {
    const scatter = isByClick ? variance : least / restDegrees;
    const indices = sums.flatMap((sum, index) =>
      chiSquareTail((sum - least) / scatter, 2) >= FALSE_ALARM.value ? [index] : [],
    );
    if (indices.length > 1) return { kind: 'oneOf', indices };
    return { kind: 'onePin', index: best, without: rest.fit, pins: rest.scaled };
  }
  return fit.sumOfSquares / degrees > variance * SEVERAL_RATIO.value ** 2 ? { kind: 'several' } : null;
};

const restWithout = (pins: readonly Pin[], index: number, filmPerPx: number) => {
  const others = pins.filter((_, i) => i !== index);
  if (refusalByPlaces(others) !== null) return null;
  const scaled = scaledPinsOf(others);
  const fit = scaled === null ? null : refinedFitOf(scaled);
  if (scaled === null || fit === null) return null;
  return { scaled, fit, sum: fit.sumOfSquares * (filmPerPx / scaled.scaling.filmPerPx) ** 2 };
};

/** Largest rᵀ (I − leverage)⁻¹ r over the pins: how much the sum of squares would fall without that pin. */
const largestDeletionOf = (
  { count, x, y, u, v }: ScaledPins,
  h: Float64Array,
  unit: Float64Array,
): number => {
  let largest = 0;
  for (let i = 0; i < count; i++) {
    const w = h[6]! * x[i]! + h[7]! * y[i]! + 1;
    const [p, q, r] = [x[i]! / w, y[i]! / w, 1 / w];
    const drawnU = h[0]! * p + h[1]! * q + h[2]! * r;
    const drawnV = h[3]! * p + h[4]! * q + h[5]! * r;
    const rowU = [p, q, r, 0, 0, 0, -p * drawnU, -q * drawnU];
    const rowV = [0, 0, 0, p, q, r, -p * drawnV, -q * drawnV];
    const uu = 1 - formOf(unit, rowU, rowU);
    const uv = -formOf(unit, rowU, rowV);
    const vv = 1 - formOf(unit, rowV, rowV);
    const determinant = uu * vv - uv * uv;
    if (!(determinant > 1e-9)) continue;
    const missU = u[i]! - drawnU;
    const missV = v[i]! - drawnV;
    largest = Math.max(
      largest,
      (vv * missU * missU - 2 * uv * missU * missV + uu * missV * missV) / determinant,
    );
  }
  return largest;
};

const formOf = (matrix: Float64Array, a: readonly number[], b: readonly number[]): number => {
  let sum = 0;
  for (let i = 0; i < 8; i++) for (let j = 0; j < 8; j++) sum += a[i]! * matrix[8 * i + j]! * b[j]!;
  return sum;
};
