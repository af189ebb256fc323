import { type Boards, boardsDistance } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import { BOARDS_ROOM_M } from './drill-rows.ts';

/** A body on the ice that is moved in place: metres and metres a second, axes as `IcePoint`. */
export interface Body {
  xM: number;
  yM: number;
  xMps: number;
  yMps: number;
}

/** Point moved to where a skater can stand: at least `BOARDS_ROOM_M` from the boards. Points inside are given back as they are. */
export const standingPointOf = (boards: Boards, pointM: IcePoint): IcePoint => {
  if (boardsDistance(boards, pointM) >= BOARDS_ROOM_M.value) return pointM;
  const body = { ...pointM, xMps: 0, yMps: 0 };
  pushInside(boards, body);
  return { xM: body.xM, yM: body.yM };
};

/** Distance of (x, y) from the boards, metres, positive inside; as `boardsDistance` but without an object to carry the point. */
export const boardsDistanceAt = (boards: Boards, xM: number, yM: number): number => {
  const qx = Math.abs(xM) - boards.lengthM / 2 + boards.cornerRadiusM;
  const qy = Math.abs(yM) - boards.widthM / 2 + boards.cornerRadiusM;
  if (qx > 0 && qy > 0) return boards.cornerRadiusM - Math.sqrt(qx * qx + qy * qy);
  return boards.cornerRadiusM - Math.max(qx, qy);
};

/** Speed towards the nearest boards of something at (x, y) with this velocity, metres a second; negative when it moves away. */
export const speedIntoBoards = (boards: Boards, xM: number, yM: number, xMps: number, yMps: number): number =>
  xMps * outwardX(boards, xM, yM) + yMps * outwardY(boards, xM, yM);

/**
 * A reactive skater minds the boards: speed towards them is kept to what can still be stopped half a metre before,
 * `√(2·stop·(d − room))`, and the body never gets nearer than the room. Changes the body in place.
 */
export const mindBoards = (boards: Boards, body: Body, power: { readonly stopDecelMps2: number }): void => {
  const { stopDecelMps2 } = power;
  const speed2 = body.xMps * body.xMps + body.yMps * body.yMps;
  if (!mayMindBoards(boards, body.xM, body.yM, speed2, stopDecelMps2)) return;
  const roomM = boardsDistanceAt(boards, body.xM, body.yM) - BOARDS_ROOM_M.value;
  const outX = outwardX(boards, body.xM, body.yM);
  const outY = outwardY(boards, body.xM, body.yM);
  const intoMps = body.xMps * outX + body.yMps * outY;
  const mayMps = Math.sqrt(2 * stopDecelMps2 * Math.max(0, roomM));
  if (intoMps > mayMps) {
    body.xMps -= (intoMps - mayMps) * outX;
    body.yMps -= (intoMps - mayMps) * outY;
  }
  if (roomM < 0) pushInside(boards, body);
};

/**
 * Whether `mindBoards` may have anything to say to somebody at (x, y) with the square `speed2` of a speed (metres, m²/s²): whether the boards
 * would come before the end of a stop, were it straight at them. Small, so that who asks at every step asks without a call.
 */
export const mayMindBoards = (
  boards: Boards,
  xM: number,
  yM: number,
  speed2: number,
  stopDecelMps2: number,
): boolean => 2 * stopDecelMps2 * (boardsDistanceAt(boards, xM, yM) - BOARDS_ROOM_M.value) < speed2;

/** Moves a point nearer to the boards than a skater can be to where one can. */
export const keepInside = (boards: Boards, point: { xM: number; yM: number }): void => {
  const inM = boards.cornerRadiusM - BOARDS_ROOM_M.value;
  const qx = Math.abs(point.xM) - boards.lengthM / 2 + boards.cornerRadiusM;
  const qy = Math.abs(point.yM) - boards.widthM / 2 + boards.cornerRadiusM;
  if (Math.max(qx, qy, qx + qy) > inM) pushInside(boards, point);
};

/** Moves the body to the nearest place that has that much room to the boards; leaves one alone that has. */
export const pushInside = (
  boards: Boards,
  body: { xM: number; yM: number },
  roomM: number = BOARDS_ROOM_M.value,
): void => {
  const halfXM = boards.lengthM / 2 - roomM;
  const halfYM = boards.widthM / 2 - roomM;
  // Beside a corner the arc alone says what is nearest.
  const isByCorner =
    Math.abs(body.xM) > boards.lengthM / 2 - boards.cornerRadiusM &&
    Math.abs(body.yM) > boards.widthM / 2 - boards.cornerRadiusM;
  if (!isByCorner || roomM > boards.cornerRadiusM) {
    body.xM = Math.min(halfXM, Math.max(-halfXM, body.xM));
    body.yM = Math.min(halfYM, Math.max(-halfYM, body.yM));
  }
  const shortM = roomM - boardsDistanceAt(boards, body.xM, body.yM);
  if (shortM <= 0) return;
  const outX = outwardX(boards, body.xM, body.yM);
  const outY = outwardY(boards, body.xM, body.yM);
  body.xM -= shortM * outX;
  body.yM -= shortM * outY;
};

const outwardX = (boards: Boards, xM: number, yM: number): number => {
  const qx = Math.abs(xM) - boards.lengthM / 2 + boards.cornerRadiusM;
  const qy = Math.abs(yM) - boards.widthM / 2 + boards.cornerRadiusM;
  const sign = xM < 0 ? -1 : 1;
  if (qx > 0 && qy > 0) return (sign * qx) / Math.sqrt(qx * qx + qy * qy);
  return qx > qy ? sign : 0;
};

const outwardY = (boards: Boards, xM: number, yM: number): number => {
  const qx = Math.abs(xM) - boards.lengthM / 2 + boards.cornerRadiusM;
  const qy = Math.abs(yM) - boards.widthM / 2 + boards.cornerRadiusM;
  const sign = yM < 0 ? -1 : 1;
  if (qx > 0 && qy > 0) return (sign * qy) / Math.sqrt(qx * qx + qy * qy);
  return qx > qy ? 0 : sign;
};
