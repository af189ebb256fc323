import type { Body } from '../drill/in-boards.ts';
import type { Push } from '../motion/reactive-step.ts';
import type { Place } from '../puck/place-on-path.ts';
import {
  BEHIND_REACH_RATIO,
  CONTEST_BEHIND_RATIO,
  CONTEST_RATE_PER_S,
  CONTEST_SIDE_RATIO,
  CONTEST_SPEED_MPS,
  LIFTED_FROM_M,
  SIDE_REACH_RATIO,
} from './contest-rows.ts';

/** One opponent and the carrier: bodies (m, m/s), facings as unit vectors, the puck, and the opponent's reach (m). */
export interface ContestView {
  by: Body;
  readonly byFacing: Push;
  reachM: number;
  lungeReachM: number;
  whom: Body;
  readonly whomFacing: Push;
  puck: Place;
}

/** What a team can fit to its own tagged contests. */
export interface ContestRates {
  /** Contests won a second by a stick that is on the puck, from the front, at the same speed. */
  readonly ratePerS: number;
  readonly sideRatio: number;
  readonly behindRatio: number;
}

export const CONTEST_RATES: ContestRates = {
  ratePerS: CONTEST_RATE_PER_S.value,
  sideRatio: CONTEST_SIDE_RATIO.value,
  behindRatio: CONTEST_BEHIND_RATIO.value,
};

/**
 * How likely the carrier is to lose the puck to this opponent in the next moment, per second (≥ 0): rate × reach × angle ×
 * speed. The puck is lost once the sum over time reaches −ln(1 − u), u uniform in [0, 1): a chance that grows with the time in
 * reach and with nothing else.
 * - Reach (0–1): 1 where two hands reach, falling evenly to 0 at the lunge; nearest point of the carrier's stick from
 *   `LIFTED_FROM_M` to the puck. Both reaches are full ahead and shorter to the sides and behind.
 * - Angle: where the opponent is as the carrier faces; from the front 1, from the side (stick on puck) and from behind (stick
 *   lift) by their ratios, in between by the cosine.
 * - Speed: half at `CONTEST_SPEED_MPS` of relative speed, 1 / (1 + (v/v½)²).
 * A mirrored view has the same answer: the drill does not know left- and right-handers. The form and its figures are
 * estimates; a constant hazard is the plainest law of waiting (Cox & Oakes 1984, Analysis of Survival Data, ch. 2).
 */
export const contestPerS = (view: ContestView, rates: ContestRates = CONTEST_RATES): number => {
  const reach = reachFactor(view);
  if (reach === 0) return 0;
  const { by, whom } = view;
  const x = by.xMps - whom.xMps;
  const y = by.yMps - whom.yMps;
  return (
    rates.ratePerS * reach * speedFactor(Math.sqrt(x * x + y * y)) * angleFactor(cosAtCarrier(view), rates)
  );
};

/** Factor by where the opponent is: cos of the angle between the carrier's facing and the way to the opponent. */
export const angleFactor = (cos: number, rates: ContestRates): number =>
  rates.sideRatio ** (1 - Math.abs(cos)) * (cos < 0 ? rates.behindRatio ** -cos : 1);

/** Factor by relative speed, m/s ≥ 0. */
export const speedFactor = (relativeMps: number): number =>
  1 / (1 + (relativeMps / CONTEST_SPEED_MPS.value) ** 2);

const cosAtCarrier = ({ by, whom, whomFacing }: ContestView): number => {
  const x = by.xM - whom.xM;
  const y = by.yM - whom.yM;
  const size = Math.sqrt(x * x + y * y);
  return size > 0 ? (x * whomFacing.x + y * whomFacing.y) / size : 1;
};

/** Nobody's stick comes to a puck that is farther off than this, metres: most opponents need no more than this comparison. */
export const CONTEST_FAR_M = 4;
const FAR_M2 = CONTEST_FAR_M ** 2;

const reachFactor = (view: ContestView): number => {
  const { by, byFacing, whom, whomFacing, puck } = view;
  const toX = puck.xM - by.xM;
  const toY = puck.yM - by.yM;
  if (toX * toX + toY * toY > FAR_M2) return 0;
  // Nearest point of the stick: from its middle, before the carrier, to the puck.
  const midX = whom.xM + LIFTED_FROM_M.value * whomFacing.x;
  const midY = whom.yM + LIFTED_FROM_M.value * whomFacing.y;
  const stickX = puck.xM - midX;
  const stickY = puck.yM - midY;
  const stick2 = stickX * stickX + stickY * stickY;
  const share = stick2 > 0 ? ((by.xM - midX) * stickX + (by.yM - midY) * stickY) / stick2 : 0;
  const at = Math.min(1, Math.max(0, share));
  const x = midX + at * stickX - by.xM;
  const y = midY + at * stickY - by.yM;
  const apartM = Math.sqrt(x * x + y * y);
  const cos = apartM > 0 ? (x * byFacing.x + y * byFacing.y) / apartM : 1;
  const shape = reachShape(cos);
  const lungeM = shape * view.lungeReachM;
  if (apartM >= lungeM) return 0;
  const fullM = shape * view.reachM;
  return apartM <= fullM ? 1 : (lungeM - apartM) / (lungeM - fullM);
};

// The ellipse-like oval a₀ + a₁ cos φ + a₂ cos 2φ through the three given reaches.
const FIRST = (1 - BEHIND_REACH_RATIO.value) / 2;
const SECOND = ((1 + BEHIND_REACH_RATIO.value) / 2 - SIDE_REACH_RATIO.value) / 2;
const CONSTANT = (1 + BEHIND_REACH_RATIO.value) / 2 - SECOND;

/** Reach in a direction / reach to the front, by the cosine of the angle from the facing. */
export const reachShape = (cos: number): number => CONSTANT + FIRST * cos + SECOND * (2 * cos * cos - 1);
