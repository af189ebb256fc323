import type { LineId } from '../rink/lines.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { Outcome } from './outcome.ts';
import { MOST_SAMPLES, mergeWhereWhen, type WhereWhen } from './where-when.ts';

/**
 * What came of many reps: counts, and where and when. Plain values of whole numbers, so that it can be sent between threads,
 * and parts merge in any order to the same bytes.
 */
export interface ManyTally {
  readonly seed: number;
  readonly repCount: number;
  /** Sum of the reps' durations, and of their squares, in milliseconds. */
  readonly sumMs: number;
  readonly sumMsMs2: number;
  /** Every pass act of the drill, in the order of the spots. */
  readonly passes: readonly PassTally[];
  /** Every chase and steal of the drill. */
  readonly contests: readonly ContestTally[];
  readonly shots: readonly ShotTally[];
  /** Every line across the sheet: when the puck first crossed it, and who was level with it then. */
  readonly lines: readonly LineTally[];
  /** As they were asked for. */
  readonly outcomes: readonly OutcomeTally[];
}

export interface PassTally {
  readonly spot: SpotId;
  readonly act: ActId;
  readonly to: SpotId;
  readonly madeCount: number;
  readonly cutOffBy: Readonly<Record<SpotId, number>>;
  readonly received: WhereWhen;
  readonly cutOff: WhereWhen;
  /** Those that went by, where it is known how near; the others of `madeCount` went by too. */
  readonly missed: WhereWhen;
}

export interface ContestTally {
  readonly spot: SpotId;
  readonly act: ActId;
  readonly whom: SpotId;
  readonly kind: 'chase' | 'steal';
  readonly startedCount: number;
  /** Caught, or for a steal won from the stick. */
  readonly won: WhereWhen;
  /** Knocked off the stick, and nobody's at first. */
  readonly loosened: WhereWhen;
}

export interface ShotTally {
  readonly spot: SpotId;
  readonly act: ActId;
  readonly taken: WhereWhen;
  readonly goal: WhereWhen;
  readonly save: WhereWhen;
  readonly wide: WhereWhen;
}

export interface LineTally {
  readonly line: LineId;
  readonly crossed: WhereWhen;
  /** Reps in which the skater was level with the puck when it crossed. */
  readonly levelCount: Readonly<Record<SpotId, number>>;
}

export interface OutcomeTally {
  readonly outcome: Outcome;
  /** Reps that never came to where it is asked. Every rep that is in none of the three is a no. */
  readonly unaskedCount: number;
  readonly yes: WhereWhen;
  readonly other: WhereWhen;
}

/** Two parts of one many-run: the same drill, seed and outcomes, other reps. Throws when they cannot be parts of one. */
export const mergeTallies = (a: ManyTally, b: ManyTally): ManyTally => {
  if (a.seed !== b.seed) throw new Error(`tallies of seeds ${a.seed} and ${b.seed} are not of one many-run`);
  return {
    seed: a.seed,
    repCount: a.repCount + b.repCount,
    sumMs: a.sumMs + b.sumMs,
    sumMsMs2: a.sumMsMs2 + b.sumMsMs2,
    passes: pairs('passes', a.passes, b.passes, (one, other) => ({
      ...one,
      madeCount: one.madeCount + other.madeCount,
      cutOffBy: mergeCounts(one.cutOffBy, other.cutOffBy),
      received: mergeWhereWhen(one.received, other.received),
      cutOff: mergeWhereWhen(one.cutOff, other.cutOff),
      missed: mergeWhereWhen(one.missed, other.missed),
    })),
    contests: pairs('contests', a.contests, b.contests, (one, other) => ({
      ...one,
      startedCount: one.startedCount + other.startedCount,
      won: mergeWhereWhen(one.won, other.won),
      loosened: mergeWhereWhen(one.loosened, other.loosened),
    })),
    shots: pairs('shots', a.shots, b.shots, (one, other) => ({
      ...one,
      taken: mergeWhereWhen(one.taken, other.taken),
      goal: mergeWhereWhen(one.goal, other.goal),
      save: mergeWhereWhen(one.save, other.save),
      wide: mergeWhereWhen(one.wide, other.wide),
    })),
    lines: pairs('lines', a.lines, b.lines, (one, other) => ({
      ...one,
      crossed: mergeWhereWhen(one.crossed, other.crossed),
      levelCount: mergeCounts(one.levelCount, other.levelCount),
    })),
    outcomes: pairs('outcomes', a.outcomes, b.outcomes, (one, other) => ({
      ...one,
      unaskedCount: one.unaskedCount + other.unaskedCount,
      yes: mergeWhereWhen(one.yes, other.yes, MOST_SAMPLES),
      other: mergeWhereWhen(one.other, other.other, MOST_SAMPLES),
    })),
  };
};

const pairs = <Part>(
  name: string,
  a: readonly Part[],
  b: readonly Part[],
  merge: (one: Part, other: Part) => Part,
): readonly Part[] => {
  if (a.length !== b.length) throw new Error(`${a.length} and ${b.length} ${name} are not of one many-run`);
  return a.map((one, i) => merge(one, b[i]!));
};

/** Keys in the order of the alphabet, so that the order of merging does not show. */
const mergeCounts = (
  a: Readonly<Record<SpotId, number>>,
  b: Readonly<Record<SpotId, number>>,
): Readonly<Record<SpotId, number>> =>
  Object.fromEntries(
    ([...new Set([...Object.keys(a), ...Object.keys(b)])] as SpotId[])
      .sort()
      .map(spot => [spot, (a[spot] ?? 0) + (b[spot] ?? 0)]),
  );
