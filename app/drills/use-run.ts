import type { Drill } from '@icewright/book';
import {
  draftIssueSentence,
  levelOf,
  playableOf,
  type Rink,
  type Run,
  rinkOf,
  runDrill,
  type SpotId,
  twoRunMemories,
} from '@icewright/engine';
import { useMemo, useRef, useState } from 'react';
import type { People } from './people/people-of.ts';
import { usePlayedSpots } from './use-played-spots.ts';

export interface Computed {
  readonly rink: Rink;
  /** The last rep that could be computed; null when there is none. */
  readonly run: Run | null;
  /** Why the drill as it stands cannot be run, in sentences. */
  readonly issues: readonly string[];
  /** True while `run` belongs to an earlier state of the drill. */
  readonly isStale: boolean;
}

/** Plays one rep of the drill as it stands, again at every change: it takes a few milliseconds, so figures follow the hand. */
export function useRun(drill: Drill, people: People): Computed {
  const { preset } = drill.rink;
  // biome-ignore lint/correctness/useExhaustiveDependencies: an own sheet changes by its sizes, which the choice holds
  const rink = useMemo(() => rinkOf(drill.rink), [preset, JSON.stringify(drill.rink)]);
  const last = useRef<Run | null>(null);
  // The run on the screen stays whole while the next one is computed; only the one before it is written over.
  const [memories] = useState(twoRunMemories);
  const { pucks, gear, level } = drill;
  const spots = usePlayedSpots(drill.spots);
  const { inOneRep } = people;
  const computed = useMemo(() => {
    if (Object.keys(spots).length === 0) return { run: null, issues: [] };
    const playable = playableOf({ spots, pucks, gear }, rink, levelOf(level));
    if (playable.kind !== 'playable') return { run: null, issues: playable.issues };
    return { run: runDrill(playable, { memory: memories.next(), models: inOneRep }), issues: [] };
  }, [spots, pucks, gear, level, rink, inOneRep, memories]);
  if (computed.run !== null || Object.keys(spots).length === 0) last.current = computed.run;
  const issues = useMemo(
    () => computed.issues.map(issue => draftIssueSentence(issue, drill)),
    [computed.issues, drill],
  );
  return {
    rink,
    run: computed.run ?? last.current,
    issues,
    isStale: computed.run === null && last.current !== null,
  };
}

/** Whether this spot has a puck on its stick when all is done: in the last sample. */
export function hasPuckAtEnd(run: Run | null, spot: SpotId): boolean {
  if (run === null || run.sampleCount === 0) return false;
  return run.pucks.some(({ owner }) => run.tracks[owner[run.sampleCount - 1] ?? -1]?.spot === spot);
}
