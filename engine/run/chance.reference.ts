import { randomOf } from '../random/random.ts';
import type { Chance } from './chance.ts';

/** Luck for tests: the same question has the same answer, whatever else was asked. */
export const chanceOf = (seed: number): Chance => {
  const ask = (spot: number, occasion: string, nth: number) =>
    randomOf(seed * 7919 + spot * 131 + nth * 17 + occasion.length * 1009);
  return {
    uniform: (spot, occasion, nth) => ask(spot, occasion, nth).uniform(),
    normal: (spot, occasion, nth) => ask(spot, occasion, nth).normal(),
  };
};
