import type { DrillPlan } from '../drill/drill.ts';
import { playableOf } from '../drill/playable.ts';
import { flowOf } from '../flow/flow-of.ts';
import type { FlowSetting } from '../flow/flow-result.ts';
import { withRepsThatAsk } from '../many/asked-share.ts';
import { planWith } from '../many/free-quantity.ts';
import { type Tunable, talliedAt } from '../many/tune.ts';
import { type TuneAnswer, type TuneSetting, tuneSteps } from '../many/tune-steps.ts';
import type { Rink } from '../rink/rink.ts';
import { runMemory } from '../run/recorder.ts';
import { runDrill } from '../run/run-drill.ts';
import type { Finding } from '../run/run-result.ts';
import type { Level } from '../skater/level.ts';
import { type RateInterval, type Tally, wilsonInterval } from '../statistics/rates.ts';
import { isNone } from '../units/none.ts';
import type { DrawnIdea } from './idea-plans.ts';
import {
  FINDING_COSTS_M,
  GO_GAINS_M,
  HARDER_RATIO,
  MISSED_COSTS_M,
  MOVING_GAINS_M,
  PART_COSTS_M,
  SIMPLER_RATIO,
  WANTED_RATIO,
} from './ideas-rows.ts';
import { type Likeness, likenessOf } from './likeness.ts';
import type { Problem } from './problem-of.ts';

/** One idea, computed: its drill set by `tune`, what it is worth term by term, and an easier and a harder version. */
export interface Idea extends DrawnIdea {
  /** As tuned: or, where the wanted rate cannot be reached, at the nearest rate there is. */
  readonly plan: DrillPlan;
  readonly tuned: TuneAnswer;
  /** How often the thing wanted comes, as the page of the drill counts it. */
  readonly counted: Counted;
  readonly likeness: Likeness | null;
  readonly repsPerMinute: number;
  readonly movingRatio: number;
  readonly partCount: number;
  readonly lookFindings: readonly Finding[];
  /** Findings besides that are to know, not to look at first. */
  readonly knowCount: number;
  /** What orders the ideas, metres, less is better; the sum of `terms`. */
  readonly scoreM: number;
  readonly terms: readonly { readonly name: IdeaTerm; readonly valueM: number }[];
  readonly simpler: IdeaVersion;
  readonly harder: IdeaVersion;
}

export type IdeaTerm = 'likeness' | 'parts' | 'findings' | 'offTheRate' | 'goes' | 'moving';

/** The same drill with the start moved so that it comes more, or less, often; `none` when no start within reach does that. */
export type IdeaVersion =
  | { readonly kind: 'version'; readonly plan: DrillPlan; readonly value: number; readonly counted: Counted }
  | { readonly kind: 'none'; readonly lowestRatio: number; readonly highestRatio: number };

/** Of `repCount` reps, `trialCount` came to the question, and of those it came in this share; null when none did. */
export interface Counted {
  readonly repCount: number;
  readonly trialCount: number;
  readonly rate: RateInterval | null;
}

export interface IdeaSetting {
  readonly rink: Rink;
  readonly level: Level;
  readonly seed: number;
  readonly flow: FlowSetting;
  /** How finely is tuned; `IDEA_LOOKS` when left out. */
  readonly looks?: Looks;
}

type Looks = Required<Pick<TuneSetting, 'scanCount' | 'scanReps' | 'repCount' | 'verifyReps'>> & {
  /** Reps in which the idea itself is counted. */
  readonly countReps: number;
};

/** Fewer values and reps than a tuning by hand: an idea is a beginning. It is counted with as many as any drill, its versions with their ±. */
export const IDEA_LOOKS: Looks = {
  scanCount: 7,
  scanReps: 40,
  repCount: 160,
  verifyReps: 1000,
  countReps: 1000,
};

/**
 * Plays a drawn idea: tunes the free start so that the thing wanted comes in `WANTED_RATIO` of reps, then asks for a simpler and a harder one.
 * Metres, seconds; the same seed gives the same idea. Null when the drawn plan cannot be run. Our own measure of worth: rows.
 */
