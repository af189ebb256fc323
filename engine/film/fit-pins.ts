import { findDisagreement } from './disagreeing-pin.ts';
import { LOOSEST_DEPTH, RAISE_SD_AT } from './film-rows.ts';
import { determinant3, factorInto, inverse3, inverseOfFactored, product3 } from './matrix.ts';
import type {
  Disagreement,
  FitResult,
  Matrix3,
  Pin,
  PinFit,
  PinResidual,
  PinScaling,
  Refusal,
} from './pins.ts';
import { type RefinedFit, refinedFitOf } from './refine-fit.ts';
import { NEEDED_PLACES, refusalByPlaces } from './refuse-pins.ts';
import { type ScaledPins, scaledPinsOf } from './scaled-pins.ts';
import { chiSquareTail } from './tails.ts';

/**
 * Ties a picture to the ice by pins: the matrix with the least Σ |found − drawn|² in the picture, with its
 * covariance σ²(JᵀJ)⁻¹. `clickSdPx` (> 0) is how well a click hits its marking, per axis; where the residuals are
 * larger than that explains, σ is raised to them and `sdRaised` says so. No lens distortion. Refuses, with the
 * reason, pins that cannot tell the view; names a pin that disagrees but still counts it.
 * Source: Hartley & Zisserman 2004, Multiple View Geometry, ch. 4 and 5 (from memory). Throws when `clickSdPx` is not > 0.
 */
export const fitPins = (pins: readonly Pin[], clickSdPx: number): FitResult => {
  if (!(clickSdPx > 0)) throw new Error(`a click needs a standard deviation over 0 px, not ${clickSdPx}`);
  const byPlaces = refusalByPlaces(pins);
  if (byPlaces !== null) return { kind: 'refused', neededCount: NEEDED_PLACES, ...byPlaces };
  const refused = (reason: Refusal): FitResult => ({
    kind: 'refused',
    reason,
    pins: pins.map(pin => pin.id),
    placeCount: pins.length,
    neededCount: NEEDED_PLACES,
  });
  const scaled = scaledPinsOf(pins);
  if (scaled === null) return refused('tinySpread');
  const refined = refinedFitOf(scaled);
  if (refined === null) return refused('noSuchView');
  const factor = new Float64Array(64);
  if (!factorInto(refined.normal, factor, 8)) return refused('tinySpread');
  const unit = inverseOfFactored(factor, 8);
  const clickSd = clickSdPx * scaled.scaling.filmPerPx;
  if (loosestDepthOf(scaled, refined.coefficients, unit) * clickSd > LOOSEST_DEPTH.value) {
    return refused('tinySpread');
  }
  const filmFromIce = unscaled(scaled.scaling, refined.coefficients);
  // Seen from above the ice, anticlockwise stays anticlockwise, which is clockwise with y down.
  if (determinant3(filmFromIce) >= 0) return refused('mirrored');
  return { kind: 'fit', fit: fitOf(pins, scaled, refined, unit, filmFromIce, clickSdPx) };
};

const fitOf = (
  pins: readonly Pin[],
  scaled: ScaledPins,
  refined: RefinedFit,
  unit: Float64Array,
  filmFromIce: Matrix3,
  clickSdPx: number,
): PinFit => {
  const { filmPerPx } = scaled.scaling;
  const degrees = 2 * pins.length - 8;
  const clickVariance = (clickSdPx * filmPerPx) ** 2;
  const sdRaised = chiSquareTail(refined.sumOfSquares / clickVariance, degrees) < RAISE_SD_AT.value;
  const variance = sdRaised ? refined.sumOfSquares / degrees : clickVariance;
  const disagreement = disagreementOf(pins, scaled, refined, unit, clickSdPx);
  return {
    filmFromIce,
    iceFromFilm: inverse3(filmFromIce),
    scaling: scaled.scaling,
    coefficients: Array.from(refined.coefficients),
    covariance: Array.from(unit, entry => entry * variance),
    residuals: residualsOf(pins, filmFromIce),
    rmsPx: Math.sqrt(refined.sumOfSquares / pins.length) / filmPerPx,
    pinSdPx: Math.sqrt(variance) / filmPerPx,
    sdRaised,
    ...(disagreement === null ? {} : { disagreement }),
  };
};

/**
 * Largest sd(w)/w for a click of 1 in the scaled picture: over the pins, and at a pin's mean distance from their
 * middle in the direction in which they tell least, which is across the line when they lie nearly on one.
 */
const loosestDepthOf = ({ count, x, y }: ScaledPins, h: Float64Array, unit: Float64Array): number => {
  const [gg, gh, hh] = [unit[54]!, unit[55]!, unit[63]!];
  let loosest = Math.sqrt(gg + hh + Math.hypot(gg - hh, 2 * gh));
  for (let i = 0; i < count; i++) {
    const [xi, yi] = [x[i]!, y[i]!];
    const variance = xi * xi * gg + 2 * xi * yi * gh + yi * yi * hh;
    loosest = Math.max(loosest, Math.sqrt(variance) / (h[6]! * xi + h[7]! * yi + 1));
  }
  return loosest;
};

const unscaled = (scaling: PinScaling, h: Float64Array): Matrix3 => {
  const { iceXM, iceYM, icePerM: k, filmXPx, filmYPx, filmPerPx } = scaling;
  const fromScaled: Matrix3 = [1 / filmPerPx, 0, filmXPx, 0, 1 / filmPerPx, filmYPx, 0, 0, 1];
  const toScaled: Matrix3 = [k, 0, -k * iceXM, 0, k, -k * iceYM, 0, 0, 1];
  const middle: Matrix3 = [h[0]!, h[1]!, h[2]!, h[3]!, h[4]!, h[5]!, h[6]!, h[7]!, 1];
  return product3(fromScaled, product3(middle, toScaled));
};

const residualsOf = (pins: readonly Pin[], m: Matrix3): PinResidual[] =>
  pins.map(({ id, iceM, filmPx }) => {
    const w = m[6] * iceM.xM + m[7] * iceM.yM + m[8];
    const xPx = filmPx.xPx - (m[0] * iceM.xM + m[1] * iceM.yM + m[2]) / w;
    const yPx = filmPx.yPx - (m[3] * iceM.xM + m[4] * iceM.yM + m[5]) / w;
    return { pin: id, xPx, yPx, byPx: Math.hypot(xPx, yPx) };
  });

const disagreementOf = (
  pins: readonly Pin[],
  scaled: ScaledPins,
  refined: RefinedFit,
  unit: Float64Array,
  clickSdPx: number,
): Disagreement | null => {
  const found = findDisagreement(pins, scaled, refined, unit, clickSdPx);
  if (found === null || found.kind === 'several') return found;
  if (found.kind === 'oneOf') return { kind: 'oneOf', pins: found.indices.map(index => pins[index]!.id) };
  const pin = pins[found.index]!;
  const matrix = unscaled(found.pins.scaling, found.without.coefficients);
  const [residual] = residualsOf([pin], matrix);
  const m = inverse3(matrix);
  const t = m[6] * pin.filmPx.xPx + m[7] * pin.filmPx.yPx + m[8];
  const xM = (m[0] * pin.filmPx.xPx + m[1] * pin.filmPx.yPx + m[2]) / t;
  const yM = (m[3] * pin.filmPx.xPx + m[4] * pin.filmPx.yPx + m[5]) / t;
  const byM = Math.hypot(xM - pin.iceM.xM, yM - pin.iceM.yM);
  return { kind: 'onePin', pin: pin.id, byPx: residual!.byPx, ...(t > 0 ? { byM } : {}) };
};
