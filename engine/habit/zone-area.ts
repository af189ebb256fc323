import type { ConvexArea } from '../film/numbers-in.ts';
import type { Rink } from '../rink/rink.ts';
import type { End } from '../units/ends.ts';
import type { Zone } from './standard.ts';

/**
 * The zone on this sheet when we attack `attacks`, as a convex area, metres. Zones end at the blue lines' outer edges
 * seen from the goal: the line belongs to the zone the puck is in, and here to the neutral one. The house runs from
 * our posts to the end spots and up to the tops of the circles; coaches do not agree on its exact shape, and no rule
 * book has one (facts: a league's statistics bureau, USA Today, 23 Feb 2003). Null for `picture`, which is no area.
 */
export const zoneAreaOf = (rink: Rink, zone: Zone, attacks: End): ConvexArea | null => {
  const { layout, boards } = rink;
  const endXM = boards.lengthM / 2;
  const sideYM = boards.widthM / 2;
  const spotM = layout.endSpotM;
  switch (zone) {
    case 'picture':
      return null;
    case 'middleLane':
      return strip(-endXM, endXM, spotM.yM);
    case 'neutralZone':
      return strip(-layout.blueLineOuterXM, layout.blueLineOuterXM, sideYM);
    case 'theirZone':
      return turned(strip(layout.blueLineOuterXM, endXM, sideYM), attacks);
    case 'ourZone':
      return turned(strip(-endXM, -layout.blueLineOuterXM, sideYM), attacks);
    case 'house': {
      const topXM = spotM.xM - layout.circleRadiusM;
      const half = [
        { xM: -layout.goalLineXM, yM: -layout.postCentreYM },
        { xM: -spotM.xM, yM: -spotM.yM },
        { xM: -topXM, yM: -spotM.yM },
      ];
      const other = half.map(({ xM, yM }) => ({ xM, yM: -yM })).reverse();
      return turned([...half, ...other], attacks);
    }
  }
};

const strip = (fromXM: number, toXM: number, halfYM: number): ConvexArea => [
  { xM: fromXM, yM: -halfYM },
  { xM: toXM, yM: -halfYM },
  { xM: toXM, yM: halfYM },
  { xM: fromXM, yM: halfYM },
];

/** Areas above are drawn for an attack towards +x; the other end is a half turn, never a mirror. */
const turned = (area: ConvexArea, attacks: End): ConvexArea =>
  attacks === 'plusX' ? area : area.map(({ xM, yM }) => ({ xM: -xM, yM: -yM }));
