import type { IcePoint } from '../units/points.ts';

/**
 * The boards: a rounded rectangle about the origin, metres. `cornerRadiusM` may be 0 (square corners).
 * Valid while 0 ≤ cornerRadiusM ≤ half the shorter side; `boardsOf` refuses anything else.
 */
export interface Boards {
  readonly lengthM: number;
  readonly widthM: number;
  readonly cornerRadiusM: number;
}

/** The four straight sides and the four arcs, in the order in which arc length runs (anticlockwise). */
export const BOARDS_PARTS = [
  'plusX',
  'corner plusX plusY',
  'plusY',
  'corner minusX plusY',
  'minusX',
  'corner minusX minusY',
  'minusY',
  'corner plusX minusY',
] as const;

export type BoardsPart = (typeof BOARDS_PARTS)[number];

/** A place on the boards. `normal` is the unit vector into the ice; `arcM` runs anticlockwise from `boardsPointAtArc(boards, 0)`. */
export interface BoardsPoint {
  readonly pointM: IcePoint;
  readonly normal: IcePoint;
  readonly arcM: number;
  readonly part: BoardsPart;
}

/**
 * Boards of this size, metres. Throws on sizes that make no rounded rectangle: a caller must have checked them. All > 0
 * and the radius ≤ half the shorter side.
 */
export const boardsOf = (lengthM: number, widthM: number, cornerRadiusM: number): Boards => {
  const fits = cornerRadiusM >= 0 && 2 * cornerRadiusM <= Math.min(lengthM, widthM);
  if (!(lengthM > 0 && widthM > 0 && fits)) {
    throw new RangeError(`no boards of ${lengthM} × ${widthM} m with corners of ${cornerRadiusM} m`);
  }
  return { lengthM, widthM, cornerRadiusM };
};

/** Half the length of the straight end boards' and side boards' span: the corner centres are at (±xM, ±yM). */
export const cornerCentreOf = (boards: Boards): IcePoint => ({
  xM: boards.lengthM / 2 - boards.cornerRadiusM,
  yM: boards.widthM / 2 - boards.cornerRadiusM,
});

/**
 * Distance from the boards, metres, positive inside. Exact on both sides of the boards.
 * Source: the signed distance of a rounded rectangle.
 */
export const boardsDistance = (boards: Boards, pointM: IcePoint): number => {
  const qx = Math.abs(pointM.xM) - (boards.lengthM / 2 - boards.cornerRadiusM);
  const qy = Math.abs(pointM.yM) - (boards.widthM / 2 - boards.cornerRadiusM);
  const outside = Math.sqrt(Math.max(qx, 0) ** 2 + Math.max(qy, 0) ** 2);
  return boards.cornerRadiusM - outside - Math.min(Math.max(qx, qy), 0);
};

/** Length of the boards once round, metres. */
export const perimeterOf = (boards: Boards): number =>
  2 * (boards.lengthM + boards.widthM) + (2 * Math.PI - 8) * boards.cornerRadiusM;

/** Area of the ice inside the boards, m². */
export const iceAreaOf = (boards: Boards): number =>
  boards.lengthM * boards.widthM - (4 - Math.PI) * boards.cornerRadiusM ** 2;

/**
 * The boards moved inwards by `byM` metres on every side: where the centre of a disc of that radius turns back.
 * A corner tighter than the disc becomes square. Throws when nothing is left inside. `byM` ≥ 0 and < half the shorter
 * side.
 */
export const insetBoards = (boards: Boards, byM: number): Boards =>
  boardsOf(boards.lengthM - 2 * byM, boards.widthM - 2 * byM, Math.max(0, boards.cornerRadiusM - byM));

/** y (≥ 0) at which a line x = const meets the boards, metres; 0 when the line does not reach them inside the length. */
export const halfSpanAtX = (boards: Boards, xM: number): number =>
  halfSpan(Math.abs(xM), boards.lengthM / 2, boards.widthM / 2, boards.cornerRadiusM);

/** x (≥ 0) at which a line y = const meets the boards, metres; 0 when the line does not reach them inside the width. */
export const halfSpanAtY = (boards: Boards, yM: number): number =>
  halfSpan(Math.abs(yM), boards.widthM / 2, boards.lengthM / 2, boards.cornerRadiusM);

const halfSpan = (at: number, half: number, acrossHalf: number, radius: number): number => {
  if (at > half) return 0;
  // At the very end rounding may put a corner’s width a last digit beyond its radius.
  const into = at - (half - radius);
  return into <= 0 ? acrossHalf : acrossHalf - radius + Math.sqrt(Math.max(0, radius ** 2 - into ** 2));
};
