import type { IcePoint } from '@icewright/engine';

/** A point of the drawing of the ice: metres, y pointing down as on a page. */
export interface SheetPoint {
  readonly x: number;
  readonly y: number;
}

export const sheetPoint = (point: IcePoint): SheetPoint => ({ x: point.xM, y: -point.yM });

export const sheetPoints = (points: readonly IcePoint[]): readonly SheetPoint[] => points.map(sheetPoint);

/** Direction on the page, clockwise from +x. */
export const directionRad = (from: SheetPoint, to: SheetPoint): number =>
  Math.atan2(to.y - from.y, to.x - from.x);

/** Not Math.hypot: it is many times slower, and drawings ask for thousands of distances. */
export const distanceOf = (from: SheetPoint, to: SheetPoint): number => {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  return Math.sqrt(dx * dx + dy * dy);
};

export const along = (from: SheetPoint, turnRad: number, length: number): SheetPoint => ({
  x: from.x + Math.cos(turnRad) * length,
  y: from.y + Math.sin(turnRad) * length,
});

/** Beside the line that goes in this direction; positive is to the right of it on the page. */
export const beside = (from: SheetPoint, turnRad: number, length: number): SheetPoint => ({
  x: from.x - Math.sin(turnRad) * length,
  y: from.y + Math.cos(turnRad) * length,
});
