import type { PuckPath } from '../puck/path-parts.ts';
import { slideTimeAtDistance } from '../puck/slide.ts';
import type { Net } from '../rink/rink.ts';

/**
 * When the path first comes to rest in a net, seconds after the release: half the net's depth behind its mouth, entered from
 * the front between the posts. Infinity when it does not. The path is one that comes off the nets' frames (`pathOffNets`).
 */
export const firstInNetS = (path: PuckPath, nets: readonly Net[]): number => {
  for (const leg of path.legs) {
    if (leg.kind !== 'slide') continue;
    for (const net of nets) {
      const facingX = Math.cos(net.facingRad);
      const facingY = Math.sin(net.facingRad);
      const into = -(leg.direction.xM * facingX + leg.direction.yM * facingY);
      const startX = leg.startM.xM - net.atM.xM;
      const startY = leg.startM.yM - net.atM.yM;
      const beforeM = startX * facingX + startY * facingY;
      if (into <= 0 || beforeM <= 0) continue;
      const toMouthM = beforeM / into;
      const acrossM = Math.abs(
        (startX + toMouthM * leg.direction.xM) * facingY - (startY + toMouthM * leg.direction.yM) * facingX,
      );
      if (acrossM >= net.openingM / 2) continue;
      const mouthS = slideTimeAtDistance(leg.slowing, leg.startMps, toMouthM);
      if (!(mouthS <= leg.durationS)) continue;
      const restS = slideTimeAtDistance(leg.slowing, leg.startMps, toMouthM + net.depthM / (2 * into));
      return leg.startS + (restS <= leg.durationS ? restS : mouthS);
    }
  }
  return Number.POSITIVE_INFINITY;
};
