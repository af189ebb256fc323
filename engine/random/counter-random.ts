import { exactLn } from './exact-ln.ts';

/**
 * Random numbers without a stream: the answer depends on the seed, the part and the keys alone, whatever else was asked and in
 * which order.
 */
export interface CounterRandom {
  /** Uniform in [0, 1), 53 random bits, for whole numbers of 32 bits as keys. */
  readonly uniform: (a: number, b: number, c: number) => number;
  /** Normal deviate, mean 0, standard deviation 1. */
  readonly normal: (a: number, b: number, c: number) => number;
}

/**
 * Counter-based generator: two lanes of an integer hash (the two-multiplication mixer `lowbias32` of Chris Wellons, 2018,
 * constants from memory) over seed, part and keys; normal by the polar method (Marsaglia & Bray 1964), each try with a
 * key of its own. Any finite `seed`, whole `part`. Uses only +, −, ×, ÷, √ and 32-bit integers, whose results the language fixes to the
 * last bit, so the same on every machine.
 */
export const counterRandomOf = (seed: number, part: number): CounterRandom => {
  const bits = new Uint32Array(new Float64Array([seed]).buffer);
  const first = mixed(mixed(mixed(LANE_ONE, bits[0]!), bits[1]!), part);
  const second = mixed(mixed(mixed(LANE_TWO, bits[1]!), bits[0]!), part);
  const tried = (a: number, b: number, c: number, tryAt: number): number => {
    const high = mixed(mixed(mixed(mixed(first, a), b), c), tryAt);
    const low = mixed(mixed(mixed(mixed(second, c), b), a), tryAt);
    return ((high >>> 5) * 67108864 + (low >>> 6)) / 9007199254740992;
  };
  const normal = (a: number, b: number, c: number): number => {
    for (let tryAt = 1; ; tryAt += 2) {
      const x = 2 * tried(a, b, c, tryAt) - 1;
      const y = 2 * tried(a, b, c, tryAt + 1) - 1;
      const sq = x * x + y * y;
      if (sq > 0 && sq < 1) return x * Math.sqrt((-2 * exactLn(sq)) / sq);
    }
  };
  return { uniform: (a, b, c) => tried(a, b, c, 0), normal };
};

/** A whole number of 32 bits for a seed and a part, as an order in which parts are picked. */
export const counterOrderOf = (seed: number, part: number): number => {
  const bits = new Uint32Array(new Float64Array([seed]).buffer);
  return mixed(mixed(mixed(LANE_ORDER, bits[0]!), bits[1]!), part) >>> 0;
};

const LANE_ONE = 0x243f6a88;
const LANE_TWO = 0x85a308d3 | 0;
const LANE_ORDER = 0x13198a2e;

const mixed = (state: number, key: number): number => {
  let h = (state ^ key) + 0x9e3779b9;
  h = Math.imul(h ^ (h >>> 16), 0x7feb352d);
  h = Math.imul(h ^ (h >>> 15), 0x846ca68b);
  return h ^ (h >>> 16);
};
