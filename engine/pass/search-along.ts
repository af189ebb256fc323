const ARC_TOLERANCE_M = 1e-12;

/** Root of a continuous function between two arguments of different sign: false position with the Illinois weight. */
export const rootBetween = (
  valueAt: (at: number) => number,
  from: number,
  to: number,
  valueFrom: number,
  valueTo: number,
): number => {
  let a = from;
  let b = to;
  let fa = valueFrom;
  let fb = valueTo;
  for (let step = 0; step < 80 && Math.abs(b - a) > ARC_TOLERANCE_M; step++) {
    let at = step % 8 === 7 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
    if (!(at > Math.min(a, b) && at < Math.max(a, b))) at = (a + b) / 2;
    const value = valueAt(at);
    if (value === 0) return at;
    // Where the slot is missing inside the bracket nothing can be said: halve towards the side that has it.
    if (Number.isNaN(value)) return Number.NaN;
    if (value >= 0 === fb >= 0) {
      fa *= 0.5;
    } else {
      a = b;
      fa = fb;
    }
    b = at;
    fb = value;
    if (Math.abs(fb) < 1e-13) return b;
  }
  return b;
};

/**
 * Follows a dip of a positive function below its neighbours: an argument at which it is negative, or nothing. Stops as soon
 * as the bottom is plainly above zero.
 */
export const dipBottom = (
  valueAt: (at: number) => number,
  arcs: readonly [number, number, number],
  values: readonly [number, number, number],
): number | undefined => {
  let [a, m, b] = arcs;
  let [fa, fm, fb] = values;
  for (let step = 0; step < 40; step++) {
    const left = (m - a) * (fm - fb);
    const right = (m - b) * (fm - fa);
    let at = m - ((m - a) * left - (m - b) * right) / (2 * (left - right));
    const edge = 0.02 * (b - a);
    if (!(at > a + edge && at < b - edge) || Math.abs(at - m) < edge / 4) {
      at = b - m > m - a ? m + 0.38 * (b - m) : m - 0.38 * (m - a);
    }
    const value = valueAt(at);
    if (Number.isNaN(value)) return undefined;
    if (value < 0) return at;
    if (value < fm) {
      if (at < m) [b, fb] = [m, fm];
      else [a, fa] = [m, fm];
      [m, fm] = [at, value];
    } else if (at < m) [a, fa] = [at, value];
    else [b, fb] = [at, value];
    // In a dip that is convex the bottom cannot lie below the longer chord, run on to the other side.
    const bottom = Math.min(fm - ((m - a) * (fb - fm)) / (b - m), fm - ((b - m) * (fa - fm)) / (m - a));
    if (step >= 1 && bottom > 0) return undefined;
    if (b - a < 1e-7) return undefined;
  }
  return undefined;
};

/** Each narrowing leaves this share, and one of its two looks is one of the next. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Least value, and where, of a function with one dip between two arguments, narrowed down to within `within`: golden section. */
export const lowestBetween = (
  valueAt: (at: number) => number,
  from: number,
  to: number,
  within: number,
): { readonly at: number; readonly value: number } => {
  let low = from;
  let high = to;
  let left = high - GOLDEN * (high - low);
  let right = low + GOLDEN * (high - low);
  let atLeft = valueAt(left);
  let atRight = valueAt(right);
  while (high - low > within) {
    if (atLeft < atRight) {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - GOLDEN * (high - low);
      atLeft = valueAt(left);
    } else {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + GOLDEN * (high - low);
      atRight = valueAt(right);
    }
  }
  return atLeft < atRight ? { at: left, value: atLeft } : { at: right, value: atRight };
};
