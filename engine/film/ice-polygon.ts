import { type Boards, cornerCentreOf } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';

/** Chords a corner is drawn with; at 8.5 m radius they leave the arc by under 1 cm. */
const CORNER_CHORDS = 16;

/** The edge of the ice as a polygon, anticlockwise, metres, its corners as chords. By definition of the boards. */
export const rimOf = (boards: Boards): IcePoint[] => {
  const centre = cornerCentreOf(boards);
  return [0, 1, 2, 3].flatMap(quarter =>
    Array.from({ length: CORNER_CHORDS + 1 }, (_, chord) => {
      const angleRad = (Math.PI / 2) * (quarter + chord / CORNER_CHORDS);
      const xSign = quarter === 0 || quarter === 3 ? 1 : -1;
      const ySign = quarter < 2 ? 1 : -1;
      return {
        xM: xSign * centre.xM + boards.cornerRadiusM * Math.cos(angleRad),
        yM: ySign * centre.yM + boards.cornerRadiusM * Math.sin(angleRad),
      };
    }),
  );
};

/**
 * The part of a convex polygon, metres, where a·x + b·y + c ≥ 0; empty when there is none. Source: polygon cut by half planes,
 * Sutherland & Hodgman 1974 (from memory).
 */
export const cutBy = (
  polygon: readonly IcePoint[],
  [a, b, c]: readonly [number, number, number],
): IcePoint[] =>
  polygon.flatMap((point, index) => {
    const before = polygon[(index + polygon.length - 1) % polygon.length]!;
    const here = a * point.xM + b * point.yM + c;
    const there = a * before.xM + b * before.yM + c;
    const crossing = () => {
      const share = there / (there - here);
      return {
        xM: before.xM + share * (point.xM - before.xM),
        yM: before.yM + share * (point.yM - before.yM),
      };
    };
    if (here >= 0) return there >= 0 ? [point] : [crossing(), point];
    return there >= 0 ? [crossing()] : [];
  });
