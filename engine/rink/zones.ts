import type { End } from '../units/ends.ts';
import type { IcePoint } from '../units/points.ts';
import { boardsDistance } from './boards.ts';
import type { LineId } from './lines.ts';
import type { Rink, RinkLine } from './rink.ts';

/** Parts of the sheet that a habit speaks of, as seen by the team that defends one end. */
export const RINK_ZONES = ['house', 'middleLane', 'ourZone', 'neutralZone', 'theirZone'] as const;

export type RinkZone = (typeof RINK_ZONES)[number];

/** The line's centre and edges, metres, ascending in x. */
export const lineXOf = (rink: Rink, line: LineId): RinkLine => rink.lines[line];

/** Inside the boards and inside the part of the sheet in use. */
export const isOnIce = (rink: Rink, pointM: IcePoint): boolean =>
  boardsDistance(rink.boards, pointM) >= 0 && pointM.xM >= rink.area.minXM && pointM.xM <= rink.area.maxXM;

/**
 * Is the point in the zone, for the team that defends the net at `defends`? A blue line belongs to the end zone that it
 * closes (its whole width, trade rule); the house is the one in front of the net that we defend.
 */
export const isInZone = (rink: Rink, zone: RinkZone, pointM: IcePoint, defends: End): boolean => {
  const { layout } = rink;
  // Towards our own net.
  const inwardXM = defends === 'plusX' ? pointM.xM : -pointM.xM;
  switch (zone) {
    case 'ourZone':
      return inwardXM >= layout.blueLineInnerXM;
    case 'theirZone':
      return inwardXM <= -layout.blueLineInnerXM;
    case 'neutralZone':
      return Math.abs(inwardXM) < layout.blueLineInnerXM;
    case 'middleLane':
      return Math.abs(pointM.yM) <= layout.endSpotM.yM;
    case 'house':
      return isInside(houseOf(rink, defends), pointM);
  }
};

/**
 * The house in front of the net at `end`, corner points in order, metres: from the posts out to the end spots, then
 * straight to the tops of the circles. Teams do not agree on its exact shape; this is the widest published one.
 */
export const houseOf = (rink: Rink, end: End): readonly IcePoint[] => {
  const { layout } = rink;
  const sign = end === 'plusX' ? 1 : -1;
  const topXM = layout.endSpotM.xM - layout.circleRadiusM;
  const corners: readonly (readonly [number, number])[] = [
    [layout.goalLineXM, layout.postCentreYM],
    [layout.endSpotM.xM, layout.endSpotM.yM],
    [topXM, layout.endSpotM.yM],
    [topXM, -layout.endSpotM.yM],
    [layout.endSpotM.xM, -layout.endSpotM.yM],
    [layout.goalLineXM, -layout.postCentreYM],
  ];
  return corners.map(([xM, yM]) => ({ xM: sign * xM, yM: sign * yM }));
};

/** Convex corners in anticlockwise order; the edge counts as inside. */
const isInside = (corners: readonly IcePoint[], pointM: IcePoint): boolean =>
  corners.every((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    return (to.xM - from.xM) * (pointM.yM - from.yM) - (to.yM - from.yM) * (pointM.xM - from.xM) >= 0;
  });
