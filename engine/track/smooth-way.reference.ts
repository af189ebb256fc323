import type { SkatePower } from './skate-step.ts';
import type { SeenPlace } from './smooth-way.ts';

/**
 * The same way as `smoothWay` by another road: time is cut into very short steps of the plain law, all states of all steps are one
 * vector, and one dense least-squares problem is solved for it. One axis, unrelated to the other. Place and velocity with their sds at the times of the steps.
 */
export const denseWay = (
  seen: readonly SeenPlace[],
  endS: number,
  stepS: number,
  { topSpeedMps, tauS, mindS }: SkatePower,
): { xM: number[]; sdM: number[]; vxMps: number[]; sdMps: number[] } => {
  const count = Math.round(endS / stepS) + 1;
  const size = 3 * count;
  const information = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  const add = (parts: readonly [at: number, by: number][], value: number, variance: number): void => {
    for (const [i, a] of parts) {
      right[i] = right[i]! + (a * value) / variance;
      for (const [j, b] of parts) information[i]![j] = information[i]![j]! + (a * b) / variance;
    }
  };
  const wanted = (topSpeedMps * topSpeedMps) / 4;
  // Unseen: anywhere; velocity and wanted velocity spread together.
  add([[0, 1]], 0, 1e4);
  const both = (wanted * mindS) / (tauS + mindS);
  add([[2, 1]], 0, wanted);
  add(
    [
      [1, 1],
      [2, -both / wanted],
    ],
    0,
    both - (both * both) / wanted,
  );
  const noise = (stepS * 2 * wanted) / mindS;
  for (let k = 0; k + 1 < count; k++) {
    const [x, v, w] = [3 * k, 3 * k + 1, 3 * k + 2];
    add(
      [
        [x + 3, 1],
        [x, -1],
        [v, -stepS / 2],
        [v + 3, -stepS / 2],
      ],
      0,
      1e-12,
    );
    const ease = stepS / tauS / 2;
    add(
      [
        [v + 3, 1 + ease],
        [v, -1 + ease],
        [w, -ease],
        [w + 3, -ease],
      ],
      0,
      1e-12,
    );
    add(
      [
        [w + 3, 1 + stepS / mindS / 2],
        [w, -1 + stepS / mindS / 2],
      ],
      0,
      noise,
    );
  }
  for (const { timeS, atM, covM2 } of seen) add([[3 * Math.round(timeS / stepS), 1]], atM.xM, covM2.xxM2);
  const inverse = inverted(information);
  const mean = inverse.map(row => row.reduce((sum, entry, i) => sum + entry * right[i]!, 0));
  const pick = (offset: number) => Array.from({ length: count }, (_, k) => mean[3 * k + offset]!);
  const sd = (offset: number) =>
    Array.from({ length: count }, (_, k) => Math.sqrt(inverse[3 * k + offset]![3 * k + offset]!));
  return { xM: pick(0), sdM: sd(0), vxMps: pick(1), sdMps: sd(1) };
};

/** Gauss and Jordan, with the largest pivot. */
const inverted = (matrix: Float64Array[]): Float64Array[] => {
  const size = matrix.length;
  const left = matrix.map(row => Float64Array.from(row));
  const right = matrix.map((_, i) => Float64Array.from({ length: size }, (_, j) => (i === j ? 1 : 0)));
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++) {
      if (Math.abs(left[row]![column]!) > Math.abs(left[pivot]![column]!)) pivot = row;
    }
    [left[column], left[pivot]] = [left[pivot]!, left[column]!];
    [right[column], right[pivot]] = [right[pivot]!, right[column]!];
    const by = left[column]![column]!;
    for (let j = 0; j < size; j++) {
      left[column]![j] = left[column]![j]! / by;
      right[column]![j] = right[column]![j]! / by;
    }
    for (let row = 0; row < size; row++) {
      const times = left[row]![column]!;
      if (row === column || times === 0) continue;
      for (let j = 0; j < size; j++) {
        left[row]![j] = left[row]![j]! - times * left[column]![j]!;
        right[row]![j] = right[row]![j]! - times * right[column]![j]!;
      }
    }
  }
  return right;
};
