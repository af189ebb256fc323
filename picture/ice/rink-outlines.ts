import type { Boards, RinkLayout } from '@icewright/engine';
import type { PathSink } from '../pen/pen.ts';

/** The boards' closed curve, moved outwards by so many metres. */
export const traceBoards = (sink: PathSink, boards: Boards, outwardsM: number): void => {
  const halfX = boards.lengthM / 2 + outwardsM;
  const halfY = boards.widthM / 2 + outwardsM;
  const radius = boards.cornerRadiusM > 0 ? boards.cornerRadiusM + outwardsM : 0;
  if (radius === 0) {
    sink.rect(-halfX, -halfY, 2 * halfX, 2 * halfY);
    return;
  }
  const corner = (x: number, y: number, from: number) => sink.arc(x, y, radius, from, from + Math.PI / 2);
  sink.moveTo(-halfX + radius, -halfY);
  corner(halfX - radius, -halfY + radius, -Math.PI / 2);
  corner(halfX - radius, halfY - radius, 0);
  corner(-halfX + radius, halfY - radius, Math.PI / 2);
  corner(-halfX + radius, -halfY + radius, Math.PI);
  sink.closePath();
};

/** Crease in front of the goal line at the end of this sign; open towards the goal line. */
export const traceCrease = (sink: PathSink, layout: RinkLayout, end: number): void => {
  const { crease, goalLineXM, thinLineM } = layout;
  const half = crease.halfWidthM - thinLineM / 2;
  const radius = crease.radiusM - thinLineM / 2;
  const angleRad = Math.asin(Math.min(1, half / radius));
  const goal = end * goalLineXM;
  sink.moveTo(goal, -half);
  if (end > 0) {
    sink.lineTo(goal - Math.cos(angleRad) * radius, -half);
    sink.arc(goal, 0, radius, Math.PI + angleRad, Math.PI - angleRad, true);
  } else {
    sink.lineTo(goal + Math.cos(angleRad) * radius, -half);
    sink.arc(goal, 0, radius, -angleRad, angleRad);
  }
  sink.lineTo(goal, half);
};

/** Circle, hash marks and the four L marks of an end spot. */
export const traceSpotMarks = (sink: PathSink, layout: RinkLayout, x: number, y: number): void => {
  const { circleRadiusM, thinLineM, hash, lMark } = layout;
  const radius = circleRadiusM - thinLineM / 2;
  sink.moveTo(x + radius, y);
  sink.arc(x, y, radius, 0, 2 * Math.PI);
  const lY = lMark.innerDyM + thinLineM / 2;
  for (const sx of [-1, 1]) {
    for (const sy of [-1, 1]) {
      sink.moveTo(x + sx * hash.dxM, y + sy * hash.dyFromM);
      sink.lineTo(x + sx * hash.dxM, y + sy * hash.dyToM);
      sink.moveTo(x + sx * (lMark.startDxM + lMark.longM), y + sy * lY);
      sink.lineTo(x + sx * lMark.startDxM, y + sy * lY);
      sink.lineTo(x + sx * lMark.startDxM, y + sy * lMark.shortEndDyM);
    }
  }
};
