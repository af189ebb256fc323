import { cutBy, rimOf } from '../film/ice-polygon.ts';
import type { ConvexArea } from '../film/numbers-in.ts';
import type { Rink } from '../rink/rink.ts';

/**
 * Is all ice of an area inside what a picture shows? Both convex, their corners anticlockwise, metres of the rink; an empty
 * picture shows nothing. Source: a convex part lies inside a convex area when all its corners do.
 */
export const isSeenWhole = (rink: Rink, area: ConvexArea, seenM: ConvexArea): boolean => {
  let ice = rimOf(rink.boards);
  for (const half of halvesOf(area)) ice = cutBy(ice, half);
  const shown = halvesOf(seenM);
  return (
    shown.length > 0 &&
    ice.every(({ xM, yM }) => shown.every(([a, b, c]) => a * xM + b * yM + c >= -ROUNDING_M))
  );
};

/** Corners that both have lie on the edge itself, but for the last digits. */
const ROUNDING_M = 1e-6;

/** The half planes whose common part a convex area is, as [a, b, c] of a·x + b·y + c ≥ 0, in metres from the edge. */
const halvesOf = (area: ConvexArea): [number, number, number][] =>
  area.flatMap((from, index) => {
    const to = area[(index + 1) % area.length]!;
    const [dxM, dyM] = [to.xM - from.xM, to.yM - from.yM];
    const lengthM = Math.hypot(dxM, dyM);
    if (lengthM === 0) return [];
    const [a, b] = [-dyM / lengthM, dxM / lengthM];
    return [[a, b, -(a * from.xM + b * from.yM)] as [number, number, number]];
  });
