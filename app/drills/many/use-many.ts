import type { Drill, Team } from '@icewright/book';
import { isSameWant, type ManyTally, type Outcome, outcomesOf } from '@icewright/engine';
import { useEffect, useMemo, useState } from 'react';
import { useIsPageShown } from '../../parts/use-in-view.ts';
import { type HabitWant, habitWantsOf } from './habit-wants.ts';
import { Cancelled } from './many-pool.ts';
import { playMany, sharedPool } from './play-many.ts';
import { useRested } from './use-rested.ts';

/** Every many-run is of this seed, so that the same drill has the same figure on every machine and every day. */
export const MANY_SEED = 11;

/** What many reps of the drill give, and how far they are. */
export interface Many {
  readonly outcomes: readonly Outcome[];
  /** Those of them that are a habit of the drill. */
  readonly habitWants: readonly HabitWant[];
  readonly wanted: Outcome | null;
  readonly onWant: (outcome: Outcome) => void;
  /** The last whole many-run; null before the first. */
  readonly tally: ManyTally | null;
  /** True when `tally` is of an earlier drill or of another want, and has been for a while. */
  readonly isStale: boolean;
  /** Share of the reps that are played, 0 to 1; null when nothing is under way. */
  readonly doneRatio: number | null;
  /** True when the coach has stopped it. */
  readonly isStopped: boolean;
  readonly failure: string | null;
  readonly onStop: () => void;
  readonly onStart: () => void;
  /** Whether somebody can see the figures: reps are played for eyes, not because a drill is open. */
  readonly onInView: (isInView: boolean) => void;
}

/** `moves`: something is in a hand, and the drill is as it was before. */
export function useMany(drill: Drill, canRun: boolean, team: Team, moves: boolean): Many {
  const { spots, pucks, gear, level, rink, habits: served } = drill;
  const plan = useMemo(() => ({ spots, pucks, gear }), [spots, pucks, gear]);
  const { habits } = team;
  const habitWants = useMemo(() => habitWantsOf(served, habits), [served, habits]);
  // What the drill is for comes before what else can be wanted of it.
  const outcomes = useMemo(
    () => [...habitWants.map(want => want.outcome), ...outcomesOf(plan)],
    [habitWants, plan],
  );
  const [asked, setAsked] = useState<Outcome | null>(null);
  const wanted =
    asked !== null && outcomes.some(one => isSameWant(one, asked)) ? asked : (outcomes[0] ?? null);
  const key = useMemo(() => JSON.stringify([plan, level, rink, wanted]), [plan, level, rink, wanted]);
  const [found, setFound] = useState<{ readonly key: string; readonly tally: ManyTally } | null>(null);
  const [doneRatio, setDoneRatio] = useState<number | null>(null);
  const [stoppedKey, setStoppedKey] = useState<string | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const [isInView, setInView] = useState(false);
  const [seenKey, setSeenKey] = useState<string | null>(null);
  const isPageShown = useIsPageShown();
  const isRested = useRested(key);
  const hasMovedLong = useRested(`${moves}`) && moves;
  const isKnown = found?.key === key;
  const isStopped = stoppedKey === key;
  // What was begun in sight is played to its end.
  useEffect(() => {
    if (isInView) setSeenKey(key);
  }, [isInView, key]);
  const isDue =
    canRun && wanted !== null && isRested && !isKnown && !isStopped && isPageShown && seenKey === key;

  // biome-ignore lint/correctness/useExhaustiveDependencies: the key holds everything that is played
  useEffect(() => {
    if (!isDue || wanted === null) return;
    setDoneRatio(0);
    setFailure(null);
    const work = playMany(sharedPool(), { plan, level, rink, seed: MANY_SEED }, [wanted], setDoneRatio);
    work.answer.then(
      tally => {
        setFound({ key, tally });
        setDoneRatio(null);
      },
      (why: unknown) => {
        if (why instanceof Cancelled) return;
        setFailure(why instanceof Error ? why.message : String(why));
        setStoppedKey(key);
        setDoneRatio(null);
      },
    );
    return () => {
      work.cancel();
      setDoneRatio(null);
    };
  }, [isDue, key]);

  const tally = found?.tally ?? null;
  const isStale = found !== null && ((!isKnown && isRested) || hasMovedLong);
  return useMemo(
    () => ({
      outcomes,
      habitWants,
      wanted,
      onWant: setAsked,
      tally,
      isStale,
      doneRatio,
      isStopped,
      failure,
      onStop: () => setStoppedKey(key),
      onStart: () => setStoppedKey(null),
      onInView: setInView,
    }),
    [outcomes, habitWants, wanted, tally, isStale, doneRatio, isStopped, failure, key],
  );
}
