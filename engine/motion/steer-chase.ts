import { CHASE_LOOK_S } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import type { SprintPower } from '../skater/sprint.ts';
import type { Push } from './reactive-step.ts';
import { STEP_S } from './stretch.ts';

/** What a chaser knows for looking ahead; `sightOf` makes it. */
export interface Sight {
  /** Way lost to the skater's own speed-up by each coarse time, `τ(1 − e^(−t/τ))`, seconds. */
  readonly drawnS: Float64Array;
  /** The meeting found last, seconds ahead: where the next search begins. */
  meetS: number;
}

export interface Chaser {
  readonly push: Push;
  readonly power: SprintPower;
  readonly model: { readonly lungeReachM: number };
  readonly sight: Sight;
}

const COARSE_STEPS = 8;
const COARSE_S = CHASE_LOOK_S.value / COARSE_STEPS;

export const sightOf = (tauS: number): Sight => ({
  drawnS: Float64Array.from(
    { length: COARSE_STEPS + 1 },
    (_, i) => tauS * (1 - Math.exp((-i * COARSE_S) / tauS)),
  ),
  meetS: Number.POSITIVE_INFINITY,
});

/**
 * Sets the push of a chaser who wants to meet `whom`: straight at the place where the chaser's reach disc (`withinM`) first takes in
 * a skater who keeps the present velocity. For a push that stays the same the chaser's middle after t is in the disc
 * with centre `c(t) = p + v·τ(1 − e^(−t/τ))` and radius `R(t) = V(t − τ(1 − e^(−t/τ)))`, so the first t with
 * `|q + w·t − c(t)| ≤ R(t) + reach` is the meeting, and its direction the push (Fujimura & Sugihara 2005; for a
 * chaser at steady speed this is the constant-bearing course). When there is no meeting within `CHASE_LOOK_S`, the push is towards where
 * `whom` will be then. The chaser does not know the drill: the future is only guessed from the present velocity.
 */
export const steerChase = (
  chaser: Chaser,
  self: Body,
  whom: Body,
  withinM = chaser.model.lungeReachM,
): void => {
  const { push, power, sight } = chaser;
  const meetS = findMeetingS(chaser, self, whom, withinM);
  sight.meetS = meetS;
  const drawnS = power.tauS * (1 - Math.exp(-meetS / power.tauS));
  const x = whom.xM + whom.xMps * meetS - self.xM - self.xMps * drawnS;
  const y = whom.yM + whom.yMps * meetS - self.yM - self.yMps * drawnS;
  const size = Math.sqrt(x * x + y * y);
  push.x = size > 0 ? x / size : 0;
  push.y = size > 0 ? y / size : 0;
};

const REFINE_STEPS = 40;
const EXACT_M = 1e-9;

/**
 * First t in [0, look] at which the reach disc takes in the extrapolated skater; the end of the look when there is none.
 * Coarse times bracket it; inside, Newton from where the last step's meeting has moved to, halving when it would leave the bracket.
 */
const findMeetingS = (chaser: Chaser, self: Body, whom: Body, withinM: number): number => {
  const { power, sight } = chaser;
  const { topSpeedMps, tauS } = power;
  const apartX = whom.xM - self.xM;
  const apartY = whom.yM - self.yM;
  let low = 0;
  let high = 0;
  for (let i = 0; ; i++) {
    high = i * COARSE_S;
    const drawnS = sight.drawnS[i]!;
    const x = apartX + whom.xMps * high - self.xMps * drawnS;
    const y = apartY + whom.yMps * high - self.yMps * drawnS;
    if (Math.sqrt(x * x + y * y) - topSpeedMps * (high - drawnS) - withinM <= 0) break;
    if (i === COARSE_STEPS) return CHASE_LOOK_S.value;
    low = high;
  }
  if (high === 0) return 0;
  const expectedS = sight.meetS - STEP_S;
  let at = expectedS > low && expectedS < high ? expectedS : (low + high) / 2;
  for (let i = 0; i < REFINE_STEPS; i++) {
    const keeps = Math.exp(-at / tauS);
    const drawnS = tauS * (1 - keeps);
    const x = apartX + whom.xMps * at - self.xMps * drawnS;
    const y = apartY + whom.yMps * at - self.yMps * drawnS;
    const size = Math.sqrt(x * x + y * y);
    /** How far the reach disc is still short of the extrapolated skater, and how quickly that changes. */
    const shortM = size - topSpeedMps * (at - drawnS) - withinM;
    if (Math.abs(shortM) < EXACT_M) return at;
    const awayMps = x * (whom.xMps - self.xMps * keeps) + y * (whom.yMps - self.yMps * keeps);
    const rateMps = awayMps / size - topSpeedMps * (1 - keeps);
    if (shortM > 0) low = at;
    else high = at;
    const newton = at - shortM / rateMps;
    at = newton > low && newton < high ? newton : (low + high) / 2;
  }
  return high;
};
