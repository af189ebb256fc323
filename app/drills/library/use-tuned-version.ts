import type { Drill } from '@icewright/book';
import {
  freeQuantitiesOf,
  HARDER_RATIO,
  type Outcome,
  planWith,
  SIMPLER_RATIO,
  type SpotId,
  type TuneAnswer,
} from '@icewright/engine';
import { useEffect, useRef, useState } from 'react';
import { percentSaid } from '../../parts/figures.ts';
import { Cancelled } from '../many/many-pool.ts';
import { type Playing, playTune, sharedPool } from '../many/play-many.ts';
import { MANY_SEED } from '../many/use-many.ts';
import { USUAL_REPS } from '../many/use-tune.ts';
import type { People } from '../people/people-of.ts';
import { firstNewFinding } from './new-findings.ts';

export interface TunedVersions {
  /** Which one is being looked for. */
  readonly looking: 'simpler' | 'harder' | null;
  /** Share of the reps it mostly takes that are played, 0 to 1. */
  readonly doneRatio: number;
  /** Why there is none, after it was looked for. */
  readonly whyNot: string | null;
  /** Looks for the version, or stops when it is being looked for. */
  readonly look: (as: 'simpler' | 'harder') => void;
}

/** A version in which the wanted comes more, or less, often, by where its skater starts. Whoever takes it is told when it is there. */
export function useTunedVersion(
  drill: Drill,
  outcome: Outcome | null,
  people: People,
  onMade: (drill: Drill, as: 'simpler' | 'harder') => void,
): TunedVersions {
  const [looking, setLooking] = useState<'simpler' | 'harder' | null>(null);
  const [whyNot, setWhyNot] = useState<string | null>(null);
  const [doneRatio, setDoneRatio] = useState(0);
  const playing = useRef<Playing<TuneAnswer> | null>(null);
  useEffect(() => () => playing.current?.cancel(), []);
  const look = (as: 'simpler' | 'harder') => {
    playing.current?.cancel();
    playing.current = null;
    if (looking === as) return setLooking(null);
    setWhyNot(null);
    const free = outcome === null ? undefined : freeQuantitiesOf(drill, spotOf(drill, outcome))[0];
    if (outcome === null || free === undefined) {
      setLooking(null);
      setWhyNot('nothing in it can come out one way or the other yet');
      return;
    }
    setLooking(as);
    setDoneRatio(0);
    const wantedRatio = as === 'simpler' ? SIMPLER_RATIO.value : HARDER_RATIO.value;
    const work = playTune(
      sharedPool(),
      { plan: drill, level: drill.level, rink: drill.rink, people: people.bySpot, seed: MANY_SEED },
      { free, outcome, wantedRatio },
      (asked, done) => setDoneRatio(Math.min(1, done / Math.max(asked, USUAL_REPS))),
    );
    playing.current = work;
    work.answer.then(
      answer => {
        if (playing.current !== work) return;
        setLooking(null);
        if (answer.kind === 'reached') {
          const { spots, pucks, gear } = planWith(drill, free, answer.value);
          const made = { ...drill, spots, pucks, gear } as Drill;
          const worse = firstNewFinding(drill, made);
          if (worse === null) onMade(made, as);
          else setWhyNot(`where it would come so, there is something to look at: ${worse}`);
        } else if (answer.kind === 'cannotBeReached')
          setWhyNot(
            `wherever it starts within reach it comes in ${percentSaid(answer.lowest.rate.rateRatio)} to ${percentSaid(answer.highest.rate.rateRatio)} of reps`,
          );
        else if (answer.kind === 'neverAsked') setWhyNot('hardly a rep comes to the question');
        else setWhyNot('it comes always or never, with nothing between');
      },
      (why: unknown) => {
        if (why instanceof Cancelled || playing.current !== work) return;
        setLooking(null);
        setWhyNot(why instanceof Error ? why.message : String(why));
      },
    );
  };
  return { looking, doneRatio, whyNot, look };
}

/** Whose start is moved: who is to catch, to be level, to pass; for the habit itself the first of us who skates. */
const spotOf = (drill: Drill, outcome: Outcome): SpotId => {
  if (outcome.kind === 'caughtBefore' && outcome.by !== undefined) return outcome.by;
  if ('spot' in outcome) return outcome.spot;
  const ours = Object.entries(drill.spots)
    .filter(([, spot]) => spot.side === 'us' && spot.kind === 'skater')
    .sort(([, a], [, b]) => a.rank - b.rank);
  return (ours[0]?.[0] ?? Object.keys(drill.spots)[0]) as SpotId;
};
