import type { DrillPlan } from '../drill/drill.ts';
import { playableOf } from '../drill/playable.ts';
import type { Rink } from '../rink/rink.ts';
import { type RunMemory, runMemory } from '../run/recorder.ts';
import type { Level } from '../skater/level.ts';
import type { Tally } from '../statistics/rates.ts';
import { type FreeQuantity, planWith } from './free-quantity.ts';
import type { OwnModels } from './human-draw.ts';
import { manyRun } from './many-run.ts';
import type { Outcome } from './outcome.ts';
import { type TuneAnswer, type TuneSetting, tuneSteps } from './tune-steps.ts';

/** What is tuned: a drill on its sheet, what may move, and what is wanted. */
export interface Tunable {
  readonly plan: DrillPlan;
  readonly rink: Rink;
  readonly level: Level;
  readonly free: FreeQuantity;
  readonly outcome: Outcome;
  readonly seed: number;
  readonly models?: OwnModels;
}

/**
 * The value of the free quantity (its unit, within its range) at which the outcome comes in the wanted share of reps (0 to 1), by many-runs with
 * the same people and luck for every value. Not reachable, or leapt over, is an answer too. Throws for a plan that cannot be run.
 */
export const tune = (
  tunable: Tunable,
  wantedRatio: number,
  more: Pick<TuneSetting, 'scanCount' | 'scanReps' | 'repCount' | 'verifyReps'> = {},
): TuneAnswer => {
  const { low, high, now } = tunable.free;
  const memory = runMemory();
  const steps = tuneSteps({ low, high, now, wantedRatio, ...more });
  let step = steps.next();
  while (!step.done) {
    const { values, repCount } = step.value;
    step = steps.next(values.map(value => talliedAt(tunable, value, 0, repCount, memory)));
  }
  return step.value;
};

/**
 * How many of the reps `fromRep` ≥ 0 and on, `repCount` ≥ 0 of them, came to the question when the free quantity has this value (its unit,
 * between its `low` and `high`), and in how many of these the outcome came. Throws when that gives a plan that cannot be run.
 */
export const talliedAt = (
  tunable: Tunable,
  value: number,
  fromRep: number,
  repCount: number,
  memory: RunMemory,
): Tally => {
  const { plan, rink, level, free, outcome, seed, models } = tunable;
  const playable = playableOf(planWith(plan, free, value), rink, level);
  if (playable.kind === 'unplayable')
    throw new Error(`${free.kind} ${value} gives a plan with ${playable.issues.length} issues`);
  const tally = manyRun(playable, {
    seed,
    fromRep,
    repCount,
    outcomes: [outcome],
    onlyOutcomes: true,
    memory,
    ...(models && { models }),
  });
  const counted = tally.outcomes[0]!;
  return { successCount: counted.yes.count, trialCount: repCount - counted.unaskedCount };
};
