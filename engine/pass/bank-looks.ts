import type { BankShot } from './bank-shot.ts';

/** A cell in which something comes or goes is halved down to this. */
export const SMALLEST_CELL_M = 1e-4;
/** A first cell is no longer than this. */
const CELL_SIDE_M = 3;
const CELL_CORNER_M = 1.7;
/** Near the passer, where a small step is a large angle, a cell is this share of the distance. */
const CELL_PER_DISTANCE = 0.35;

/** Arc lengths to look at first: every junction, and cells that shrink towards the passer. */
export const looksAlong = (shot: BankShot): readonly number[] => {
  const starts = shot.partStartsM;
  const arcs: number[] = [0];
  for (let part = 0; part < 8; part++) {
    const end = starts[part + 1]!;
    const most = part % 2 === 0 ? CELL_SIDE_M : CELL_CORNER_M;
    let arcM = starts[part]!;
    while (arcM < end) {
      shot.first(arcM);
      const apart = Math.hypot(shot.xM - shot.fromM.xM, shot.yM - shot.fromM.yM);
      arcM += Math.min(most, Math.max(SMALLEST_CELL_M * 10, apart * CELL_PER_DISTANCE));
      arcs.push(Math.min(arcM, end));
    }
  }
  return arcs;
};
