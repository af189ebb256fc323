import type { Drill } from '@icewright/book';
import {
  type FreeQuantity,
  freeQuantitiesOf,
  type Outcome,
  outcomesOf,
  planWith,
  type SpotId,
  type TuneAnswer,
} from '@icewright/engine';
import { useEffect, useMemo, useState } from 'react';
import type { People } from '../people/people-of.ts';
import { usePlayedSpots } from '../use-played-spots.ts';
import { Cancelled } from './many-pool.ts';
import { playTune, sharedPool } from './play-many.ts';
import { MANY_SEED } from './use-many.ts';
import { useRested } from './use-rested.ts';

/** What may move, what is wanted, and what was found. */
export interface Tune {
  readonly quantities: readonly FreeQuantity[];
  readonly free: FreeQuantity | null;
  readonly onFree: (free: FreeQuantity) => void;
  readonly wantedRatio: number;
  readonly onWanted: (ratio: number) => void;
  /** To the last question about what now may move and is wanted; nothing of another. */
  readonly found: Found | null;
  /** True when the drill or the wanted rate has changed since. */
  readonly isStale: boolean;
  readonly doneRatio: number | null;
  readonly failure: string | null;
  readonly onAsk: () => void;
  readonly onStop: () => void;
}

/** An answer with its question. */
export interface Found {
  readonly key: string;
  readonly curveKey: string;
  readonly questionKey: string;
  readonly answer: TuneAnswer;
  /** With the range that was looked through; the drill may have moved within it since. */
  readonly free: FreeQuantity;
  readonly wantedRatio: number;
}

export function useTune(drill: Drill, outcome: Outcome | null, people: People): Tune {
  const { pucks, gear, level, rink } = drill;
  const spots = usePlayedSpots(drill.spots);
  const { bySpot } = people;
  const plan = useMemo(() => ({ spots, pucks, gear }), [spots, pucks, gear]);
  const quantities = useMemo(
    () => (outcome === null ? [] : spotsOf(drill, outcome).flatMap(spot => freeQuantitiesOf(plan, spot))),
    [plan, outcome, drill],
  );
  const [chosenKey, setChosenKey] = useState<string | null>(null);
  const free = quantities.find(one => freeKeyOf(one) === chosenKey) ?? quantities[0] ?? null;
  const [wantedRatio, setWantedRatio] = useState(0.6);
  // The value that may move is no part of the question: an answer holds when the drill has been moved to it.
  const curveKey = useMemo(
    () =>
      free === null
        ? ''
        : JSON.stringify(
            [planWith(plan, free, 0), level, rink, outcome, freeKeyOf(free), bySpot],
            roundedNumbers,
          ),
    [plan, free, level, rink, outcome, bySpot],
  );
  const key = `${wantedRatio} ${curveKey}`;
  // Of what may move and what is wanted: an answer to another of these says nothing here.
  const questionKey = free === null ? '' : JSON.stringify([freeKeyOf(free), outcome]);
  const [lastFound, setFound] = useState<Found | null>(null);
  const found = lastFound?.questionKey === questionKey ? lastFound : null;
  const [askedKey, setAskedKey] = useState<string | null>(null);
  const [doneRatio, setDoneRatio] = useState<number | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const isRested = useRested(key);
  // Once the curve is there, another wanted rate is looked for by itself.
  const isDue =
    free !== null && found?.key !== key && (askedKey === key || (found?.curveKey === curveKey && isRested));

  // biome-ignore lint/correctness/useExhaustiveDependencies: the key holds everything that is asked
  useEffect(() => {
    if (!isDue || free === null || outcome === null) return;
    setDoneRatio(0);
    setFailure(null);
    const work = playTune(
      sharedPool(),
      { plan, level, rink, people: bySpot, seed: MANY_SEED },
      { free, outcome, wantedRatio },
      (asked, done) => setDoneRatio(done / Math.max(asked, USUAL_REPS)),
    );
    work.answer.then(
      answer => {
        setFound({ key, curveKey, questionKey, answer, free, wantedRatio });
        setDoneRatio(null);
      },
      (why: unknown) => {
        if (why instanceof Cancelled) return;
        setFailure(why instanceof Error ? why.message : String(why));
        setAskedKey(null);
        setFound(null);
        setDoneRatio(null);
      },
    );
    return () => {
      work.cancel();
      setDoneRatio(null);
    };
  }, [isDue, key]);

  return {
    quantities,
    free,
    onFree: one => setChosenKey(freeKeyOf(one)),
    wantedRatio,
    onWanted: setWantedRatio,
    found,
    isStale: found !== null && found.key !== key,
    doneRatio,
    failure,
    onAsk: () => setAskedKey(key),
    onStop: () => {
      setAskedKey(null);
      setFound(null);
    },
  };
}

/** A puck that was moved with its spot and back lies a rounding beside: that is no other question. */
const roundedNumbers = (_: string, value: unknown): unknown =>
  typeof value === 'number' ? Math.round(value * 1e6) / 1e6 : value;

/** Reps that a search mostly takes: for the line that runs, until it is known better. */
export const USUAL_REPS = 6000;

export const freeKeyOf = (free: FreeQuantity): string =>
  free.kind === 'spotAlong' ? `${free.spot} ${free.way}` : `${free.spot} ${free.kind} ${free.act}`;

/** Whom the wanted speaks of comes first; then everybody else who does something. */
function spotsOf(drill: Drill, outcome: Outcome): readonly SpotId[] {
  const named =
    outcome.kind === 'caughtBefore'
      ? [outcome.by ?? outcome.spot, outcome.spot]
      : 'spot' in outcome
        ? [outcome.spot]
        : homeFirst(drill);
  const others = (Object.entries(drill.spots) as [SpotId, Drill['spots'][SpotId]][])
    .filter(([, spot]) => Object.keys(spot.acts).length > 0)
    .sort(([, a], [, b]) => a.rank - b.rank)
    .map(([id]) => id);
  return [...new Set([...named, ...others])];
}

/** A standard names nobody of the drill: who of us comes home to the puck is tried first. */
function homeFirst(drill: Drill): readonly SpotId[] {
  return outcomesOf(drill).flatMap(one =>
    one.kind === 'levelWithPuck' && drill.spots[one.spot]?.side === 'us' ? [one.spot] : [],
  );
}
