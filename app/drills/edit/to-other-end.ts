import type { Drill } from '@icewright/book';
import type { SpotId } from '@icewright/engine';
import { copied } from './copied.ts';
import { type Pasted, pasted } from './pasted.ts';
import { HALF_TURN } from './place-map.ts';
import type { Selection } from './selection.ts';

/**
 * The selection once more at the other end, turned by half, as when one drill runs at both ends at once. Who goes to whose
 * line afterwards is copied too.
 */
export const duplicatedToOtherEnd = (drill: Drill, selection: Selection): Pasted => {
  const made = pasted(drill, { ...copied(drill, selection), acts: [] }, HALF_TURN);
  const lines = Object.entries(drill.flow?.goesTo ?? {}) as [SpotId, SpotId][];
  const goes = lines.flatMap(([from, to]) => {
    const copy = made.spotIds.get(from);
    return copy === undefined ? [] : [{ path: ['flow', 'goesTo', copy], value: made.spotIds.get(to) ?? to }];
  });
  return { ...made, writes: [...made.writes, ...goes] };
};
