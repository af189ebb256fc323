import { upperGammaShare } from './gamma.ts';

/**
 * Probability that a standard normal deviate is below `z`. Any finite z; relative error below 1e-13 in both tails.
 * Source: Φ(z) = erfc(−z/√2)/2, with erfc by the incomplete gamma function P(½, z²/2).
 */
export const normalBelow = (z: number): number => {
  const tail = 0.5 * upperGammaShare(0.5, (z * z) / 2);
  return z > 0 ? 1 - tail : tail;
};

/**
 * z below which a standard normal deviate lies with this probability, 0 < p < 1; ±∞ at 0 and 1.
 * Source: the rational approximation of Abramowitz & Stegun 26.2.23 (from memory) as a start, polished by Halley steps on Φ.
 */
export const normalQuantile = (probability: number): number => {
  if (probability <= 0) return Number.NEGATIVE_INFINITY;
  if (probability >= 1) return Number.POSITIVE_INFINITY;
  if (probability > 0.5) return -normalQuantile(1 - probability);
  const t = Math.sqrt(-2 * Math.log(probability));
  let z = -(
    t -
    (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)))
  );
  for (let step = 0; step < 4; step++) {
    const density = Math.exp((-z * z) / 2) / SQRT_TURN;
    const ratio = (normalBelow(z) - probability) / density;
    z -= ratio / (1 + (z * ratio) / 2);
  }
  return z;
};

const SQRT_TURN = Math.sqrt(2 * Math.PI);
