import type { Body } from '../drill/in-boards.ts';

/**
 * What of a skater changes at every step lies in one block of numbers for the whole run: first those of everybody now, skater after
 * skater, then those at the end of the step being tried, in the same order. The few loops over everybody at every step go through
 * the block; all else reads and writes the same numbers by the names of `Actor`. As fields of objects each of these numbers would be a
 * small object of its own, and following their addresses was most of the cost of a step.
 */
export const ACTOR_NUMBERS = 6;
/** Place (m; its x comes first, at 0), velocity (m/s) and facing (unit vector) within a skater's numbers. */
export const Y = 1;
export const X_MPS = 2;
export const Y_MPS = 3;
export const FACING_X = 4;
export const FACING_Y = 5;

/** Room for both halves. */
export const actorNumbersOf = (actorCount: number): Float64Array =>
  new Float64Array(2 * actorCount * ACTOR_NUMBERS);

/** A body whose numbers begin at `at` in the block. */
export class BodyInBlock implements Body {
  constructor(
    readonly numbers: Float64Array,
    readonly at: number,
  ) {}

  get xM(): number {
    return this.numbers[this.at]!;
  }
  set xM(value: number) {
    this.numbers[this.at] = value;
  }
  get yM(): number {
    return this.numbers[this.at + Y]!;
  }
  set yM(value: number) {
    this.numbers[this.at + Y] = value;
  }
  get xMps(): number {
    return this.numbers[this.at + X_MPS]!;
  }
  set xMps(value: number) {
    this.numbers[this.at + X_MPS] = value;
  }
  get yMps(): number {
    return this.numbers[this.at + Y_MPS]!;
  }
  set yMps(value: number) {
    this.numbers[this.at + Y_MPS] = value;
  }
}

/** Copies what the block has from `at` on into a body of its own, which the longer computations read faster. */
export const copyBody = (numbers: Float64Array, at: number, body: Body): void => {
  body.xM = numbers[at]!;
  body.yM = numbers[at + Y]!;
  body.xMps = numbers[at + X_MPS]!;
  body.yMps = numbers[at + Y_MPS]!;
};

/** Copies a body back into the block from `at` on. */
export const writeBody = (numbers: Float64Array, at: number, body: Readonly<Body>): void => {
  numbers[at] = body.xM;
  numbers[at + Y] = body.yM;
  numbers[at + X_MPS] = body.xMps;
  numbers[at + Y_MPS] = body.yMps;
};
