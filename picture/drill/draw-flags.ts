import type { DrillPlan, Finding, Rink, Spot } from '@icewright/engine';
import { sheetPoint } from '../ice/sheet-point.ts';
import { spotRadiusM, waitingLabelReachM } from '../ice/spot.ts';
import { drawFlag, FLAG_M, type FlagWay, flagMiddle } from '../ice/things.ts';
import type { Pen } from '../pen/pen.ts';
import type { Obstacle } from './free-place.ts';

/** Ways a flag may fly, the usual one first; longer poles only where shorter ones are taken. */
const WAYS: readonly FlagWay[] = [1, 1.75, 2.5, 3.25].flatMap(poles =>
  ([1, -1] as const).flatMap(up => ([1, -1] as const).map((side): FlagWay => ({ side, up, poles }))),
);

/** Of the radius of a spot: its corners are round. */
const SPOT_CLEAR = 0.8;

interface Box {
  readonly x: number;
  readonly y: number;
  readonly halfX: number;
  readonly halfY: number;
}

/** Flags with numbers in order, each inside the sheet, clear of those before it and if it can be of spots and labels. */
export const drawFlags = (
  pen: Pen,
  findings: readonly Finding[],
  plan: DrillPlan,
  rink: Rink,
  labels: readonly Obstacle[],
): void => {
  const taken: Box[] = [];
  const others = [
    ...Object.values(plan.spots).flatMap(spot => boxesOfSpot(spot, pen.k)),
    ...labels.map(({ at, radius }): Box => ({ ...at, halfX: radius, halfY: radius })),
  ];
  findings.forEach((finding, index) => {
    const all = WAYS.map(way => ({ way, box: boxOf(pen, finding, way) }));
    const inside = all.filter(({ box }) => isInside(box, rink));
    const free = inside.filter(({ box }) => taken.every(other => isApart(other, box)));
    const clear = free.find(({ box }) => others.every(other => isApart(other, box)));
    // Where no way is inside the sheet the first, usual one it is.
    const { way, box } = clear ?? free[0] ?? inside[0] ?? all[0]!;
    taken.push(box);
    drawFlag(pen, finding.atM, index + 1, finding.weight, way);
  });
};

/** A spot and those who wait behind it, with their number. */
const boxesOfSpot = (spot: Spot, k: number): readonly Box[] => {
  const at = sheetPoint(spot.atM);
  const half = spotRadiusM(spot, k) * SPOT_CLEAR;
  const reach = waitingLabelReachM(spot.waitingCount, k) * k;
  const shares = reach > 0 ? [0, 0.5, 1] : [0];
  return shares.map(share => ({
    x: at.x - Math.cos(spot.facingRad) * reach * share,
    y: at.y + Math.sin(spot.facingRad) * reach * share,
    halfX: half,
    halfY: half,
  }));
};

/** Where a flag lies on the sheet: it is upright on the page, so it is turned back with what `place` has turned. */
const boxOf = (pen: Pen, finding: Finding, way: FlagWay): Box => {
  const at = sheetPoint(finding.atM);
  const middle = flagMiddle(way, pen.k);
  const cos = Math.cos(pen.turnRad);
  const sin = Math.sin(pen.turnRad);
  const halfWidth = (FLAG_M.width * pen.k) / 2;
  const halfHeight = (FLAG_M.height * pen.k) / 2;
  return {
    x: at.x + middle.x * cos + middle.y * sin,
    y: at.y - middle.x * sin + middle.y * cos,
    halfX: Math.abs(halfWidth * cos) + Math.abs(halfHeight * sin),
    halfY: Math.abs(halfWidth * sin) + Math.abs(halfHeight * cos),
  };
};

const isInside = (box: Box, rink: Rink): boolean =>
  box.x - box.halfX >= rink.area.minXM &&
  box.x + box.halfX <= rink.area.maxXM &&
  -box.y - box.halfY >= rink.area.minYM &&
  -box.y + box.halfY <= rink.area.maxYM;

const isApart = (one: Box, other: Box): boolean =>
  Math.abs(one.x - other.x) >= one.halfX + other.halfX ||
  Math.abs(one.y - other.y) >= one.halfY + other.halfY;
