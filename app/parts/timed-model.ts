import type { Skater } from '@icewright/book';
import { fitSprint, isNone, type SkaterModel } from '@icewright/engine';

/** A skater's own sprint as it was timed. */
export interface TimedSprint {
  readonly topSpeedMps: number;
  readonly tauS: number;
  /** Standard errors of both; null with exactly three times. */
  readonly standardErrors: readonly [topSpeedMps: number, tauS: number] | null;
  readonly timesCount: number;
}

/** Slower or faster than these nobody of a team skates: a mistyped time is refused and not skated. Our choice, wide on purpose. */
const SPEED_MPS = [3, 13] as const;
const TAU_S = [0.3, 4] as const;

/** The sprint that fits the gate times; null without times, or where no sprint of a person does. */
export function timedSprintOf(timed: Skater['timed']): TimedSprint | null {
  if (timed === undefined) return null;
  const fit = fitSprint(
    timed.map(({ distanceM }) => distanceM),
    timed.map(({ timeS }) => timeS),
  );
  if (isNone(fit)) return null;
  const { topSpeedMps, tauS, standardErrors } = fit;
  const isPerson = isWithin(topSpeedMps, SPEED_MPS) && isWithin(tauS, TAU_S);
  if (!isPerson) return null;
  return {
    topSpeedMps,
    tauS,
    standardErrors: standardErrors === null ? null : [standardErrors[0], standardErrors[1]],
    timesCount: timed.length,
  };
}

/** The skater of a level with the speed and the time constant that were timed. */
export const timedModelOf = (sprint: TimedSprint, level: SkaterModel): SkaterModel => ({
  ...level,
  topSpeedMps: sprint.topSpeedMps,
  tauS: sprint.tauS,
});

const isWithin = (value: number, [least, most]: readonly [number, number]): boolean =>
  value >= least && value <= most;
