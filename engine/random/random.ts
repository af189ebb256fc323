import { exactLn } from './exact-ln.ts';

/** A stream of random numbers that depends on its seed alone: the same on every machine. */
export interface Random {
  /** Uniform in [0, 1), 53 random bits. */
  uniform(): number;
  /** Normal deviate, mean 0, standard deviation 1. */
  normal(): number;
  /** Uniform integer in 0 … count − 1. */
  below(count: number): number;
}

/**
 * Seeded generator: sfc32 (Chris Doty-Humphrey's small fast counter generator, PractRand; constants from memory), uniform by
 * 53 bits, normal by the polar method (Marsaglia & Bray 1964). Any finite `seed`; numbers that differ give streams that
 * differ. Uses only +, −, ×, ÷, √ and 32-bit integers, whose results the language fixes to the last bit.
 */
export const randomOf = (seed: number): Random => {
  const bits = new Uint32Array(new Float64Array([seed]).buffer);
  let a = bits[0]! | 0;
  let b = bits[1]! | 0;
  let c = 0x9e3779b9 | 0;
  let counter = 1;
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + sum) | 0;
    return sum >>> 0;
  };
  for (let round = 0; round < 15; round++) next();
  const uniform = (): number => ((next() >>> 5) * 67108864 + (next() >>> 6)) / 9007199254740992;
  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const sq = x * x + y * y;
      if (sq > 0 && sq < 1) {
        const scale = Math.sqrt((-2 * exactLn(sq)) / sq);
        spare = y * scale;
        return x * scale;
      }
    }
  };
  return { uniform, normal, below: count => Math.floor(uniform() * count) };
};

/** A stream of its own for part `index` of a computation with this seed: parts can run in any order. */
export const randomPartOf = (seed: number, index: number): Random => {
  const parent = randomOf(seed);
  return randomOf(parent.uniform() + index);
};
