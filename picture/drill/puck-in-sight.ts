import type { DrillPlan, IcePoint, PuckPlace } from '@icewright/engine';
import { spotRadiusM } from '../ice/spot.ts';

/** On the stick, before the disc of who has it, metres at k = 1. */
const CLEAR_M = 0.24;

/**
 * Where a puck is drawn, metres on the ice: where it lies; under a skater's disc nobody would see it, so there it is drawn before
 * her, on her stick, where the rep begins with it too.
 */
export const puckInSight = (puck: PuckPlace, { spots }: DrillPlan, k: number): IcePoint => {
  const over = Object.values(spots).find(
    spot =>
      spot.kind === 'skater' &&
      Math.hypot(spot.atM.xM - puck.atM.xM, spot.atM.yM - puck.atM.yM) < spotRadiusM(spot, k),
  );
  if (over === undefined) return puck.atM;
  const reachM = spotRadiusM(over, k) + CLEAR_M * k;
  return {
    xM: over.atM.xM + reachM * Math.cos(over.facingRad),
    yM: over.atM.yM + reachM * Math.sin(over.facingRad),
  };
};
