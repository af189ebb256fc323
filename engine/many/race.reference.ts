import type { SkaterModel } from '../skater/model.ts';
import { TAU_SD_RATIO } from './many-rows.ts';

/** A straight race: who carries and how far it is until the puck is over the line, and how far the other one has to go by then. */
export interface Race {
  readonly model: SkaterModel;
  readonly carrierM: number;
  readonly chaserM: number;
  /** P(standard normal deviate < z), from whoever calls. */
  readonly normalBelow: (z: number) => number;
}

/**
 * Share of races in which the other has gone her way by the time the carrier has gone his, both from rest at full effort by the
 * sprint law x = V(t − τ(1 − e^(−t/τ))), with V and τ of both normal. For given V and τ of the carrier and τ of the other the
 * top speed she needs is x/(t − τ(1 − e^(−t/τ))), so that share is a normal tail; over the other three by Simpson's rule
 * between ±4 standard deviations. Knows nothing of runs.
 */
export const raceShare = ({ model, carrierM, chaserM, normalBelow }: Race): number => {
  const { topSpeedMps, tauS, topSpeedSdRatio, carryRatio } = model;
  return overNormal(zSpeed =>
    overNormal(zTau => {
      const speed = topSpeedMps * carryRatio * (1 + topSpeedSdRatio * zSpeed);
      const timeS = sprintTime(speed, tauS * (1 + TAU_SD_RATIO.value * zTau), carrierM);
      return overNormal(zOther => {
        const tau = tauS * (1 + TAU_SD_RATIO.value * zOther);
        const needed = chaserM / (timeS - tau * (1 - Math.exp(-timeS / tau)));
        return 1 - normalBelow((needed / topSpeedMps - 1) / topSpeedSdRatio);
      });
    }),
  );
};

const CELLS = 32;
const REACH_SD = 4;

const overNormal = (of: (z: number) => number): number => {
  let sum = 0;
  for (let i = 0; i <= CELLS; i++) {
    const z = -REACH_SD + (2 * REACH_SD * i) / CELLS;
    const weight = i === 0 || i === CELLS ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * of(z) * Math.exp((-z * z) / 2);
  }
  return (sum * 2 * REACH_SD) / (3 * CELLS * Math.sqrt(2 * Math.PI));
};

const sprintTime = (speed: number, tau: number, distanceM: number): number => {
  let low = 0;
  let high = 60;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (speed * (middle - tau * (1 - Math.exp(-middle / tau))) < distanceM) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
