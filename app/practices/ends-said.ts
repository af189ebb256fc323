import type { Drill } from '@icewright/book';
import { weAttack } from '@icewright/engine';

/**
 * What the two ends of the upright sheets beside a practice are called, the upper one first: ours is where its drills have it. Where some
 * play up the sheet and some down, neither is ours.
 */
export const endsSaid = (drills: readonly Pick<Drill, 'spots'>[]): readonly [far: string, near: string] => {
  const ways = new Set(drills.map(({ spots }) => weAttack(Object.values(spots))));
  if (ways.size > 1) return ['one end', 'other end'];
  return ways.has('minusX') ? ['our end', 'far end'] : ['far end', 'our end'];
};
