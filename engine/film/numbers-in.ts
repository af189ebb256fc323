import type { Side } from '../units/ends.ts';
import type { Estimate, IcePoint } from '../units/points.ts';
import { type FrozenScene, type PlaceIndex, placeOf, SURELY_SDS, sceneEstimate } from './frozen-scene.ts';

/** A convex area of the ice, metres, its corners anticlockwise. */
export type ConvexArea = readonly IcePoint[];

/** How many of a side are in an area: surely, and at most. */
export interface Numbers {
  readonly certainCount: number;
  readonly possibleCount: number;
  readonly certain: readonly string[];
  /** Those whose ± reaches over the area's edge. */
  readonly unsure: readonly string[];
}

/**
 * Skaters of one side inside a convex area. A skater is surely in (or out) when the edge is further away than 95 %
 * of where he may be, towards it (two-sided, 1.96 sd). Goalies are not counted; nor are those not placed. Source: normal
 * interval, two-sided 95 %.
 */
export const numbersIn = (scene: FrozenScene, area: ConvexArea, side: Side): Numbers => {
  const certain: string[] = [];
  const unsure: string[] = [];
  scene.skaters.forEach((skater, index) => {
    if (skater.side !== side || skater.kind === 'goalie') return;
    const depthM = depthInside(scene, area, index);
    if (depthM.value > SURELY_SDS * depthM.sd) certain.push(skater.id);
    else if (depthM.value >= -SURELY_SDS * depthM.sd) unsure.push(skater.id);
  });
  return {
    certainCount: certain.length,
    possibleCount: certain.length + unsure.length,
    certain,
    unsure,
  };
};

/**
 * How deep a place is inside a convex area: distance to the line of its nearest edge, metres, negative outside. By
 * definition of the distance to a line; the area convex, its corners anticlockwise.
 */
export const depthInside = (scene: FrozenScene, area: ConvexArea, place: PlaceIndex): Estimate => {
  const at = placeOf(scene, place);
  let depthM = Number.POSITIVE_INFINITY;
  let inward: readonly [number, number] = [0, 0];
  area.forEach((from, index) => {
    const to = area[(index + 1) % area.length]!;
    const lengthM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
    if (lengthM === 0) return;
    const normal = [-(to.yM - from.yM) / lengthM, (to.xM - from.xM) / lengthM] as const;
    const insideM = normal[0] * (at.xM - from.xM) + normal[1] * (at.yM - from.yM);
    if (insideM >= depthM) return;
    depthM = insideM;
    inward = normal;
  });
  return sceneEstimate(scene, depthM, [[place, inward[0], inward[1]]]);
};
