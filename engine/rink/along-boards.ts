import type { IcePoint } from '../units/points.ts';
import { type Boards, type BoardsPoint, cornerCentreOf, perimeterOf } from './boards.ts';

const QUARTER_RAD = Math.PI / 2;

/**
 * The place at arc length `arcM` (metres, any real number: it goes round). Arc length starts at the lower end of the
 * straight boards of the plusX end, (L/2, −(W/2 − R)), and runs anticlockwise.
 */
export const boardsPointAtArc = (boards: Boards, arcM: number): BoardsPoint => {
  const perimeterM = perimeterOf(boards);
  const onceM = ((arcM % perimeterM) + perimeterM) % perimeterM;
  const pieces = piecesOf(boards);
  let restM = onceM;
  for (const piece of pieces) {
    if (restM < piece.lengthM) return pointOnPiece(boards, piece, restM, onceM);
    restM -= piece.lengthM;
  }
  // Rounding of the sum can leave a rest of some ulp: that is the starting point again.
  return pointOnPiece(boards, pieces[0]!, 0, 0);
};

/**
 * Boards point nearest to `pointM` (inside or outside) with the normal into the ice. Two or more may be equally near
 * on the middle lines of the rink: one of them is given.
 */
export const nearestBoardsPoint = (boards: Boards, pointM: IcePoint): BoardsPoint => {
  const corner = cornerCentreOf(boards);
  const signX = pointM.xM < 0 ? -1 : 1;
  const signY = pointM.yM < 0 ? -1 : 1;
  const qx = Math.abs(pointM.xM) - corner.xM;
  const qy = Math.abs(pointM.yM) - corner.yM;
  if (qx > 0 && qy > 0) {
    const reach = Math.sqrt(qx * qx + qy * qy);
    return cornerPointOf(boards, signX, signY, qx / reach, qy / reach);
  }
  return qx > qy ? sidePointOf(boards, 'x', signX, pointM.yM) : sidePointOf(boards, 'y', signY, pointM.xM);
};

/** The shorter way along the boards between two boards points (or points next to them), metres. */
export const alongBoardsM = (boards: Boards, fromM: IcePoint, toM: IcePoint): number => {
  const apart = Math.abs(nearestBoardsPoint(boards, fromM).arcM - nearestBoardsPoint(boards, toM).arcM);
  return Math.min(apart, perimeterOf(boards) - apart);
};

/** Boards point on the arc of the corner with these signs; (outX, outY) is the unit vector from its centre, both ≥ 0. */
export const cornerPointOf = (
  boards: Boards,
  signX: number,
  signY: number,
  outX: number,
  outY: number,
): BoardsPoint => {
  const corner = cornerCentreOf(boards);
  const radius = boards.cornerRadiusM;
  const turnRad = Math.atan2(outY, outX);
  const index = signX > 0 ? (signY > 0 ? 1 : 7) : signY > 0 ? 3 : 5;
  const intoRad = signX * signY > 0 ? turnRad : QUARTER_RAD - turnRad;
  return {
    pointM: { xM: signX * (corner.xM + radius * outX), yM: signY * (corner.yM + radius * outY) },
    normal: { xM: -signX * outX, yM: -signY * outY },
    arcM: startOfPiece(boards, index) + radius * intoRad,
    part: `corner ${signX > 0 ? 'plusX' : 'minusX'} ${signY > 0 ? 'plusY' : 'minusY'}`,
  };
};

/**
 * Boards point on the straight side square to that axis; `alongM` is its other coordinate. Any `alongM` between the
 * corners.
 */
export const sidePointOf = (boards: Boards, axis: 'x' | 'y', sign: number, alongM: number): BoardsPoint => {
  const corner = cornerCentreOf(boards);
  if (axis === 'x') {
    return {
      pointM: { xM: (sign * boards.lengthM) / 2, yM: alongM },
      normal: { xM: -sign, yM: 0 },
      arcM: startOfPiece(boards, sign > 0 ? 0 : 4) + corner.yM + sign * alongM,
      part: sign > 0 ? 'plusX' : 'minusX',
    };
  }
  return {
    pointM: { xM: alongM, yM: (sign * boards.widthM) / 2 },
    normal: { xM: 0, yM: -sign },
    arcM: startOfPiece(boards, sign > 0 ? 2 : 6) + corner.xM - sign * alongM,
    part: sign > 0 ? 'plusY' : 'minusY',
  };
};

interface Piece {
  readonly kind: 'side' | 'corner';
  readonly axis: 'x' | 'y';
  readonly signX: number;
  readonly signY: number;
  readonly lengthM: number;
}

const piecesOf = (boards: Boards): readonly Piece[] => {
  const corner = cornerCentreOf(boards);
  const arcM = QUARTER_RAD * boards.cornerRadiusM;
  const side = (axis: 'x' | 'y', sign: number): Piece => ({
    kind: 'side',
    axis,
    signX: sign,
    signY: sign,
    lengthM: 2 * (axis === 'x' ? corner.yM : corner.xM),
  });
  const arc = (signX: number, signY: number): Piece => ({
    kind: 'corner',
    axis: 'x',
    signX,
    signY,
    lengthM: arcM,
  });
  return [
    side('x', 1),
    arc(1, 1),
    side('y', 1),
    arc(-1, 1),
    side('x', -1),
    arc(-1, -1),
    side('y', -1),
    arc(1, -1),
  ];
};

const startOfPiece = (boards: Boards, index: number): number => {
  const corner = cornerCentreOf(boards);
  const arcs = (index >> 1) * QUARTER_RAD * boards.cornerRadiusM;
  const ends = 2 * corner.yM * (index > 4 ? 2 : index > 0 ? 1 : 0);
  const sides = 2 * corner.xM * (index > 6 ? 2 : index > 2 ? 1 : 0);
  return arcs + ends + sides;
};

const pointOnPiece = (boards: Boards, piece: Piece, intoM: number, arcM: number): BoardsPoint => {
  if (piece.kind === 'side') {
    const half = piece.lengthM / 2;
    const along = piece.axis === 'x' ? piece.signX * (intoM - half) : piece.signY * (half - intoM);
    return { ...sidePointOf(boards, piece.axis, piece.signX, along), arcM };
  }
  const intoRad = intoM / boards.cornerRadiusM;
  const turnRad = piece.signX * piece.signY > 0 ? intoRad : QUARTER_RAD - intoRad;
  const found = cornerPointOf(boards, piece.signX, piece.signY, Math.cos(turnRad), Math.sin(turnRad));
  return { ...found, arcM };
};
