const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
const SERIES_TERMS = 12;

/**
 * Natural logarithm of a positive finite number from additions, multiplications and divisions only. `Math.log` may differ
 * in the last bit between machines; this does not. Error below 2 ulp (compared with `Math.log`).
 */
export const exactLn = (value: number): number => {
  let mantissa = value;
  let exponent = 0;
  while (mantissa > Math.SQRT2) {
    mantissa /= 2;
    exponent++;
  }
  while (mantissa < Math.SQRT1_2) {
    mantissa *= 2;
    exponent--;
  }
  // ln m = 2 artanh((m − 1)/(m + 1)); |t| ≤ 0.1716, so twelve odd powers reach 1e-20.
  const t = (mantissa - 1) / (mantissa + 1);
  const square = t * t;
  let sum = 0;
  for (let k = SERIES_TERMS; k >= 0; k--) sum = sum * square + 1 / (2 * k + 1);
  return exponent * LN2_HIGH + (2 * t * sum + exponent * LN2_LOW);
};
