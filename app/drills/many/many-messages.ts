import type {
  DrillPlan,
  FreeQuantity,
  LevelId,
  ManyTally,
  Outcome,
  RinkChoice,
  Tally,
} from '@icewright/engine';
import type { People } from '../people/people-of.ts';

/** What a worker has to know once of the drill it is to play. */
export interface ManyDrill {
  readonly plan: DrillPlan;
  readonly rink: RinkChoice;
  readonly level: LevelId;
  readonly seed: number;
  /** Who skates instead of the level's skater, in turn; nobody when left out. */
  readonly people?: People['bySpot'];
}

/** A few reps that one worker plays in one go: short, so that it is soon free for something newer. */
export type ManyChunk = { readonly fromRep: number; readonly repCount: number } & (
  | { readonly kind: 'tally'; readonly outcomes: readonly Outcome[] }
  | {
      readonly kind: 'successes';
      readonly outcome: Outcome;
      readonly free: FreeQuantity;
      readonly value: number;
    }
);

/** To a worker: the drill comes with the first chunk of it that this worker plays. */
export interface ManyAsked {
  readonly drillId: number;
  readonly drill?: ManyDrill;
  readonly chunk: ManyChunk;
}

export type ManyPart = ManyTally | Tally;

/** From a worker: what was asked, or why it could not be. */
export type ManyAnswered =
  | { readonly kind: 'part'; readonly part: ManyPart }
  | { readonly kind: 'failed'; readonly why: string };
