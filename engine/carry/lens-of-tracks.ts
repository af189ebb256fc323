import { type Lens, straightOf } from '../film/lens.ts';
import type { Estimate } from '../units/points.ts';
import { LENS_SPREAD, LINK_RAISE } from './carry-rows.ts';
import { type Pairs, settledFit } from './fit-pairs.ts';

/** Shown pairs as a straight camera would have drawn them. */
export const straightPairs = (pairs: Pairs, lens: Lens): Float64Array => {
  const straight = Float64Array.from(pairs);
  if (lens.k1 === 0) return straight;
  for (let i = 0; i < straight.length; i += 2) {
    const { xPx, yPx } = straightOf(lens, { xPx: straight[i]!, yPx: straight[i + 1]! });
    straight[i] = xPx;
    straight[i + 1] = yPx;
  }
  return straight;
};

/** Beyond it no lens is sought: r (1 + k1 r²) must grow up to the corner. */
const MOST_BENT = 0.14;
const ROUNDS = 3;
/** The search ends when the term is known to this. */
const FINE = 2e-5;

/**
 * The one term of the lens that makes the moves between pictures projective: the least Σ of squared misses of all ties over
 * their own scatter, with a weak belief in no lens; no unit, with its sd. A camera that does not turn tells nothing: sd is then that of
 * the belief. Ties of pairs in pixels of a picture of this size (> 0). Source: our own; plumb-line and pan self-calibration in Hartley & Zisserman 2004, 7.4 and 19.
 */
export const lensOfTracks = (
  ties: readonly Pairs[],
  picture: { readonly widthPx: number; readonly heightPx: number },
): Estimate => {
  const lensAt = (k1: number): Lens => ({ k1, widthPx: picture.widthPx, heightPx: picture.heightPx });
  let value = 0;
  let sd = LENS_SPREAD.value;
  for (let round = 0; round < ROUNDS; round++) {
    // Which pairs count, and their scatter, stay the same while the term is sought, or the sum would jump.
    const kept = ties.flatMap(pairs => {
      const straight = straightPairs(pairs, lensAt(value));
      const fit = settledFit(straight, allOf(straight));
      if (fit === null) return [];
      const chosen = Float64Array.from(fit.agreeing.flatMap(i => [0, 1, 2, 3].map(k => pairs[4 * i + k]!)));
      return [{ pairs: chosen, variance: fit.sdPx ** 2 }];
    });
    const cost = (k1: number): number => {
      let sum = (k1 / LENS_SPREAD.value) ** 2;
      for (const { pairs, variance } of kept) {
        const straight = straightPairs(pairs, lensAt(k1));
        const squares = squaresOf(straight);
        if (squares !== null) sum += squares / variance / LINK_RAISE.value ** 2;
      }
      return sum;
    };
    value = leastOf(cost, -MOST_BENT, MOST_BENT);
    const reach = 0.004;
    const bend = (cost(value + reach) + cost(value - reach) - 2 * cost(value)) / reach ** 2;
    sd = Math.min(LENS_SPREAD.value, Math.sqrt(2 / Math.max(1e-9, bend)));
  }
  return { value, sd };
};

const allOf = (pairs: Pairs): number[] => Array.from({ length: pairs.length / 4 }, (_, i) => i);

const squaresOf = (pairs: Pairs): number | null => {
  const fit = settledFit(pairs, allOf(pairs), 1);
  return fit === null ? null : fit.sdPx ** 2 * Math.max(1, pairs.length / 2 - 8);
};

/** The place of the least value between two bounds, by golden section. Source: Kiefer 1953. */
const leastOf = (cost: (at: number) => number, from: number, to: number): number => {
  const share = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let [a, b] = [high - share * (high - low), low + share * (high - low)];
  let [atA, atB] = [cost(a), cost(b)];
  while (high - low > FINE) {
    if (atA < atB) {
      [high, b, atB] = [b, a, atA];
      a = high - share * (high - low);
      atA = cost(a);
    } else {
      [low, a, atA] = [a, b, atB];
      b = low + share * (high - low);
      atB = cost(b);
    }
  }
  return (low + high) / 2;
};
