import type { Playable } from '../drill/playable.ts';
import { type CounterRandom, counterRandomOf } from '../random/counter-random.ts';
import type { Chance, Occasion } from '../run/chance.ts';
import { modelOf, type SkaterModel } from '../skater/model.ts';
import type { SpotId } from '../units/ids.ts';
import {
  EXPECTED_REACTION_SD_RATIO,
  OWN_SPEED_SD_RATIO,
  REACTION_SD_RATIO,
  SPREAD_CUT_SD,
  TAU_SD_RATIO,
} from './many-rows.ts';

/** Skaters measured by the team's own timed tests, by the spot they stand on. */
export type OwnModels = Readonly<Partial<Record<SpotId, SkaterModel>>>;

/** Everything human in one rep: who skates, and what chance brings. */
export interface HumanDraw {
  readonly models: Readonly<Record<SpotId, SkaterModel>>;
  readonly chance: Chance;
}

/**
 * The people and the luck of rep `rep` (whole, ≥ 0) under this seed (any finite number). Top speed, time constant and both
 * reactions are normal about the level's middle, or about the own model where there is one, cut at three standard
 * deviations and independent of each other; everything else of a skater is as the level has it. The answer depends on seed, rep and
 * the place of the spot in the order of ranks alone: a plan that was changed meets the same people and the same luck (common
 * random numbers). Same bytes on every machine.
 */
export const humanDraw = (playable: Playable, seed: number, rep: number, own: OwnModels = {}): HumanDraw => {
  const random = counterRandomOf(seed, rep);
  const models = {} as Record<SpotId, SkaterModel>;
  playable.spots.forEach((spot, index) => {
    const measured = own[spot.id];
    const middle = measured ?? playable.level.model;
    const speedSd = measured ? OWN_SPEED_SD_RATIO.value : middle.topSpeedSdRatio;
    const tauSd = measured ? OWN_SPEED_SD_RATIO.value : TAU_SD_RATIO.value;
    models[spot.id] = modelOf({
      ...middle,
      topSpeedMps: spread(random, index, 0, middle.topSpeedMps, speedSd),
      tauS: spread(random, index, 1, middle.tauS, tauSd),
      reactionS: spread(random, index, 2, middle.reactionS, REACTION_SD_RATIO.value),
      expectedReactionS: spread(random, index, 3, middle.expectedReactionS, EXPECTED_REACTION_SD_RATIO.value),
    });
  });
  return { models, chance: chanceOf(random) };
};

const OCCASIONS: readonly Occasion[] = ['passDirection', 'passSpeed', 'control', 'contest', 'shot'];
/** Keys of a skater's own powers; those of occasions come after. */
const POWERS = 8;

const chanceOf = (random: CounterRandom): Chance => {
  const keyOf = (occasion: Occasion): number => POWERS + OCCASIONS.indexOf(occasion);
  return {
    uniform: (spotIndex, occasion, nth) => random.uniform(spotIndex, keyOf(occasion), nth),
    normal: (spotIndex, occasion, nth) => random.normal(spotIndex, keyOf(occasion), nth),
  };
};

const spread = (
  random: CounterRandom,
  spotIndex: number,
  power: number,
  middle: number,
  sdRatio: number,
): number => {
  const most = SPREAD_CUT_SD.value;
  const deviate = Math.min(most, Math.max(-most, random.normal(spotIndex, power, 0)));
  return middle * (1 + sdRatio * deviate);
};
