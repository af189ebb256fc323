import { type None, noneBecause } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { cornerPointOf, sidePointOf } from './along-boards.ts';
import { type Boards, type BoardsPoint, boardsDistance, cornerCentreOf } from './boards.ts';

/** Where a straight line first meets the boards. `angleFromBoardsRad`: 0 = along the boards, π/2 = square on. */
export interface BoardsHit extends BoardsPoint {
  readonly distanceM: number;
  readonly angleFromBoardsRad: number;
}

export type NoBoardsHit = None<'startsOutside' | 'leadsOut'>;

/** A start nearer to the boards than this lies on them: the last digits of a hit computed before. */
const ON_BOARDS_M = 1e-9;

/**
 * First boards point on the ray from `startM` (metres, inside or on the boards) in `directionRad` (0 along +x,
 * anticlockwise). A start on the boards is no hit itself. None: the start is outside, or lies on the boards and the ray
 * leads out. Exact: the ray leaves the bounding rectangle either on a straight side, or in a corner's square, and then
 * it has left the ice through that corner's arc.
 */
export const boardsRayHit = (
  boards: Boards,
  startM: IcePoint,
  directionRad: number,
): BoardsHit | NoBoardsHit =>
  boardsHitAlong(boards, startM, { xM: Math.cos(directionRad), yM: Math.sin(directionRad) });

/** As `boardsRayHit`, for a direction given as a unit vector. */
export const boardsHitAlong = (
  boards: Boards,
  startM: IcePoint,
  direction: IcePoint,
): BoardsHit | NoBoardsHit => {
  const insideM = boardsDistance(boards, startM);
  if (insideM < -ON_BOARDS_M) return noneBecause('startsOutside');
  const { xM: dx, yM: dy } = direction;
  const signX = dx < 0 ? -1 : 1;
  const signY = dy < 0 ? -1 : 1;
  const toEndM =
    dx === 0 ? Number.POSITIVE_INFINITY : (boards.lengthM / 2 - signX * startM.xM) / Math.abs(dx);
  const toSideM =
    dy === 0 ? Number.POSITIVE_INFINITY : (boards.widthM / 2 - signY * startM.yM) / Math.abs(dy);
  const toBoxM = Math.min(toEndM, toSideM);
  const exitX = startM.xM + dx * toBoxM;
  const exitY = startM.yM + dy * toBoxM;
  const corner = cornerCentreOf(boards);

  let point: BoardsPoint;
  let distanceM = toBoxM;
  if (toEndM <= toSideM && Math.abs(exitY) <= corner.yM) {
    point = sidePointOf(boards, 'x', signX, exitY);
  } else if (toSideM < toEndM && Math.abs(exitX) <= corner.xM) {
    point = sidePointOf(boards, 'y', signY, exitX);
  } else {
    const atX = exitX < 0 ? -1 : 1;
    const atY = exitY < 0 ? -1 : 1;
    const fromX = startM.xM - atX * corner.xM;
    const fromY = startM.yM - atY * corner.yM;
    const radius = boards.cornerRadiusM;
    const passes = fromX * dy - fromY * dx;
    const halfChord = Math.sqrt(Math.max(0, (radius - passes) * (radius + passes)));
    distanceM = halfChord - (fromX * dx + fromY * dy);
    const outX = Math.max(0, atX * (fromX + dx * distanceM));
    const outY = Math.max(0, atY * (fromY + dy * distanceM));
    const length = Math.sqrt(outX * outX + outY * outY);
    point =
      length > 0
        ? cornerPointOf(boards, atX, atY, outX / length, outY / length)
        : cornerPointOf(boards, atX, atY, Math.SQRT1_2, Math.SQRT1_2);
  }
  const into = -(dx * point.normal.xM + dy * point.normal.yM);
  if (insideM < ON_BOARDS_M && distanceM <= 2 * ON_BOARDS_M) return noneBecause('leadsOut');
  const along = Math.abs(dx * point.normal.yM - dy * point.normal.xM);
  return { ...point, distanceM, angleFromBoardsRad: Math.atan2(Math.max(0, into), along) };
};
