import type { ConvexArea } from '../film/numbers-in.ts';
import type { Rink } from '../rink/rink.ts';
import { houseOf } from '../rink/zones.ts';
import { type End, otherEnd } from '../units/ends.ts';
import type { Zone } from './standard.ts';

/**
 * A zone as a convex area, metres, its corners anticlockwise, when we attack `attacks`; the same places as
 * `isInZone`, as edges that a distance can be taken from. Null for `picture`, which is no area of the ice. Source: the
 * rink's own lines, as `isInZone`.
 */
export const zoneAreaOf = (rink: Rink, zone: Zone, attacks: End): ConvexArea | null => {
  const { layout, boards } = rink;
  const endXM = boards.lengthM / 2;
  const sideYM = boards.widthM / 2;
  const lineXM = layout.blueLineInnerXM;
  const endZone = (end: End) =>
    end === 'plusX' ? strip(lineXM, endXM, sideYM) : strip(-endXM, -lineXM, sideYM);
  switch (zone) {
    case 'picture':
      return null;
    case 'middleLane':
      return strip(-endXM, endXM, layout.endSpotM.yM);
    case 'neutralZone':
      return strip(-lineXM, lineXM, sideYM);
    case 'theirZone':
      return endZone(attacks);
    case 'ourZone':
      return endZone(otherEnd(attacks));
    case 'house':
      return houseOf(rink, otherEnd(attacks));
  }
};

const strip = (fromXM: number, toXM: number, halfYM: number): ConvexArea => [
  { xM: fromXM, yM: -halfYM },
  { xM: toXM, yM: -halfYM },
  { xM: toXM, yM: halfYM },
  { xM: fromXM, yM: halfYM },
];
