/**
 * Chance that a χ² variable with `degrees` (even, ≥ 2) is over `value`: e^(−v/2) Σ (v/2)^i / i!, exact for even
 * degrees (Abramowitz & Stegun 26.4.4, from memory). 1 for a value of 0 or no degrees.
 */
export const chiSquareTail = (value: number, degrees: number): number => {
  if (!(value > 0) || degrees < 2) return 1;
  const half = value / 2;
  let logTerm = -half;
  let tail = Math.exp(logTerm);
  for (let i = 1; i < degrees / 2; i++) {
    logTerm += Math.log(half / i);
    tail += Math.exp(logTerm);
  }
  return Math.min(1, tail);
};

/** Chance that F with 2 and `degrees` degrees of freedom is over `value`: (1 + 2v/m)^(−m/2), exact. */
export const ratioTail = (value: number, degrees: number): number =>
  (1 + (2 * value) / degrees) ** (-degrees / 2);
