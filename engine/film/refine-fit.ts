import { factorInto, solveInPlace } from './matrix.ts';
import type { ScaledPins } from './scaled-pins.ts';

/** The eight coefficients at the optimum, and JᵀJ there, all in the scaled frame. */
export interface RefinedFit {
  readonly coefficients: Float64Array;
  readonly normal: Float64Array;
  /** Σ |found − drawn|² in the scaled picture. */
  readonly sumOfSquares: number;
}

/** Steps until the optimum is settled to working precision; good pins need four or five. */
const MOST_STEPS = 60;

/** A step this small, in coefficients of size 1, moves no point of a sheet by a nanometre. */
const SETTLED = 1e-11;

/**
 * Coefficients with the least Σ |found − drawn|² in the picture: a direct linear start with the last entry 1, then
 * Levenberg–Marquardt. Null when the pins do not fix the coefficients, or no view in front of a camera fits them.
 * Source: Hartley & Zisserman 2004, Multiple View Geometry, 4.1–4.5 and appendix 6 (from memory).
 */
export const refinedFitOf = (pins: Omit<ScaledPins, 'scaling'>): RefinedFit | null => {
  const start = linearStartOf(pins);
  if (start === null) return null;
  let coefficients: Float64Array = start;
  let candidate: Float64Array = new Float64Array(8);
  const normal = new Float64Array(64);
  const damped = new Float64Array(64);
  const factor = new Float64Array(64);
  const gradient = new Float64Array(8);
  const trialNormal = new Float64Array(64);
  const trialGradient = new Float64Array(8);
  const step = new Float64Array(8);
  let sum = normalEquationsInto(pins, coefficients, normal, gradient);
  if (sum === Number.POSITIVE_INFINITY) {
    // A pin far off can pull the linear horizon between the pins: start again from a flat view.
    coefficients = Float64Array.of(1, 0, 0, 0, -1, 0, 0, 0);
    sum = normalEquationsInto(pins, coefficients, normal, gradient);
  }
  if (!Number.isFinite(sum)) return null;
  let damping = 0;
  for (let count = 0; count < MOST_STEPS; count++) {
    damped.set(normal);
    for (let i = 0; i < 8; i++) damped[9 * i] = damped[9 * i]! * (1 + damping);
    if (!factorInto(damped, factor, 8)) return null;
    step.set(gradient);
    solveInPlace(factor, step, 8);
    let size = 0;
    for (let i = 0; i < 8; i++) {
      candidate[i] = coefficients[i]! + step[i]!;
      size = Math.max(size, Math.abs(step[i]!));
    }
    const trial = normalEquationsInto(pins, candidate, trialNormal, trialGradient);
    if (trial <= sum) {
      [coefficients, candidate] = [candidate, coefficients];
      normal.set(trialNormal);
      gradient.set(trialGradient);
      sum = trial;
      damping = damping < 1e-9 ? 0 : damping / 10;
    } else {
      damping = damping === 0 ? 1e-6 : damping * 10;
    }
    if (size < SETTLED) break;
  }
  return { coefficients, normal, sumOfSquares: sum };
};

/** The linear solution: u·w = a x + b y + c and so on, by normal equations; only a place to start from. */
export const linearStartOf = ({ count, x, y, u, v }: Omit<ScaledPins, 'scaling'>): Float64Array | null => {
  const normal = new Float64Array(64);
  const right = new Float64Array(8);
  const row = new Float64Array(8);
  const add = (value: number) => {
    for (let i = 0; i < 8; i++) {
      if (row[i] === 0) continue;
      right[i] = right[i]! + row[i]! * value;
      for (let j = 0; j <= i; j++) normal[8 * i + j] = normal[8 * i + j]! + row[i]! * row[j]!;
    }
  };
  for (let i = 0; i < count; i++) {
    const [xi, yi, ui, vi] = [x[i]!, y[i]!, u[i]!, v[i]!];
    row.set([xi, yi, 1, 0, 0, 0, -xi * ui, -yi * ui]);
    add(ui);
    row.set([0, 0, 0, xi, yi, 1, -xi * vi, -yi * vi]);
    add(vi);
  }
  const factor = new Float64Array(64);
  if (!factorInto(normal, factor, 8)) return null;
  solveInPlace(factor, right, 8);
  return right;
};

/** JᵀJ (lower half) and Jᵀ(found − drawn) at the coefficients; returns the sum of squares, infinite behind the camera. */
const normalEquationsInto = (
  { count, x, y, u, v }: Omit<ScaledPins, 'scaling'>,
  h: Float64Array,
  normal: Float64Array,
  gradient: Float64Array,
): number => {
  normal.fill(0);
  gradient.fill(0);
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const xi = x[i]!;
    const yi = y[i]!;
    const w = h[6]! * xi + h[7]! * yi + 1;
    if (!(w > 1e-6)) return Number.POSITIVE_INFINITY;
    const drawnU = (h[0]! * xi + h[1]! * yi + h[2]!) / w;
    const drawnV = (h[3]! * xi + h[4]! * yi + h[5]!) / w;
    const missU = u[i]! - drawnU;
    const missV = v[i]! - drawnV;
    sum += missU * missU + missV * missV;
    const p = xi / w;
    const q = yi / w;
    const r = 1 / w;
    // Rows of J: [p q r 0 0 0 −pU −qU] and [0 0 0 p q r −pV −qV].
    addBlock(normal, 0, p, q, r);
    addBlock(normal, 3, p, q, r);
    const fromU = [p, q, r];
    for (let k = 0; k < 3; k++) {
      const value = fromU[k]!;
      normal[48 + k] = normal[48 + k]! - value * p * drawnU;
      normal[56 + k] = normal[56 + k]! - value * q * drawnU;
      normal[51 + k] = normal[51 + k]! - value * p * drawnV;
      normal[59 + k] = normal[59 + k]! - value * q * drawnV;
      gradient[k] = gradient[k]! + value * missU;
      gradient[3 + k] = gradient[3 + k]! + value * missV;
    }
    const squares = drawnU * drawnU + drawnV * drawnV;
    normal[54] = normal[54]! + p * p * squares;
    normal[62] = normal[62]! + p * q * squares;
    normal[63] = normal[63]! + q * q * squares;
    const along = drawnU * missU + drawnV * missV;
    gradient[6] = gradient[6]! - p * along;
    gradient[7] = gradient[7]! - q * along;
  }
  return sum;
};

const addBlock = (normal: Float64Array, at: number, p: number, q: number, r: number): void => {
  const first = 8 * at + at;
  normal[first] = normal[first]! + p * p;
  normal[first + 8] = normal[first + 8]! + p * q;
  normal[first + 9] = normal[first + 9]! + q * q;
  normal[first + 16] = normal[first + 16]! + p * r;
  normal[first + 17] = normal[first + 17]! + q * r;
  normal[first + 18] = normal[first + 18]! + r * r;
};
