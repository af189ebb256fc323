import type { Drill } from '@icewright/book';
import {
  changesReps,
  type ManyTally,
  type Mend,
  type MendEffect,
  type NoMend,
  type Outcome,
  outcomeRate,
  type RateInterval,
} from '@icewright/engine';
import { useEffect, useState } from 'react';
import type { HabitWant } from '../many/habit-wants.ts';
import { playMany, sharedPool } from '../many/play-many.ts';
import { MANY_SEED } from '../many/use-many.ts';
import type { People } from '../people/people-of.ts';
import { afterWrites } from '../write.ts';

/** What is wanted of the drill, with its reps as the page has them. */
export interface Wanted {
  readonly outcome: Outcome;
  readonly habitWants: readonly HabitWant[];
  /** Of this very drill; null while its reps are not played. */
  readonly tally: ManyTally | null;
  /** Has its reps played, though nobody looks at their figures. */
  readonly onNeeded: () => void;
}

/** Enough for a share within five hundredths, and few enough that several mends can be asked. */
const EFFECT_REPS = 400;

/**
 * What each mend does to what is wanted, by the first reps of the same people and luck as the page's own; undefined while it is not known,
 * null where it could not be played. Looked for one by one when all mends in view and the drill's own figure are there.
 */
export function useMendEffects(asked: {
  readonly drill: Drill;
  readonly mends: readonly (Mend | NoMend | undefined)[];
  readonly inView: ReadonlySet<number>;
  readonly wanted: Wanted | null;
  readonly bySpot: People['bySpot'];
}): (mend: Mend) => MendEffect | null | undefined {
  const { drill, mends, inView, wanted, bySpot } = asked;
  const tally = wanted?.tally ?? null;
  const [known, setKnown] = useState<Known>({ of: null, effects: NONE });
  const effects = known.of === tally ? known.effects : NONE;
  const isSearching = mends.some((mend, index) => mend === undefined && inView.has(index));
  const next = isSearching
    ? undefined
    : mends.find(
        (mend): mend is Mend => mend?.kind === 'mend' && changesReps(mend.writes) && !effects.has(mend),
      );

  // biome-ignore lint/correctness/useExhaustiveDependencies: a mend is of one drill, and its tally of one want and its people
  useEffect(() => {
    if (next === undefined || wanted === null) return;
    if (tally === null) return wanted.onNeeded();
    const { spots, pucks, gear, level, rink } = afterWrites(drill, next.writes);
    const work = playMany(
      sharedPool(),
      { plan: { spots, pucks, gear }, level, rink, people: bySpot, seed: MANY_SEED },
      [wanted.outcome],
      () => {},
      EFFECT_REPS,
    );
    const keep = (effect: MendEffect | null) =>
      setKnown(before => ({
        of: tally,
        effects: new Map([...(before.of === tally ? before.effects : NONE), [next, effect]]),
      }));
    let isOff = false;
    work.answer.then(
      after => keep({ before: rateIn(tally), after: rateIn(after) }),
      () => !isOff && keep(null),
    );
    return () => {
      isOff = true;
      work.cancel();
    };
  }, [next, tally, wanted?.outcome]);

  return mend => effects.get(mend);
}

interface Known {
  readonly of: ManyTally | null;
  readonly effects: Effects;
}
type Effects = ReadonlyMap<Mend, MendEffect | null>;
const NONE: Effects = new Map();

/** How often the one thing that was asked of these reps came. */
export const rateIn = (tally: ManyTally): RateInterval | null =>
  (tally.outcomes[0] && outcomeRate(tally.outcomes[0], tally.repCount)) ?? null;
