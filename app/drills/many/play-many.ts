import {
  type FreeQuantity,
  type ManyTally,
  mergeTallies,
  type Outcome,
  type Tally,
  type TuneAnswer,
  tuneSteps,
} from '@icewright/engine';
import { REPS_A_TURN } from '../people/people-of.ts';
import type { ManyChunk, ManyDrill } from './many-messages.ts';
import { Cancelled, type ManyPool, type ManyWork, manyPool } from './many-pool.ts';

export const MANY_REPS = 1000;
const CHUNK_REPS = REPS_A_TURN;
/** Fewer reps than a tuned test, for an answer within seconds; what is offered was tried in as many as the page then plays. */
const LOOKS = { scanReps: 75, repCount: 500, verifyReps: MANY_REPS };

/** Something under way in the workers, with its answer to come. */
export interface Playing<Answer> {
  readonly answer: Promise<Answer>;
  readonly cancel: () => void;
}

/** All reps of a drill in the workers, or its first ones. `onDone` is told the share that is done, 0 to 1. */
export function playMany(
  pool: ManyPool,
  drill: ManyDrill,
  outcomes: readonly Outcome[],
  onDone: (ratio: number) => void,
  repCount = MANY_REPS,
): Playing<ManyTally> {
  const chunks = chunksOf(repCount).map((reps): ManyChunk => ({ kind: 'tally', outcomes, ...reps }));
  // Merged one by one as they come, in whatever order: all at the end would hold the page up.
  let merged: ManyTally | undefined;
  const work = pool.play(drill, chunks, (part, doneCount) => {
    merged = merged === undefined ? (part as ManyTally) : mergeTallies(merged, part as ManyTally);
    onDone(doneCount / chunks.length);
  });
  const answer = work.parts.then(() => {
    if (merged === undefined) throw new Error('a many-run without reps');
    return merged;
  });
  playing.add(work);
  const isOver = () => playing.delete(work);
  work.parts.then(isOver, isOver);
  return { answer, cancel: work.cancel };
}

const playing = new Set<ManyWork>();

/** Whether a many-run is under way: what can wait leaves it the cores. */
export const isManyUnderWay = (): boolean => playing.size > 0;

/** Looks for the value at which the outcome comes in the wanted share of reps. `onStep` is told how many values are known. */
export function playTune(
  pool: ManyPool,
  drill: ManyDrill,
  asked: { readonly free: FreeQuantity; readonly outcome: Outcome; readonly wantedRatio: number },
  onStep: (askedReps: number, doneReps: number) => void,
): Playing<TuneAnswer> {
  let current: ManyWork | undefined;
  let isOff = false;
  let askedReps = 0;
  let doneReps = 0;
  const look = async (): Promise<TuneAnswer> => {
    const { free, outcome, wantedRatio } = asked;
    const { low, high, now } = free;
    const steps = tuneSteps({ low, high, now, wantedRatio, ...LOOKS });
    let step = steps.next();
    while (!step.done) {
      if (isOff) throw new Cancelled('stopped');
      const { values, repCount } = step.value;
      const parts = chunksOf(repCount);
      askedReps += repCount * values.length;
      onStep(askedReps, doneReps);
      const chunks = values.flatMap(value =>
        parts.map((reps): ManyChunk => ({ kind: 'successes', free, outcome, value, ...reps })),
      );
      current = pool.play(drill, chunks, () => {
        doneReps += CHUNK_REPS;
        onStep(askedReps, doneReps);
      });
      const counts = (await current.parts) as readonly Tally[];
      const sums = values.map((_, i) =>
        counts.slice(i * parts.length, (i + 1) * parts.length).reduce((sum, one) => ({
          successCount: sum.successCount + one.successCount,
          trialCount: sum.trialCount + one.trialCount,
        })),
      );
      step = steps.next(sums);
    }
    return step.value;
  };
  return {
    answer: look(),
    cancel: () => {
      isOff = true;
      current?.cancel();
    },
  };
}

function chunksOf(repCount: number): readonly { readonly fromRep: number; readonly repCount: number }[] {
  return Array.from({ length: Math.ceil(repCount / CHUNK_REPS) }, (_, i) => ({
    fromRep: i * CHUNK_REPS,
    repCount: Math.min(CHUNK_REPS, repCount - i * CHUNK_REPS),
  }));
}

let shared: ManyPool | undefined;

/**
 * The workers of this page, as many as it has cores less its own, but two at least: on two cores a page that only shows how far the reps are needs
 * little of its own. Made when first needed.
 */
export function sharedPool(): ManyPool {
  const cores = navigator.hardwareConcurrency || 2;
  shared ??= manyPool(
    () => new Worker(new URL('./many.worker.ts', import.meta.url), { type: 'module' }) as never,
    Math.max(2, cores - 1),
  );
  return shared;
}
