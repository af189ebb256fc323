import { type Drill, findRankBetween } from '@icewright/book';
import type { SpotId } from '@icewright/engine';
import { spotsOf } from '../route-writes.ts';
import type { Write } from '../write.ts';

/** The stave of a spot at another place of the score, counted from the top. Nothing where it is there already. */
export const restacked = (drill: Drill, spotId: SpotId, toIndex: number): Write[] => {
  const staves = spotsOf(drill);
  const from = staves.findIndex(([id]) => id === spotId);
  const to = Math.max(0, Math.min(staves.length - 1, toIndex));
  if (from < 0 || from === to) return [];
  const left = staves.filter(([id]) => id !== spotId);
  const rank = findRankBetween(left[to - 1]?.[1].rank, left[to]?.[1].rank);
  if (rank !== null) return [{ path: ['spots', spotId, 'rank'], value: rank }];
  // Two neighbours of one rank leave nothing between them: all are counted anew.
  const order = [...left.slice(0, to), staves[from]!, ...left.slice(to)];
  return order.map(([id], index) => ({ path: ['spots', id, 'rank'], value: index }));
};