export const playIdea = (problem: Problem, drawn: DrawnIdea, setting: IdeaSetting): Idea | null => {
  const { rink, level, seed } = setting;
  if (playableOf(drawn.plan, rink, level).kind === 'unplayable') return null;
  const tunable = { plan: drawn.plan, rink, level, free: drawn.free, outcome: drawn.outcome, seed };
  const looks = setting.looks ?? IDEA_LOOKS;
  const tallyAt = tallierOf(tunable);
  const tuneTo = (wantedRatio: number, now: number, verifyReps: number): TuneAnswer =>
    tunedWith(tallyAt, { ...drawn.free, now, wantedRatio, askedAs: 'most', ...looks, verifyReps });
  const countedAt = (value: number, repCount: number): Counted => {
    const tally = tallyAt(value, repCount);
    const rate = wilsonInterval(tally);
    return { repCount, trialCount: tally.trialCount, rate: 'kind' in rate ? null : rate };
  };
  const tuned = tuneTo(WANTED_RATIO.value, drawn.free.now, looks.verifyReps);
  const value = settledOf(tuned, WANTED_RATIO.value, drawn.free.now);
  const counted = countedAt(value, looks.countReps);
  const rateRatio = counted.rate?.rateRatio ?? 0;
  const plan = planWith(drawn.plan, drawn.free, value);
  const playable = playableOf(plan, rink, level);
  if (playable.kind === 'unplayable') return null;
  const run = runDrill(playable);
  const likeness = likenessOf(problem.scene, 'plusX', plan, run);
  const flow = flowOf(plan, run, setting.flow);
  const repsPerMinute = isNone(flow) ? 0 : flow.repCount / setting.flow.minutes;
  const movingRatio = isNone(flow) ? 0 : flow.movingRatio;
  const findings = [...run.findings, ...(isNone(flow) ? [] : flow.findings)];
  const lookFindings = findings.filter(finding => finding.weight === 'look');
  const partCount = partsOf(plan);
  const terms = [
    { name: 'likeness', valueM: likeness?.distanceM ?? 0 },
    { name: 'parts', valueM: partCount * PART_COSTS_M.value },
    { name: 'findings', valueM: lookFindings.length * FINDING_COSTS_M.value },
    { name: 'offTheRate', valueM: 10 * Math.abs(rateRatio - WANTED_RATIO.value) * MISSED_COSTS_M.value },
    { name: 'goes', valueM: -repsPerMinute * GO_GAINS_M.value },
    { name: 'moving', valueM: -10 * movingRatio * MOVING_GAINS_M.value },
  ] as const;
  const versionAt = (wantedRatio: number): IdeaVersion => {
    const answer = tuneTo(wantedRatio, value, looks.repCount);
    if (answer.kind === 'cannotBeReached' || answer.kind === 'neverAsked')
      return {
        kind: 'none',
        lowestRatio: answer.kind === 'neverAsked' ? 0 : answer.lowest.rate.rateRatio,
        highestRatio: answer.kind === 'neverAsked' ? 0 : answer.highest.rate.rateRatio,
      };
    const settled = settledOf(answer, wantedRatio, value);
    return {
      kind: 'version',
      plan: planWith(drawn.plan, drawn.free, settled),
      value: settled,
      counted: countedAt(settled, looks.repCount),
    };
  };
  return {
    ...drawn,
    plan,
    tuned,
    counted,
    likeness,
    repsPerMinute,
    movingRatio,
    partCount,
    lookFindings,
    knowCount: findings.length - lookFindings.length,
    terms,
    scoreM: terms.reduce((sum, term) => sum + term.valueM, 0),
    simpler: versionAt(SIMPLER_RATIO.value),
    harder: versionAt(HARDER_RATIO.value),
  };
};

/** The first reps of a drill at a value; those that were played are not played again. */
const tallierOf = (tunable: Tunable): ((value: number, repCount: number) => Tally) => {
  const known = new Map<number, { readonly repCount: number; readonly tally: Tally }[]>();
  const memory = runMemory();
  return (value, repCount) => {
    const before = known.get(value) ?? [];
    const nearest = before.filter(one => one.repCount <= repCount).sort((a, b) => b.repCount - a.repCount)[0];
    if (nearest?.repCount === repCount) return nearest.tally;
    const from = nearest?.repCount ?? 0;
    const more = talliedAt(tunable, value, from, repCount - from, memory);
    const tally = {
      successCount: (nearest?.tally.successCount ?? 0) + more.successCount,
      trialCount: (nearest?.tally.trialCount ?? 0) + more.trialCount,
    };
    known.set(value, [...before, { repCount, tally }]);
    return tally;
  };
};

const tunedWith = (tallyAt: (value: number, repCount: number) => Tally, setting: TuneSetting): TuneAnswer => {
  const steps = tuneSteps(setting);
  let step = steps.next();
  while (!step.done) {
    const { values, repCount } = step.value;
    step = steps.next(values.map(value => tallyAt(value, repCount)));
  }
  return step.value;
};

/** The value to set: as reached, or of what was tried and comes to the question the nearest in its rate; or where it is. */
const settledOf = (answer: TuneAnswer, wantedRatio: number, now: number): number => {
  if (answer.kind === 'reached') return answer.value;
  const nearest = [...withRepsThatAsk(answer.curve, answer.leastAskedRatio)].sort(
    (a, b) =>
      Math.abs(a.rate.rateRatio - wantedRatio) - Math.abs(b.rate.rateRatio - wantedRatio) ||
      Math.abs(a.value - now) - Math.abs(b.value - now),
  )[0];
  return nearest?.value ?? now;
};

/** People, acts, cues other than the whistle, and things on the ice. */
const partsOf = (plan: DrillPlan): number => {
  const spots = Object.values(plan.spots);
  const acts = spots.flatMap(spot => Object.values(spot.acts));
  const cues = acts.filter(act => act.cue !== undefined && act.cue.on !== 'whistle');
  return spots.length + acts.length + cues.length + Object.keys(plan.gear).length;
};
