import type { SheetPoint } from './sheet-point.ts';

/**
 * Ruled lines inside a convex outline, as pairs of ends: ruling says "contested" or "ours" without any colour, and cut
 * to the outline it needs no clip and no pattern in any pen.
 */
export const rulingOf = (
  outline: readonly SheetPoint[],
  apart: number,
  turnRad: number,
): readonly (readonly [SheetPoint, SheetPoint])[] => {
  const cos = Math.cos(turnRad);
  const sin = Math.sin(turnRad);
  const heights = outline.map(point => -point.x * sin + point.y * cos);
  const low = Math.min(...heights);
  const high = Math.max(...heights);
  const lines: (readonly [SheetPoint, SheetPoint])[] = [];
  for (let index = Math.ceil(low / apart); index * apart < high; index++) {
    const cut = cutsAt(outline, heights, index * apart);
    if (cut.length === 2) lines.push([cut[0]!, cut[1]!]);
  }
  return lines;
};

const cutsAt = (outline: readonly SheetPoint[], heights: readonly number[], height: number): SheetPoint[] => {
  const cuts: SheetPoint[] = [];
  outline.forEach((from, index) => {
    const next = (index + 1) % outline.length;
    const to = outline[next]!;
    const a = heights[index]! - height;
    const b = heights[next]! - height;
    if (a < 0 === b < 0) return;
    const share = a / (a - b);
    cuts.push({ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share });
  });
  return cuts;
};
