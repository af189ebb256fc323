import { type None, noneBecause } from '../units/none.ts';
import type { IcePoint, IceVelocity } from '../units/points.ts';
import type { SprintPower } from './sprint.ts';
import { nextTouchChangeS } from './touch.ts';

/** Where a skater is and how it moves. */
export interface SkaterState {
  readonly atM: IcePoint;
  readonly velocityMps: IceVelocity;
}

/** A disc on the ice. */
export interface ReachDisc {
  readonly centreM: IcePoint;
  readonly radiusM: number;
}

export interface TouchPower extends SprintPower {
  readonly reactionS: number;
  readonly reachM: number;
}

/** A stretch of time in which a point can be touched; `toS` null: never lost again. */
export interface TouchInterval {
  readonly fromS: number;
  readonly toS: number | null;
}

/**
 * Everywhere the body can be `timeS` seconds from now, without the stick: exact for v̇ = (V·u − v)/τ, |u| ≤ 1.
 * Until `reactionS` the skater coasts. Source: Fujimura & Sugihara 2005, Systems and Computers in Japan 36(6):49.
 * Turning is as free as this law makes it; V/τ is within 16 % of the sideways acceleration from U14 up.
 */
export const reachSetAt = (
  state: SkaterState,
  power: SprintPower,
  timeS: number,
  reactionS = 0,
): ReachDisc => {
  const coastS = Math.min(timeS, reactionS);
  const s = Math.max(0, timeS - reactionS);
  const eased = -power.tauS * Math.expm1(-s / power.tauS);
  const glideS = coastS + eased;
  return {
    centreM: {
      xM: state.atM.xM + state.velocityMps.xMps * glideS,
      yM: state.atM.yM + state.velocityMps.yMps * glideS,
    },
    radiusM: power.topSpeedMps * (s - eased),
  };
};

/**
 * Earliest time ≥ reaction at which the skater's stick can be on a point that stays where it is, seconds from now.
 * A stick that passes the point before its owner has reacted does not count. None only for a skater with no speed, and when that is surely not
 * before `notAfterS`.
 * Source: Fujimura & Sugihara 2005, as `reachSetAt`.
 */
export const timeTo = (
  state: SkaterState,
  power: TouchPower,
  pointM: IcePoint,
  reactionS: number = power.reactionS,
  reachM: number = power.reachM,
  notAfterS = Number.POSITIVE_INFINITY,
): number | None<'neverGetsThere'> => {
  const { xMps: vx, yMps: vy } = state.velocityMps;
  const dx = pointM.xM - state.atM.xM - vx * reactionS;
  const dy = pointM.yM - state.atM.yM - vy * reactionS;
  if (dx * dx + dy * dy <= reachM * reachM) return reactionS;
  const beforeS = notAfterS - reactionS;
  const sinceS = nextTouchChangeS(0, 1, dx, dy, vx, vy, power.topSpeedMps, power.tauS, reachM, beforeS);
  return Number.isNaN(sinceS) ? noneBecause('neverGetsThere') : reactionS + sinceS;
};

/**
 * All stretches of time ≥ reaction in which the point can be touched, seconds from now, in order. A skater at speed passes
 * a near point and has to come back for it. Empty only for a skater with no speed. Source: as `timeTo`.
 */
export const touchIntervals = (
  state: SkaterState,
  power: TouchPower,
  pointM: IcePoint,
  reactionS: number = power.reactionS,
  reachM: number = power.reachM,
): readonly TouchInterval[] => {
  const { xMps: vx, yMps: vy } = state.velocityMps;
  const dx = pointM.xM - state.atM.xM - vx * reactionS;
  const dy = pointM.yM - state.atM.yM - vy * reactionS;
  const next = (fromS: number, sense: 1 | -1): number =>
    nextTouchChangeS(fromS, sense, dx, dy, vx, vy, power.topSpeedMps, power.tauS, reachM);
  const intervals: TouchInterval[] = [];
  let fromS = dx * dx + dy * dy <= reachM * reachM ? 0 : next(0, 1);
  while (!Number.isNaN(fromS)) {
    const toS = next(fromS, -1);
    const lost = !Number.isNaN(toS);
    intervals.push({ fromS: reactionS + fromS, toS: lost ? reactionS + toS : null });
    fromS = lost ? next(toS, 1) : Number.NaN;
  }
  return intervals;
};
