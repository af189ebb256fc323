import { puckAt } from './path.ts';
import type { PuckPath } from './path-parts.ts';
import { slideDistanceAtTime } from './slide.ts';

/** A place on the ice that is changed in place, metres. */
export interface Place {
  xM: number;
  yM: number;
}

/** Sets the place to where the puck is `afterS` seconds after its release, clamped to the path: `puckAt` without its garbage. */
export const placeOnPath = (path: PuckPath, afterS: number, place: Place): void => {
  const { legs } = path;
  let index = legs.length - 1;
  while (index > 0 && legs[index]!.startS > afterS) index--;
  const leg = legs[index]!;
  if (leg.kind === 'slide') {
    const legS = Math.min(Math.max(0, afterS - leg.startS), leg.durationS);
    const distanceM = slideDistanceAtTime(leg.slowing, leg.startMps, legS);
    place.xM = leg.startM.xM + distanceM * leg.direction.xM;
    place.yM = leg.startM.yM + distanceM * leg.direction.yM;
  } else {
    const { atM } = puckAt(path, afterS);
    place.xM = atM.xM;
    place.yM = atM.yM;
  }
};
