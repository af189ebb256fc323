import { boardsPointAtArc, type IcePoint, perimeterOf, type Rink } from '@icewright/engine';

/** The painted lines of a sheet as polylines, metres: enough to see whether a picture is held. */
export const rinkLines = (rink: Rink): IcePoint[][] => {
  const { layout, lines, boards } = rink;
  const across = Object.values(lines).flatMap(line => {
    const edges = line.maxXM - line.minXM > 0.1 ? [line.minXM, line.maxXM] : [line.centreXM];
    return edges.map(xM => straight({ xM, yM: -line.halfSpanM }, { xM, yM: line.halfSpanM }));
  });
  const { xM, yM } = layout.endSpotM;
  const circles = [{ xM: 0, yM: 0 }, ...SIGNS.flatMap(sx => SIGNS.map(sy => ({ xM: sx * xM, yM: sy * yM })))];
  const rim = Array.from(
    { length: RIM + 1 },
    (_, i) => boardsPointAtArc(boards, (i / RIM) * perimeterOf(boards)).pointM,
  );
  // It is on one side alone: where it lies tells the ends apart.
  const officials = ring({ xM: 0, yM: -boards.widthM / 2 }, layout.refCreaseRadiusM).filter(
    ({ yM }) => yM >= -boards.widthM / 2 - 1e-9,
  );
  return [...across, ...circles.map(middle => ring(middle, layout.circleRadiusM)), officials, rim];
};

export const ring = (middle: IcePoint, radiusM: number, points = 48): IcePoint[] =>
  Array.from({ length: points + 1 }, (_, i) => {
    const angle = (i / points) * 2 * Math.PI;
    return { xM: middle.xM + radiusM * Math.cos(angle), yM: middle.yM + radiusM * Math.sin(angle) };
  });

export const straight = (from: IcePoint, to: IcePoint, points = 24): IcePoint[] =>
  Array.from({ length: points + 1 }, (_, i) => ({
    xM: from.xM + ((to.xM - from.xM) * i) / points,
    yM: from.yM + ((to.yM - from.yM) * i) / points,
  }));

const SIGNS = [-1, 1] as const;
const RIM = 120;
