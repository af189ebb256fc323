import { boardsDistance, type IcePoint, nearestBoardsPoint, type Rink } from '@icewright/engine';

const ROOM_M = 0.5; // half a skater in gear, as the run leaves it: engine/drill/drill-rows.ts, "room to the boards"

/** The place itself, or the nearest one inside the boards and the part of the ice in use. Metres, frame of the rink. */
export function onIce(rink: Rink, { xM, yM }: IcePoint): IcePoint {
  const { minXM, maxXM, minYM, maxYM } = rink.area;
  const inArea = {
    xM: Math.min(maxXM - ROOM_M, Math.max(minXM + ROOM_M, xM)),
    yM: Math.min(maxYM - ROOM_M, Math.max(minYM + ROOM_M, yM)),
  };
  if (boardsDistance(rink.boards, inArea) >= ROOM_M) return inArea;
  const { pointM, normal } = nearestBoardsPoint(rink.boards, inArea);
  return { xM: round(pointM.xM + normal.xM * ROOM_M), yM: round(pointM.yM + normal.yM * ROOM_M) };
}

const round = (lengthM: number): number => Math.round(lengthM * 100) / 100;
