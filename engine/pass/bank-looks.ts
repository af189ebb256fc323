import { wrapRad } from '../units/angles.ts';
import type { BankShot } from './bank-shot.ts';

/** A cell in which something comes or goes is halved down to this. */
export const SMALLEST_CELL_M = 1e-4;
/** A first cell is no longer than this. */
const CELL_SIDE_M = 3;
const CELL_CORNER_M = 1.7;
/** Near the passer, where a small step is a large angle, a cell is this share of the distance. */
const CELL_PER_DISTANCE = 0.35;

/** Places along the boards to look at; cell i lies between places i − 1 and i. */
export interface BankLooks {
  readonly arcsM: readonly number[];
  /** Launch direction to each place, radians. */
  readonly launchRads: readonly number[];
  /** Cells that are left out; all count when it is not there. */
  readonly isSkipped?: readonly boolean[];
}

/** Launch directions no farther from one than `withinRad`, and no nearer than `beyondRad`. */
export interface NearLaunch {
  readonly launchRad: number;
  readonly withinRad: number;
  readonly beyondRad?: number;
}

/** Arc lengths to look at first: every junction, and cells that shrink towards the passer. */
export const looksAlong = (shot: BankShot): BankLooks => {
  const starts = shot.partStartsM;
  const arcsM: number[] = [0];
  const launchRads: number[] = [];
  for (let part = 0; part < 8; part++) {
    const end = starts[part + 1]!;
    const most = part % 2 === 0 ? CELL_SIDE_M : CELL_CORNER_M;
    let arcM = starts[part]!;
    while (arcM < end) {
      shot.first(arcM);
      const x = shot.xM - shot.fromM.xM;
      const y = shot.yM - shot.fromM.yM;
      launchRads.push(Math.atan2(y, x));
      const apart = Math.sqrt(x * x + y * y);
      arcM += Math.min(most, Math.max(SMALLEST_CELL_M * 10, apart * CELL_PER_DISTANCE));
      arcsM.push(Math.min(arcM, end));
    }
  }
  launchRads.push(launchRads[0]!);
  return { arcsM, launchRads };
};

/** Leaves out the cells without a launch direction that is asked for, except the ones next to those, which a dip at the edge is told by. */
export const cellsNear = (looks: BankLooks, near: NearLaunch): BankLooks => {
  const { arcsM, launchRads } = looks;
  const { beyondRad = 0 } = near;
  const count = arcsM.length - 1;
  const isSkipped: boolean[] = new Array(count + 1).fill(true);
  let fromRad = wrapRad(launchRads[0]! - near.launchRad);
  for (let index = 1; index <= count; index++) {
    const toRad = wrapRad(launchRads[index]! - near.launchRad);
    const isAcross = fromRad < 0 !== toRad < 0 && Math.abs(toRad - fromRad) < Math.PI;
    const isNear = isAcross || Math.min(Math.abs(fromRad), Math.abs(toRad)) <= near.withinRad;
    if (isNear && Math.max(Math.abs(fromRad), Math.abs(toRad)) >= beyondRad) {
      isSkipped[index === 1 ? count : index - 1] = false;
      isSkipped[index] = false;
      isSkipped[index === count ? 1 : index + 1] = false;
    }
    fromRad = toRad;
  }
  return { ...looks, isSkipped };
};
