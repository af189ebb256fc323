import type { Side } from '../units/ends.ts';
import type { SkaterModel } from './model.ts';
import { RACE_ROWS } from './race-rows.ts';
import type { SkaterState, TouchPower } from './reach.ts';

/** One who races for a puck: motion, powers, and how surely and quickly the puck is controlled on arrival. */
export interface Contestant {
  readonly side: Side;
  readonly state: SkaterState;
  readonly power: TouchPower;
  /** Spread of the arrival time, s (standard deviation of a logistic). */
  readonly spreadS: number;
  /** Rate at which a puck within reach is brought under control, 1/s. */
  readonly controlRatePerS: number;
}

/**
 * A skater of a level (or with own tests) as a contestant; goalies control quicker by the row `goalieRateFactor`. Source:
 * the rows of the level.
 */
export const contestantOf = (
  side: Side,
  state: SkaterState,
  model: SkaterModel,
  kind: 'skater' | 'goalie' = 'skater',
): Contestant => ({
  side,
  state,
  power: model,
  spreadS: model.spreadS,
  controlRatePerS: model.controlRatePerS * (kind === 'goalie' ? RACE_ROWS.goalieRateFactor.value : 1),
});
