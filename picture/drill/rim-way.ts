import {
  type Boards,
  boardsPointAtArc,
  type IcePoint,
  nearestBoardsPoint,
  perimeterOf,
} from '@icewright/engine';

/** A puck that rolls along the boards lies this far from them on a drawing: its line must not lie on theirs. */
const OFF_BOARDS_M = 0.35;
const EVERY_M = 0.8;
/** A rim is laid on the boards a little ahead of the passer and leaves them a little before the receiver. */
const SLANT_M = 2;

/** The way of a rim before it is computed: to the boards, along them the shorter way round, and to the receiver. */
export const rimWay = (boards: Boards, fromM: IcePoint, toM: IcePoint): readonly IcePoint[] => {
  const start = nearestBoardsPoint(boards, fromM).arcM;
  const perimeterM = perimeterOf(boards);
  let wayM = nearestBoardsPoint(boards, toM).arcM - start;
  if (wayM > perimeterM / 2) wayM -= perimeterM;
  if (wayM < -perimeterM / 2) wayM += perimeterM;
  const side = Math.sign(wayM) || 1;
  const slantM = Math.min(SLANT_M, Math.abs(wayM) / 3);
  const points: IcePoint[] = [fromM];
  for (let alongM = slantM; alongM <= Math.abs(wayM) - slantM; alongM += EVERY_M) {
    const { pointM, normal } = boardsPointAtArc(boards, start + side * alongM);
    points.push({ xM: pointM.xM + normal.xM * OFF_BOARDS_M, yM: pointM.yM + normal.yM * OFF_BOARDS_M });
  }
  points.push(toM);
  return points;
};
