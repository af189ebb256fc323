import type { SprintPower } from '../skater/sprint.ts';
import { CHASE_LOOK_S } from './drill-rows.ts';
import type { Body } from './in-boards.ts';
import type { Push } from './reactive-step.ts';

/**
 * Sets the push of a chaser who wants to meet `whom`: straight at the place where the chaser's reach disc first takes in
 * a skater who keeps the present velocity. For a push that stays the same the chaser's middle after t is in the disc
 * with centre `c(t) = p + v·τ(1 − e^(−t/τ))` and radius `R(t) = V(t − τ(1 − e^(−t/τ)))`, so the first t with
 * `|q + w·t − c(t)| ≤ R(t) + reach` is the meeting, and its direction the push (Fujimura & Sugihara 2005; for a
 * chaser at steady speed this is the constant-bearing course). When there is no meeting within `CHASE_LOOK_S`, the push is towards where
 * `whom` will be then. The chaser does not know the drill: the future is only guessed from the present velocity.
 */
export const steerChase = (
  push: Push,
  chaser: Body,
  whom: Body,
  power: SprintPower,
  reachM: number,
): void => {
  const meetS = findMeetingS(chaser, whom, power, reachM);
  const drawnS = power.tauS * (1 - Math.exp(-meetS / power.tauS));
  const x = whom.xM + whom.xMps * meetS - chaser.xM - chaser.xMps * drawnS;
  const y = whom.yM + whom.yMps * meetS - chaser.yM - chaser.yMps * drawnS;
  const size = Math.sqrt(x * x + y * y);
  push.x = size > 0 ? x / size : 0;
  push.y = size > 0 ? y / size : 0;
};

const COARSE_STEPS = 8;
const REFINE_STEPS = 24;

/** First t in [0, look] at which the reach disc takes in the extrapolated skater; the end of the look when there is none. */
const findMeetingS = (chaser: Body, whom: Body, power: SprintPower, reachM: number): number => {
  const stepS = CHASE_LOOK_S.value / COARSE_STEPS;
  if (shortM(chaser, whom, power, reachM, 0) <= 0) return 0;
  let lowS = 0;
  for (let i = 1; i <= COARSE_STEPS; i++) {
    const highS = i * stepS;
    const short = shortM(chaser, whom, power, reachM, highS);
    if (short <= 0) return refine(chaser, whom, power, reachM, lowS, highS);
    lowS = highS;
  }
  return CHASE_LOOK_S.value;
};

const refine = (
  chaser: Body,
  whom: Body,
  power: SprintPower,
  reachM: number,
  lowS: number,
  highS: number,
): number => {
  let low = lowS;
  let high = highS;
  let shortLow = shortM(chaser, whom, power, reachM, low);
  let shortHigh = shortM(chaser, whom, power, reachM, high);
  for (let i = 0; i < REFINE_STEPS && high - low > 1e-6; i++) {
    // Regula falsi with the Illinois weight: a few evaluations, and the bracket is never lost.
    const at = low + ((high - low) * shortLow) / (shortLow - shortHigh);
    const short = shortM(chaser, whom, power, reachM, at);
    if (short > 0) {
      low = at;
      shortLow = short;
      shortHigh /= 2;
    } else {
      high = at;
      shortHigh = short;
      shortLow /= 2;
      if (short > -1e-9) break;
    }
  }
  return high;
};

/** How far the reach disc is still short of the extrapolated skater after `t` seconds, metres. */
const shortM = (chaser: Body, whom: Body, power: SprintPower, reachM: number, t: number): number => {
  const drawnS = power.tauS * (1 - Math.exp(-t / power.tauS));
  const x = whom.xM + whom.xMps * t - chaser.xM - chaser.xMps * drawnS;
  const y = whom.yM + whom.yMps * t - chaser.yM - chaser.yMps * drawnS;
  return Math.sqrt(x * x + y * y) - power.topSpeedMps * (t - drawnS) - reachM;
};
