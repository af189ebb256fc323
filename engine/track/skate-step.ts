/** How far a skater's state of one axis (place, velocity, wanted velocity) goes in a step, and what it may stray: 3 × 3, row by row. */
export interface SkateStep {
  readonly goes: Float64Array;
  readonly strays: Float64Array;
}

/** The powers of a skater that bound how he moves. */
export interface SkatePower {
  readonly topSpeedMps: number;
  readonly tauS: number;
  /** How long he goes on wanting the same velocity. */
  readonly mindS: number;
}

/**
 * One step of `stepS` seconds (≥ 0) of a skater along one axis: x' = v, v' = (w − v)/τ with the wanted velocity w wandering about 0
 * as V·u does for |u| ≤ 1 evenly spread over the disc (variance V²/4 an axis), forgotten within `mindS`. Metres and seconds.
 * Source: the sprint law of `engine/skater`; a wandering command as Singer 1970, IEEE Trans. Aerosp. Electron. Syst. 6(4) (from memory).
 */
export const skateStepOf = (power: SkatePower, stepS: number): SkateStep => {
  const halvings = Math.max(0, Math.ceil(Math.log2(Math.max(stepS, 1e-9) / FINE_S)));
  let step = fineStep(power, stepS / 2 ** halvings);
  for (let i = 0; i < halvings; i++) step = twice(step);
  return step;
};

/** How a skater's velocity and wanted velocity spread when nothing is known: variances along one axis, (m/s)². */
export const spreadUnseen = ({ topSpeedMps, tauS, mindS }: SkatePower) => {
  const wanted = (topSpeedMps * topSpeedMps) / 4;
  const both = (wanted * mindS) / (tauS + mindS);
  return { velocity: both, wanted, both };
};

/** Steps as short as this are told by a few terms of their series. */
const FINE_S = 0.01;

const fineStep = ({ topSpeedMps, tauS, mindS }: SkatePower, h: number): SkateStep => {
  const law = Float64Array.of(0, 1, 0, 0, -1 / tauS, 1 / tauS, 0, 0, -1 / mindS);
  const goes = Float64Array.of(1, 0, 0, 0, 1, 0, 0, 0, 1);
  const strays = new Float64Array(9);
  let term: Float64Array = Float64Array.from(goes);
  // The noise that keeps the wanted velocity's variance at V²/4.
  let stray: Float64Array = Float64Array.of(
    0,
    0,
    0,
    0,
    0,
    0,
    0,
    0,
    (h * topSpeedMps * topSpeedMps) / (2 * mindS),
  );
  for (let n = 1; n <= TERMS; n++) {
    for (let i = 0; i < 9; i++) strays[i] = strays[i]! + stray[i]!;
    term = scaledTo(product(law, term), h / n);
    for (let i = 0; i < 9; i++) goes[i] = goes[i]! + term[i]!;
    const turned = product(law, stray);
    stray = scaledTo(
      Float64Array.from(turned, (value, i) => value + turned[3 * (i % 3) + Math.floor(i / 3)]!),
      h / (n + 1),
    );
  }
  return { goes, strays };
};

const TERMS = 6;

const twice = ({ goes, strays }: SkateStep): SkateStep => {
  const half = product(goes, strays);
  const carried = product(half, turnedOver(goes));
  return { goes: product(goes, goes), strays: carried.map((value, i) => value + strays[i]!) };
};

const product = (a: Float64Array, b: Float64Array): Float64Array =>
  Float64Array.from({ length: 9 }, (_, i) => {
    const row = 3 * Math.floor(i / 3);
    const column = i % 3;
    return a[row]! * b[column]! + a[row + 1]! * b[column + 3]! + a[row + 2]! * b[column + 6]!;
  });

const turnedOver = (a: Float64Array): Float64Array =>
  Float64Array.from(a, (_, i) => a[3 * (i % 3) + Math.floor(i / 3)]!);

const scaledTo = (a: Float64Array, by: number): Float64Array => a.map(value => value * by);
