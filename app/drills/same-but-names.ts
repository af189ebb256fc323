import type { Drill } from '@icewright/book';
import { roleKindOf } from '@icewright/engine';

type Spots = Drill['spots'];

/**
 * Whether two states of a drill's spots are computed alike: nothing differs but names, and each means the same as before. Spots that did not
 * change are the same objects from state to state.
 */
export function isSameButNames(one: Spots, other: Spots): boolean {
  if (one === other) return true;
  const ids = Object.keys(one) as (keyof Spots)[];
  if (ids.length !== Object.keys(other).length) return false;
  return ids.every(id => {
    const [a, b] = [one[id], other[id]];
    if (a === b) return true;
    if (a === undefined || b === undefined) return false;
    return playedAs(a) === playedAs(b);
  });
}

/** A spot in letters, with what its name means instead of the name. */
const playedAs = (spot: Spots[keyof Spots]): string =>
  JSON.stringify({ ...spot, role: roleKindOf(spot.role) });
