import { levelOf } from '../skater/level.ts';
import type { LevelId } from '../skater/model.ts';
import type { SkatePower } from './skate-step.ts';
import { MIND_KEPT } from './track-rows.ts';

/** The powers that bound how a skater of a level is thought to move while he is followed, m/s and seconds. Source: the level's own rows, `MIND_KEPT`. */
export const skatePowerOf = (level: LevelId): SkatePower => {
  const { topSpeedMps, tauS } = levelOf(level).model;
  return { topSpeedMps, tauS, mindS: MIND_KEPT.value };
};
