import type { Playable } from '../drill/playable.ts';
import { counterOrderOf } from '../random/counter-random.ts';
import type { RunMemory } from '../run/recorder.ts';
import { runDrill } from '../run/run-drill.ts';
import type { RunEvent } from '../run/run-result.ts';
import { humanDraw, type OwnModels } from './human-draw.ts';
import { isDecided } from './is-decided.ts';
import type { ManyTally } from './many-tally.ts';
import type { Outcome } from './outcome.ts';
import { addRep, tallyBookOf, tallyOf } from './tally-book.ts';

export interface ManyRunOptions {
  /** Any finite number. */
  readonly seed: number;
  /** The first rep of this part, whole, ≥ 0; 0 when left out. */
  readonly fromRep?: number;
  readonly repCount: number;
  /** The team's own timed skaters, by the spot they stand on. */
  readonly models?: OwnModels;
  /** What is wanted, judged in every rep. */
  readonly outcomes?: readonly Outcome[];
  /** Memory the reps are played in, one after the other; owned by the caller. */
  readonly memory?: RunMemory;
  /**
   * Only count how often the outcomes come in time: no passes, no contests. With one outcome a rep is played no further than until that
   * is decided, so what comes too late is not counted. For tuning.
   */
  readonly onlyOutcomes?: boolean;
  /** Strides a second in which the reps are played; `MANY_STRIDE_HZ` when left out. */
  readonly strideHz?: number;
}

/** See docs/decisions/many-reps-in-longer-strides.md. */
export const MANY_STRIDE_HZ = 40;

/**
 * Plays the reps `fromRep … fromRep + repCount − 1` of a drill, each with people and luck of its own, and counts what comes of
 * them. Metres, seconds. The same playable, seed and reps give the same bytes; parts merge (`mergeTallies`) to the tally
 * of the whole, whichever way the reps were parted. Without reps every count is 0.
 */
export const manyRun = (playable: Playable, options: ManyRunOptions): ManyTally => {
  const { seed, repCount, fromRep = 0, outcomes = [], memory, models, strideHz = MANY_STRIDE_HZ } = options;
  const book = tallyBookOf(playable, outcomes, options.onlyOutcomes ?? false);
  const only = options.onlyOutcomes && outcomes.length === 1 ? outcomes[0] : undefined;
  const until = only && ((events: readonly RunEvent[]) => isDecided(only, events));
  for (let rep = fromRep; rep < fromRep + repCount; rep++) {
    const draw = humanDraw(playable, seed, rep, models);
    const run = runDrill(playable, {
      models: draw.models,
      chance: draw.chance,
      ...(memory && { memory }),
      ...(until && { until }),
      // Nothing that is counted is read from the tracks' findings.
      isShown: false,
      strideHz,
    });
    addRep(book, run, counterOrderOf(seed, rep), rep);
  }
  return tallyOf(book, seed);
};
