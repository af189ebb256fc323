import type { Team } from '@icewright/book';
import { isSameWant, type ManyTally, type Outcome, outcomesOf } from '@icewright/engine';
import { useEffect, useMemo, useState } from 'react';
import { useIsPageShown } from '../../parts/use-in-view.ts';
import type { People } from '../people/people-of.ts';
import type { Hand } from '../use-hand.ts';
import { usePlayedSpots } from '../use-played-spots.ts';
import { useSteady } from '../use-steady.ts';
import { type HabitWant, habitWantsOf } from './habit-wants.ts';
import { keptOutcome, wantToKeep } from './kept-want.ts';
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
  /** Who skates the reps. */
  readonly people: People;
  /** The last whole many-run; null before the first. */
  readonly tally: ManyTally | null;
  /** True when `tally` is of an earlier drill or of another want, and has been for a while. */
  readonly isStale: boolean;
  /** `tally` is of this drill and want. */
  readonly isKnown: boolean;
  /** Share of the reps that are played, 0 to 1; null when nothing is under way. */
  readonly doneRatio: number | null;
  /** True when the coach has stopped it. */
  readonly isStopped: boolean;
  readonly failure: string | null;
  readonly onStop: () => void;
  readonly onStart: () => void;
  /** Whether somebody can see the figures: reps are played for eyes, not because a drill is open. */
  readonly onInView: (isInView: boolean) => void;
  /** Something else rests on the figures: the reps are played though nobody sees them here. */
  readonly onNeeded: () => void;
}

/** `isBehind`: a hand is moving something, and the drill is as it was before. */
export function useMany(
  hand: Pick<Hand, 'drill' | 'keep'>,
  canRun: boolean,
  team: Team,
  people: People,
  isBehind: boolean,
): Many {
  const { drill, keep } = hand;
  const { pucks, gear, level, rink, habits: served } = drill;
  const spots = usePlayedSpots(drill.spots);
  const plan = useMemo(() => ({ spots, pucks, gear }), [spots, pucks, gear]);
  const { habits } = team;
  const habitWants = useMemo(() => habitWantsOf(served, habits), [served, habits]);
  const { wanted: kept } = drill;
  const chosen = useMemo(
    () => keptOutcome({ spots, ...(kept && { wanted: kept }) }, habitWants),
    [spots, kept, habitWants],
  );
  // What the drill is for comes before what else can be wanted of it.
  const outcomes = useMemo(() => {
    const all = [...habitWants.map(want => want.outcome), ...outcomesOf(plan)];
    return chosen === null || all.some(one => isSameWant(one, chosen)) ? all : [chosen, ...all];
  }, [habitWants, plan, chosen]);
  const wanted = chosen ?? outcomes[0] ?? null;
  const { bySpot } = people;
  const key = useMemo(
    () => JSON.stringify([plan, level, rink, wanted, bySpot]),
    [plan, level, rink, wanted, bySpot],
  );
  const [found, setFound] = useState<{ readonly key: string; readonly tally: ManyTally } | null>(null);
  const [doneRatio, setDoneRatio] = useState<number | null>(null);
  const [stoppedKey, setStoppedKey] = useState<string | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const [isInView, setInView] = useState(false);
  const [seenKey, setSeenKey] = useState<string | null>(null);
  const isPageShown = useIsPageShown();
  const onNeeded = useSteady(() => setSeenKey(key));
  const isRested = useRested(key);
  const isLongBehind = useRested(`${isBehind}`) && isBehind;
  const isKnown = found?.key === key;
  const isStopped = stoppedKey === key;
  // What was begun in sight is played to its end.
  useEffect(() => {
    if (isInView) setSeenKey(key);
  }, [isInView, key]);
  // Under a moving hand the cores are for its pictures, and the figure would be of a drill that is about to be another.
  const isHandStill = !isBehind;
  const isDue =
    canRun &&
    wanted !== null &&
    isRested &&
    isHandStill &&
    !isKnown &&
    !isStopped &&
    isPageShown &&
    seenKey === key;

  // biome-ignore lint/correctness/useExhaustiveDependencies: the key holds everything that is played
  useEffect(() => {
    if (!isDue || wanted === null) return;
    setDoneRatio(0);
    setFailure(null);
    const work = playMany(
      sharedPool(),
      { plan, level, rink, people: bySpot, seed: MANY_SEED },
      [wanted],
      setDoneRatio,
    );
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
  const isStale = found !== null && ((!isKnown && isRested) || isLongBehind);
  return useMemo(
    () => ({
      outcomes,
      habitWants,
      wanted,
      onWant: outcome => {
        const value = wantToKeep(outcome, habitWants);
        if (value !== null) keep([{ path: ['wanted'], value }]);
      },
      people,
      tally,
      isStale,
      isKnown,
      doneRatio,
      isStopped,
      failure,
      onStop: () => setStoppedKey(key),
      onStart: () => setStoppedKey(null),
      onInView: setInView,
      onNeeded,
    }),
    [
      outcomes,
      habitWants,
      wanted,
      people,
      tally,
      isStale,
      isKnown,
      doneRatio,
      isStopped,
      failure,
      key,
      keep,
      onNeeded,
    ],
  );
}
