import type { Drill } from '@icewright/book';
import { BODIES_TOUCH_M, boardsDistance, type IcePoint, type Rink, type SpotId } from '@icewright/engine';

/** Why what is in the hand cannot stand there, and where those are who cannot. */
export interface Refusal {
  readonly said: string;
  readonly atM: readonly IcePoint[];
}

/** A hand may slip so far over the boards and still means the ice beside them. Our choice. */
const SLIP_M = 1.5;
/** Rounding to centimetres may take this from the room to the boards. */
const HAIR_M = 0.02;

/**
 * Whether the spots that were moved can stand where they are now. `handM` is where the hand itself is: far over the boards it
 * sets nobody down. Null when all can.
 */
export const refusalOf = (
  drill: Drill,
  rink: Rink,
  movedSpots: ReadonlySet<SpotId>,
  handM: IcePoint,
): Refusal | null => {
  const spots = [...movedSpots].flatMap(id =>
    drill.spots[id] === undefined ? [] : [{ id, ...drill.spots[id] }],
  );
  if (spots.length === 0) return null;
  const isAway = !isOnIce(rink, handM, -SLIP_M);
  const off = spots.filter(spot => isAway || !isOnIce(rink, spot.atM, -HAIR_M));
  if (off.length > 0)
    return {
      said: `${off.map(spot => spot.role).join(', ')} would be off the ice`,
      atM: off.map(spot => spot.atM),
    };
  for (const spot of spots)
    for (const [otherId, other] of Object.entries(drill.spots)) {
      if (movedSpots.has(otherId as SpotId)) continue;
      const awayM = Math.hypot(other.atM.xM - spot.atM.xM, other.atM.yM - spot.atM.yM);
      if (awayM < BODIES_TOUCH_M.value)
        return { said: `${spot.role} and ${other.role} cannot stand on one place`, atM: [spot.atM] };
    }
  return null;
};

const isOnIce = ({ boards, area }: Rink, atM: IcePoint, leastM: number): boolean =>
  boardsDistance(boards, atM) >= leastM &&
  atM.xM >= area.minXM + leastM &&
  atM.xM <= area.maxXM - leastM &&
  atM.yM >= area.minYM + leastM &&
  atM.yM <= area.maxYM - leastM;
