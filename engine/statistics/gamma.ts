/** ln Γ(x) for x > 0, relative error below 1e-13. Source: Lanczos's series, g = 7, nine terms (coefficients from memory). */
export const lnGamma = (x: number): number => {
  const shifted = x - 1;
  let sum = LANCZOS[0]!;
  for (let i = 1; i < LANCZOS.length; i++) sum += LANCZOS[i]! / (shifted + i);
  const t = shifted + LANCZOS_G + 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(t) - t + Math.log(sum);
};

const LANCZOS_G = 7;
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

const MOST_TERMS = 10_000;
const PRECISION = 1e-16;

/**
 * Share of the gamma distribution of this shape (scale 1) below x ≥ 0: P(shape, x). shape > 0. Source: series and
 * continued fraction of Abramowitz & Stegun 6.5 (from memory).
 */
export const lowerGammaShare = (shape: number, x: number): number => {
  if (x <= 0) return 0;
  return x < shape + 1 ? seriesShare(shape, x) : 1 - fractionShare(shape, x);
};

/**
 * Share above x: Q(shape, x) = 1 − P, without the loss of digits where it is small. x ≥ 0, shape > 0. Source: as
 * `lowerGammaShare`.
 */
export const upperGammaShare = (shape: number, x: number): number => {
  if (x <= 0) return 1;
  return x < shape + 1 ? 1 - seriesShare(shape, x) : fractionShare(shape, x);
};

/**
 * x below which the gamma distribution of this shape (scale 1) has this share, 0 ≤ p < 1. Half a chi-squared quantile
 * with 2·shape degrees of freedom. Bisection to the last digits, so that any shape is safe. Source: the inverse of
 * `lowerGammaShare`.
 */
export const gammaQuantile = (shape: number, probability: number): number => {
  if (probability <= 0) return 0;
  if (probability >= 1) return Number.POSITIVE_INFINITY;
  let low = 0;
  let high = shape + 1;
  while (lowerGammaShare(shape, high) < probability) high *= 2;
  for (let step = 0; step < 200 && high - low > 1e-15 * high; step++) {
    const middle = (low + high) / 2;
    if (lowerGammaShare(shape, middle) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

const front = (shape: number, x: number): number => Math.exp(shape * Math.log(x) - x - lnGamma(shape));

const seriesShare = (shape: number, x: number): number => {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; n < MOST_TERMS && term > sum * PRECISION; n++) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum * front(shape, x);
};

/** Continued fraction of Q, modified Lentz. */
const fractionShare = (shape: number, x: number): number => {
  const tiny = 1e-300;
  let b = x + 1 - shape;
  let c = 1 / tiny;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const a = n * (shape - n);
    b += 2;
    d = a * d + b;
    if (Math.abs(d) < tiny) d = tiny;
    c = b + a / c;
    if (Math.abs(c) < tiny) c = tiny;
    d = 1 / d;
    const change = d * c;
    value *= change;
    if (Math.abs(change - 1) < PRECISION * 4) break;
  }
  return value * front(shape, x);
};
