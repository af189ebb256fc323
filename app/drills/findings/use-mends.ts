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

/** What else is found in a plan besides its run: in its flow. */
export type MoreFindings = (plan: Drill, run: Run) => readonly Finding[];

/** The hand has rested for this long before mends are looked for, ms. */
const RESTED_MS = 350;
/** Trying goes on for no longer than this at a time, so that the page stays quick, ms. */
const SLICE_MS = 8;

/**
 * A mend for each finding, in their order, looked for in idle time once the drill rests; undefined while it is not known.
 * Any change of the drill stops the search and begins it anew.
 */
export function useMends(asked: {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly findings: readonly Finding[];
  /** False while something is in the hand, or the findings belong to an earlier state of the drill. */
  readonly isAtRest: boolean;
  readonly more?: MoreFindings | undefined;
}): readonly (Mend | NoMend | undefined)[] {
  const { drill, rink, findings, isAtRest } = asked;
  const [known, setKnown] = useState<{
    readonly of: readonly Finding[];
    readonly mends: readonly (Mend | NoMend)[];
  }>({ of: findings, mends: [] });
  const more = useRef(asked.more);
  more.current = asked.more;
  const { spots, pucks, gear, games, flow, level } = drill;

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is tried hangs on these parts of the drill, and on what was found in them
  useEffect(() => {
    if (!isAtRest || findings.length === 0) return;
    let timer = 0;
    const mends: (Mend | NoMend)[] = [];
    const search = searchAll(drill, rink, findings, more.current);
    const goOn = () => {
      const untilMs = performance.now() + SLICE_MS;
      const before = mends.length;
      for (;;) {
        const step = search.next();
        if (step.done) break;
        if (step.value !== null) mends.push(step.value);
        if (performance.now() >= untilMs) {
          timer = window.setTimeout(goOn, 0);
          break;
        }
      }
      if (mends.length > before) setKnown({ of: findings, mends: [...mends] });
    };
    timer = window.setTimeout(goOn, RESTED_MS);
    return () => window.clearTimeout(timer);
  }, [spots, pucks, gear, games, flow, level, rink, findings, isAtRest]);

  return findings.map((_, index) => (known.of === findings ? known.mends[index] : undefined));
}

/** Yields after every run tried: nothing, or the answer for the next finding. */
function* searchAll(
  drill: Drill,
  rink: Rink,
  findings: readonly Finding[],
  more: MoreFindings | undefined,
): Generator<Mend | NoMend | null, void, void> {
  for (const finding of findings) {
    const search = mendSearch({
      plan: drill,
      rink,
      level: levelOf(drill.level),
      finding,
      newAct: newId<'act'>(),
      newPuck: newId<'puck'>(),
      ...(more === undefined ? {} : { more: (plan, run) => more(plan as Drill, run) }),
    });
    let step = search.next();
    while (!step.done) {
      yield null;
      step = search.next();
    }
    yield step.value;
  }
}
