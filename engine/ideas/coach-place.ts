import type { IcePoint } from '../units/points.ts';
import { COACH_ASIDE, COACH_BEHIND } from './ideas-rows.ts';

/** Behind the one who is to get the pass, and to which side of her, metres. */
const BEHIND_M = COACH_BEHIND.value;
const ASIDE_M = COACH_ASIDE.value;

/**
 * Where a coach passes from to who starts at `toM` and goes along `sign` × x, `sign` 1 or −1: of the places on either side, the one whose lane
 * is farthest from everybody else's start, wherever along the sheet that is moved by the tuning; a start in the lane would make the
 * drill hard by a pass that fails. Metres; `inside` brings a place onto the ice. Always answers. Our own rule.
 */
export const coachPlace = (
  toM: IcePoint,
  sign: number,
  startsM: readonly IcePoint[],
  inside: (pointM: IcePoint) => IcePoint,
): IcePoint => {
  const roomOf = (placeM: IcePoint): number =>
    Math.min(...startsM.flatMap(startM => lanePoints(placeM, toM).map(at => Math.abs(at.yM - startM.yM))));
  const toTheMiddle = toM.yM > 0 ? -1 : 1;
  return [toTheMiddle, -toTheMiddle]
    .map(way => inside({ xM: toM.xM - sign * BEHIND_M, yM: toM.yM + way * ASIDE_M }))
    .sort((a, b) => roomOf(b) - roomOf(a))[0]!;
};

const lanePoints = (fromM: IcePoint, toM: IcePoint): readonly IcePoint[] =>
  [0, 0.25, 0.5, 0.75, 1].map(share => ({
    xM: fromM.xM + share * (toM.xM - fromM.xM),
    yM: fromM.yM + share * (toM.yM - fromM.yM),
  }));
