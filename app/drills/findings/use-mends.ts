import type { Drill } from '@icewright/book';
import { newId } from '@icewright/book';
import {
  type Finding,
  levelOf,
  type Mend,
  mendSearch,
  type NoMend,
  type Rink,
  type Run,
} from '@icewright/engine';
import { useEffect, useRef, useState } from 'react';
import { isManyUnderWay } from '../many/play-many.ts';
import type { People } from '../people/people-of.ts';
import { usePlayedSpots } from '../use-played-spots.ts';

/** What else is found in a plan besides its run: in its flow. */
export type MoreFindings = (plan: Drill, run: Run) => readonly Finding[];

/** The hand has rested for this long before mends are looked for, ms. */
const RESTED_MS = 350;
/** Trying goes on for no longer than this at a time, so that the page stays quick, ms. */
const SLICE_MS = 8;
/** While a many-run has the cores the search waits, and looks again whether it is over so often, ms. */
const WAITS_MS = 50;

/**
 * A mend for each finding that is in view, in their order, looked for in idle time once the drill rests; undefined while it
 * is not known. Any change of the drill stops the search and begins it anew.
 */
export function useMends(asked: {
  readonly drill: Drill;
  readonly rink: Rink;
  /** Who skated the rep with the findings. */
  readonly models: People['inOneRep'];
  readonly findings: readonly Finding[];
  /** False while something is in the hand, or the findings belong to an earlier state of the drill. */
  readonly isAtRest: boolean;
  /** The findings that can be seen, by their place in the list. */
  readonly inView: ReadonlySet<number>;
  readonly more?: MoreFindings | undefined;
}): readonly (Mend | NoMend | undefined)[] {
  const { drill, rink, findings, isAtRest, models } = asked;
  const [known, setKnown] = useState<{
    readonly of: readonly Finding[];
    readonly mends: ReadonlyMap<number, Mend | NoMend>;
  }>({ of: findings, mends: NONE });
  const more = useRef(asked.more);
  more.current = asked.more;
  const inView = useRef(asked.inView);
  inView.current = asked.inView;
  const goOnNow = useRef(() => {});
  const { pucks, gear, games, flow, level } = drill;
  const spots = usePlayedSpots(drill.spots);

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is tried hangs on these parts of the drill, and on what was found in them
  useEffect(() => {
    if (!isAtRest || findings.length === 0) return;
    const mends = new Map<number, Mend | NoMend>();
    const searches = new Map<number, MendSearch>();
    const goOn = () => {
      if (isManyUnderWay()) {
        timer = window.setTimeout(goOn, WAITS_MS);
        return;
      }
      const untilMs = performance.now() + SLICE_MS;
      const before = mends.size;
      timer = 0;
      for (;;) {
        const index = findings.findIndex((_, at) => inView.current.has(at) && !mends.has(at));
        const finding = findings[index];
        if (finding === undefined) break;
        const search = searches.get(index) ?? searchFor({ ...asked, finding, more: more.current });
        searches.set(index, search);
        const step = search.next();
        if (step.done) mends.set(index, step.value);
        if (performance.now() >= untilMs) {
          timer = window.setTimeout(goOn, 0);
          break;
        }
      }
      if (mends.size > before) setKnown({ of: findings, mends: new Map(mends) });
    };
    let timer = window.setTimeout(goOn, RESTED_MS);
    goOnNow.current = () => {
      timer ||= window.setTimeout(goOn, 0);
    };
    return () => {
      window.clearTimeout(timer);
      goOnNow.current = () => {};
    };
  }, [spots, pucks, gear, games, flow, level, rink, models, findings, isAtRest]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what has come into view is looked for then
  useEffect(() => goOnNow.current(), [asked.inView]);

  return findings.map((_, index) => (known.of === findings ? known.mends.get(index) : undefined));
}

const NONE: ReadonlyMap<number, Mend | NoMend> = new Map();

/** Each step is one run tried; the last gives the answer. */
type MendSearch = ReturnType<typeof mendSearch>;

const searchFor = (asked: {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly models: People['inOneRep'];
  readonly finding: Finding;
  readonly more: MoreFindings | undefined;
}): MendSearch => {
  const { drill, rink, models, finding, more } = asked;
  return mendSearch({
    plan: drill,
    rink,
    level: levelOf(drill.level),
    models,
    finding,
    newAct: newId<'act'>(),
    newPuck: newId<'puck'>(),
    ...(more === undefined ? {} : { more: (plan, run) => more(plan as Drill, run) }),
  });
};
