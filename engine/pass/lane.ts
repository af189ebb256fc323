import { puckAt } from '../puck/path.ts';
import type { PuckPath } from '../puck/path-parts.ts';
import { type Place, placeOnPath } from '../puck/place-on-path.ts';
import { LOGISTIC_PER_SD } from '../skater/control-at.ts';
import { type SkaterState, type TouchPower, timeTo } from '../skater/reach.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { PASS_ROWS } from './pass-rows.ts';
import { lowestBetween } from './search-along.ts';

/** One who may cut a pass off. `spreadS`: how sure the arrival is (logistic, as a standard deviation), s. */
export interface LaneOpponent {
  readonly id: string;
  readonly state: SkaterState;
  readonly power: TouchPower;
  readonly spreadS: number;
}

/**
 * How near one opponent is to cutting the pass off. `marginS`: the least of (arrival at the puck's place − time) along the way; below
 * 0 the pass is cut off. Infinity for one who can never move there. `atM`, `timeS`: where and when.
 */
export interface LaneMargin {
  readonly id: string;
  readonly marginS: number;
  readonly atM: IcePoint;
  readonly timeS: number;
  readonly spreadS: number;
}

/** The puck's way is looked at in steps of this; the least is then narrowed down to a microsecond. */
const STEP_S = 0.04;
const FOR_ROUNDING_S = 1e-9;

/**
 * Margins of a pass against every opponent, smallest first, along `path` up to `untilS` (the meeting; seconds from the
 * release). An opponent's stick counts from his reaction on (`timeTo`). Times ≥ 0. Source: race of arrival times,
 * Spearman 2017 (MIT Sloan), with the reach of Fujimura & Sugihara 2005.
 */
export const laneMargins = (
  path: PuckPath,
  untilS: number,
  opponents: readonly LaneOpponent[],
): readonly LaneMargin[] =>
  opponents
    .map(opponent => marginOf(path, Math.min(untilS, path.endTimeS), opponent))
    .sort((one, other) => one.marginS - other.marginS);

const marginOf = (path: PuckPath, untilS: number, opponent: LaneOpponent): LaneMargin => {
  const place: Place = { xM: 0, yM: 0 };
  const { state, power } = opponent;
  /** The margin there; Infinity also when it is surely no less than `lessThanS`. */
  const marginAt = (timeS: number, lessThanS = Number.POSITIVE_INFINITY): number => {
    placeOnPath(path, timeS, place);
    const arrival = timeTo(
      state,
      power,
      place,
      power.reactionS,
      power.reachM,
      timeS + lessThanS + FOR_ROUNDING_S,
    );
    return isNone(arrival) ? Number.POSITIVE_INFINITY : arrival - timeS;
  };
  const steps = Math.max(2, Math.ceil(untilS / STEP_S));
  let bestStep = 0;
  let best = Number.POSITIVE_INFINITY;
  for (let step = 0; step <= steps; step++) {
    const margin = marginAt((untilS * step) / steps, best);
    if (margin < best) {
      best = margin;
      bestStep = step;
    }
  }
  const fromS = (untilS * Math.max(0, bestStep - 1)) / steps;
  const toS = (untilS * Math.min(steps, bestStep + 1)) / steps;
  const { at: refinedS, value: refined } = lowestBetween(timeS => marginAt(timeS), fromS, toS, 1e-6);
  const timeS = refined < best ? refinedS : (untilS * bestStep) / steps;
  return {
    id: opponent.id,
    marginS: Math.min(best, refined),
    atM: puckAt(path, timeS).atM,
    timeS,
    spreadS: opponent.spreadS,
  };
};

export const LANE_BANDS = ['open', 'contested', 'shut'] as const;
export type LaneBand = (typeof LANE_BANDS)[number];

/**
 * The band of a lane by the race for it: shut when an opponent's stick is there before the puck is past (`marginS` below 0),
 * open from `laneOpenFromS` to spare, contested between. Says the same as the margin it stands beside. Any margin,
 * seconds; the thresholds are rows. Our own bands.
 */
export const laneBandOfMargin = (marginS: number): LaneBand =>
  marginS < 0 ? 'shut' : marginS < PASS_ROWS.laneOpenFromS.value ? 'contested' : 'open';

/**
 * The band of a lane as coaches see it in a still picture: distance at the release from the puck's way to the nearest
 * opponent, everybody held still. `openM` is the level's lane width (row of the level), shut is the row `laneShutM`.
 * Both are estimates: show the band, never a percentage from it. Any margin in seconds.
 */
export const laneBand = (
  path: PuckPath,
  untilS: number,
  opponents: readonly { readonly atM: IcePoint }[],
  openM: number,
): { readonly band: LaneBand; readonly clearanceM: number } => {
  let clearanceM = Number.POSITIVE_INFINITY;
  const corners = [0, ...path.bounces.map(bounce => bounce.timeS), ...rimTimes(path), untilS]
    .filter(timeS => timeS <= untilS)
    .sort((one, other) => one - other)
    .map(timeS => puckAt(path, timeS).atM);
  for (const { atM } of opponents) {
    for (let index = 1; index < corners.length; index++) {
      clearanceM = Math.min(clearanceM, distanceToSegment(atM, corners[index - 1]!, corners[index]!));
    }
  }
  const shutM = PASS_ROWS.laneShutM.value;
  return { clearanceM, band: clearanceM < shutM ? 'shut' : clearanceM < openM ? 'contested' : 'open' };
};

/** A rim is followed in short straights. */
const rimTimes = (path: PuckPath): readonly number[] =>
  path.legs
    .filter(leg => leg.kind === 'rim')
    .flatMap(leg => Array.from({ length: 17 }, (_, n) => leg.startS + (leg.durationS * n) / 16));

const distanceToSegment = (pointM: IcePoint, fromM: IcePoint, toM: IcePoint): number => {
  const dx = toM.xM - fromM.xM;
  const dy = toM.yM - fromM.yM;
  const length = dx * dx + dy * dy;
  const into = (pointM.xM - fromM.xM) * dx + (pointM.yM - fromM.yM) * dy;
  const share = length > 0 ? Math.min(1, Math.max(0, into / length)) : 0;
  return Math.hypot(pointM.xM - fromM.xM - share * dx, pointM.yM - fromM.yM - share * dy);
};

/**
 * Chance that a pass is complete: for each opponent the chance that he is not there by then, a logistic of his margin with his spread
 * as standard deviation (the same law as `controlAt`), times the chance that the receiver controls the puck.
 * Opponents count as independent, which errs low when two stand together. Shares between 0 and 1; spread > 0 seconds.
 */
export const completionOf = (margins: readonly LaneMargin[], receiverControl: number): number =>
  margins.reduce(
    (chance, margin) =>
      margin.marginS === Number.POSITIVE_INFINITY
        ? chance
        : chance / (1 + Math.exp((-LOGISTIC_PER_SD * margin.marginS) / margin.spreadS)),
    receiverControl,
  );
