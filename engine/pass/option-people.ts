import type { IceVelocity } from '../units/points.ts';
import type { LaneOpponent } from './lane.ts';
import type { OptionSkater } from './option-parts.ts';
import { PASS_ROWS } from './pass-rows.ts';

const STANDING: IceVelocity = { xMps: 0, yMps: 0 };

export const velocityOf = (skater: OptionSkater): IceVelocity => skater.velocityMps ?? STANDING;

/**
 * Spread of a skater's arrival, s. A velocity not known within σ moves where the skater glides to by σ·τ; skating that off takes σ·τ/V,
 * and only the part along the way counts (÷√2). Row `unknownSpeedSdMps`; first order.
 */
export const arrivalSpreadOf = (skater: OptionSkater): number => {
  const { spreadS, tauS, topSpeedMps } = skater.model;
  if (skater.velocityMps) return spreadS;
  return Math.hypot(spreadS, (PASS_ROWS.unknownSpeedSdMps.value * tauS) / topSpeedMps / Math.SQRT2);
};

export const laneOpponentOf = (skater: OptionSkater): LaneOpponent => ({
  id: skater.id,
  state: { atM: skater.atM, velocityMps: velocityOf(skater) },
  power: skater.model,
  spreadS: arrivalSpreadOf(skater),
});
