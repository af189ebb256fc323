import { type None, noneBecause } from '../units/none.ts';
import type { PuckModel } from './puck-model.ts';
import { PUCK_ROWS } from './puck-rows.ts';
import { slideDistanceAtTime, slideSpeedAtTime, slowingOf } from './slide.ts';

/** A pass through the air: how long and far it flies, and how fast it slides on after landing flat. */
export interface Saucer {
  readonly flightS: number;
  readonly carryM: number;
  readonly heightM: number;
  readonly landingMps: number;
}

/**
 * Saucer pass with `speedMps` along the ice that tops out at `heightM` above it (metres, > 0): air time 2√(2h/g), carry by
 * the air's drag alone, then the row `landingKeptRatio` of its speed. None: no height or no speed. Source: the thrown
 * body, air drag by the row of the puck.
 */
export const saucerOf = (
  model: PuckModel,
  speedMps: number,
  heightM: number,
): Saucer | None<'noHeight' | 'noSpeed'> => {
  if (!(heightM > 0)) return noneBecause('noHeight');
  if (!(speedMps > 0)) return noneBecause('noSpeed');
  const flightS = 2 * Math.sqrt((2 * heightM) / model.gravityMps2);
  const air = { constantMps2: 0, dragPerM: model.dragPerM };
  return {
    flightS,
    carryM: slideDistanceAtTime(air, speedMps, flightS),
    heightM,
    landingMps: PUCK_ROWS.landingKeptRatio.value * slideSpeedAtTime(air, speedMps, flightS),
  };
};

/**
 * Distance along the ice (m), height above it (m) and speed along it (m/s) at `timeS` ≥ 0 after release. Source: as
 * `saucerOf`.
 */
export const saucerAtTime = (
  model: PuckModel,
  saucer: Saucer,
  speedMps: number,
  timeS: number,
): { readonly distanceM: number; readonly heightM: number; readonly speedMps: number } => {
  if (timeS < saucer.flightS) {
    const air = { constantMps2: 0, dragPerM: model.dragPerM };
    return {
      distanceM: slideDistanceAtTime(air, speedMps, timeS),
      heightM: (model.gravityMps2 / 2) * timeS * (saucer.flightS - timeS),
      speedMps: slideSpeedAtTime(air, speedMps, timeS),
    };
  }
  const ice = slowingOf(model);
  const onIceS = timeS - saucer.flightS;
  return {
    distanceM: saucer.carryM + slideDistanceAtTime(ice, saucer.landingMps, onIceS),
    heightM: 0,
    speedMps: slideSpeedAtTime(ice, saucer.landingMps, onIceS),
  };
};
