import type { Contestant } from '../skater/contestant.ts';
import { arrivalField } from './arrival-field.ts';
import type { IceGrid } from './ice-grid.ts';

export interface FirstThere {
  readonly grid: IceGrid;
  /** Index of the contestant who can be at each cell first, −1 outside the boards. */
  readonly who: Int16Array;
  /** When, and by how much before the first of the other side; s. Infinity without anybody. */
  readonly arrivalS: Float64Array;
  readonly leadS: Float64Array;
}

/**
 * Who can be at the middle of each cell first, seconds from now (dominant regions of Fujimura & Sugihara 2005, with
 * reaction and stick). Frame of the rink. Of two who are equally early the one listed first. Without contestants, and
 * outside the boards, `who` is −1.
 */
export const firstToEachCell = (grid: IceGrid, contestants: readonly Contestant[]): FirstThere => {
  const fields = contestants.map(one => arrivalField(grid, one.state, one.power));
  const cellCount = grid.inside.length;
  const who = new Int16Array(cellCount).fill(-1);
  const arrivalS = new Float64Array(cellCount).fill(Number.POSITIVE_INFINITY);
  const leadS = new Float64Array(cellCount).fill(Number.POSITIVE_INFINITY);
  for (let cell = 0; cell < cellCount; cell++) {
    if (grid.inside[cell] === 0) continue;
    let us = Number.POSITIVE_INFINITY;
    let them = Number.POSITIVE_INFINITY;
    for (let j = 0; j < fields.length; j++) {
      const at = fields[j]![cell]!;
      if (contestants[j]!.side === 'us') us = Math.min(us, at);
      else them = Math.min(them, at);
      if (at < arrivalS[cell]!) {
        arrivalS[cell] = at;
        who[cell] = j;
      }
    }
    leadS[cell] = us === them ? 0 : Math.abs(us - them);
  }
  return { grid, who, arrivalS, leadS };
};
