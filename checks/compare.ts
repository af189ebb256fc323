/** One computed figure against the expected one. */
export interface Comparison {
  readonly what: string;
  readonly error: number;
  readonly allowed: number;
  /** Unit of the error; '1' for a plain number, 'relative' for a relative error. Words and counts are allowed no error. */
  readonly unit: string;
  /** Set where the answers differ in kind, so that no error can be given. */
  readonly differs?: string;
}

/** Gathers the comparisons of one case. */
export class Compare {
  readonly comparisons: Comparison[] = [];

  /** `null` means "there is none" and agrees with null alone. */
  number(
    what: string,
    computed: number | null,
    expected: number | null,
    allowed: number,
    unit: string,
  ): void {
    if (computed === null || expected === null) {
      this.same(what, computed === null ? 'none' : 'some', expected === null ? 'none' : 'some');
      return;
    }
    this.#add(what, Math.abs(computed - expected), allowed, unit);
  }

  /** Relative to the expected value; absolute with `absoluteFloor` when the expected value is smaller than that. */
  relative(
    what: string,
    computed: number,
    expected: number,
    allowedRatio: number,
    absoluteFloor: number,
  ): void {
    const size = Math.abs(expected);
    if (size <= absoluteFloor) this.#add(what, Math.abs(computed - expected), absoluteFloor, 'absolute');
    else this.#add(what, Math.abs(computed - expected) / size, allowedRatio, 'relative');
  }

  numbers(
    what: string,
    computed: readonly (number | null)[],
    expected: readonly (number | null)[],
    allowed: number,
    unit: string,
  ): void {
    if (this.#sameCount(what, computed.length, expected.length))
      for (const [i, value] of computed.entries())
        this.number(`${what}[${i}]`, value, expected[i]!, allowed, unit);
  }

  /** Distance between two points or vectors. */
  pair(
    what: string,
    computed: readonly [number, number],
    expected: readonly [number, number],
    allowed: number,
    unit: string,
  ): void {
    this.#add(what, Math.hypot(computed[0] - expected[0], computed[1] - expected[1]), allowed, unit);
  }

  pairs(
    what: string,
    computed: readonly (readonly [number, number])[],
    expected: readonly (readonly [number, number])[],
    allowed: number,
    unit: string,
  ): void {
    if (this.#sameCount(what, computed.length, expected.length))
      for (const [i, value] of computed.entries())
        this.pair(`${what}[${i}]`, value, expected[i]!, allowed, unit);
  }

  /** Angles: the shorter way round. */
  angle(what: string, computedRad: number, expectedRad: number, allowedRad: number): void {
    const turn = 2 * Math.PI;
    const apart = computedRad - expectedRad;
    this.#add(what, Math.abs(apart - turn * Math.round(apart / turn)), allowedRad, 'rad');
  }

  /** Words, counts, yes or no: equal or not. */
  same(
    what: string,
    computed: string | number | boolean | null,
    expected: string | number | boolean | null,
  ): void {
    const differs = computed === expected ? {} : { differs: `computed ${computed}, expected ${expected}` };
    this.comparisons.push({ what, error: 0, allowed: 0, unit: '', ...differs });
  }

  #sameCount(what: string, computed: number, expected: number): boolean {
    this.same(`count of ${what}`, computed, expected);
    return computed === expected;
  }

  #add(what: string, error: number, allowed: number, unit: string): void {
    const differs = Number.isNaN(error) ? { differs: 'computed no number' } : {};
    this.comparisons.push({ what, error, allowed, unit, ...differs });
  }
}

export const agrees = (comparison: Comparison): boolean =>
  comparison.differs === undefined && comparison.error <= comparison.allowed;
