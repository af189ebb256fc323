import type { Spot } from '../drill/drill.ts';
import { standingPointOf } from '../drill/in-boards.ts';
import type { Boards } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import { WAIT_APART_M } from './finding-rows.ts';

/**
 * Where those who wait behind a spot stand: one behind the other, away from where the first faces, `WAIT_APART_M` apart, the
 * nearest first. Metres, frame of the rink. A place off the ice is moved to the nearest one to stand. Empty when nobody waits.
 */
export const waitingPlacesOf = (
  spot: Pick<Spot, 'atM' | 'facingRad' | 'waitingCount'>,
  boards: Boards,
): readonly IcePoint[] =>
  Array.from({ length: spot.waitingCount }, (_, i) => {
    const backM = (i + 1) * WAIT_APART_M.value;
    return standingPointOf(boards, {
      xM: spot.atM.xM - backM * Math.cos(spot.facingRad),
      yM: spot.atM.yM - backM * Math.sin(spot.facingRad),
    });
  });
